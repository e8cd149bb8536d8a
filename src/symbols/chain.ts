/** The chain: an open oval lying along the path of the yarn, from where it begins to where it ends. */

import type { Shape } from '../scene/scene.ts';
import { ovalPath } from './oval.ts';
import { drawn, type Pen, type StitchSymbol } from './stitch-symbol.ts';

export const CHAIN_THICKNESS_U = 0.38;
/** Ends of neighbours just touch. */
const END_GAP_U = 0.03;

const draw = (lengthU: number, pen: Pen): Shape[] => [
  drawn(ovalPath(-END_GAP_U, -lengthU + END_GAP_U, Math.min(CHAIN_THICKNESS_U, lengthU * 0.62)), pen),
];

export const chain: StitchSymbol = {
  heightU: 0.8,
  widthU: 1,
  draw,
  leg: (lengthU, _bulgeU, pen) => draw(lengthU, pen),
  barred: false,
};
