/** One size of a compiled pattern, a paper and a dialect in; the bytes of its booklet as PDF out. */

import type { BookletInput } from '../booklet/booklet-input.ts';
import { layOutBooklet } from '../booklet/booklet-pages.ts';
import type { PaperName } from '../booklet/paper.ts';
import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import { paintPdf } from '../paint/pdf.ts';
import { type TextRuler, textRuler } from '../paint/text-width.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { sentencesIn } from '../wording/own-sentences.ts';
import { DIALECTS, type DialectKey } from '../wording/words.ts';
import { coverOf } from './cover-picture.ts';
import { readFontFiles } from './font-files.ts';

export interface BookletChoice {
  readonly dialect: DialectKey;
  readonly paper: PaperName;
  /** With its charts drawn for left-handed makers. */
  readonly leftHanded?: boolean;
  /** Stitch for stitch over as many sheets as it takes, where charts are otherwise drawn with a window of what repeats. */
  readonly wholeCharts?: boolean;
}

/** Left-handed or not: without a chart a booklet is the same for both hands. */
export function bookletHands(size: CompiledSize): readonly boolean[] {
  return size.charts.US.length > 0 ? [false, true] : [false];
}

export async function bookletFile(
  compiled: CompiledPattern,
  size: CompiledSize,
  choice: BookletChoice,
): Promise<Uint8Array> {
  const { dialect, paper, leftHanded } = choice;
  const { pattern } = compiled;
  if (!pattern) throw new Error(`${compiled.slug} has no pattern to set a booklet from`);
  const { pages, outline } = layOutBooklet(
    bookletInput(pattern, size, choice),
    paper,
    bookletRuler().measureText,
  );
  return paintPdf(pages, {
    title: [
      pattern.title,
      ...(pattern.sizes.length > 1 ? [`size ${size.size.name}`] : []),
      ...(leftHanded ? ['left-handed charts'] : []),
    ].join(', '),
    author: pattern.designer,
    language: DIALECTS[dialect].terms === 'US' ? 'en-US' : 'en-GB',
    createdAt: creationDate(pattern),
    fonts: readFontFiles(),
    outline,
  });
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
    cover: coverOf(pattern, size),
  };
}

/** A pattern without a date gets one all the same, so that two runs give the same bytes. */
function creationDate(pattern: Pattern): Date {
  const date = new Date(`${pattern.date ?? '2000-01-01'}T00:00:00Z`);
  return Number.isNaN(date.getTime()) ? new Date(0) : date;
}

let ruler: TextRuler | null = null;

/** Opening the fonts takes longer than setting a booklet, so one ruler serves them all. */
function bookletRuler(): TextRuler {
  ruler ??= textRuler(readFontFiles());
  return ruler;
}
