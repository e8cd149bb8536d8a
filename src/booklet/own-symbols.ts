/** A chart in, the same chart with symbol names of its own out, so that two charts may share a page. */

import type { Scene, Shape } from '../scene/scene.ts';

export function withOwnSymbols(scene: Scene, prefix: string): Scene {
  const symbols = Object.fromEntries(
    Object.entries(scene.symbols).map(([name, shapes]) => [`${prefix}-${name}`, shapes]),
  );
  return { ...scene, symbols, shapes: renamedShapes(scene.shapes, prefix) };
}

export function renamedShapes(shapes: readonly Shape[], prefix: string): Shape[] {
  return shapes.map((shape) => renamed(shape, prefix));
}

function renamed(shape: Shape, prefix: string): Shape {
  switch (shape.kind) {
    case 'use':
      return { ...shape, symbol: `${prefix}-${shape.symbol}` };
    case 'group':
    case 'link':
      return { ...shape, shapes: renamedShapes(shape.shapes, prefix) };
    case 'path':
    case 'circle':
    case 'picture':
    case 'text':
      return shape;
  }
}
