/** A compiled pattern, a size of it, the edition wanted and the fonts in; the bytes of a booklet as PDF out. */

import type { Assembled } from './booklet/assemble-pages.ts';
import type { BookletChart, BookletInput, BookletSize } from './booklet/booklet-input.ts';
import { layOutBooklet } from './booklet/booklet-pages.ts';
import { type BookletPhotograph, photographScene } from './booklet/booklet-photograph.ts';
import { type Edition, USUAL_EDITION } from './booklet/edition.ts';
import { foldedBooklet } from './booklet/folded-booklet.ts';
import { inLowInk } from './booklet/low-ink.ts';
import { markPages } from './booklet/mark-pages.ts';
import type { PaperName } from './booklet/paper.ts';
import { testerSheet } from './booklet/tester-sheet.ts';
import { coverPicture } from './chart/cover-picture.ts';
import type { CompiledPattern, CompiledSize } from './compiled.ts';
import { paintPdf } from './paint/pdf.ts';
import { type FontBytes, type TextRuler, textRuler } from './paint/text-width.ts';
import type { Pattern } from './pattern/pattern.ts';
import type { Scene } from './scene/scene.ts';
import { sentencesIn } from './wording/own-sentences.ts';
import { DIALECTS, type DialectKey } from './wording/words.ts';

/** A booklet of all sizes gives its numbers in the trade's `35 (44, 53)` form. */
export type BookletSizes = CompiledSize | 'all';

export interface BookletChoice extends Partial<Edition> {
  readonly dialect: DialectKey;
  readonly paper: PaperName;
  /** Of the pattern's page on the web, to be printed at the end with its QR code. */
  readonly address?: string | null;
  /** Of one to fold: with a first sheet that tells how. */
  readonly foldingNotes?: boolean;
  /** With its charts drawn for left-handed makers. */
  readonly leftHanded?: boolean;
  /** Stitch for stitch over as many sheets as it takes, where charts are otherwise drawn with a window of what repeats. */
  readonly wholeCharts?: boolean;
  /** Scaled for paper, the cover's first. */
  readonly photographs?: readonly BookletPhotograph[];
  /** Stands across the head of every page. */
  readonly mark?: string;
}

/** Runs in a browser as well: whoever calls it has the bytes of the fonts. */
export async function printBooklet(
  compiled: CompiledPattern,
  sizes: BookletSizes,
  choice: BookletChoice,
  fonts: FontBytes,
): Promise<Uint8Array> {
  const { pattern, title, pages, outline } = setBooklet(compiled, sizes, choice, fonts);
  const folded = choice.form === 'folded';
  return paintPdf(pages, {
    title,
    author: pattern.designer,
    language: languageOf(choice.dialect),
    createdAt: creationDate(pattern),
    fonts,
    // The sides of sheets to fold hold pages in an order that nobody could be read to.
    tagged: !folded,
    // Two pages share a side once they are imposed, in an order no bookmark could follow.
    outline: folded ? [] : outline,
  });
}

/** The pages that are printed, to be looked at. */
export function bookletPages(
  compiled: CompiledPattern,
  sizes: BookletSizes,
  choice: BookletChoice,
  fonts: FontBytes,
): readonly Scene[] {
  return setBooklet(compiled, sizes, choice, fonts).pages;
}

function setBooklet(
  compiled: CompiledPattern,
  sizes: BookletSizes,
  choice: BookletChoice,
  fonts: FontBytes,
): Pick<Assembled, 'pages' | 'outline'> & { readonly pattern: Pattern; readonly title: string } {
  const { paper } = choice;
  const edition = { ...USUAL_EDITION, ...choice };
  const { pattern } = compiled;
  if (!pattern) throw new Error(`${compiled.slug} has no pattern to set a booklet from`);
  const input =
    sizes === 'all' ? allSizesInput(compiled, pattern, choice) : bookletInput(pattern, sizes, choice);
  const measure = rulerFor(fonts).measureText;
  const laidOut = layOutBooklet(input, paper, measure, edition);
  const title = bookletTitle(pattern, sizes, choice);
  const pages =
    edition.form === 'folded'
      ? foldedBooklet(laidOut, { title, paper, notes: choice.foldingNotes ?? false, measure })
      : laidOut.pages;
  const marked = choice.mark === undefined ? pages : markPages(pages, choice.mark);
  return { pattern, title, pages: edition.lowInk ? marked.map(inLowInk) : marked, outline: laidOut.outline };
}

/** One page a size, for those who work the pattern before it is published. */
export async function printTesterSheets(
  compiled: CompiledPattern,
  sizes: readonly CompiledSize[],
  { dialect, paper, lowInk = false }: Pick<BookletChoice, 'dialect' | 'paper' | 'lowInk'>,
  fonts: FontBytes,
): Promise<Uint8Array> {
  const { pattern } = compiled;
  if (!pattern) throw new Error(`${compiled.slug} has no pattern to set a sheet from`);
  const { measureText } = rulerFor(fonts);
  const pages = sizes.map((size) =>
    testerSheet(bookletInput(pattern, size, { dialect }), paper, measureText),
  );
  return paintPdf(lowInk ? pages.map(inLowInk) : pages, {
    title: `${pattern.title}, ${pages.length === 1 ? 'sheet' : 'sheets'} for testers`,
    author: pattern.designer,
    language: languageOf(dialect),
    createdAt: creationDate(pattern),
    fonts,
    tagged: true,
  });
}

function languageOf(dialect: DialectKey): string {
  return DIALECTS[dialect].terms === 'US' ? 'en-US' : 'en-GB';
}

/** Left-handed or not: without a chart a booklet is the same for both hands. */
export function bookletHands(size: CompiledSize): readonly boolean[] {
  return size.charts.US.length > 0 ? [false, true] : [false];
}

/** What the booklet of one size is set from. */
export function bookletInput(
  pattern: Pattern,
  size: CompiledSize,
  choice: Omit<BookletChoice, 'paper'>,
): BookletInput {
  return {
    pattern: sentencesIn(pattern, choice.dialect),
    sizes: [bookletSize(size)],
    words: size.words[choice.dialect],
    charts: chartsFor(size, choice),
    leftHanded: choice.leftHanded ?? false,
    address: choice.address ?? null,
    ...pictured(pattern, size, choice),
  };
}

/** What the booklet of all sizes is set from. Its chart is the first size's: the words say what is other in the others. */
export function allSizesInput(
  compiled: CompiledPattern,
  pattern: Pattern,
  choice: Omit<BookletChoice, 'paper'>,
): BookletInput {
  const [first] = compiled.sizes;
  if (first === undefined || compiled.allSizes === null)
    throw new Error(`${compiled.slug} has no words for all sizes`);
  const several = compiled.sizes.length > 1;
  return {
    ...bookletInput(pattern, first, choice),
    sizes: compiled.sizes.map(bookletSize),
    words: compiled.allSizes[choice.dialect],
    chartSize: several ? first.size.name : null,
  };
}

function bookletSize(size: CompiledSize): BookletSize {
  return { name: size.size.name, ...size.measures, schematics: size.schematics };
}

function chartsFor(
  size: CompiledSize,
  { dialect, leftHanded = false, wholeCharts = false }: Omit<BookletChoice, 'paper'>,
): readonly BookletChart[] {
  const charts = (leftHanded ? size.leftHandedCharts : size.charts)[DIALECTS[dialect].terms];
  return wholeCharts ? charts.map(({ part, scene }) => ({ part, scene, folded: [] })) : charts;
}

/** A picture takes ink, and shows stitches to those who asked for words alone. A photograph goes before a drawing. */
function pictured(
  pattern: Pattern,
  size: CompiledSize,
  { lowInk = false, holds = 'all', photographs = [] }: Omit<BookletChoice, 'paper'>,
): Pick<BookletInput, 'cover' | 'photographs' | 'photographers'> {
  if (lowInk || holds === 'words') return { cover: null };
  const [first, ...others] = photographs;
  if (first === undefined) return { cover: coverPicture(pattern, size.fabric) };
  const photographers = [...new Set(photographs.flatMap(({ by }) => by ?? []))];
  return { cover: photographScene(first), photographs: others, photographers };
}

function bookletTitle(
  pattern: Pattern,
  sizes: BookletSizes,
  { leftHanded, form, holds }: BookletChoice,
): string {
  const several = pattern.sizes.length > 1;
  return [
    pattern.title,
    ...(several ? [sizes === 'all' ? 'all sizes' : `size ${sizes.size.name}`] : []),
    ...(form === 'large print' ? ['large print'] : []),
    ...(holds === 'words' ? ['words only'] : []),
    ...(holds === 'charts' ? ['charts only'] : []),
    ...(leftHanded && holds !== 'words' ? ['left-handed charts'] : []),
  ].join(', ');
}

/** A pattern without a date gets one all the same, so that two runs give the same bytes. */
function creationDate(pattern: Pattern): Date {
  const date = new Date(`${pattern.date ?? '2000-01-01'}T00:00:00Z`);
  return Number.isNaN(date.getTime()) ? new Date(0) : date;
}

/** Bytes are not changed once read: one ruler, with the widths of words it has met, serves every booklet of the same fonts. */
const rulers = new WeakMap<FontBytes, TextRuler>();

export function rulerFor(fonts: FontBytes): TextRuler {
  const known = rulers.get(fonts);
  if (known !== undefined) return known;
  const ruler = textRuler(fonts);
  rulers.set(fonts, ruler);
  return ruler;
}
