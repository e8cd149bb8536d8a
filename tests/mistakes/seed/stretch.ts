/** A line of instructions in three stretches of the file: its label, what is to be done, and the count it states. */

import type { Line } from '../../../src/notation/line.ts';
import type { Span } from '../../../src/source/span.ts';

export interface Stretch {
  readonly label: Span | null;
  readonly body: Span;
  readonly stated: Span | null;
  /** What the body says. */
  readonly words: string;
}

export function stretchOf(line: Line, text: string): Stretch {
  const stated = line.stated?.span ?? null;
  const body = {
    start: line.label === null ? line.span.start : line.label.span.end,
    end: stated === null ? line.span.end : stated.start,
  };
  return { label: line.label?.span ?? null, body, stated, words: text.slice(body.start, body.end) };
}

/** Every match of an expression in a stretch's words, with its place in the file. */
export function found(
  { body, words }: Stretch,
  pattern: RegExp,
): {
  readonly at: number;
  readonly match: RegExpExecArray;
  readonly before: string;
  readonly after: string;
}[] {
  return [...words.matchAll(pattern)].map((match) => ({
    at: body.start + match.index,
    match,
    before: words.slice(0, match.index),
    after: words.slice(match.index + match[0].length),
  }));
}
