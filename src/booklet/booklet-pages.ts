/** A pattern, its words, charts and measures in, for one paper; its booklet out, page by page. */

import type { Scene } from '../scene/scene.ts';
import { type Assembled, assemblePages, type RunningHead } from './assemble-pages.ts';
import { abbreviations } from './blocks/abbreviations.ts';
import { charts } from './blocks/charts.ts';
import { closing } from './blocks/closing.ts';
import { cover } from './blocks/cover.ts';
import { finishedSize } from './blocks/finished-size.ts';
import { gaugeSection } from './blocks/gauge.ts';
import { instructions } from './blocks/instructions.ts';
import { materials } from './blocks/materials.ts';
import { measures } from './blocks/measures.ts';
import { notesPage } from './blocks/notes-page.ts';
import { type BookletInput, sizeName, termsOf } from './booklet-input.ts';
import type { MeasureText } from './break-lines.ts';
import { type FlowedPage, flowToSheets, flowWithoutStub } from './flow.ts';
import { paddedPages } from './folding.ts';
import { HOUSE_WORDS } from './house-words.ts';
import { longDate } from './long-date.ts';
import { keepNumbersTogether } from './no-break.ts';
import { pageGrid } from './page-grid.ts';
import type { Form, PaperName } from './paper.ts';
import { paragraphs, plain, sideSection } from './section.ts';
import type { Setting } from './set-text.ts';
import type { Flowing, Sheet } from './strip.ts';

/** The order is the trade's: what it is, what it takes, how to read it, how to make it, how to finish it. */
export function layOutBooklet(
  input: BookletInput,
  paper: PaperName,
  measure: MeasureText,
  form: Form = 'flat',
): Assembled {
  const format = { paper, form };
  const grid = pageGrid(format, 'portrait');
  const setting: Setting = { measure, grid };
  const { pattern, words } = input;
  const house = HOUSE_WORDS[termsOf(words)];
  const specials = words.specials.map(({ name, how }) => [
    { text: `${name}: `, face: 'text-bold' as const },
    ...plain(keepNumbersTogether(how)),
  ]);
  const notes = pattern.notes.map((note) => plain(keepNumbersTogether(note)));
  const items: Flowing[] = [
    cover(input, setting),
    ...sideSection(house.finishedSize, finishedSize(input, setting), setting),
    ...sideSection(house.materials, materials(input, setting), setting),
    ...sideSection(house.gauge, gaugeSection(pattern.gauge, house, setting), setting),
    ...sideSection(house.abbreviations, abbreviations(words.abbreviations, setting), setting),
    ...sideSection(house.specials, paragraphs(specials, setting), setting),
    ...sideSection(house.notes, paragraphs(notes, setting), setting),
    ...instructions(words, house, setting),
    ...charts(input.charts, input.leftHanded ? house.leftHandedChart : house.chart, setting),
    ...measures(input, house, setting),
    ...closing(input, house, setting),
  ];
  const isLoose = (item: Flowing): item is Sheet => item.kind === 'sheet' && item.format.form !== form;
  const bound = items.filter((item) => !isLoose(item));
  const pages =
    form === 'folded' ? flowToSheets(bound, grid.bodyHeightMm) : flowWithoutStub(bound, grid.bodyHeightMm);
  const flowed = {
    pages: form === 'folded' ? withNotesPages(pages, setting) : pages,
    loose: items.filter(isLoose),
  };
  return assemblePages(flowed, runningHeadOf(input), format, measure);
}

/** A sheet's pages that are left over: the back cover stays blank, what lies before it is for the maker to write on. */
function withNotesPages(pages: readonly FlowedPage[], setting: Setting): FlowedPage[] {
  const left = paddedPages(pages.length) - pages.length;
  return [...pages, ...Array.from({ length: Math.max(0, left - 1) }, () => notesPage(setting))];
}

export function bookletPages(input: BookletInput, paper: PaperName, measure: MeasureText): readonly Scene[] {
  return layOutBooklet(input, paper, measure).pages;
}

function runningHeadOf(input: BookletInput): RunningHead {
  const { pattern } = input;
  const terms = termsOf(input.words);
  const name = sizeName(input);
  const version = [
    pattern.version ? `Version ${pattern.version}` : null,
    pattern.date ? longDate(pattern.date, terms) : null,
  ];
  return {
    title: pattern.title,
    right: [
      name ? `Size ${name}` : null,
      HOUSE_WORDS[terms].terms,
      input.leftHanded ? 'left-handed charts' : null,
    ]
      .filter((word) => word !== null)
      .join(', '),
    footLeft: version.filter((word) => word !== null).join(', '),
  };
}
