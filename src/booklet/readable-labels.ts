/** A chart and the scale it is printed at in, the same chart out with row numbers large enough to read on paper. */

import type { Scene, Shape } from '../scene/scene.ts';
import { mmFromPt } from '../units.ts';
import type { Form } from './paper.ts';

/** Row numbers on paper, by common practice no smaller; nothing in large print is under 16 points. */
const LEAST_MM: Readonly<Record<Form, number>> = {
  flat: mmFromPt(8),
  folded: mmFromPt(8),
  'large print': mmFromPt(16),
};
/** Numbers that stand among the stitches have no room to grow more than this. */
const MOST_IN_PLACE = 1.25;
/** Middle of a figure above its baseline, as a share of the type size: half the height of the figures. */
const HALF_FIGURE = 0.33;

export function withReadableLabels(scene: Scene, scale: number, form: Form): Scene {
  const leastMm = LEAST_MM[form] / scale;
  return { ...scene, shapes: scene.shapes.map((shape) => readable(shape, leastMm)) };
}

function readable(shape: Shape, leastMm: number, amongStitches = true): Shape {
  switch (shape.kind) {
    case 'text':
      return enlarged(shape, leastMm, amongStitches);
    case 'group': {
      // What is said of repeats stands under the stitches or beside them.
      const among = amongStitches && shape.data?.labels !== 'repeat';
      return { ...shape, shapes: shape.shapes.map((inner) => readable(inner, leastMm, among)) };
    }
    case 'path':
    case 'circle':
    case 'use':
    case 'picture':
    case 'link':
      return shape;
  }
}

/** Grown about its middle, away from the chart where it stands at an edge. */
function enlarged(text: Extract<Shape, { kind: 'text' }>, leastMm: number, amongStitches: boolean): Shape {
  const most =
    amongStitches && text.align === 'middle' ? text.sizeMm * MOST_IN_PLACE : Number.POSITIVE_INFINITY;
  const sizeMm = Math.min(Math.max(text.sizeMm, leastMm), most);
  return { ...text, sizeMm, y: text.y + (sizeMm - text.sizeMm) * HALF_FIGURE };
}
