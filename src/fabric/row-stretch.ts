/** The stretch of stitches that a row is counted over. */

import type { Builder } from './builder.ts';

/** Where a row lies in the builder. */
export interface RowStretch {
  readonly builder: Builder;
  readonly first: number;
  readonly end: number;
  /** A foundation chain that counts as its first stitch, or -1. */
  readonly countedStart: number;
  /** How often its repeats were worked in all. */
  readonly passes: number;
  /** The row's number, where it has one. */
  readonly number: number | null;
  /** How many rows the line works that it is the last of. */
  readonly rows: number;
  /** The stitches that the pattern describes a special stitch as; null where it is more than stitches. */
  readonly described: (name: string) => readonly string[] | null;
}
