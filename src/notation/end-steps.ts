/** What a row or a yarn ends with. */

import type { Span } from '../source/span.ts';
import type { Num } from './num.ts';

/** `turn`, `do not turn`, `do not join`. */
export interface TurnStep {
  readonly kind: 'turn';
  readonly what: 'turn' | 'do not turn' | 'do not join';
  readonly span: Span;
}

export interface FastenOffStep {
  readonly kind: 'fasten off';
  /** The yarn named, or null for all. */
  readonly yarn: string | null;
  readonly span: Span;
}

/** `leave rem sts unworked`: the row may stop short. */
export interface LeaveStep {
  readonly kind: 'leave';
  /** `leaving last 11 sts unworked`: how many. */
  readonly n?: Num;
  readonly span: Span;
}
