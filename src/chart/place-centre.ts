/** The ring or first chain in the middle of a round piece in, placed about the origin out. */

import type { Fabric } from '../fabric/fabric.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { CHAIN_THICKNESS_U } from '../symbols/chain.ts';
import { MAGIC_RING_RADIUS_U } from '../symbols/magic-ring.ts';
import { SYMBOLS } from '../symbols/symbols.ts';
import type { ChartContext } from './context.ts';
import type { RowElement } from './elements.ts';
import { type Layout, place } from './layout.ts';
import { PITCH_U } from './metrics.ts';

/** Chains of a ring in the middle. */
export interface Ring {
  readonly first: number;
  readonly end: number;
}

/** Room on the ring for the dot that joins it. */
const JOIN_U = 0.46;
/** So that a ring of five has room for its number. */
const LEAST_RADIUS_U = 0.66;

function ringRadius(chains: number): number {
  return chains === 1 ? 0 : Math.max(LEAST_RADIUS_U, (chains * PITCH_U.ring + JOIN_U) / (2 * Math.PI));
}

export function ringOffset(
  centreStitches: number,
  start: 'magic ring' | 'chain ring' | 'chain' | null,
): number {
  if (start === 'chain ring') return ringRadius(centreStitches - 1) + CHAIN_THICKNESS_U / 2;
  return start === 'chain' ? CHAIN_THICKNESS_U / 2 + 0.12 : MAGIC_RING_RADIUS_U;
}

/** Just past the ring or first chain in the middle of a round piece. */
export function centreEndOf(
  fabric: Fabric,
  rows: readonly StitchRow[],
  start: 'magic ring' | 'chain ring' | 'chain' | null,
  first: number,
): number {
  const familyOf = (i: number): string | undefined => rows[fabric.kind[i] ?? 0]?.family;
  if (start === 'chain') return first + 1;
  if (start === 'magic ring') return familyOf(first) === 'start' ? first + 1 : first;
  if (start !== 'chain ring') return first;
  let i = first;
  while (i < fabric.count && familyOf(i) === 'chain') i += 1;
  return familyOf(i) === 'slip' ? i + 1 : i;
}

function placeRing(layout: Layout, chains: readonly number[], startAngle: number): void {
  const only = chains.length === 1 ? chains[0] : undefined;
  if (only !== undefined) {
    place(layout, only, {
      footX: -PITCH_U.ring / 2,
      footY: 0,
      headX: PITCH_U.ring / 2,
      headY: 0,
      upX: 0,
      upY: 1,
      anchorX: 0,
      anchorY: 0,
    });
    return;
  }
  const radius = ringRadius(chains.length);
  const join = JOIN_U / radius;
  const step = (2 * Math.PI - join) / chains.length;
  chains.forEach((i, k) => {
    const from = startAngle + join / 2 + k * step;
    const middle = from + step / 2;
    const upX = Math.cos(middle);
    const upY = Math.sin(middle);
    const out = radius + CHAIN_THICKNESS_U / 2;
    place(layout, i, {
      footX: radius * Math.cos(from),
      footY: radius * Math.sin(from),
      headX: radius * Math.cos(from + step),
      headY: radius * Math.sin(from + step),
      upX,
      upY,
      anchorX: upX * out,
      anchorY: upY * out,
    });
  });
}

/** The dot that joins a ring lies on it, where its ends meet: what is inside stays clear. */
function placeJoin(layout: Layout, i: number, radius: number, startAngle: number): void {
  const upX = Math.cos(startAngle);
  const upY = Math.sin(startAngle);
  const half = SYMBOLS['slip-stitch'].heightU / 2;
  place(layout, i, {
    footX: upX * (radius - half),
    footY: upY * (radius - half),
    headX: upX * (radius + half),
    headY: upY * (radius + half),
    upX,
    upY,
    anchorX: upX * radius,
    anchorY: upY * radius,
  });
}

/** The ring, where one is placed. */
export function placeCentre(
  context: ChartContext,
  elements: readonly RowElement[],
  startAngle: number,
): Ring | null {
  const { layout, fabric, rows } = context;
  let ring: Ring | null = null;
  for (const element of elements) {
    if (element.kind !== 'centre') continue;
    const chains: number[] = [];
    for (let i = element.first; i < element.end; i += 1) {
      const family = rows[fabric.kind[i] ?? 0]?.family;
      if (family === 'chain') chains.push(i);
      else if (family === 'start')
        place(layout, i, { footX: 0, footY: 0, headX: 0, headY: 0, upX: 0, upY: 1 });
      else placeJoin(layout, i, ringRadius(chains.length), startAngle);
    }
    if (chains.length > 0) placeRing(layout, chains, startAngle);
    if (chains.length > 1) ring = { first: element.first, end: element.first + chains.length };
  }
  return ring;
}
