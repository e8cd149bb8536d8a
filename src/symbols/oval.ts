/** Two ends and a thickness in, the path of an oval between them out. */

import type { PathPart } from '../scene/scene.ts';

/** Control points of the cubic that lies closest to a quarter circle: 4/3 (root 2 - 1). */
const QUARTER = 0.5523;

/** An oval upright on the y axis, from `bottom` to `top` (y down, so top is the smaller). */
export function ovalPath(bottom: number, top: number, thickness: number): PathPart[] {
  const rx = thickness / 2;
  const ry = (bottom - top) / 2;
  const cy = (bottom + top) / 2;
  return [
    ['M', 0, top],
    ['C', rx * QUARTER, top, rx, cy - ry * QUARTER, rx, cy],
    ['C', rx, cy + ry * QUARTER, rx * QUARTER, bottom, 0, bottom],
    ['C', -rx * QUARTER, bottom, -rx, cy + ry * QUARTER, -rx, cy],
    ['C', -rx, cy - ry * QUARTER, -rx * QUARTER, top, 0, top],
    ['Z'],
  ];
}
