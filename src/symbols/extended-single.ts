/** Extended single crochet: the cross of single crochet on the chain it begins with. */

import type { Shape } from '../scene/scene.ts';
import { CHAIN_BASE } from './chain-base.ts';
import type { crossOn } from './single.ts';
import type { Pen, StitchSymbol } from './stitch-symbol.ts';

export function extendedSingle(crossFrom: typeof crossOn): StitchSymbol {
  const cross = crossFrom(CHAIN_BASE.heightU);
  const draw = (lengthU: number, pen: Pen): Shape[] => [...CHAIN_BASE.shapes(pen), ...cross(lengthU, pen)];
  return {
    heightU: 1.25,
    widthU: 0.84,
    draw,
    leg: (lengthU, _bulgeU, pen) => draw(lengthU, pen),
    barred: false,
  };
}
