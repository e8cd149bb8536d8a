/** A square of filet, as a step. */

import type { Span } from '../source/span.ts';

/**
 * A square of filet: chains or stitches over a space as over as many stitches, whichever comes next, and the post behind
 * it, which it shares with the next. `ch 2, sk next 2 sts or next ch-2 sp, dc in next dc`.
 */
export interface SquareStep {
  readonly kind: 'square';
  readonly filled: boolean;
  /** How wide it is between its posts. */
  readonly chains: number;
  /** The first of a row: the chain for the post before it, and those over a space with it, is told with it. */
  readonly begins?: true;
  /** Id of what its block and its posts are. */
  readonly of: string;
  readonly span: Span;
}
