/** Places in a file as its author wrote it: offsets in, line and column out. */

/** A stretch of a file, in UTF-16 offsets from its start; `end` is just past the last character. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** One file's whole text under the name to show for it. */
export interface Source {
  readonly file: string;
  readonly text: string;
}

/** Line and column as people count them, both from 1. */
export interface LineColumn {
  readonly line: number;
  readonly column: number;
}

/** The smallest span that holds both. */
export function joinSpans(a: Span, b: Span): Span {
  return { start: Math.min(a.start, b.start), end: Math.max(a.end, b.end) };
}

/** Where an offset lies, counted from line 1, column 1. */
export function lineColumn(text: string, offset: number): LineColumn {
  const upTo = text.slice(0, Math.max(0, Math.min(offset, text.length)));
  const line = upTo.split('\n').length;
  return { line, column: upTo.length - upTo.lastIndexOf('\n') };
}
