/** A pattern, its words, charts and measures in, for one paper; its booklet out, page by page. */

import type { Scene } from '../scene/scene.ts';
import type { WordedPattern } from '../wording/words.ts';
import { type Assembled, assemblePages, type RunningHead, type WithinBook } from './assemble-pages.ts';
import { abbreviations } from './blocks/abbreviations.ts';
import { charts, type DrawnCharts } from './blocks/charts.ts';
import { closing } from './blocks/closing.ts';
import { cover } from './blocks/cover.ts';
import { finishedSize } from './blocks/finished-size.ts';
import { gaugeSection } from './blocks/gauge.ts';
import { instructions } from './blocks/instructions.ts';
import { materials } from './blocks/materials.ts';
import { measures } from './blocks/measures.ts';
import { notesPage } from './blocks/notes-page.ts';
import { photographStrips } from './blocks/photographs.ts';
import { type BookletInput, sizeName, termsOf } from './booklet-input.ts';
import type { BookletPhotograph } from './booklet-photograph.ts';
import type { MeasureText } from './break-lines.ts';
import { type Edition, USUAL_EDITION } from './edition.ts';
import { type FlowedPage, flowToSheets, flowWithoutStub } from './flow.ts';
import { paddedPages } from './folding.ts';
import { HOUSE_WORDS, type HouseWords } from './house-words.ts';
import { longDate } from './long-date.ts';
import { keepNumbersTogether } from './no-break.ts';
import { pageGrid } from './page-grid.ts';
import type { PaperName } from './paper.ts';
import { paragraphs, plain, sideSection } from './section.ts';
import { mainColumn, type Setting } from './set-text.ts';
import type { Flowing, Sheet } from './strip.ts';

/** The order is the trade's: what it is, what it takes, how to read it, how to make it, how to finish it. */
export function layOutBooklet(
  input: BookletInput,
  paper: PaperName,
  measure: MeasureText,
  edition: Edition = USUAL_EDITION,
  within: WithinBook | null = null,
): Assembled {
  const { form } = edition;
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
  const drawn =
    edition.holds === 'words' ? NO_CHARTS : charts(input.charts, chartHeading(input, house), setting);
  const ofPart = photographsOf(input);
  const written = edition.holds === 'charts' ? unchartedWords(input, drawn.left) : words;
  const items: Flowing[] = [
    cover(input, setting),
    ...sideSection(house.finishedSize, finishedSize(input, setting), setting),
    ...sideSection(house.photographs, photographStrips(ofPart(null), mainColumn(setting), setting), setting),
    ...sideSection(house.materials, materials(input, setting), setting),
    ...sideSection(house.gauge, gaugeSection(pattern.gauge, house, setting), setting),
    ...sideSection(house.abbreviations, abbreviations(words.abbreviations, setting), setting),
    ...sideSection(house.specials, paragraphs(specials, setting), setting),
    ...sideSection(house.notes, paragraphs(notes, setting), setting),
    ...instructions(written, house, setting, ofPart),
    ...drawn.items,
    ...measures(input, edition, house, setting),
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
  return assemblePages(flowed, runningHeadOf(input, edition), format, measure, within);
}

/** A sheet's pages that are left over: the back cover stays blank, what lies before it is for the maker to write on. */
function withNotesPages(pages: readonly FlowedPage[], setting: Setting): FlowedPage[] {
  const left = paddedPages(pages.length) - pages.length;
  return [...pages, ...Array.from({ length: Math.max(0, left - 1) }, () => notesPage(setting))];
}

const NO_CHARTS: DrawnCharts = { items: [], left: [] };

function chartHeading({ leftHanded, chartSize }: BookletInput, house: HouseWords): string {
  const heading = leftHanded ? house.leftHandedChart : house.chart;
  return chartSize ? `${heading}, size ${chartSize}` : heading;
}

/** Those of a part; what belongs to a part that has no words of its own here stands with those of the whole. */
function photographsOf({ photographs = [], words }: BookletInput) {
  const parts = new Set(words.parts.filter(({ lines }) => lines.length > 0).map(({ name }) => name));
  return (part: string | null): readonly BookletPhotograph[] =>
    photographs.filter((one) => (one.part !== null && parts.has(one.part) ? one.part : null) === part);
}

/** What no chart shows: parts without one, or with one too large for paper. */
function unchartedWords(
  { pattern, words, charts: drawn }: BookletInput,
  left: readonly string[],
): WordedPattern {
  const charted = new Set(drawn.map(({ part }) => part).filter((part) => !left.includes(part)));
  // A part worked onto another stands in its chart.
  for (const { name, onto } of pattern.parts) if (onto !== null && charted.has(onto)) charted.add(name);
  return { ...words, parts: words.parts.filter(({ name }) => !charted.has(name)) };
}

export function bookletPages(input: BookletInput, paper: PaperName, measure: MeasureText): readonly Scene[] {
  return layOutBooklet(input, paper, measure).pages;
}

/** What a page of this edition would be missed without. */
const HOLDS_WORDS = { all: null, words: 'words only', charts: 'charts only' } as const;

function runningHeadOf(input: BookletInput, { holds }: Edition): RunningHead {
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
      name ? `Size ${name}` : input.pattern.sizes.length > 1 ? 'All sizes' : null,
      HOUSE_WORDS[terms].terms,
      HOLDS_WORDS[holds],
      input.leftHanded && holds !== 'words' ? 'left-handed charts' : null,
    ]
      .filter((word) => word !== null)
      .join(', '),
    footLeft: version.filter((word) => word !== null).join(', '),
  };
}
