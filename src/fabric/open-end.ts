/** The rows of a part that go on "to height", and which row each of those repeated is worked as. */

import type { Line } from '../notation/line.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { RepeatRowsStep } from '../notation/tree.ts';

export interface OpenEnd {
  /** Number of the first row that is worked "to height". */
  readonly from: number;
  /** After how many rows they come round again. */
  readonly cycle: number;
  /** The row that the last one has to be, where that is said. */
  readonly endingWith: number | null;
  readonly allows: (rows: number) => boolean;
}

/** The rows or rounds from which a total may be chosen so that the part ends as it says: for finding a height. */
export function openEnd(lines: readonly Line[], sizeIndex: number): OpenEnd | null {
  let last = 0;
  for (const { label, steps, sizes } of lines) {
    if (sizes !== undefined && !sizes.includes(sizeIndex)) continue;
    const rep = steps.find((step): step is RepeatRowsStep => step.kind === 'repeat rows');
    const from = label?.kind === 'numbered' ? (numberForSize(label.from, sizeIndex) ?? last + 1) : last + 1;
    const open = (label?.kind === 'numbered' && label.to === 'on') || rep?.until.kind === 'height';
    if (open) {
      const ending = rep?.until.kind === 'height' ? rep.until.endingWith : null;
      const allows = (rows: number): boolean =>
        rows >= from &&
        (ending === null || rep === undefined || rowOfPass(rep, rows - from, sizeIndex, from) === ending);
      const cycle = Math.max(1, rep?.last ?? rep?.rows.length ?? 1);
      return { from, cycle, endingWith: ending, allows };
    }
    if (label?.kind === 'numbered')
      last = label.to !== null && label.to !== 'on' ? (numberForSize(label.to, sizeIndex) ?? from) : from;
    else if (label?.kind === 'next')
      last += label.n === undefined ? 1 : (numberForSize(label.n, sizeIndex) ?? 0);
  }
  return null;
}

/** The number of the row that the ith of those repeated is worked as. */
export function repeatedRow({ rows }: RepeatRowsStep, i: number, sizeIndex: number): number | undefined {
  const row = rows[i % rows.length];
  return row === undefined ? undefined : (numberForSize(row, sizeIndex) ?? undefined);
}

/** The same where the last rows before `from` are repeated, without their numbers. */
export function rowOfPass(
  rep: RepeatRowsStep,
  i: number,
  sizeIndex: number,
  from: number,
): number | undefined {
  return rep.last === undefined || rep.rows.length > 0
    ? repeatedRow(rep, i, sizeIndex)
    : from - rep.last + (i % rep.last);
}

/** `rep Rows 2 to 5 for the length required`, where nothing else says how long that is. */
export function isLeftOpen({ until }: RepeatRowsStep, rows: number | null): boolean {
  return rows === null && until.kind === 'height' && (until.said ?? until.measured) !== undefined;
}

/** The rows that repeat, once through, and on to the one that they are to end with. */
export function onceThrough(rep: RepeatRowsStep, sizeIndex: number, from: number): number {
  const cycle = Math.max(1, rep.last ?? rep.rows.length);
  const ending = rep.until.kind === 'height' ? rep.until.endingWith : null;
  for (let rows = cycle; ending !== null && rows < 2 * cycle; rows += 1)
    if (rowOfPass(rep, rows - 1, sizeIndex, from) === ending) return rows;
  return cycle;
}
