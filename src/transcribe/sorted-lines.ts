/** The buckets that the lines of a pasted text are sorted into before each is read for what it says. */

import type { MappedText } from '../source/mapped-text.ts';
import type { Span } from '../source/span.ts';
import type { Heading, Section } from './headings.ts';
import type { Beside } from './part-headings.ts';
import type { TextLine } from './tidy-lines.ts';

/** A line, or what stands on it behind a heading and its colon. */
export interface Item {
  readonly text: MappedText;
  readonly cells: readonly MappedText[];
  readonly span: Span;
  /** The words of the heading it stands under. */
  readonly heading: string | null;
  readonly field: Heading['field'];
  readonly line: TextLine;
}

export interface WorkLine {
  readonly text: MappedText;
  readonly kind: 'row' | 'instruction' | 'note';
  /** The number of its label, where it has one. */
  readonly number: number | null;
  readonly span: Span;
}

export interface PartDraft {
  readonly heading: Item | null;
  readonly name: string | null;
  readonly make: number;
  readonly beside: Beside | null;
  /** `LARGE BASKET` above `Base`: the heading it stands under with others. */
  readonly within?: string;
  readonly lines: WorkLine[];
}

/** What is not understood is kept. */
export type Bucket = Exclude<Section, 'instructions'> | 'kept';

export interface SortedLines {
  readonly buckets: Readonly<Record<Bucket, readonly Item[]>>;
  readonly parts: readonly PartDraft[];
  /** Headings with nothing behind them on their line. */
  readonly headings: readonly Item[];
  /** Sentences that join what is worked and are kept as they stand. */
  readonly assembly: readonly { readonly span: Span; readonly rowsFollow: boolean }[];
  /** Page numbers, heads of emails and tables, rules. */
  readonly leftOut: readonly { readonly span: Span; readonly what: string; readonly text: string }[];
}
