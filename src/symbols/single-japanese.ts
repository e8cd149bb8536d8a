/** Single crochet as JIS L 0201 draws it (known from memory): two equal strokes crossing aslant. */

import type { Shape } from '../scene/scene.ts';
import { single } from './single.ts';
import { drawn, FOOT_GAP_U, line, type Pen, type StitchSymbol } from './stitch-symbol.ts';
import { stemPath } from './tall-stitch.ts';

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

/** Worked together its legs are a plain wedge: a cross on each would be no cross aslant. */
const leg = (lengthU: number, bulgeU: number | null, pen: Pen): Shape[] => [
  drawn(stemPath(FOOT_GAP_U, lengthU, bulgeU ?? 0), pen),
];

export const singleJapanese: StitchSymbol = { ...single, draw: saltireOn(0.1), leg };
