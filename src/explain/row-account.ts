/** How a row came to its number, as it was kept while the row was worked: each step with what it used and made. */

import type { Unit } from '../notation/line.ts';
import type { Step } from '../notation/tree.ts';
import type { Span } from '../source/span.ts';

/** Stitches, chains that count among them, and chain spaces. */
export interface Tally {
  readonly stitches: number;
  readonly spaces: number;
}

/** A step and what it made. */
export interface StepMade {
  readonly step: Step;
  readonly made: Tally;
  /** All chains it made, whether they count, lie in a space or only lift the hook. */
  readonly chains: number;
}

/** Passes of a repeat, one after the other, that fared the same. */
export interface PassRun {
  readonly times: number;
  readonly made: Tally;
  /** What one pass used up of the row below, worked or skipped; null where it moved to another edge. */
  readonly used: Tally | null;
}

export interface StepAccount extends StepMade {
  /** What lies along its way in the row below, worked into or not; null where it moved to another edge. */
  readonly used: Tally | null;
  /** The places it was worked into, each once. */
  readonly into: Tally;
  /** How many of its stitches went into spaces. */
  readonly inSpaces: number;
  /** Of a repeat; empty for any other step. */
  readonly runs: readonly PassRun[];
  /** The steps of its first pass. */
  readonly parts: readonly StepMade[];
  /** Its first pass ended in a space. */
  readonly bySpaces: boolean;
}

export interface RowAccount {
  readonly label: string;
  readonly unit: Unit | null;
  readonly number: number | null;
  /** Index of its part. */
  readonly part: number;
  readonly span: Span;
  /** Index of the row it is worked on, or null. */
  readonly onto: number | null;
  /** Its stitches, as indices of the fabric's arrays. */
  readonly first: number;
  readonly end: number;
  /** A chain made before it that counts as its first stitch, or -1. */
  readonly countedStart: number;
  /** Chains only, for a row to be worked into. */
  readonly foundation: boolean;
  /** What those chains skipped before the first stitch came to: a stitch that counts, at times a space. */
  readonly skippedChains: { readonly chains: number; readonly made: Tally } | null;
  readonly steps: readonly StepAccount[];
  readonly made: Tally;
  /** What the row below still had behind the last place that was worked or skipped. */
  readonly left: Tally;
  /** Whether the stitches it is worked into are there, or known only by a stated count. */
  readonly below: 'none' | 'worked' | 'stated';
  readonly stated: string | null;
  /** The row could not be worked to its end: its steps tell how far it came. */
  readonly broken: boolean;
  /** What is wrong with it, in a maker's words. */
  readonly faults: readonly string[];
  /** Which of the sizes it is of. */
  readonly sizeIndex: number;
}
