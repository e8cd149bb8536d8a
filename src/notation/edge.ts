/** The edges of a piece that steps can go along. */

import type { Num } from './num.ts';
import type { What } from './what.ts';

export type Edge =
  | 'row ends'
  | 'foundation'
  /** The top of the piece, where the way round it did not begin there. */
  | 'last row'
  /** The stitches below, for a spread over all of them: `work 48 sc evenly around`. */
  | 'all round'
  /** Round a hole that chains went over: `at thumb opening`. */
  | 'opening'
  /** Loops left free by stitches worked in one loop only. */
  | 'unused loops'
  /** Of something else: a towel, the neck of pieces sewn together. How many places it has is not known here. */
  | 'elsewhere';

/** `in each dc along the edge, working 1 tr into each 2-ch sp at every join`; `along the edge of each block`. */
export interface BorderSide {
  /** A stitch, a block or a sewn square of the side; `counted` where the step says how many in all. */
  readonly each: 'stitch' | 'block' | 'square' | 'counted';
  readonly said: string;
  /** `(81 along a short side, 105 along a long side)`: what two sides that meet have. */
  readonly lengths?: readonly [Num, Num];
  /** Round squares sewn together: how many stitches go into each join. */
  readonly atJoin?: number;
  /** `in next 13 sc` before `of square`: what there are as many of as the step has stitches. */
  readonly of?: What;
  /** `(3 sc in each block)` behind how many there are in all. */
  readonly inBlock?: number;
  /** `work along the last side in the same way`: the words are all of the step's. */
  readonly again?: true;
}
