/** A compiled pattern, a size of it, the edition wanted and the fonts in; the bytes of a booklet as PDF out. */

import type { BookletInput } from './booklet/booklet-input.ts';
import { layOutBooklet } from './booklet/booklet-pages.ts';
import { foldedBooklet } from './booklet/folded-booklet.ts';
import type { Form, PaperName } from './booklet/paper.ts';
import { coverPicture } from './chart/cover-picture.ts';
import type { CompiledPattern, CompiledSize } from './compiled.ts';
import { paintPdf } from './paint/pdf.ts';
import { type FontBytes, type TextRuler, textRuler } from './paint/text-width.ts';
import type { Pattern } from './pattern/pattern.ts';
import { sentencesIn } from './wording/own-sentences.ts';
import { DIALECTS, type DialectKey } from './wording/words.ts';

export interface BookletChoice {
  readonly dialect: DialectKey;
  readonly paper: PaperName;
  /** Sheets as they are (the usual one), half pages to fold and staple, or large print. */
  readonly form?: Form;
  /** Of one to fold: with a first sheet that tells how. */
  readonly foldingNotes?: boolean;
  /** With its charts drawn for left-handed makers. */
  readonly leftHanded?: boolean;
  /** Stitch for stitch over as many sheets as it takes, where charts are otherwise drawn with a window of what repeats. */
  readonly wholeCharts?: boolean;
}

/** Runs in a browser as well: whoever calls it has the bytes of the fonts. */
export async function printBooklet(
  compiled: CompiledPattern,
  size: CompiledSize,
  choice: BookletChoice,
  fonts: FontBytes,
): Promise<Uint8Array> {
  const { dialect, paper, form = 'flat' } = choice;
  const { pattern } = compiled;
  if (!pattern) throw new Error(`${compiled.slug} has no pattern to set a booklet from`);
  const measure = rulerFor(fonts).measureText;
  const laidOut = layOutBooklet(bookletInput(pattern, size, choice), paper, measure, form);
  const title = bookletTitle(pattern, size, choice);
  const folded = form === 'folded';
  const pages = folded
    ? foldedBooklet(laidOut, { title, paper, notes: choice.foldingNotes ?? false, measure })
    : laidOut.pages;
  return paintPdf(pages, {
    title,
    author: pattern.designer,
    language: DIALECTS[dialect].terms === 'US' ? 'en-US' : 'en-GB',
    createdAt: creationDate(pattern),
    fonts,
    // Two pages share a side once they are imposed, in an order no bookmark could follow.
    outline: folded ? [] : laidOut.outline,
  });
}

/** Left-handed or not: without a chart a booklet is the same for both hands. */
export function bookletHands(size: CompiledSize): readonly boolean[] {
  return size.charts.US.length > 0 ? [false, true] : [false];
}

/** What the booklet of one size is set from. */
export function bookletInput(
  pattern: Pattern,
  size: CompiledSize,
  { dialect, leftHanded = false, wholeCharts = false }: Omit<BookletChoice, 'paper'>,
): BookletInput {
  const charts = (leftHanded ? size.leftHandedCharts : size.charts)[DIALECTS[dialect].terms];
  return {
    pattern: sentencesIn(pattern, dialect),
    sizes: [{ name: size.size.name, ...size.measures, schematics: size.schematics }],
    words: size.words[dialect],
    charts: wholeCharts ? charts.map(({ part, scene }) => ({ part, scene, folded: [] })) : charts,
    leftHanded,
    cover: coverPicture(pattern, size.fabric),
  };
}

function bookletTitle(pattern: Pattern, size: CompiledSize, { leftHanded }: BookletChoice): string {
  return [
    pattern.title,
    ...(pattern.sizes.length > 1 ? [`size ${size.size.name}`] : []),
    ...(leftHanded ? ['left-handed charts'] : []),
  ].join(', ');
}

/** A pattern without a date gets one all the same, so that two runs give the same bytes. */
function creationDate(pattern: Pattern): Date {
  const date = new Date(`${pattern.date ?? '2000-01-01'}T00:00:00Z`);
  return Number.isNaN(date.getTime()) ? new Date(0) : date;
}

/** Bytes are not changed once read: one ruler, with the widths of words it has met, serves every booklet of the same fonts. */
const rulers = new WeakMap<FontBytes, TextRuler>();

function rulerFor(fonts: FontBytes): TextRuler {
  const known = rulers.get(fonts);
  if (known !== undefined) return known;
  const ruler = textRuler(fonts);
  rulers.set(fonts, ruler);
  return ruler;
}
