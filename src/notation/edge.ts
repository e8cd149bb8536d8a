/** The edges of a piece that steps can go along. */

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
  | 'unused loops';

/** `in each dc along the edge, working 1 tr into each 2-ch sp at every join`; `along the edge of each block`. */
export interface BorderSide {
  /** A stitch or a block of the side; `counted` where the step says how many in all. */
  readonly each: 'stitch' | 'block' | 'counted';
  readonly said: string;
  /** `work along the last side in the same way`: the words are all of the step's. */
  readonly again?: true;
}
