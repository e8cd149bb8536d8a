/** A fabric in, the rows each line of a part's instructions made out. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Unit } from '../notation/line.ts';

export interface RowRange {
  readonly unit: Unit;
  readonly from: number;
  readonly to: number;
}

/** Rows as indices of `fabric.rows`, by line of the part named; a line that made none is not in it. */
export function rowsByLine(fabric: Fabric, partName: string): ReadonlyMap<number, readonly number[]> {
  const part = fabric.parts.findIndex(({ name }) => name === partName);
  const byLine = new Map<number, number[]>();
  for (const [index, row] of fabric.rows.entries()) {
    if (row.part !== part) continue;
    const rows = byLine.get(row.line);
    if (rows === undefined) byLine.set(row.line, [index]);
    else rows.push(index);
  }
  return byLine;
}

/** The numbers the rows run from and to; null when they are not numbered one after another. */
export function rangeOf(fabric: Fabric, rows: readonly number[]): RowRange | null {
  const first = fabric.rows[rows[0] ?? -1];
  if (first === undefined || first.number === null || first.unit === null) return null;
  const from = first.number;
  const unbroken = rows.every((row, i) => fabric.rows[row]?.number === from + i);
  return unbroken ? { unit: first.unit, from, to: from + rows.length - 1 } : null;
}
