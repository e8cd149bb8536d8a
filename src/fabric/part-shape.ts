/** A part's rows in, whether it lies flat or goes round, how a round one starts and how many corners it has out. */

import type { Builder } from './builder.ts';
import { hasFlag, kindId } from './builder.ts';
import type { FabricPart, FabricRow } from './fabric.ts';
import { FLAG } from './fabric.ts';

/** More places flagged than this are an edge of points, not a shape's corners. */
const MOST_CORNERS = 8;

export function partShape(
  builder: Builder,
  rows: readonly FabricRow[],
): Pick<FabricPart, 'shape' | 'start' | 'corners'> {
  const worked = rows.filter((row) => row.side !== null);
  // A part of rows with an edging behind them is still flat; a part that is all edging is round.
  if (worked[0] === undefined || worked[0].closing === 'flat')
    return { shape: 'flat', start: null, corners: 0 };
  const last = worked[worked.length - 1];
  return {
    shape: 'round',
    start: startOf(builder, rows),
    corners: last === undefined ? 0 : cornersOf(builder, last),
  };
}

function startOf(builder: Builder, rows: readonly FabricRow[]): FabricPart['start'] {
  const first = rows[0];
  if (first === undefined) return null;
  if (kindId(builder, first.first) === 'mr') return 'magic ring';
  if (first.side !== null) return null;
  for (let i = first.first; i < first.end; i += 1) if (hasFlag(builder, i, FLAG.join)) return 'chain ring';
  return 'chain';
}

function cornersOf(builder: Builder, row: FabricRow): number {
  let corners = 0;
  for (let i = row.first; i < row.end; i += 1)
    if (kindId(builder, i) !== 'ch' && hasFlag(builder, i, FLAG.corner)) corners += 1;
  for (const space of builder.spaces)
    if (space.corner && space.first >= row.first && space.end <= row.end) corners += 1;
  return corners >= 3 && corners <= MOST_CORNERS ? corners : 0;
}
