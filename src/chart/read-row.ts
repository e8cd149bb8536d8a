/** The elements of a row in, what it is worked into and the corners it turns found out. */

import { type Column, columnsOf } from './columns.ts';
import type { ChartContext } from './context.ts';
import { type Corner, cornersOf } from './corners.ts';
import type { RowElement } from './elements.ts';
import { footings } from './footing.ts';

export interface RowReading {
  readonly row: number;
  readonly elements: readonly RowElement[];
  readonly columns: readonly Column[];
  readonly corners: readonly Corner[];
}

/** `elements` of a row in, what it is worked into found: everything before it must have been placed. */
export function readRow(context: ChartContext, row: number, elements: readonly RowElement[]): RowReading {
  const stitches = elements.flatMap((element) =>
    element.kind === 'stitch' ? [element.stitch] : element.kind === 'post' ? [element.first] : [],
  );
  const found = footings(context, stitches);
  const byStitch = new Map(stitches.map((stitch, k) => [stitch, found[k] ?? null]));
  const read = columnsOf(context.fabric, context.rows, elements, (stitch) => byStitch.get(stitch) ?? null);
  const columns =
    context.gapsEntered.size === 0
      ? read
      : read.map((column) => ({ ...column, gapEntered: context.gapsEntered.has(column.stitch) }));
  return { row, elements, columns, corners: cornersOf(context, elements, columns) };
}
