/** A fabric whose stitches are placed in, the pairs of stitches drawn over each other out. */

import { isLong } from '../../src/chart/columns.ts';
import { stitchRows } from '../../src/chart/elements.ts';
import type { Layout } from '../../src/chart/layout.ts';
import { type Fabric, targets } from '../../src/fabric/fabric.ts';

interface Box {
  readonly stitch: number;
  readonly x: number;
  readonly y: number;
  /** Along the stitch, of length 1. */
  readonly ux: number;
  readonly uy: number;
  readonly halfLong: number;
  readonly halfWide: number;
}

/** Air at both ends of a stem, where it meets what it stands on and what stands on it. */
const END_U = 0.12;
/** Half of the width that has to stay clear: of a stem, and of an oval. */
const STEM_HALF_U = 0.16;
const OVAL_HALF_U = 0.15;

export interface Overlap {
  readonly a: number;
  readonly b: number;
}

/** Of the overlaps, those that are meant to be: the second stitch of a row goes back over the first. */
export function isCrossed(fabric: Fabric, { a, b }: Overlap): boolean {
  const [first, second] = a < b ? [a, b] : [b, a];
  if (fabric.row[first] !== fabric.row[second]) return false;
  const intoFirst = targets(fabric, first)[0];
  const intoSecond = targets(fabric, second)[0];
  if (intoFirst === undefined || intoSecond === undefined) return false;
  const way = fabric.rows[fabric.row[first] ?? 0]?.direction;
  const wayUnder = fabric.rows[fabric.row[intoFirst] ?? 0]?.direction;
  // Turned, a row meets the stitches of the last one from its end.
  return way === wayUnder ? intoSecond < intoFirst : intoSecond > intoFirst;
}

export function overlaps(fabric: Fabric, layout: Layout): Overlap[] {
  const rows = stitchRows(fabric);
  const boxes: Box[] = [];
  for (let i = 0; i < fabric.count; i += 1) {
    const row = rows[fabric.kind[i] ?? 0];
    if (!layout.placed[i] || row === undefined || row.family === 'slip' || row.family === 'start') continue;
    // Its stem is drawn in a bow beside what was worked between.
    if (isLong(fabric, i)) continue;
    const dx = (layout.headX[i] ?? 0) - (layout.footX[i] ?? 0);
    const dy = (layout.headY[i] ?? 0) - (layout.footY[i] ?? 0);
    const long = Math.hypot(dx, dy);
    if (long < 2 * END_U) continue;
    boxes.push({
      stitch: i,
      x: (layout.footX[i] ?? 0) + dx / 2,
      y: (layout.footY[i] ?? 0) + dy / 2,
      ux: dx / long,
      uy: dy / long,
      halfLong: long / 2 - END_U,
      halfWide: row.lies ? OVAL_HALF_U : STEM_HALF_U,
    });
  }
  return pairs(boxes).filter(({ a, b }) => !belong(fabric, layout, a, b));
}

/** Sharing a foot or a head, or worked into one another. */
function belong(fabric: Fabric, layout: Layout, a: number, b: number): boolean {
  const intoA = [...targets(fabric, a)];
  const intoB = [...targets(fabric, b)];
  if (intoA.some((target) => target === b || intoB.includes(target)) || intoB.includes(a)) return true;
  const near = (x: Float64Array, y: Float64Array, u: Float64Array, v: Float64Array): boolean =>
    Math.hypot((x[a] ?? 0) - (u[b] ?? 0), (y[a] ?? 0) - (v[b] ?? 0)) < 0.3;
  return (
    near(layout.footX, layout.footY, layout.footX, layout.footY) ||
    near(layout.headX, layout.headY, layout.headX, layout.headY) ||
    near(layout.headX, layout.headY, layout.footX, layout.footY) ||
    near(layout.footX, layout.footY, layout.headX, layout.headY)
  );
}

function pairs(boxes: readonly Box[]): Overlap[] {
  const cells = new Map<string, Box[]>();
  const found: Overlap[] = [];
  const CELL = 2;
  for (const box of boxes) {
    const reachX = Math.abs(box.ux) * box.halfLong + Math.abs(box.uy) * box.halfWide;
    const reachY = Math.abs(box.uy) * box.halfLong + Math.abs(box.ux) * box.halfWide;
    const seen = new Set<number>();
    for (let cx = Math.floor((box.x - reachX) / CELL); cx <= Math.floor((box.x + reachX) / CELL); cx += 1)
      for (let cy = Math.floor((box.y - reachY) / CELL); cy <= Math.floor((box.y + reachY) / CELL); cy += 1) {
        const key = `${cx} ${cy}`;
        const cell = cells.get(key) ?? [];
        for (const other of cell) {
          if (seen.has(other.stitch)) continue;
          seen.add(other.stitch);
          if (meet(box, other)) found.push({ a: other.stitch, b: box.stitch });
        }
        cell.push(box);
        cells.set(key, cell);
      }
  }
  return found;
}

/** Two rectangles meet unless a line along a side of one of them parts them. */
function meet(a: Box, b: Box): boolean {
  for (const [x, y] of [
    [a.ux, a.uy],
    [-a.uy, a.ux],
    [b.ux, b.uy],
    [-b.uy, b.ux],
  ] as const) {
    const apart = Math.abs((b.x - a.x) * x + (b.y - a.y) * y);
    const reach = (box: Box): number =>
      Math.abs(box.ux * x + box.uy * y) * box.halfLong + Math.abs(-box.uy * x + box.ux * y) * box.halfWide;
    if (apart >= reach(a) + reach(b)) return false;
  }
  return true;
}
