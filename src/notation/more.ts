/** How each row that is repeated differs from the one before: so many stitches or groups more. */

import type { Num } from './num.ts';

/** `working 1 more dc after every increase`. */
export interface MoreStitches {
  readonly n: Num;
  readonly stitch: string;
}

/** `one more group of 3 tr on each side of the center`: how often a bracket is worked; null for groups of anything. */
export interface MoreGroups {
  readonly n: Num;
  readonly group: { readonly size: number; readonly stitch: string } | null;
}

/** `with one block fewer in each row`: how often that stitch of the pattern's own is worked. */
export interface MoreSpecials {
  readonly n: Num;
  readonly special: string;
  readonly fewer?: true;
}
