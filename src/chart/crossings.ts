/** Rows of placed stitches in, the stems that cross out: which of each two lies behind, and where along it. */

import { type Fabric, FLAG, INTO, targets } from '../fabric/fabric.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { hasFlag } from './elements.ts';
import type { Layout } from './layout.ts';

/** Stitches of a row that are looked at after each: cables cross no more. */
const FURTHEST = 8;
/** Nearer than this to foot or head two stems meet rather than cross. */
const END_SHARE = 0.08;

/** By the stitch, as seen from the right side: the shares of its length at which others pass before it, none where it lies before. */
export function crossedStems(
  fabric: Fabric,
  table: readonly StitchRow[],
  layout: Layout,
  rows: readonly number[],
): ReadonlyMap<number, readonly number[]> {
  const crossed = new Map<number, number[]>();
  for (const row of rows) {
    const stems = stemsOf(fabric, table, row);
    stems.forEach((a, k) => {
      for (const b of stems.slice(k + 1, k + 1 + FURTHEST)) {
        const rear = rearOf(fabric, a, b);
        if (rear === null) continue;
        const front = rear === a ? b : a;
        const share = crossedAt(layout, rear, front);
        if (share === null) continue;
        crossed.set(rear, [...(crossed.get(rear) ?? []), share]);
        if (!crossed.has(front)) crossed.set(front, []);
      }
    });
  }
  return crossed;
}

function stemsOf(fabric: Fabric, table: readonly StitchRow[], row: number): number[] {
  const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
  const stems: number[] = [];
  for (let i = first; i < end; i += 1) {
    const stitch = table[fabric.kind[i] ?? 0];
    if (stitch === undefined || stitch.lies === true || stitch.uses !== 1) continue;
    // An arm begins at a stem and does not cross it.
    if (fabric.where[i] === INTO.stem) continue;
    if (stitch.family !== 'slip' && targets(fabric, i).length > 0) stems.push(i);
  }
  return stems;
}

/** The later of two lies before the earlier, unless it is said to go behind; null where it goes around it. */
function rearOf(fabric: Fabric, earlier: number, later: number): number | null {
  if (hasFlag(fabric, later, FLAG.around)) return null;
  const wrongSide = fabric.rows[fabric.row[later] ?? 0]?.side === 'WS';
  return hasFlag(fabric, later, FLAG.behind) === wrongSide ? earlier : later;
}

/** How far along the first stem the second crosses it; null where it does not. */
function crossedAt(layout: Layout, a: number, b: number): number | null {
  const [ax, ay] = [layout.footX[a] ?? 0, layout.footY[a] ?? 0];
  const [bx, by] = [layout.footX[b] ?? 0, layout.footY[b] ?? 0];
  const [ux, uy] = [(layout.headX[a] ?? 0) - ax, (layout.headY[a] ?? 0) - ay];
  const [vx, vy] = [(layout.headX[b] ?? 0) - bx, (layout.headY[b] ?? 0) - by];
  const turned = ux * vy - uy * vx;
  if (Math.abs(turned) < 1e-6) return null;
  const along = ((bx - ax) * vy - (by - ay) * vx) / turned;
  const alongOther = ((bx - ax) * uy - (by - ay) * ux) / turned;
  const within = (t: number): boolean => t > END_SHARE && t < 1 - END_SHARE;
  return within(along) && within(alongOther) ? along : null;
}
