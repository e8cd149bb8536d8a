/** Places in, thin lines and boxes out; and shapes drawn elsewhere, larger or smaller. */

import type { Ink, Shape } from '../scene/scene.ts';

export function ruleShape(xMm: number, yMm: number, widthMm: number, strokeMm: number, ink: Ink): Shape {
  return {
    kind: 'path',
    parts: [
      ['M', xMm, yMm],
      ['L', xMm + widthMm, yMm],
    ],
    stroke: { ink, widthMm: strokeMm },
    fill: 'none',
  };
}

export function boxShape(
  box: { xMm: number; yMm: number; widthMm: number; heightMm: number },
  stroke: { ink: Ink; widthMm: number } | null,
  fill: Ink = 'none',
): Shape {
  const { xMm, yMm, widthMm, heightMm } = box;
  return {
    kind: 'path',
    parts: [
      ['M', xMm, yMm],
      ['L', xMm + widthMm, yMm],
      ['L', xMm + widthMm, yMm + heightMm],
      ['L', xMm, yMm + heightMm],
      ['Z'],
    ],
    stroke,
    fill,
  };
}

export function scaledShapes(shapes: readonly Shape[], scale: number, xMm: number, yMm: number): Shape {
  return { kind: 'group', transform: [scale, 0, 0, scale, xMm, yMm], shapes };
}
