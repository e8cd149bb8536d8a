/** `Rep Row 2 until 20 sts remain`: how many rows that is, told by what the rows before it are said to make. */

import type { Line } from '../notation/line.ts';
import type { RepeatRowsStep } from '../notation/tree.ts';
import { statedStitches } from './row-count.ts';

/** Null where it is said otherwise how often, or where the counts do not come to it. */
export function rowsUntilCount(
  rep: RepeatRowsStep | null,
  { label, stated }: Line,
  history: readonly Line[],
  size: number,
): number | null {
  const open = label === null || (label.kind === 'next' && label.n === undefined);
  if (rep === null || rep.until.kind !== 'label' || stated?.until !== true || !open) return null;
  const pass = rep.last ?? rep.rows.length;
  const until = statedStitches(stated, size);
  const now = statedStitches(history.at(-1)?.stated ?? null, size);
  const then = statedStitches(history.at(-1 - pass)?.stated ?? null, size);
  if (pass < 1 || until === null || now === null || then === null || now === then) return null;
  const passes = (until - now) / (now - then);
  return Number.isInteger(passes) && passes > 0 && passes <= MOST_PASSES ? passes * pass : null;
}

const MOST_PASSES = 500;

/** `Shape cap`: a few words alone between rows, from which rows may be counted anew. */
export function isHeading(line: Line | undefined): boolean {
  const [only, more] = line?.steps ?? [];
  const alone = line?.label === null && line.stated === null && more === undefined;
  return alone && only?.kind === 'note' && HEADING.test(only.text);
}

const HEADING = /^\p{L}[\p{L} ]{2,40}:?$/u;
