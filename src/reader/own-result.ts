/** A pattern made over -> the sections of its page, and the places its charts are drawn into. */

import { keepNumbersTogether } from '../booklet/no-break.ts';
import type { NearSizes } from '../check/near-sizes.ts';
import type { ShownFilm } from '../film/shown-films.ts';
import { watchLinks, whereWords } from '../film/watch-links.ts';
import { HEIGHTS_AS_USUAL } from '../measure/heights-in-sc.ts';
import type { Units } from '../measure/materials.ts';
import type { OwnMade } from '../own/make-own.ts';
import { leastWords, type NearTable, nearCells, nearTables } from '../own/near-words.ts';
import type { OwnChoice } from '../own/own-choice.ts';
import { sizeFacts } from '../site/facts.ts';
import { partTexts } from '../site/part-text.ts';
import { materials } from '../site/supplies.ts';
import { printCm, printIn } from '../units.ts';
import { printFinishedSize } from '../wording/finished-size.ts';
import { ownSentences } from '../wording/own-sentences.ts';
import { wordPattern } from '../wording/word-pattern.ts';
import { DIALECTS, type WordedPattern } from '../wording/words.ts';
import { keepSheet } from './keep-sheet.ts';
import { element } from './markup.ts';
import { factList, glossarySheets, listedSheet, materialsSheet, partSection, sheet } from './own-sections.ts';

export interface FirstSheets {
  readonly summary: string;
  readonly sheets: readonly HTMLElement[];
}

/** How large it comes out, the sizes beside it, and what it takes. */
export function firstSheets(made: OwnMade, near: NearSizes, choice: OwnChoice): FirstSheets {
  const { terms } = DIALECTS[choice.dialect];
  const { pattern, measures } = made;
  const finished = printFinishedSize(measures, choice.units);
  return {
    summary:
      finished === null
        ? 'Worked out. The pattern gives no gauge to measure it by.'
        : `Worked out: it comes out at ${finished}.`,
    sheets: [
      sheet(
        'your-size',
        'Your size',
        factList(sizeFacts(pattern, made, choice.units)),
        ...nearTables(near).map((table) => nearTable(table, choice.units)),
        ...nearTables(near).map((table) => remark(leastWords(table))),
        pattern.gauge?.rows === null ? remark(HEIGHTS_AS_USUAL) : null,
      ),
      materialsSheet(materials(pattern, made, terms, choice.units), terms),
    ],
  };
}

export interface RowSheets {
  readonly sheets: readonly HTMLElement[];
  /** By part. */
  readonly charts: ReadonlyMap<string, HTMLElement>;
  readonly words: WordedPattern;
  /** Of the places of their charts, in the order of the parts. */
  readonly chartIds: readonly string[];
}

export function rowSheets(made: OwnMade, { dialect }: OwnChoice, films: readonly ShownFilm[]): RowSheets {
  const { pattern, worked, index } = made;
  const { terms } = DIALECTS[dialect];
  const words = wordPattern(pattern, worked.fabric, dialect, index);
  const charts = new Map<string, HTMLElement>();
  const watchOf = watchLinks(pattern.parts, { fabric: worked.fabric, index }, films);
  const texts = partTexts(words, () => null, { watchOf });
  const parts = texts.map(({ chart: _, ...part }) => {
    const place = element('figure', { class: 'chart', id: chartId(part.id) });
    charts.set(part.name, place);
    return partSection(part, place);
  });
  const instructions = element(
    'section',
    { class: 'instructions', 'aria-labelledby': 'instructions' },
    element(
      'div',
      { class: 'instructions-head' },
      element('h2', { id: 'instructions' }, 'Instructions'),
      element('button', { type: 'button', class: 'plainer follow', id: 'follow' }, 'Follow row by row'),
    ),
    ...parts,
  );
  const sheets = [
    listedSheet('notes', 'Notes', ownSentences(pattern, pattern.notes, dialect)),
    ...glossarySheets(words, terms),
    ...films.slice(0, 1).map((film) => sheet('film', 'Film', element('p', {}, whereWords(film)))),
    instructions,
    listedSheet('finishing', 'Finishing', ownSentences(pattern, pattern.finishing, dialect)),
    keepSheet(),
  ];
  return {
    sheets: sheets.filter((one) => one !== null),
    charts,
    words,
    chartIds: texts.map(({ id }) => chartId(id)),
  };
}

function chartId(part: string): string {
  return `${part}-chart`;
}

function remark(words: string | null): HTMLElement | null {
  return words === null ? null : element('p', { class: 'quiet' }, words);
}

/** The sizes on either side of hers, each with an address that asks for it. */
export function nearTable({ counted, side, near }: NearTable, units: Units): HTMLElement {
  const heads = [counted, side, 'than wanted'];
  const rows = near.map((one) => {
    const [count, measure, miss] = nearCells(one, units).map(keepNumbersTogether) as [string, string, string];
    const asked = new URLSearchParams(location.search);
    asked.set(side, units === 'metric' ? printCm(one.mm) : printIn(one.mm));
    const cells = [
      one.nearest ? count : element('a', { href: `?${asked}` }, count),
      measure,
      one.nearest ? `${miss}, the nearest` : miss,
    ];
    return element(
      'tr',
      one.nearest ? { 'aria-current': 'true' } : {},
      ...cells.map((cell) => element('td', {}, cell)),
    );
  });
  return element(
    'div',
    { class: 'table near' },
    element(
      'table',
      {},
      element('caption', {}, `Sizes beside it, by ${counted}`),
      element('thead', {}, element('tr', {}, ...heads.map((head) => element('th', { scope: 'col' }, head)))),
      element('tbody', {}, ...rows),
    ),
  );
}
