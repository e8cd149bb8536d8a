/** Several part-worked legs in one place: a lens, joined at foot and head under one top bar. */

import type { Shape } from '../scene/scene.ts';
import type { Pen, StitchSymbol } from './stitch-symbol.ts';
import { topBar } from './tall-stitch.ts';

const LEG_APART_U = 0.34;
/** A lens wider than this would press on its neighbours. */
const WIDEST_U = 1.2;

export function lensWidthU(legs: number): number {
  return Math.min(WIDEST_U, (legs - 1) * LEG_APART_U);
}

export function drawLens(symbol: StitchSymbol, legs: number, lengthU: number, pen: Pen): Shape[] {
  const width = lensWidthU(legs);
  const bulges = Array.from({ length: legs }, (_, k) => (k / (legs - 1) - 0.5) * width);
  const legShapes = bulges.flatMap((bulgeU) => symbol.leg(lengthU, bulgeU, pen));
  return symbol.barred ? [...legShapes, topBar(lengthU, pen)] : legShapes;
}
