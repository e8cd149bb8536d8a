/** Points of a line in, an arrow along it out: the way the work goes. */

import type { Ink, PathPart, Shape } from '../scene/scene.ts';

const HEAD_MM = 1.5;
const HEAD_HALF_MM = 0.65;
const SHAFT_MM = 0.3;

/** Points on paper, in mm. */
export function arrowShapes(points: readonly (readonly [number, number])[], ink: Ink): Shape[] {
  const tip = points.at(-1);
  const before = points.at(-2);
  if (tip === undefined || before === undefined) return [];
  const length = Math.hypot(tip[0] - before[0], tip[1] - before[1]) || 1;
  const ux = (tip[0] - before[0]) / length;
  const uy = (tip[1] - before[1]) / length;
  const neck: [number, number] = [tip[0] - ux * HEAD_MM, tip[1] - uy * HEAD_MM];
  const shaft: PathPart[] = [...points.slice(0, -1), neck].map(([x, y], k) => [k === 0 ? 'M' : 'L', x, y]);
  return [
    { kind: 'path', parts: shaft, stroke: { ink, widthMm: SHAFT_MM }, fill: 'none' },
    {
      kind: 'path',
      parts: [
        ['M', tip[0], tip[1]],
        ['L', neck[0] - uy * HEAD_HALF_MM, neck[1] + ux * HEAD_HALF_MM],
        ['L', neck[0] + uy * HEAD_HALF_MM, neck[1] - ux * HEAD_HALF_MM],
        ['Z'],
      ],
      stroke: null,
      fill: ink,
    },
  ];
}

/** A solid arrowhead: where to begin. */
export function startMark(x: number, y: number, ux: number, uy: number, ink: Ink): Shape {
  const long = 1.9;
  const half = 1;
  return {
    kind: 'path',
    parts: [
      ['M', x + ux * long, y + uy * long],
      ['L', x - uy * half, y + ux * half],
      ['L', x + uy * half, y - ux * half],
      ['Z'],
    ],
    stroke: null,
    fill: ink,
  };
}
