/**
 * The line of rows that go up and down between peaks and valleys: a ripple, a mitred square, a shawl with a spine.
 * Every row lies at an even distance from the one below, so stitches added at a peak and taken away in a valley find
 * just the room they need.
 */

import { NEVER_BENT, type Track, type TrackPoint } from './track.ts';

/** Where rows turn: outwards at a peak, inwards in a valley. */
export interface Bend {
  readonly kind: 'peak' | 'valley';
  /** Where it is along the foundation, growing to the left. */
  readonly s: number;
}

interface Corner {
  readonly x: number;
  readonly y: number;
  /** How far the corner moves as the rows go one further out. */
  readonly outX: number;
  readonly outY: number;
  /** How much further along the corner lies for each unit further out. */
  readonly drift: number;
  readonly s: number;
}

interface Leg {
  readonly alongX: number;
  readonly alongY: number;
}

/** `slope` is the rise of a leg for each unit across; bends are in order of their places, peaks and valleys in turn. */
export function bentTrack(bends: readonly Bend[], slope: number): Track {
  const legs = legsOf(bends, slope);
  const corners = cornersOf(bends, legs, slope);
  const last = corners.length - 1;
  const at = (k: number, level: number): number => (corners[k]?.s ?? 0) + level * (corners[k]?.drift ?? 0);
  return {
    around: () => Number.POSITIVE_INFINITY,
    circle: false,
    corners: 0,
    cornerAt: at,
    inBend: NEVER_BENT,
    handed: 1,
    point: (s, level, offset) => {
      let leg = 0;
      while (leg <= last && s > at(leg, level)) leg += 1;
      const near = Math.max(0, leg - 1);
      for (const k of [near, Math.min(last, leg)])
        if (Math.abs(s - at(k, level)) < IN_CORNER_U) return cornerPoint(corners[k] ?? NOWHERE, offset);
      return legPoint(corners[near] ?? NOWHERE, legs[leg] ?? FLAT, s - at(near, level), level, offset);
    },
    locate: (x, y, level) => {
      let best = { s: 0, offset: 0 };
      let least = Number.POSITIVE_INFINITY;
      for (let leg = 0; leg <= last + 1; leg += 1) {
        const { alongX, alongY } = legs[leg] ?? FLAT;
        const before = corners[leg - 1];
        const after = corners[leg];
        const from = before ?? after ?? NOWHERE;
        const offset = (x - from.x) * alongY - (y - from.y) * alongX;
        const along = (x - from.x) * alongX + (y - from.y) * alongY;
        const ahead = before ? along - offset * driftAlong(before, alongX, alongY) : Number.POSITIVE_INFINITY;
        const left = after
          ? (after.x + after.outX * offset - x) * alongX + (after.y + after.outY * offset - y) * alongY
          : Number.POSITIVE_INFINITY;
        // How far the point lies outside the leg's own stretch of the piece.
        const beyond = Math.max(0, -ahead, -left) + Math.max(0, -offset);
        if (beyond >= least - 1e-9) continue;
        least = beyond;
        const low = before ? at(leg - 1, level) : Number.NEGATIVE_INFINITY;
        const high = after ? at(leg, level) : Number.POSITIVE_INFINITY;
        const anchor = before ? leg - 1 : leg;
        const s = at(anchor, level) + along - level * driftAlong(corners[anchor] ?? NOWHERE, alongX, alongY);
        best = { s: Math.max(low, Math.min(high, s)), offset };
      }
      return best;
    },
  };
}

/** Nearer than this to a corner a stitch stands in it. */
const IN_CORNER_U = 0.02;
const FLAT: Leg = { alongX: -1, alongY: 0 };
const NOWHERE: Corner = { x: 0, y: 0, outX: 0, outY: 1, drift: 0, s: 0 };

/** Up to a peak, down to a valley, from right to left. */
function legsOf(bends: readonly Bend[], slope: number): Leg[] {
  const long = Math.hypot(1, slope);
  const toFirst = bends[0]?.kind === 'valley' ? -1 : 1;
  return Array.from({ length: bends.length + 1 }, (_, k) => ({
    alongX: -1 / long,
    alongY: (toFirst * (k % 2 === 0 ? 1 : -1) * slope) / long,
  }));
}

function cornersOf(bends: readonly Bend[], legs: readonly Leg[], slope: number): Corner[] {
  const long = Math.hypot(1, slope);
  const corners: Corner[] = [];
  bends.forEach(({ kind, s }, k) => {
    const before = corners[k - 1];
    const leg = legs[k] ?? FLAT;
    const own = kind === 'peak' ? slope : -slope;
    const length = before ? s - (bends[k - 1]?.s ?? 0) : s;
    corners.push({
      x: (before?.x ?? 0) + leg.alongX * length,
      y: (before?.y ?? 0) + leg.alongY * length,
      outX: 0,
      outY: long,
      // A leg with a peak at one end and a valley at the other keeps its length.
      drift: before ? before.drift + own + (bends[k - 1]?.kind === 'peak' ? slope : -slope) : own,
      s,
    });
  });
  return corners;
}

/** How far along a leg its corner moves as the rows go one further out. */
function driftAlong(corner: Corner, alongX: number, alongY: number): number {
  return corner.outX * alongX + corner.outY * alongY;
}

function cornerPoint({ x, y, outX, outY }: Corner, offset: number): TrackPoint {
  return { x: x + outX * offset, y: y + outY * offset, upX: 0, upY: 1 };
}

function legPoint(
  corner: Corner,
  { alongX, alongY }: Leg,
  along: number,
  level: number,
  offset: number,
): TrackPoint {
  const upX = alongY;
  const upY = -alongX;
  return {
    x: corner.x + corner.outX * level + alongX * along + upX * (offset - level),
    y: corner.y + corner.outY * level + alongY * along + upY * (offset - level),
    upX,
    upY,
  };
}
