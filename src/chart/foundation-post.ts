/** Chains that stand up at the end of a bent foundation in; placed beside the first stitch of the row on it, out. */

import { NONE } from '../fabric/fabric.ts';
import { gapAfter } from './columns.ts';
import type { ChartContext } from './context.ts';
import { NO_BENDS, type RowBends } from './find-bends.ts';
import { footOf, headOf } from './layout.ts';
import { standChains } from './place-columns.ts';
import type { PlacedRow } from './place-row.ts';
import type { RowReading } from './read-row.ts';

/** Where those chains count as a stitch they are the end of the row, and its first stitch stands one further in. */
export function roomForPost(bends: RowBends, foundation: RowReading | undefined, way: 1 | -1): RowBends {
  const post = foundation?.columns.at(-1)?.element;
  if (bends === NO_BENDS || post?.kind !== 'post' || post.counted === NONE) return bends;
  const [right, left] = bends.endLegs;
  return {
    ...bends,
    endLegs: way === 1 ? [right === null ? null : right - 1, left] : [right, left === null ? null : left - 1],
  };
}

/**
 * The edge of a bent piece leans otherwise than its foundation: the chains stand as the stitch beside them does, and the
 * row begins with them.
 */
export function standBesideFirst(
  { layout }: ChartContext,
  foundation: RowReading | undefined,
  onIt: RowReading,
  placed: PlacedRow,
): PlacedRow {
  if (foundation === undefined) return placed;
  const column = foundation.columns.at(-1);
  const [first, second] = onIt.columns;
  if (column?.element.kind !== 'post' || first?.element.kind !== 'stitch' || second === undefined)
    return placed;
  const foot = footOf(layout, first.stitch);
  const head = headOf(layout, first.stitch);
  const long = Math.hypot(head.x - foot.x, head.y - foot.y) || 1;
  const upX = (head.x - foot.x) / long;
  const upY = (head.y - foot.y) / long;
  const inner = headOf(layout, second.stitch);
  // Square to the stitch, away from its neighbour.
  const side = (inner.x - head.x) * upY - (inner.y - head.y) * upX > 0 ? -1 : 1;
  const gap = gapAfter(column, first) * side;
  const tall = Math.min(long, column.heightU);
  const from = { x: foot.x + upY * gap, y: foot.y - upX * gap };
  const to = { x: from.x + upX * tall, y: from.y + upY * tall, upX, upY };
  standChains(layout, column.element, from, to);
  return { ...placed, chains: column.element };
}
