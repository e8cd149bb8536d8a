/** A pattern in, its own sentences out, each as it stands in the file: what it is about, notes, how stitches are made, finishing. */

import type { Pattern } from '../pattern/pattern.ts';
import type { Span } from '../source/span.ts';

export interface Sentences {
  /** As written in the file, so that a place in it is a place in the file. */
  readonly text: string;
  readonly span: Span;
}

const OF_PROSE = /^(?:about|notes|finishing|special\..+\.how)(?:\.\d+)?$/;

export function proseOf(pattern: Pattern): Sentences[] {
  const { places, source } = pattern;
  return [...places]
    .filter(([path]) => OF_PROSE.test(path) && !places.has(`${path}.0`))
    .map(([, span]) => ({ text: source.text.slice(span.start, span.end), span }));
}

/** The notes alone, which hold for all parts. */
export function notesOf(pattern: Pattern): Sentences[] {
  const { places, source } = pattern;
  return [...places]
    .filter(([path]) => /^notes(?:\.\d+)?$/.test(path) && !places.has(`${path}.0`))
    .map(([, span]) => ({ text: source.text.slice(span.start, span.end), span }));
}
