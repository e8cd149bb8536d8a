/**
 * Lines of written instructions: their labels, their steps and the counts they state.
 *
 * Like the steps, every node keeps the span of its words.
 */

import type { Span } from '../source/span.ts';
import type { Num, Step, What } from './tree.ts';

/** One entry of a stated count: `24 dc`, `4 ch-2 sps`, `6 shells`; `what` null for a bare number. */
export interface StatedEntry {
  readonly n: Num;
  readonly what: What | null;
  /** `12 dc each side`: so many between two corners. */
  readonly perSide?: true;
  readonly span: Span;
}

/** `(37 sts)`, `(24 dc, 4 ch-2 sps)`, `(37 (49, 61) sts)`. */
export interface StatedCount {
  readonly entries: readonly StatedEntry[];
  /** As written, without its brackets. */
  readonly text: string;
  readonly span: Span;
}

export type Unit = 'row' | 'round';

export type Label =
  /** `Row 3`, `Rnds 5-6 (8, 10)`, `Rows 4 on` (`to` is `'on'`). */
  | {
      readonly kind: 'numbered';
      readonly unit: Unit;
      /** As written, one row of it: `Row`, `Rnd`, `Round`. */
      readonly word: string;
      readonly from: Num;
      readonly to: Num | 'on' | null;
      /** Further numbers of a list: 7 and 9 of `Rnds 5, 7 and 9`. */
      readonly others?: readonly Num[];
      readonly span: Span;
    }
  /** `Next row`; `n` for `Next 4 rows`. */
  | {
      readonly kind: 'next';
      readonly unit: Unit;
      readonly word: string;
      readonly n?: Num;
      readonly span: Span;
    }
  /** `Foundation`, `Base chain`, `Edging`: a word of the pattern's own before a colon. */
  | { readonly kind: 'named'; readonly name: string; readonly span: Span };

/** One labelled row, round or sentence group of a part. */
export interface Line {
  /** Null for instructions that stand outside rows, e.g. a closing `Fasten off.` */
  readonly label: Label | null;
  readonly side: 'RS' | 'WS' | null;
  readonly steps: readonly Step[];
  readonly stated: StatedCount | null;
  /** Places of the sizes it is for, where a heading says `Sizes M and L only`; all of them when absent. */
  readonly sizes?: readonly number[];
  /** False when some of its words could not be read: it is not worked, so that one fault does not cause more. */
  readonly readable: boolean;
  readonly span: Span;
}

export interface Instructions {
  readonly lines: readonly Line[];
}
