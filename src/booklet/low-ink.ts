/** A page in, the same page in as little ink as it can be read in: type in black, nothing filled with a tint. */

import type { Ink, Scene, Shape } from '../scene/scene.ts';

/** Symbols of charts keep their inks, which tell rows and yarns apart and take no more ink than black. */
export function inLowInk(scene: Scene): Scene {
  return { ...scene, shapes: scene.shapes.flatMap(lowInkShape) };
}

function lowInkShape(shape: Shape): Shape[] {
  switch (shape.kind) {
    case 'text':
      return [{ ...shape, ink: blackOf(shape.ink) }];
    case 'path':
    case 'circle': {
      const fill = isTint(shape.fill) ? 'none' : shape.fill;
      return fill === 'none' && shape.stroke === null ? [] : [{ ...shape, fill }];
    }
    case 'group':
    case 'link':
      return [{ ...shape, shapes: shape.shapes.flatMap(lowInkShape) }];
    case 'use':
      return [shape];
    case 'picture':
      return [];
  }
}

/** A colour of its own is a yarn's or a background's. */
function isTint(ink: Ink): boolean {
  return ink.startsWith('#');
}

function blackOf(ink: Ink): Ink {
  return ink === 'second' || ink === 'faint' ? 'ink' : ink;
}
