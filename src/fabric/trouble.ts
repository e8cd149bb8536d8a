/** Why a row could not go on, as facts that are worded elsewhere. */

import type { Span } from '../source/span.ts';

/** Why a row could not go on, in facts; `src/fabric/report.ts` words it. */
export type Trouble =
  /** No place of that sort is left. */
  | { readonly kind: 'used up'; readonly wanted: string; readonly span: Span }
  /** Of the last so many, that many are no longer left. */
  | {
      readonly kind: 'too few';
      readonly n: number;
      readonly left: number;
      readonly what: string;
      /** It goes on up to them, not into them. */
      readonly goesOn: boolean;
      readonly span: Span;
    }
  /** The next place is another sort. */
  | {
      readonly kind: 'not there';
      readonly wanted: string;
      /** It is a join that goes there. */
      readonly join?: true;
      readonly found: string;
      readonly nth: number;
      readonly span: Span;
    }
  /** A repeat to the end leaves some over. */
  | {
      readonly kind: 'uneven';
      /** By one whole pass; 0 when not one could be worked. */
      readonly uses: number;
      readonly passes: number;
      /** By all the passes together: the last may be a short one. */
      readonly used: number;
      /** By what follows the repeat. */
      readonly after: number;
      readonly available: number;
      /** By what stands before the repeat, of all that the row below has. */
      readonly before: number;
      readonly below: number;
      /** The row below is a foundation chain. */
      readonly ofChains: boolean;
      /** Where it stops short: the last so many, or the next place of a sort. */
      readonly upTo: UpTo | null;
      readonly unit: 'stitch' | 'space';
      readonly span: Span;
    }
  /** A repeat that uses nothing up would never end. */
  | { readonly kind: 'endless'; readonly span: Span }
  /** `rep from * 5 times` fits both as 5 and as 6 passes, or as neither. */
  | {
      readonly kind: 'two senses';
      readonly times: number;
      readonly fits: 'both' | 'neither';
      readonly span: Span;
    }
  /** Stitches between here and the place named would be left. */
  | { readonly kind: 'passed over'; readonly count: number; readonly wanted: string; readonly span: Span }
  /** The row below is known only by its stated count, which says nothing of this. */
  | { readonly kind: 'unknown'; readonly span: Span }
  /** A stitch after the join that closed the round. */
  | { readonly kind: 'after join'; readonly span: Span }
  | { readonly kind: 'no foundation'; readonly span: Span }
  | { readonly kind: 'no chain'; readonly wanted: string; readonly chains?: number; readonly span: Span }
  | { readonly kind: 'which stitch'; readonly special: string; readonly span: Span }
  | { readonly kind: 'too many'; readonly span: Span }
  /** More in one place than any place holds. */
  | { readonly kind: 'crowded'; readonly n: number; readonly span: Span }
  | { readonly kind: 'no edge'; readonly edge: string; readonly span: Span }
  | {
      readonly kind: 'legs';
      readonly stitch: string;
      readonly legs: number;
      readonly given: number;
      readonly span: Span;
    };

export type UpTo =
  | { readonly kind: 'last'; readonly n: number }
  | { readonly kind: 'next'; readonly what: string };
