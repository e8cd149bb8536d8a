/**
 * The columns of a row about a ring and the elements of the row on it in, how far apart the columns would stand for
 * that row to find its room straight above them out: a fan of trebles opens for the arches worked onto it.
 */

import { INTO, targets } from '../fabric/fabric.ts';
import { type Column, columnsOf, gapAfter } from './columns.ts';
import type { ChartContext } from './context.ts';
import type { RowElement } from './elements.ts';

export interface RoomAbove {
  /** Least distance in the row above between what is worked into column k - 1 and column k; 0 for none. */
  readonly gap: Float64Array;
  /** Whether any is said. */
  readonly opens: boolean;
  readonly heightU: number;
  /** Of the whole row above. */
  readonly lengthU: number;
}

export function roomAbove(
  { fabric, rows }: ChartContext,
  columns: readonly Column[],
  above: readonly RowElement[],
): RoomAbove {
  const indexOf = new Map(columns.map(({ stitch }, k) => [stitch, k]));
  const onIt = columnsOf(fabric, rows, above, () => null);
  const gap = new Float64Array(columns.length);
  const into = (column: Column | undefined): number => {
    if (column?.element.kind !== 'stitch' || fabric.where[column.stitch] !== INTO.top) return -1;
    const [target, ...more] = targets(fabric, column.stitch);
    return more.length > 0 ? -1 : (indexOf.get(target ?? -1) ?? -1);
  };
  let lengthU = 0;
  onIt.forEach((column, k) => {
    const before = onIt[k - 1];
    if (before === undefined) return;
    const apart = gapAfter(before, column);
    lengthU += apart;
    const a = into(before);
    const b = into(column);
    if (a >= 0 && b >= 0 && Math.abs(a - b) === 1) gap[Math.max(a, b)] = apart;
  });
  return {
    gap,
    opens: gap.some((own) => own > 0),
    lengthU,
    heightU: Math.max(0, ...onIt.map(({ heightU }) => heightU)),
  };
}
