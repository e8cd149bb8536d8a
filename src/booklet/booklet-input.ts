/** What a booklet is made of: one pattern in one dialect, for one size or for several at once. */

import type { FoldedChart } from '../chart/part-chart.ts';
import type { PartSchematic } from '../chart/schematic.ts';
import type { YarnUse } from '../measure/measures.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Scene } from '../scene/scene.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import type { WordedPattern } from '../wording/words.ts';
import type { BookletPhotograph } from './booklet-photograph.ts';

export interface BookletSize {
  readonly name: string;
  /** Finished, as worked out; null where it cannot be told. */
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  readonly aroundMm: number | null;
  readonly yarn: readonly YarnUse[];
  /** Outlines of its pieces with their measures. */
  readonly schematics: readonly PartSchematic[];
}

export interface BookletChart {
  readonly part: string;
  /** Key included. */
  readonly scene: Scene;
  /** The same with a window of what repeats, the least left out first; taken where the whole would pass one sheet. */
  readonly folded: readonly FoldedChart[];
}

export interface BookletInput {
  readonly pattern: Pattern;
  /** The size the words are for; all of them where the words give numbers for all sizes. */
  readonly sizes: readonly BookletSize[];
  readonly words: WordedPattern;
  readonly charts: readonly BookletChart[];
  /** The size the charts are of, where the booklet is of several. */
  readonly chartSize?: string | null;
  /** The charts are drawn for left-handed makers. */
  readonly leftHanded: boolean;
  /** Of the pattern's page on the web, where it is known. */
  readonly address?: string | null;
  /** Picture for the cover: a photograph, or the stitches as they are drawn. */
  readonly cover: Scene | null;
  /** The others. */
  readonly photographs?: readonly BookletPhotograph[];
  /** Who took them, the cover's first. */
  readonly photographers?: readonly string[];
}

export function termsOf(words: WordedPattern): Terms {
  return words.dialect === 'us' || words.dialect === 'us-full' ? 'US' : 'UK';
}

/** `small`, or null for a booklet of all sizes or of a pattern that has but one. */
export function sizeName(input: BookletInput): string | null {
  const only = input.sizes[0];
  return input.sizes.length === 1 && only && input.pattern.sizes.length > 1 ? only.name : null;
}
