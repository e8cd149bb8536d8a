/** A width and a height in, the path of a small wave out: the sign of work that goes backwards. */

import type { PathPart } from '../scene/scene.ts';

/** One whole wave from left to right across the y axis, about the height y. */
export function wavePath(widthU: number, y: number, riseU: number): PathPart[] {
  const half = widthU / 2;
  // A cubic reaches three quarters of its controls' distance.
  const out = riseU / 0.75;
  return [
    ['M', -half, y],
    ['C', -half * 0.6, y - out, -half * 0.3, y - out, 0, y],
    ['C', half * 0.3, y + out, half * 0.6, y + out, half, y],
  ];
}
