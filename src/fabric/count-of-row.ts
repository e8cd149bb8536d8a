/** A line of several rows in; which of them its counts are of out. */

import type { Line } from '../notation/line.ts';

/** `By Row 20 it's 78`: what one of the rows is told to make before the last of them; null where that is not told. */
export function countOf({ stated }: Line, number: number): Line['stated'] {
  return stated?.also?.find(({ ofRow }) => ofRow === number) ?? null;
}

/** Whether the count of a line is of the ith of its rows: the last, unless it names another of them. */
export function isCounted({ stated }: Line, numbers: readonly number[], i: number): boolean {
  const at = stated?.ofRow === undefined ? -1 : numbers.indexOf(stated.ofRow);
  return i === (at < 0 ? numbers.length - 1 : at);
}
