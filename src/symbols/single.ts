/** Single crochet: an upright cross, as the Craft Yarn Council draws it (known from memory). */

import type { Shape } from '../scene/scene.ts';
import { drawn, FOOT_GAP_U, line, type Pen, type StitchSymbol } from './stitch-symbol.ts';

const ARM_U = 0.58;
const ARMS_BELOW_U = 0.5;

const upright = (lengthU: number, from: number, pen: Pen): Shape[] => {
  // On a stretched stem the arms stay near the head, where there is room for them.
  const middle = Math.max((from + lengthU) / 2, lengthU - ARMS_BELOW_U);
  return [
    drawn([...line(0, -from, 0, -lengthU + 0.02), ...line(-ARM_U / 2, -middle, ARM_U / 2, -middle)], pen),
  ];
};

/** Part-worked: the cross tick shorter, so that the ticks of two legs that meet stay apart. */
const leg = (lengthU: number, pen: Pen): Shape[] => {
  const tick = ARM_U * 0.36;
  const at = FOOT_GAP_U + (lengthU - FOOT_GAP_U) * 0.42;
  return [drawn([...line(0, -FOOT_GAP_U, 0, -lengthU), ...line(-tick, -at, tick, -at)], pen)];
};

/** The cross on top of something `from` units high. */
export function crossOn(from: number): (lengthU: number, pen: Pen) => Shape[] {
  return (lengthU, pen) => upright(lengthU, from, pen);
}

export const single: StitchSymbol = {
  heightU: 0.86,
  widthU: 0.84,
  draw: crossOn(FOOT_GAP_U),
  leg: (lengthU, _bulgeU, pen) => leg(lengthU, pen),
  barred: false,
};
