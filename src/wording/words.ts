/** The instructions of one size, worded: what the pages and the booklet print. */

import type { Terms } from '../stitches/stitch-row.ts';

/** How the words are written: whose terms, and abbreviated or in full. */
export interface Dialect {
  readonly terms: Terms;
  readonly form: 'abbreviated' | 'full';
}

/** The dialects every pattern is published in, by the key used in addresses and file names. */
export const DIALECTS = {
  us: { terms: 'US', form: 'abbreviated' },
  uk: { terms: 'UK', form: 'abbreviated' },
  'us-full': { terms: 'US', form: 'full' },
  'uk-full': { terms: 'UK', form: 'full' },
} as const satisfies Record<string, Dialect>;
export type DialectKey = keyof typeof DIALECTS;

/** One row, round or sentence as it is printed. */
export interface WordedLine {
  /** `Row 2 (WS)`, `Rows 4–27`, or null for a sentence outside rows. */
  readonly label: string | null;
  /** One sentence or several, without label and count: `Ch 1, sc in first dc, … turn.` */
  readonly text: string;
  /** `37 sts`, stated or worked out; null where nothing is counted. */
  readonly count: string | null;
  /** Rows of the fabric it covers, as indices; empty for a sentence outside rows. */
  readonly rows: readonly number[];
}

export interface WordedPart {
  readonly name: string;
  /** `Make 2.`, or null for one. */
  readonly make: string | null;
  readonly lines: readonly WordedLine[];
}

/** An abbreviation that the instructions use, and what it means. */
export interface WordedAbbreviation {
  readonly abbr: string;
  readonly meaning: string;
}

export interface WordedSpecial {
  /** `beginning cluster (beg cl)`. */
  readonly name: string;
  /** As it stands in the rows: `beg cl`. */
  readonly called: string;
  readonly how: string;
}

export interface WordedPattern {
  readonly dialect: DialectKey;
  readonly parts: readonly WordedPart[];
  readonly abbreviations: readonly WordedAbbreviation[];
  readonly specials: readonly WordedSpecial[];
}
