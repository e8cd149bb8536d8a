/** Loop stitch: the cross of single crochet with a long loop hanging open from its head. */

import type { Shape } from '../scene/scene.ts';
import type { crossOn } from './single.ts';
import { drawn, FOOT_GAP_U, type Pen, type StitchSymbol } from './stitch-symbol.ts';

const LOOP_U = 0.42;
const LOOP_HALF_U = 0.2;

export function loopedSingle(crossFrom: typeof crossOn): StitchSymbol {
  const cross = crossFrom(FOOT_GAP_U);
  const draw = (lengthU: number, pen: Pen): Shape[] => [...cross(lengthU - LOOP_U, pen), loop(lengthU, pen)];
  return {
    heightU: 1.28,
    widthU: 0.84,
    draw,
    leg: (lengthU, _bulgeU, pen) => draw(lengthU, pen),
    barred: false,
  };
}

function loop(lengthU: number, pen: Pen): Shape {
  const neck = -lengthU + LOOP_U;
  const out = LOOP_HALF_U / 0.75;
  return drawn(
    [
      ['M', 0, neck],
      ['C', -out * 1.3, neck - LOOP_U * 0.5, -out, -lengthU, 0, -lengthU],
      ['C', out, -lengthU, out * 1.3, neck - LOOP_U * 0.5, 0, neck],
    ],
    pen,
  );
}
