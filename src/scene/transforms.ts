/** Transforms joined and applied; shapes enlarged. */

import type { PathPart, Shape, Transform } from './scene.ts';

export const UNMOVED: Transform = [1, 0, 0, 1, 0, 0];

/** What `outer` does to what `inner` has done. */
export function joined(outer: Transform, inner: Transform): Transform {
  const [a, b, c, d, e, f] = outer;
  return [
    a * inner[0] + c * inner[1],
    b * inner[0] + d * inner[1],
    a * inner[2] + c * inner[3],
    b * inner[2] + d * inner[3],
    a * inner[4] + c * inner[5] + e,
    b * inner[4] + d * inner[5] + f,
  ];
}

export function applied([a, b, c, d, e, f]: Transform, x: number, y: number): [number, number] {
  return [a * x + c * y + e, b * x + d * y + f];
}

export function placedAt(x: number, y: number, scale = 1): Transform {
  return [scale, 0, 0, scale, x, y];
}

/** Shapes with every length multiplied, strokes and type too. */
export function enlarged(shapes: readonly Shape[], by: number): Shape[] {
  return shapes.map((shape) => enlargedShape(shape, by));
}

function enlargedShape(shape: Shape, by: number): Shape {
  switch (shape.kind) {
    case 'path':
      return {
        ...shape,
        parts: shape.parts.map((part) => enlargedPart(part, by)),
        stroke: enlargedStroke(shape.stroke, by),
      };
    case 'circle':
      return {
        ...shape,
        x: shape.x * by,
        y: shape.y * by,
        r: shape.r * by,
        stroke: enlargedStroke(shape.stroke, by),
      };
    case 'text':
      return { ...shape, x: shape.x * by, y: shape.y * by, sizeMm: shape.sizeMm * by };
    case 'picture':
      return {
        ...shape,
        x: shape.x * by,
        y: shape.y * by,
        widthMm: shape.widthMm * by,
        heightMm: shape.heightMm * by,
      };
    case 'group':
    case 'use':
      return enlargedPlaced(shape, by);
    case 'link':
      return { ...shape, shapes: enlarged(shape.shapes, by) };
  }
}

function enlargedPlaced(shape: Extract<Shape, { kind: 'group' | 'use' }>, by: number): Shape {
  if (shape.kind === 'use') return { ...shape, transform: joined(placedAt(0, 0, by), shape.transform) };
  if (shape.transform !== null) return { ...shape, transform: joined(placedAt(0, 0, by), shape.transform) };
  return { ...shape, shapes: enlarged(shape.shapes, by) };
}

function enlargedStroke<S extends { readonly widthMm: number; readonly dashMm?: readonly number[] }>(
  stroke: S | null,
  by: number,
): S | null {
  if (stroke === null) return null;
  const width = { ...stroke, widthMm: stroke.widthMm * by };
  return stroke.dashMm ? { ...width, dashMm: stroke.dashMm.map((mm) => mm * by) } : width;
}

function enlargedPart(part: PathPart, by: number): PathPart {
  switch (part[0]) {
    case 'M':
    case 'L':
      return [part[0], part[1] * by, part[2] * by];
    case 'C':
      return ['C', part[1] * by, part[2] * by, part[3] * by, part[4] * by, part[5] * by, part[6] * by];
    case 'Z':
      return part;
  }
}
