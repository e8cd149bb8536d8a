/** Rounds in, where the true corners of their piece are out. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Corner } from './corners.ts';
import type { Point } from './layout.ts';
import type { RowReading } from './read-row.ts';
import { mod } from './track.ts';

/** First chains of the spaces at corners. */
export function cornerChains(fabric: Fabric): ReadonlySet<number> {
  return new Set(fabric.spaces.flatMap((space) => (space.corner ? [space.first] : [])));
}

/** Direction from the middle of what a corner is worked into; null in the ring. */
function cornerAngle({ columns }: RowReading, corner: Corner): number | null {
  const beside = corner.pinned ? [corner.after] : [corner.after, (corner.after + 1) % columns.length];
  const points = beside.flatMap((k) => {
    const footing = columns[k]?.footing;
    return footing && !footing.inRing ? [footing.middle] : [];
  });
  if (points.length === 0) return null;
  const unit = (value: (point: Point) => number): number =>
    points.reduce((sum, point) => sum + value(point) / Math.hypot(point.x, point.y), 0);
  return Math.atan2(
    unit(({ y }) => y),
    unit(({ x }) => x),
  );
}

/** The way the first side of a piece with corners faces, so that it lies on a level side. */
export function firstFacing(corners: number): number {
  return corners % 2 === 0 ? Math.PI / 2 : Math.PI / 2 - Math.PI / corners;
}

/** Corner that a round's first corner falls on, and how far the rounds within must turn for all to meet theirs. */
export function firstCorner(
  reading: RowReading,
  corners: number,
  way: 1 | -1,
  onRounds: boolean,
): { corner: number; turnBy: number } {
  const turn = (2 * Math.PI) / corners;
  const firstCornerAt = firstFacing(corners) + turn / 2;
  const angles = reading.corners.map((corner) => cornerAngle(reading, corner));
  const first = angles[0];
  if (first === undefined || first === null || !onRounds) return { corner: 0, turnBy: 0 };
  const nearest = Math.round((first - firstCornerAt) / turn);
  const misses = angles.flatMap((angle, q) => {
    if (angle === null) return [];
    const miss = firstCornerAt + (nearest + q * way) * turn - angle;
    return [mod(miss + Math.PI, 2 * Math.PI) - Math.PI];
  });
  return {
    corner: mod(nearest, corners),
    turnBy: misses.reduce((sum, miss) => sum + miss, 0) / misses.length,
  };
}
