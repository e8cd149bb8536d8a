/** Single crochet: an upright cross, as the Craft Yarn Council draws it (known from memory). */

import type { Shape } from '../scene/scene.ts';
import { drawn, FOOT_GAP_U, line, type Pen, type StitchSymbol } from './stitch-symbol.ts';
import { bulgeAt, stemPath } from './tall-stitch.ts';

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
const leg = (lengthU: number, bulgeU: number | null, pen: Pen): Shape[] => {
  const tick = ARM_U * (bulgeU === null ? 0.36 : 0.2);
  const at = FOOT_GAP_U + (lengthU - FOOT_GAP_U) * 0.42;
  const bulge = bulgeU ?? 0;
  const x = bulgeAt(at, FOOT_GAP_U, lengthU, bulge);
  return [drawn([...stemPath(FOOT_GAP_U, lengthU, bulge), ...line(x - tick, -at, x + tick, -at)], pen)];
};

/** The cross on top of something `from` units high. */
export function crossOn(from: number): (lengthU: number, pen: Pen) => Shape[] {
  return (lengthU, pen) => upright(lengthU, from, pen);
}

export const single: StitchSymbol = {
  heightU: 0.86,
  widthU: 0.84,
  draw: crossOn(FOOT_GAP_U),
  leg,
  barred: false,
};
