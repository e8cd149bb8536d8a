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
