/**
 * Lines of written instructions: their labels, their steps and the counts they state.
 *
 * Like the steps, every node keeps the span of its words.
 */

import type { Span } from '../source/span.ts';
import type { Num } from './num.ts';
import type { Step, What } from './tree.ts';

/** What only a count speaks of: nothing is worked into it, but the stitches of the row tell how many there are. */
export type Thing =
  /** `4 groups of 3 dc`, `4 3-dc groups`; the number or the stitch null where it is not said. */
  | {
      readonly kind: 'together';
      readonly word: 'group' | 'cluster';
      readonly size: number | null;
      readonly id: string | null;
      /** `2 half shells of 4 dc`: at an end of the row its edge stitch may be one of them. */
      readonly half?: true;
    }
  /** `6 increases`, `6 decreases`. */
  | { readonly kind: 'shaping'; readonly does: 'inc' | 'dec' }
  /** Of a net: `5 open squares` (`filled` false), `3 solid squares`, `8 squares` (null). */
  | { readonly kind: 'square'; readonly filled: boolean | null }
  /** `2 blocks`, worked from corner to corner or in a net. */
  | { readonly kind: 'block' }
  /** `5 picots` that the pattern does not describe. */
  | { readonly kind: 'picot' }
  /** `16 cl`, `6 popcorns` that the pattern does not describe by that name alone. */
  | { readonly kind: 'gathered'; readonly word: GatheredWord }
  /** `2 half shells`. */
  | { readonly kind: 'half'; readonly special: string }
  /** `24 rows`, at the end of rows that are repeated. */
  | { readonly kind: 'rows' }
  /** `6 petals`, `5 shells` that the pattern does not describe: brackets or runs in one place, where the row has them. */
  | { readonly kind: 'shape'; readonly word: string }
  /** `42 A, 6 B` of work in colours: stitches made with that yarn. */
  | { readonly kind: 'of-yarn'; readonly yarn: string; readonly word: string }
  /** `1 handle`: only the maker's eye can count it. */
  | { readonly kind: 'named'; readonly word: string };

/** Stitches of several legs, by the words they have in a count. */
export type GatheredWord = 'cluster' | 'bobble' | 'popcorn' | 'puff';

const THINGS: ReadonlySet<string> = new Set<Thing['kind']>([
  'together',
  'shaping',
  'square',
  'block',
  'picot',
  'gathered',
  'half',
  'rows',
  'shape',
  'of-yarn',
  'named',
]);

export function isThing(what: What | Thing | null): what is Thing {
  return what !== null && THINGS.has(what.kind);
}

/** One entry of a stated count: `24 dc`, `4 ch-2 sps`, `6 shells`; `what` null for a bare number. */
export interface StatedEntry {
  readonly n: Num;
  readonly what: What | Thing | null;
  /** `12 dc each side`: so many between two corners. */
  readonly perSide?: true;
  /** `116 on each short side`: of two sides like it, the other two being of the other length. */
  readonly sides?: 'short' | 'long';
  readonly span: Span;
}

/** `(37 sts)`, `(24 dc, 4 ch-2 sps)`, `(37 (49, 61) sts)`. */
export interface StatedCount {
  readonly entries: readonly StatedEntry[];
  /** As written, without its brackets. */
  readonly text: string;
  /** `After Row 24 you have 94 sts`: the row it is the count of, where that is said. */
  readonly ofRow?: number;
  /** `By the end of Row 10 you have 38, by Row 20 78`: the counts of further rows of the line, told with it. */
  readonly also?: readonly StatedCount[];
  /** `until 20 sts remain` behind rows that are repeated: they go on until it is so. */
  readonly until?: true;
  /** `(78, 84, 90)`: one for each of the rows of the line, of which this is the last. */
  readonly each?: readonly StatedCount[];
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
  /** None of the words that could not be read is of crochet: they are meant for the reader, not the hook. */
  readonly prose?: true;
  readonly span: Span;
}

export interface Instructions {
  readonly lines: readonly Line[];
}
