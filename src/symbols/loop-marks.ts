/** Arcs laid under the foot of a stitch worked in one loop: a hump for the back loop, a cup for the front loop. */

import type { Shape } from '../scene/scene.ts';
import { drawn, type Pen } from './stitch-symbol.ts';

const WIDTH_U = 0.52;
const RISE_U = 0.16;

/** Common Western practice, known from memory: each follows the oval of the stitch top as seen from above. */
export const LOOP_MARKS = {
  back: (pen: Pen): Shape[] => arc(0.03, -RISE_U, pen),
  front: (pen: Pen): Shape[] => arc(-RISE_U + 0.07, RISE_U, pen),
} as const;

/** JIS L 0201 lays a straight bar under what is worked in the back loop, as in ridges (known from memory). */
export const LOOP_MARKS_JAPANESE = {
  ...LOOP_MARKS,
  back: (pen: Pen): Shape[] => [
    drawn(
      [
        ['M', -WIDTH_U / 2, 0],
        ['L', WIDTH_U / 2, 0],
      ],
      pen,
    ),
  ],
} as const;

function arc(y: number, rise: number, pen: Pen): Shape[] {
  const half = WIDTH_U / 2;
  const out = rise / 0.75;
  return [
    drawn(
      [
        ['M', -half, y],
        ['C', -half * 0.5, y + out, half * 0.5, y + out, half, y],
      ],
      pen,
    ),
  ];
}
