/** Shapes in, groups and links opened, out: every single shape with the transform that places it. */

import type { Shape, Transform } from '../scene/scene.ts';
import { joined, UNMOVED } from '../scene/transforms.ts';

export interface PlacedShape {
  readonly shape: Exclude<Shape, { kind: 'group' } | { kind: 'link' }>;
  readonly transform: Transform;
}

export function walkShapes(shapes: readonly Shape[], transform: Transform = UNMOVED): PlacedShape[] {
  return shapes.flatMap((shape) => {
    switch (shape.kind) {
      case 'group':
        return walkShapes(shape.shapes, shape.transform ? joined(transform, shape.transform) : transform);
      case 'link':
        return walkShapes(shape.shapes, transform);
      default:
        return [{ shape, transform }];
    }
  });
}
