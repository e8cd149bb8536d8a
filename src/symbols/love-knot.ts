/** The love knot: a long flat open loop from where it begins, locked by a small cross where it ends. */

import type { Shape } from '../scene/scene.ts';
import { ovalPath } from './oval.ts';
import { drawn, line, type Pen, type StitchSymbol } from './stitch-symbol.ts';

const LENGTH_U = 2;
const THICKNESS_U = 0.34;
/** The cross at its end, and the air before the next. */
const KNOT_U = 0.36;
const ARM_U = 0.4;
const END_GAP_U = 0.04;

const draw = (lengthU: number, pen: Pen): Shape[] => {
  const neck = -lengthU + KNOT_U;
  const arm = -lengthU + KNOT_U / 2;
  return [
    drawn(ovalPath(-END_GAP_U, neck, THICKNESS_U), pen),
    drawn([...line(0, neck, 0, -lengthU + END_GAP_U), ...line(-ARM_U / 2, arm, ARM_U / 2, arm)], pen),
  ];
};

export const loveKnot: StitchSymbol = {
  heightU: LENGTH_U,
  // Into the knot, not the loop before it.
  enteredAt: 1 - KNOT_U / 2 / LENGTH_U,
  widthU: 0.84,
  draw,
  leg: (lengthU, _bulgeU, pen) => draw(lengthU, pen),
  barred: false,
};
