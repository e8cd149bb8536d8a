/**
 * A fabric in, the width of every row in stitches out.
 *
 * Each counted stitch is one wide. A chain space is as wide as the stitches it passes over, but no wider than its
 * chains: the ch-5 of an arch over 3 stitches is 3 wide and bows, the ch-1 of a mesh is 1. Where nothing is passed
 * over, as at the corner of a square, it is as wide as its chains. Chains that no stitch of the table counts and that
 * leave no space, such as picots and turning chains, take no width.
 */

import { type Fabric, FLAG, type Space, targets } from '../fabric/fabric.ts';

export function rowWidths(fabric: Fabric): number[] {
  return widthsOf(fabric).rows;
}

export interface Widths {
  readonly rows: number[];
  /** Of each space but a foundation's, in stitches. */
  readonly spaces: ReadonlyMap<Space, number>;
}

export function widthsOf(fabric: Fabric): Widths {
  const spaces = new Map<Space, number>();
  const widths = new Float64Array(fabric.count);
  const centres = new Float64Array(fabric.count);
  const spacesOf = spacesByRow(fabric);
  const rows = fabric.rows.map((row, index) => {
    const foundation = row.stitches === 0 && row.unit === null;
    for (let i = row.first; i < row.end; i += 1) {
      const counted = ((fabric.flags[i] ?? 0) & FLAG.counted) !== 0;
      widths[i] = counted || foundation ? 1 : 0;
    }
    for (const space of foundation ? [] : (spacesOf.get(index) ?? [])) {
      const wide = spaceWidth(fabric, space, centres);
      spaces.set(space, wide);
      const each = wide / (space.end - space.first);
      for (let i = space.first; i < space.end; i += 1) widths[i] = each;
    }
    let at = foundation ? 0 : madeBefore(fabric, index, spacesOf.get(index) ?? [], centres);
    for (let i = row.first; i < row.end; i += 1) {
      const width = widths[i] ?? 0;
      centres[i] = at + width / 2;
      at += width;
    }
    return at;
  });
  return { rows, spaces };
}

/** What foundation chains give the row on them: the stitch they count as, and the space beside it or instead of it. */
function madeBefore(
  { flags, rows }: Fabric,
  index: number,
  spaces: readonly Space[],
  centres: Float64Array,
): number {
  const row = rows[index];
  if (row === undefined) return 0;
  let stitches = row.stitches;
  for (let i = row.first; i < row.end; i += 1) if (((flags[i] ?? 0) & FLAG.counted) !== 0) stitches -= 1;
  let at = Math.max(0, stitches);
  for (const space of spaces) {
    if (space.first >= row.first) continue;
    const chains = space.end - space.first;
    centres.fill(at + chains / 2, space.first, space.end);
    at += chains;
  }
  return at;
}

function spacesByRow(fabric: Fabric): ReadonlyMap<number, readonly Space[]> {
  const byRow = new Map<number, Space[]>();
  for (const space of fabric.spaces) {
    const spaces = byRow.get(space.row);
    if (spaces === undefined) byRow.set(space.row, [space]);
    else spaces.push(space);
  }
  return byRow;
}

function spaceWidth(fabric: Fabric, space: Space, centres: Float64Array): number {
  const chains = space.end - space.first;
  const [from, to] = [
    targetCentre(fabric, space.first - 1, space.row, centres),
    targetCentre(fabric, space.end, space.row, centres),
  ];
  if (from === null || to === null) return chains;
  // Half of each stitch beside the space belongs to that stitch.
  const passed = Math.abs(to - from) - 1;
  return passed >= 1 ? Math.min(chains, passed) : chains;
}

/** Where the stitch enters the row below, or null for a chain, or one in another row than the space. */
function targetCentre(fabric: Fabric, i: number, row: number, centres: Float64Array): number | null {
  if (i < 0 || i >= fabric.count || fabric.row[i] !== row) return null;
  const into = targets(fabric, i);
  let sum = 0;
  for (const target of into) {
    if (fabric.row[target] === row) return null;
    sum += centres[target] ?? 0;
  }
  return into.length === 0 ? null : sum / into.length;
}
