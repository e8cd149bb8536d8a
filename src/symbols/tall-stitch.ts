/** Number of yarn overs in, a T with as many slashes out: the tall stitches from half double up. */

import type { PathPart, Shape } from '../scene/scene.ts';
import { drawn, FOOT_GAP_U, line, type Pen, type StitchSymbol } from './stitch-symbol.ts';

const BAR_U = 0.58;
const SLASH_U = 0.46;
/** In a cluster, so that the slashes of neighbouring legs stay apart. */
const CROWDED_SLASH_U = 0.24;
/** Slashes lie at a fixed angle to their own stem. */
const SLASH_RISE = 0.5;
const SLASH_APART_U = 0.27;
/** Middle of the slashes, as a share of the stem; lower on a leg that leans to meet another at the head. */
const SLASH_AT = 0.58;
const LEG_SLASH_AT = 0.42;

export interface TallStitch {
  readonly slashes: number;
  readonly heightU: number;
  /** Drawn under the stem, and how much of the stem it takes up: the chain of the extended stitches. */
  readonly base?: { readonly shapes: (pen: Pen) => readonly Shape[]; readonly heightU: number };
}

export function tallStitch({ slashes, heightU, base }: TallStitch): StitchSymbol {
  const stemmed = (lengthU: number, bulgeU: number | null, slashAt: number, pen: Pen): Shape[] => {
    const from = base?.heightU ?? FOOT_GAP_U;
    const bulge = bulgeU ?? 0;
    const slashU = bulgeU === null ? SLASH_U : CROWDED_SLASH_U;
    const stem = stemPath(from, lengthU, bulge);
    const ticks = slashMiddles(slashes, from, lengthU, slashAt).flatMap((y) =>
      slash(bulgeAt(y, from, lengthU, bulge), y, slashU),
    );
    return [drawn([...stem, ...ticks], pen), ...(base?.shapes(pen) ?? [])];
  };
  return {
    heightU,
    widthU: 0.84,
    barred: true,
    leg: (lengthU, bulgeU, pen) => stemmed(lengthU, bulgeU, bulgeU === null ? LEG_SLASH_AT : SLASH_AT, pen),
    draw: (lengthU, pen) => [...stemmed(lengthU, null, SLASH_AT, pen), topBar(lengthU, pen)],
  };
}

/** The bar across the head, also over legs that meet there. */
export function topBar(lengthU: number, pen: Pen): Shape {
  return drawn(line(-BAR_U / 2, -lengthU, BAR_U / 2, -lengthU), pen);
}

/** From a foot to a head, bowed to one side in a cluster. */
export function stemPath(from: number, lengthU: number, bulgeU: number): PathPart[] {
  if (bulgeU === 0) return line(0, -from, 0, -lengthU);
  // A cubic reaches three quarters of its controls' distance.
  const out = bulgeU / 0.75;
  const third = (lengthU - from) / 3;
  return [
    ['M', 0, -from],
    ['C', out, -from - third * 0.7, out, -lengthU + third * 0.7, 0, -lengthU],
  ];
}

/** How far a bulging stem is from the straight one at a height; the parabola that its cubic lies close to. */
export function bulgeAt(y: number, from: number, lengthU: number, bulgeU: number): number {
  const t = (y - from) / (lengthU - from);
  return bulgeU * 4 * t * (1 - t);
}

function slashMiddles(slashes: number, from: number, lengthU: number, slashAt: number): number[] {
  const middle = from + (lengthU - from) * slashAt;
  const apart = Math.min(SLASH_APART_U, ((lengthU - from) * 0.5) / Math.max(1, slashes));
  return Array.from({ length: slashes }, (_, k) => middle + (k - (slashes - 1) / 2) * apart);
}

function slash(x: number, y: number, lengthU: number): PathPart[] {
  const half = lengthU / 2;
  const rise = half * SLASH_RISE;
  return line(x - half, -(y - rise), x + half, -(y + rise));
}
