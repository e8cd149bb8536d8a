/** Numbers as instructions write them, before one size is picked out. */

import type { Span } from '../source/span.ts';

/** A number as written: one value for all sizes, or one a size (`35 (44, 53)`); null where a size skips it. */
export interface Num {
  readonly values: readonly (number | null)[];
  readonly span: Span;
}

/** `a multiple of 6 plus 2`: 6 for each pattern repeat of the size, and 2. */
export interface Multiple {
  readonly of: number;
  readonly plus: number;
  readonly span: Span;
}
