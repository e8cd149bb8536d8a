/** A pattern in one size in, a page for someone who tests it out: what was planned, beside blanks for what came out. */

import { takenM } from '../measure/measures.ts';
import type { Scene } from '../scene/scene.ts';
import { mmFromPt, printCm, printM, printYd } from '../units.ts';
import { inUnits } from '../wording/finished-size.ts';
import type { WordedLine } from '../wording/words.ts';
import { printHook } from './blocks/materials.ts';
import { printWeight } from './blocks/yarn-table.ts';
import { type BookletInput, type BookletSize, termsOf } from './booklet-input.ts';
import type { MeasureText } from './break-lines.ts';
import { ruleShape } from './draw-lines.ts';
import { HOUSE_WORDS } from './house-words.ts';
import { longDate } from './long-date.ts';
import { keepNumbersTogether } from './no-break.ts';
import { ACCENT, pageGrid, QUIET, RULE } from './page-grid.ts';
import type { PaperName } from './paper.ts';
import { plain } from './section.ts';
import { fullWidth, type Setting, setText } from './set-text.ts';
import { moved, type Strip, withSpaceBefore } from './strip.ts';
import { type Cell, type Column, table } from './table.ts';
import { headingTag } from './tags.ts';

/** Room for handwriting under each question, and between two lines. */
const LEAST_LINES = 3;
const LINE_MM = 7.5;
const QUESTIONS = [
  'Rows that were unclear, or did not come out',
  'Anything else: chart, measures, yarn, finishing',
] as const;

export function testerSheet(input: BookletInput, paper: PaperName, measure: MeasureText): Scene {
  const grid = pageGrid({ paper, form: 'flat' }, 'portrait');
  const setting: Setting = { measure, grid };
  const [size] = input.sizes;
  if (size === undefined) throw new Error('A sheet for testers is of one size.');
  const head = [...opening(input, size, setting), ...plans(input, size, setting)];
  const restMm = grid.bodyHeightMm - heightOf(head);
  const counted = counts(input, restMm - heightOf(questions(LEAST_LINES, setting)), setting);
  // What is left of the page is for writing.
  const leftMm = restMm - heightOf(counted) - heightOf(questions(LEAST_LINES, setting));
  const more = Math.floor(leftMm / LINE_MM / QUESTIONS.length);
  const strips = [...head, ...counted, ...questions(LEAST_LINES + Math.max(0, more), setting)];
  let yMm = 0;
  const shapes = strips.map((strip, index) => {
    if (index > 0) yMm += strip.spaceBeforeMm;
    const shape = moved(strip.shapes, 0, yMm);
    yMm += strip.heightMm;
    return shape;
  });
  return {
    widthMm: grid.widthMm,
    heightMm: grid.heightMm,
    title: `${input.pattern.title}, size ${size.name}, sheet for testers`,
    alternative: 'Planned gauge, measures, yarn and counts, with blanks for what came out.',
    symbols: {},
    shapes: [moved(shapes, grid.leftMm, grid.topMm - 6)],
  };
}

function opening({ pattern, words }: BookletInput, size: BookletSize, setting: Setting): Strip[] {
  const { type } = setting.grid;
  const terms = termsOf(words);
  const version = [
    pattern.sizes.length > 1 ? `Size ${size.name}` : null,
    HOUSE_WORDS[terms].terms,
    pattern.version === null ? null : `version ${pattern.version}`,
    pattern.date === null ? null : longDate(pattern.date, terms),
  ].filter((word) => word !== null);
  const place = fullWidth(setting);
  return [
    ...setText([{ text: 'Sheet for pattern testers', face: 'text', ink: ACCENT }], type.body, place, setting),
    ...setText(
      [{ text: pattern.title, face: 'title-bold' }],
      type.section,
      place,
      setting,
      headingTag(1),
    ).slice(0, 2),
    ...setText(plain(version.join(', ')), type.body, place, setting),
    ...withSpaceBefore(
      setText(
        plain('Please fill in what you measured and counted, also where it is as planned.'),
        type.body,
        place,
        setting,
      ),
      setting.grid.gap.paragraph,
    ),
  ];
}

/** What was planned, or null where nothing was. */
type Planned = readonly [what: string, planned: string | null];

function plans(input: BookletInput, size: BookletSize, setting: Setting): Strip[] {
  const { pattern, words } = input;
  const terms = termsOf(words);
  const { gauge } = pattern;
  const gaugeName = HOUSE_WORDS[terms].gauge.toLowerCase();
  const gauged: Planned[] =
    gauge === null
      ? []
      : [
          [
            `Stitches to ${printCm(gauge.overMm)}${gauge.of ? ` in ${gauge.of}` : ''}`,
            String(gauge.stitches),
          ],
          ...(gauge.rows === null ? [] : [[`Rows to ${printCm(gauge.upMm)}`, String(gauge.rows)] as const]),
        ];
  const blocked = gauge?.after === 'blocking' ? ', after blocking' : '';
  const measured: readonly (readonly [string, number | null])[] = [
    [size.aroundMm === null ? 'Width' : 'Across', size.widthMm],
    ['Around', size.aroundMm],
    ['Height', size.heightMm],
  ];
  const yarns = pattern.yarns.flatMap((yarn): Planned[] => {
    const use = size.yarn.find(({ letter }) => letter === yarn.letter);
    return [
      [`Yarn ${yarn.letter}, ${yarn.colour}: which`, `${printWeight(yarn.weight, terms)}, ${yarn.fibre}`],
      [`Yarn ${yarn.letter}: how much`, use ? `${printM(takenM(use))} (${printYd(takenM(use))})` : null],
    ];
  });
  const rows: Planned[] = [
    ...(pattern.hookMm === null
      ? []
      : [[`Hook that gave this ${gaugeName}`, printHook(pattern.hookMm)] as const]),
    ...gauged,
    ...measured.flatMap(([what, mm]): Planned[] => (mm === null ? [] : [[`${what}${blocked}`, inUnits(mm)]])),
    ...yarns,
    ['Hours it took', null],
  ];
  return withSpaceBefore(
    table(
      COLUMNS,
      rows.map(([what, planned]) => [cell(what), cell(planned ?? '–'), BLANK]),
      fullWidth(setting),
      setting,
    ),
    setting.grid.gap.part,
  );
}

const COLUMNS: readonly Column[] = [
  { head: 'What', align: 'start' },
  { head: 'Planned', align: 'start' },
  { head: 'Yours', align: 'start' },
];
const COUNT_COLUMNS: readonly Column[] = [
  { head: 'Row or round', align: 'start' },
  { head: 'Planned', align: 'start' },
  { head: 'Yours', align: 'start' },
];
const BLANK: Cell = { runs: plain('                    ') };

function cell(text: string): Cell {
  return { runs: plain(keepNumbersTogether(text)) };
}

/** Counts this short stand in two columns of rows. */
const SHORT_COUNT = 16;

/** As many counts as the room holds; where that is not all, the last one and others evenly before it. */
function counts({ words }: BookletInput, roomMm: number, setting: Setting): Strip[] {
  const several = words.parts.length > 1;
  const all = words.parts.flatMap(({ name, lines }) =>
    lines.flatMap((line): Counted[] =>
      line.count === null || line.label === null
        ? []
        : [{ name: several ? `${name}, ${line.label}` : line.label, line }],
    ),
  );
  for (let most = all.length; most > 0; most -= 1) {
    const chosen = thinned(all, most);
    const strips = withSpaceBefore(countTable(chosen, setting), setting.grid.gap.part);
    const left = all.length - chosen.length;
    const told =
      left === 0
        ? []
        : setText(
            [{ text: `${left} counts more stand in the pattern.`, face: 'text', ink: QUIET }],
            setting.grid.type.small,
            fullWidth(setting),
            setting,
          );
    if (heightOf([...strips, ...told]) <= roomMm) return [...strips, ...told];
  }
  return [];
}

interface Counted {
  readonly name: string;
  readonly line: WordedLine;
}

function thinned(all: readonly Counted[], most: number): Counted[] {
  if (all.length <= most) return [...all];
  const step = all.length / most;
  const kept = new Set(Array.from({ length: most }, (_, index) => Math.floor((index + 1) * step) - 1));
  return all.filter((_, index) => kept.has(index));
}

function countTable(chosen: readonly Counted[], setting: Setting): Strip[] {
  const cells = chosen.map(({ name, line }): Cell[] => [cell(name), cell(line.count ?? ''), BLANK]);
  const short = chosen.every(
    ({ name, line }) => (line.count?.length ?? 0) <= SHORT_COUNT && name.length < 20,
  );
  if (!short || chosen.length < 6) return table(COUNT_COLUMNS, cells, fullWidth(setting), setting);
  const half = Math.ceil(cells.length / 2);
  const empty: Cell[] = [cell(''), cell(''), cell('')];
  return table(
    [...COUNT_COLUMNS, ...COUNT_COLUMNS],
    cells.slice(0, half).map((row, index) => [...row, ...(cells[half + index] ?? empty)]),
    fullWidth(setting),
    setting,
  );
}

function questions(lines: number, setting: Setting): Strip[] {
  const { grid } = setting;
  const asked = QUESTIONS.flatMap((question): Strip[] => [
    ...withSpaceBefore(
      setText([{ text: question, face: 'text-bold' }], grid.type.body, fullWidth(setting), setting),
      grid.gap.part,
    ),
    ...writingLines(lines, setting),
  ]);
  const [name, date] = [grid.bodyWidthMm * 0.62, grid.bodyWidthMm * 0.34];
  const signed: Strip = {
    kind: 'strip',
    heightMm: mmFromPt(grid.type.body.linePt),
    spaceBeforeMm: grid.gap.part,
    keepWithNext: false,
    shapes: [
      ...setText(plain('Tester'), grid.type.body, { xMm: 0, widthMm: 20 }, setting).flatMap(
        ({ shapes }) => shapes,
      ),
      ruleShape(14, 4.6, name - 14, RULE.hairMm, QUIET),
      ...setText(
        plain('Date'),
        grid.type.body,
        { xMm: grid.bodyWidthMm - date, widthMm: 20 },
        setting,
      ).flatMap(({ shapes }) => shapes),
      ruleShape(grid.bodyWidthMm - date + 11, 4.6, date - 11, RULE.hairMm, QUIET),
    ],
  };
  return [...asked, signed];
}

function writingLines(count: number, { grid }: Setting): Strip[] {
  return Array.from({ length: count }, () => ({
    kind: 'strip' as const,
    heightMm: LINE_MM,
    spaceBeforeMm: 0,
    keepWithNext: false,
    shapes: [ruleShape(0, LINE_MM, grid.bodyWidthMm, RULE.hairMm, QUIET)],
  }));
}

function heightOf(strips: readonly Strip[]): number {
  return strips.reduce((sum, strip) => sum + strip.spaceBeforeMm + strip.heightMm, 0);
}
