/** The bullion stitch: a stem in a coil of wraps, under a top bar. */

import type { PathPart, Shape } from '../scene/scene.ts';
import { drawn, FOOT_GAP_U, line, type Pen, type StitchSymbol } from './stitch-symbol.ts';
import { topBar } from './tall-stitch.ts';

const WRAP_U = 0.4;
const WRAPS_APART_U = 0.24;
const SAG_U = 0.1;
/** Bare stem below and above the coil. */
const BARE_U = 0.26;

const coiled = (lengthU: number, pen: Pen): Shape[] => {
  const from = FOOT_GAP_U + BARE_U;
  const room = Math.max(0, lengthU - BARE_U - from);
  const wraps = Math.max(1, Math.floor(room / WRAPS_APART_U) + 1);
  const step = wraps === 1 ? 0 : room / (wraps - 1);
  const coil = Array.from({ length: wraps }, (_, k) => wrap(-(from + k * step)));
  return [drawn([...line(0, -FOOT_GAP_U, 0, -lengthU), ...coil.flat()], pen)];
};

function wrap(y: number): PathPart[] {
  const half = WRAP_U / 2;
  const sag = SAG_U / 0.75;
  return [
    ['M', -half, y - SAG_U / 2],
    ['C', -half * 0.5, y - SAG_U / 2 + sag, half * 0.5, y - SAG_U / 2 + sag, half, y - SAG_U / 2],
  ];
}

export const bullion: StitchSymbol = {
  heightU: 2,
  widthU: 0.84,
  barred: true,
  draw: (lengthU, pen) => [...coiled(lengthU, pen), topBar(lengthU, pen)],
  leg: (lengthU, _bulgeU, pen) => coiled(lengthU, pen),
};
