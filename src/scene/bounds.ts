/** Shapes in, the rectangle they fill out, strokes included; null for nothing drawn. */

import type { Scene, Shape, Transform } from './scene.ts';
import { joined, UNMOVED } from './transforms.ts';

export interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Width of a letter as a share of the type size: wide enough for the capitals and figures of both families. */
const LETTER_WIDTH = 0.6;
const ASCENT = 0.8;
const DESCENT = 0.25;

/** A curve counts by its control points, so the rectangle may be a little larger than the ink. */
export function boundsOf(shapes: readonly Shape[], symbols: Scene['symbols'] = {}): Bounds | null {
  const box = new Box();
  const ofSymbols = new Map<string, Bounds | null>();
  const symbolBounds = (name: string): Bounds | null => {
    const known = ofSymbols.get(name);
    if (known !== undefined) return known;
    const found = boundsOf(symbols[name] ?? [], symbols);
    ofSymbols.set(name, found);
    return found;
  };
  for (const shape of shapes) addShape(box, shape, UNMOVED, symbolBounds);
  return box.bounds();
}

/** The rectangle round both. */
export function around(a: Bounds | null, b: Bounds | null): Bounds | null {
  if (a === null || b === null) return a ?? b;
  return {
    left: Math.min(a.left, b.left),
    top: Math.min(a.top, b.top),
    right: Math.max(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
  };
}

/** Grows as points are put in. */
class Box {
  left = Number.POSITIVE_INFINITY;
  top = Number.POSITIVE_INFINITY;
  right = Number.NEGATIVE_INFINITY;
  bottom = Number.NEGATIVE_INFINITY;

  add(transform: Transform, x: number, y: number, around: number): void {
    const [a, b, c, d, e, f] = transform;
    const room = around === 0 ? 0 : around * Math.max(Math.hypot(a, b), Math.hypot(c, d));
    this.grow(a * x + c * y + e, b * x + d * y + f, room);
  }

  /** The four corners of what is placed by two transforms, the inner one first: no transform is made for them. */
  addPlaced([a, b, c, d, e, f]: Transform, inner: Transform, { left, top, right, bottom }: Bounds): void {
    for (let corner = 0; corner < 4; corner += 1) {
      const x = corner % 2 === 0 ? left : right;
      const y = corner < 2 ? top : bottom;
      const atX = inner[0] * x + inner[2] * y + inner[4];
      const atY = inner[1] * x + inner[3] * y + inner[5];
      this.grow(a * atX + c * atY + e, b * atX + d * atY + f, 0);
    }
  }

  private grow(x: number, y: number, room: number): void {
    if (x - room < this.left) this.left = x - room;
    if (x + room > this.right) this.right = x + room;
    if (y - room < this.top) this.top = y - room;
    if (y + room > this.bottom) this.bottom = y + room;
  }

  bounds(): Bounds | null {
    if (this.left > this.right) return null;
    return { left: this.left, top: this.top, right: this.right, bottom: this.bottom };
  }
}

function addShape(
  box: Box,
  shape: Shape,
  transform: Transform,
  symbolBounds: (name: string) => Bounds | null,
): void {
  switch (shape.kind) {
    case 'path': {
      const around = (shape.stroke?.widthMm ?? 0) / 2;
      for (const part of shape.parts) {
        for (let k = 1; k + 1 < part.length; k += 2)
          box.add(transform, Number(part[k]), Number(part[k + 1]), around);
      }
      return;
    }
    case 'circle':
      box.add(transform, shape.x, shape.y, shape.r + (shape.stroke?.widthMm ?? 0) / 2);
      return;
    case 'text': {
      const width = shape.text.length * shape.sizeMm * LETTER_WIDTH;
      const left = shape.x - (shape.align === 'start' ? 0 : shape.align === 'end' ? width : width / 2);
      box.add(transform, left, shape.y - ASCENT * shape.sizeMm, 0);
      box.add(transform, left + width, shape.y + DESCENT * shape.sizeMm, 0);
      return;
    }
    case 'picture':
      box.add(transform, shape.x, shape.y, 0);
      box.add(transform, shape.x + shape.widthMm, shape.y + shape.heightMm, 0);
      return;
    case 'use': {
      const own = symbolBounds(shape.symbol);
      if (own !== null) box.addPlaced(transform, shape.transform, own);
      return;
    }
    case 'group': {
      const placed = shape.transform === null ? transform : joined(transform, shape.transform);
      for (const inner of shape.shapes) addShape(box, inner, placed, symbolBounds);
      return;
    }
    case 'link':
      for (const inner of shape.shapes) addShape(box, inner, transform, symbolBounds);
      return;
  }
}
