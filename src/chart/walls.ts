/**
 * Rounds that go up rather than out: the sides of a hat, a basket or a ball. Drawn round the middle they would stand
 * ever further apart, so they are laid out straight, one above another, on the top of the last round drawn as a ring.
 */

import { FLAG, targets } from '../fabric/fabric.ts';
import type { ChartContext } from './context.ts';
import { hasFlag } from './elements.ts';
import type { Footing } from './footing.ts';
import type { RowReading } from './read-row.ts';
import type { RowWidths } from './row-widths.ts';
import { mod, NEVER_BENT, type Track } from './track.ts';

export interface RoundSize {
  readonly row: number;
  readonly widthU: number;
  readonly heightU: number;
}

/** A round this empty on its circle goes up; this empty at the last, the whole wall is laid out. */
const FULL = 0.78;
const EMPTY = 0.62;
/** Fewer rounds than this stay where they are: the edge of a mat. */
const FEWEST = 3;
/** Stitches stand a little closer in a round than beside one another in a row. */
const CLOSE = 0.9;

/**
 * Index of the first round that is laid out straight; null where all are drawn round the middle. The middle is a ring,
 * or a chain so long.
 */
export function wallFrom(
  rounds: readonly RoundSize[],
  { ringU, chainU }: { readonly ringU: number; readonly chainU: number },
): number | null {
  let level = ringU;
  let last = -1;
  let least = Number.POSITIVE_INFINITY;
  rounds.forEach(({ widthU, heightU }, k) => {
    level += heightU;
    const full = (widthU * CLOSE) / (2 * Math.PI * level + 2 * chainU);
    if (full >= FULL) {
      last = k;
      least = Number.POSITIVE_INFINITY;
      // A round too full for its circle pushes it out.
      level *= Math.max(1, full);
    } else least = Math.min(least, full);
  });
  const from = last + 1;
  return rounds.length - from >= FEWEST && least < EMPTY ? from : null;
}

/** Between the ring and the wall above it. */
const APART_U = 3.2;

export interface Wall {
  readonly track: Track;
  /** The round whose top it stands on. */
  readonly onto: number;
  /** The line that stands for that top. */
  readonly right: number;
  readonly left: number;
  readonly y: number;
}

/** Lays the top of a ring's round out straight, above the ring: what is worked into it finds it there. */
export function layOut(
  { fabric, layout }: ChartContext,
  onto: number,
  { lying, widthU }: RowWidths,
  top: number,
): Wall {
  const y = top + APART_U;
  const right = widthU / 2;
  for (const { stitch, from, to } of lying) {
    layout.anchorX[stitch] = right - (from + to) / 2;
    layout.anchorY[stitch] = y;
  }
  // Where the round was joined, the next begins.
  const join = (fabric.rows[onto]?.end ?? 0) - 1;
  const joined = targets(fabric, join)[0];
  if (hasFlag(fabric, join, FLAG.join) && joined !== undefined) {
    layout.anchorX[join] = layout.anchorX[joined] ?? 0;
    layout.anchorY[join] = layout.anchorY[joined] ?? 0;
  }
  return { track: wallTrack(y), onto, right, left: right - widthU, y };
}

/**
 * A round has no ends: one that begins where the last one ended, as turned rounds do, runs over the seam. Its stitches
 * are moved once round, so that they stand in the order they are worked.
 */
export function unrolled(reading: RowReading, { widthU, middleS }: Around, way: 1 | -1): RowReading {
  const shifts = new Float64Array(reading.columns.length);
  let last = Number.NaN;
  let sum = 0;
  let count = 0;
  reading.columns.forEach(({ footing, long }, k) => {
    if (footing === null || long) return;
    const own = -footing.middle.x * way;
    const at = Number.isNaN(last) ? own : last - widthU / 4 + mod(own - last + widthU / 4, widthU);
    shifts[k] = at - own;
    last = at;
    sum += at;
    count += 1;
  });
  const back = count === 0 ? 0 : Math.round((sum / count - middleS * way) / widthU) * widthU;
  if (shifts.every((shift) => Math.abs(shift - back) < 1e-6)) return reading;
  const columns = reading.columns.map((column, k) => {
    const by = -((shifts[k] ?? 0) - back) * way;
    return column.footing === null ? column : { ...column, footing: movedBy(column.footing, by) };
  });
  return { ...reading, columns };
}

/** Once round a wall, and where its middle is along its line. */
export interface Around {
  readonly widthU: number;
  readonly middleS: number;
}

function movedBy(footing: Footing, x: number): Footing {
  return {
    ...footing,
    middle: { x: footing.middle.x + x, y: footing.middle.y },
    foot: { x: footing.foot.x + x, y: footing.foot.y },
  };
}

function wallTrack(base: number): Track {
  return {
    around: () => Number.POSITIVE_INFINITY,
    point: (s, _level, offset) => ({ x: -s, y: base + offset, upX: 0, upY: 1 }),
    locate: (x, y) => ({ s: -x, offset: y - base }),
    circle: false,
    corners: 0,
    cornerAt: () => 0,
    inBend: NEVER_BENT,
    handed: 1,
  };
}
