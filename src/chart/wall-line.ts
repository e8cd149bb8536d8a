/** The top of a ring's last round, laid out for what goes on from it, in; the line that stands for it out. */

import type { Shape } from '../scene/scene.ts';
import { LABEL_MM, U_MM } from './metrics.ts';
import type { Wall } from './walls.ts';

const DASH_MM = [1.2, 0.8] as const;
const LINE_MM = 0.3;
/** Beyond the first and last stitch. */
const BEYOND_U = 0.3;

/** `label` is the round's number. */
export function wallLine({ right, left, y, track }: Wall, label: string): Shape[] {
  // On the side where rounds begin.
  const end = track.handed === 1 ? right + BEYOND_U : left - BEYOND_U;
  return [
    lineShape((left - BEYOND_U) * U_MM, (right + BEYOND_U) * U_MM, -y * U_MM),
    {
      kind: 'text',
      x: end * U_MM + LABEL_MM.gap * track.handed,
      // Under the line, clear of the number of the round on it.
      y: -y * U_MM + LABEL_MM.size * 0.9,
      text: label,
      sizeMm: LABEL_MM.size,
      face: 'text',
      align: track.handed === 1 ? 'start' : 'end',
      ink: 'ink',
    },
  ];
}

/** As it stands in the key, where it is named. */
export function wallSample(): Shape[] {
  return [lineShape(-3, 3, 0)];
}

function lineShape(fromX: number, toX: number, y: number): Shape {
  return {
    kind: 'path',
    parts: [
      ['M', fromX, y],
      ['L', toX, y],
    ],
    stroke: { ink: 'ink', widthMm: LINE_MM, dashMm: DASH_MM },
    fill: 'none',
  };
}
