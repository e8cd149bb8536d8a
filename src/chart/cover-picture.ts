/** A pattern and its fabric in one size in, the picture of its own stitches out. Decoration only. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Scene } from '../scene/scene.ts';
import { coverScene } from './cover.ts';

/** Square, and large enough for a stitch to be seen as one. */
const SIDE_MM = 80;

/** Null when no stitch was worked. */
export function coverPicture(pattern: Pattern, fabric: Fabric): Scene | null {
  const yarnHex = Object.fromEntries(pattern.yarns.map(({ letter, hex }) => [letter, hex]));
  return coverScene(fabric, yarnHex, SIDE_MM, SIDE_MM);
}
