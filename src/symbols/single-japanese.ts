/** Single crochet as JIS L 0201 draws it (known from memory): two equal strokes crossing aslant. */

import type { Shape } from '../scene/scene.ts';
import { single } from './single.ts';
import { drawn, line, type Pen, type StitchSymbol } from './stitch-symbol.ts';

const HALF_WIDE_U = 0.27;
const HALF_HIGH_U = 0.3;
/** Taller than this the cross stands on a stem. */
const STEM_FROM_U = 1.1;

/** The cross on top of something `from` units high. */
export function saltireOn(from: number): (lengthU: number, pen: Pen) => Shape[] {
  return (lengthU, pen) => {
    const middle = Math.max((from + lengthU) / 2, lengthU - HALF_HIGH_U - 0.06);
    const [low, high] = [-middle + HALF_HIGH_U, -middle - HALF_HIGH_U];
    const stem = lengthU - from > STEM_FROM_U ? line(0, -from, 0, -middle) : [];
    return [
      drawn(
        [
          ...stem,
          ...line(-HALF_WIDE_U, low, HALF_WIDE_U, high),
          ...line(HALF_WIDE_U, low, -HALF_WIDE_U, high),
        ],
        pen,
      ),
    ];
  };
}

export const singleJapanese: StitchSymbol = { ...single, draw: saltireOn(0.1) };
