/** A picture that is only looked at in, the same in tenths of a millimetre out: half the figures, and no eye can tell. */

import type { PathPart, Shape } from '../scene/scene.ts';

const PER_MM = 10;

export function coarse(shapes: readonly Shape[]): Shape[] {
  return shapes.map(coarseShape);
}

function coarseShape(shape: Shape): Shape {
  switch (shape.kind) {
    case 'path':
      return { ...shape, parts: shape.parts.map(coarsePart) };
    case 'group':
    case 'link':
      return { ...shape, shapes: coarse(shape.shapes) };
    case 'circle':
    case 'picture':
    case 'text':
    case 'use':
      return shape;
  }
}

function coarsePart(part: PathPart): PathPart {
  switch (part[0]) {
    case 'M':
    case 'L':
      return [part[0], tenth(part[1]), tenth(part[2])];
    case 'C':
      return [
        'C',
        tenth(part[1]),
        tenth(part[2]),
        tenth(part[3]),
        tenth(part[4]),
        tenth(part[5]),
        tenth(part[6]),
      ];
    case 'Z':
      return part;
  }
}

function tenth(mm: number): number {
  return Math.round(mm * PER_MM) / PER_MM;
}
