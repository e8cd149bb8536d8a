/** Reverse single crochet, the crab stitch: the cross of single crochet under a small wave. */

import type { Shape } from '../scene/scene.ts';
import type { crossOn } from './single.ts';
import { drawn, FOOT_GAP_U, type Pen, type StitchSymbol } from './stitch-symbol.ts';
import { wavePath } from './wave.ts';

const WAVE_U = 0.56;
const RISE_U = 0.1;
/** From the top of the cross to the top of the wave. */
const OVER_U = 0.32;

export function reverseSingle(crossFrom: typeof crossOn): StitchSymbol {
  const cross = crossFrom(FOOT_GAP_U);
  const draw = (lengthU: number, pen: Pen): Shape[] => [
    ...cross(lengthU - OVER_U, pen),
    drawn(wavePath(WAVE_U, -lengthU + RISE_U, RISE_U), pen),
  ];
  return {
    heightU: 1.18,
    widthU: 0.84,
    draw,
    leg: (lengthU, _bulgeU, pen) => draw(lengthU, pen),
    barred: false,
  };
}
