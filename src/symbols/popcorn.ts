/** Whole stitches from one foot, their heads pulled together under an open oval: the popcorn. */

import type { Shape, Transform } from '../scene/scene.ts';
import { placedAt } from '../scene/transforms.ts';
import { ovalPath } from './oval.ts';
import { drawn, type Pen, type StitchSymbol } from './stitch-symbol.ts';

const CAP_THICKNESS_U = 0.34;
/** How much taller than its legs it stands. */
export const POPCORN_CAP_U = 0.2;
/** How much wider than the heads under it the oval is. */
const CAP_BEYOND_U = 0.34;
const HEAD_APART_U = 0.24;
const LEG_APART_U = 0.3;
/** A popcorn wider than this would press on its neighbours. */
const WIDEST_U = 1.3;
/** The middle legs bow no less than the outer ones lean. */
const BOW = 0.55;

export function popcornWidthU(legs: number): number {
  return Math.min(WIDEST_U, (legs - 1) * HEAD_APART_U) + CAP_BEYOND_U;
}

export function drawPopcorn(symbol: StitchSymbol, legs: number, lengthU: number, pen: Pen): Shape[] {
  const under = lengthU - CAP_THICKNESS_U;
  const heads = Math.min(WIDEST_U, (legs - 1) * HEAD_APART_U);
  const bows = Math.min(WIDEST_U, (legs - 1) * LEG_APART_U) * BOW;
  const stems = Array.from({ length: legs }, (_, k): Shape => {
    const share = k / (legs - 1) - 0.5;
    // Leaning from the one foot to its own head.
    const head = share * heads;
    const long = Math.hypot(head, under);
    const lean: Transform = [under / long, head / long, -head / long, under / long, 0, 0];
    return { kind: 'group', transform: lean, shapes: symbol.leg(long, share * bows, pen) };
  });
  return [...stems, cap(-lengthU + CAP_THICKNESS_U / 2, heads + CAP_BEYOND_U, pen)];
}

/** An oval lying across the heads. */
function cap(y: number, width: number, pen: Pen): Shape {
  const [, , , , dx, dy] = placedAt(0, y);
  return {
    kind: 'group',
    transform: [0, 1, -1, 0, dx, dy],
    shapes: [drawn(ovalPath(width / 2, -width / 2, CAP_THICKNESS_U), pen)],
  };
}
