/** A piece of text taken out of a file, with the way back from each of its characters to the file. */

import type { Span } from './span.ts';

/** A run of characters that stand in the file just as they stand in the text. */
export interface Run {
  /** Index in the text where the run begins. */
  readonly at: number;
  /** Offset in the file where the same character stands. */
  readonly offset: number;
}

export interface MappedText {
  readonly text: string;
  /** In order of `at`; the first begins at 0. */
  readonly runs: readonly Run[];
}

/** Text that is a whole file, or a whole stretch of one beginning at `offset`. */
export function plainText(text: string, offset = 0): MappedText {
  return { text, runs: [{ at: 0, offset }] };
}

/** The file offset of the character at an index of the text. */
export function fileOffset(mapped: MappedText, index: number): number {
  const { runs } = mapped;
  if (runs === nearRuns && nearAt <= index && index < nearEnd) return nearShift + index;
  let low = 0;
  let high = runs.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((runs[middle]?.at ?? 0) <= index) low = middle;
    else high = middle - 1;
  }
  const run = runs[low] ?? { at: 0, offset: 0 };
  nearRuns = runs;
  nearAt = run.at;
  nearEnd = runs[low + 1]?.at ?? LAST_INDEX;
  nearShift = run.offset - run.at;
  return nearShift + index;
}

/** No text is longer. */
const LAST_INDEX = 2 ** 30;

/** The run of the last look-up, which the next is nearly always for: from where to where, and how far the file is ahead. */
let nearRuns: readonly Run[] | null = null;
let nearAt = 0;
let nearEnd = 0;
let nearShift = 0;

/** The file span of a stretch of the text. */
export function fileSpan(mapped: MappedText, start: number, end: number): Span {
  if (mapped.runs === nearRuns && nearAt <= start && start < end && end <= nearEnd)
    return { start: nearShift + start, end: nearShift + end };
  if (end <= start) {
    const at = fileOffset(mapped, start);
    return { start: at, end: at };
  }
  // The last character is looked up itself, so a span that ends a line does not run into the next one.
  return { start: fileOffset(mapped, start), end: fileOffset(mapped, end - 1) + 1 };
}
