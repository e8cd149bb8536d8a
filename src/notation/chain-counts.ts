/** What is said of a chain with it: `(counts as dc)`, `(does not count as a st)`. */

import type { Span } from '../source/span.ts';

/** What a chain counts as: `(counts as dc)`, `(counts as dc and ch 2)`, `(does not count as a st)`. */
export interface Counts {
  /** The stitch's id, or null for "does not count" and, with chains, for `(counts as ch-2 sp)`. */
  readonly as: string | null;
  /** Chains beyond the stitch, which make a space. */
  readonly plusChains: number;
  /** `8 ch for the scallop`: a loop to be worked into, as tall as it likes. */
  readonly loop?: true;
  /** `here and throughout`. */
  readonly throughout: boolean;
  /** `this time`, `on this row`: whatever holds for the others. */
  readonly onlyHere?: true;
  readonly span: Span;
}
