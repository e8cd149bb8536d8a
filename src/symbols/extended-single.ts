/** Extended single crochet: a cross on the chain it begins with. */

import type { Shape } from '../scene/scene.ts';
import { CHAIN_BASE } from './chain-base.ts';
import { crossOn } from './single.ts';
import type { Pen, StitchSymbol } from './stitch-symbol.ts';

const cross = crossOn(CHAIN_BASE.heightU);
const draw = (lengthU: number, pen: Pen): Shape[] => [...CHAIN_BASE.shapes(pen), ...cross(lengthU, pen)];

export const extendedSingle: StitchSymbol = {
  heightU: 1.25,
  widthU: 0.84,
  draw,
  leg: (lengthU, _bulgeU, pen) => draw(lengthU, pen),
  barred: false,
};
