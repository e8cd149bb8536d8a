/** A chart and one tile of it in, the shapes that show in the tile out; what reaches over its edge is for a mask to cover. */

import { type Bounds, boundsOf } from '../scene/bounds.ts';
import type { Scene, Shape } from '../scene/scene.ts';
import { walkShapes } from './walk-shapes.ts';

/** The tile is in the chart's own mm. */
export function cutTile(scene: Scene, tile: Bounds): Shape[] {
  return walkShapes(scene.shapes).flatMap(({ shape, transform }): Shape[] => {
    const placed: Shape = { kind: 'group', transform, shapes: [shape] };
    const bounds = boundsOf([placed], scene.symbols);
    return bounds && overlap(bounds, tile) ? [placed] : [];
  });
}

function overlap(a: Bounds, b: Bounds): boolean {
  return a.right >= b.left && a.left <= b.right && a.bottom >= b.top && a.top <= b.bottom;
}
