/** What a fault is: data that the terminal, the JSON output and the page each show in their own way. */

import type { Span } from '../source/span.ts';

/** An error makes the work wrong; a warning is something a reader would stumble over; a note is worth knowing. */
export type Severity = 'error' | 'warning' | 'note';

/** A second place that belongs to the fault, with what stands there. */
export interface PlaceLabel {
  readonly span: Span;
  readonly text: string;
}

/** What a catalogue entry says about a fault, in a maker's words. */
export interface Wording {
  readonly severity: Severity;
  /** What is so. */
  readonly message: string;
  /** What goes wrong otherwise. */
  readonly why: string;
  /** One thing to do. */
  readonly try: string;
}

export interface Diagnostic extends Wording {
  /** `area/what`, e.g. `count/mismatch`. */
  readonly code: string;
  readonly file: string;
  readonly span: Span;
  readonly labels: readonly PlaceLabel[];
  /** Names of the sizes it touches; empty when it holds for the pattern as a whole. */
  readonly sizes: readonly string[];
}
