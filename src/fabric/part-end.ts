/** What a worked part leaves to the parts that go on from it. */

import type { Top } from './row-start.ts';
import type { Worker } from './worker.ts';

/** What a part leaves for another that goes on from it. */
export interface PartEnd {
  readonly top: Top;
  readonly index: number;
  readonly pieceFirst: number;
  readonly foundation: Worker['foundation'];
  /** What of the top parts that go on from it have been worked into. */
  readonly taken: Set<number>;
}
