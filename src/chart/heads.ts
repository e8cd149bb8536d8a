/** The columns of a row, where they stand and how high their feet are in; how high their heads are out. */

import { NONE } from '../fabric/fabric.ts';
import type { Column } from './columns.ts';
import { OFF_LEVEL_U, STRETCH } from './metrics.ts';

export interface Standing {
  readonly columns: readonly Column[];
  /** Along the line. */
  readonly along: Float64Array;
  /** Along the line, of the middle of what each is worked into. */
  readonly footAlong: Float64Array;
  /** Outwards. */
  readonly footOffset: Float64Array;
  /** Columns that a corner comes after: what is worked on both sides of it is no fan. */
  readonly corners: ReadonlySet<number>;
  /** How much of a fan's arc its heads follow: 1 for a true circle about the foot. */
  readonly roundness: number;
  /** A row rather than a round: its top runs level, though that of the row below does not. */
  readonly evens: boolean;
  /** How much further out the whole row must go to have room. */
  readonly extra: number;
}

/** A fan's outermost stems lean no further than this, beyond what share of its arc its heads follow. */
const STEEPEST = 0.18;

/** Stems of a fan of this many and more spread like a hand. */
const FAN_FROM = 4;

export function headOffsets(standing: Standing): Float64Array {
  const { columns, footOffset, extra, evens } = standing;
  const natural = new Float64Array(columns.length);
  columns.forEach((column, k) => {
    natural[k] = column.long ? Number.NaN : (footOffset[k] ?? 0) + column.heightU;
  });
  bridge(natural);
  const level = meanOf(columns, natural);
  const base = meanOf(columns, footOffset);
  const heads = new Float64Array(columns.length);
  columns.forEach((column, k) => {
    const own = natural[k] ?? 0;
    const foot = own - column.heightU;
    const low = Math.max(foot + column.heightU * STRETCH.least, level - OFF_LEVEL_U);
    // Chains that count as nothing need not reach the top of the row.
    const most = isBare(column) ? STRETCH.bare : STRETCH.most;
    // What stands in a dip of the row below makes up for it, lest the dip deepen row by row.
    const dip = isBare(column) || !evens ? 0 : Math.max(0, base - foot);
    const high = Math.min(foot + column.heightU * most + dip, level + OFF_LEVEL_U);
    // A stem stretches or shrinks a little so that the top of the row is level.
    heads[k] = (high < low ? (low + high) / 2 : Math.max(low, Math.min(high, level))) + extra;
  });
  fan(standing, heads);
  return heads;
}

/** Heads of a fan lie on a flattened arc about its foot. */
function fan(
  { columns, along, footAlong, footOffset, corners, roundness }: Standing,
  heads: Float64Array,
): void {
  let k = 0;
  while (k < columns.length) {
    const place = columns[k]?.footing?.place ?? -1;
    let end = k + 1;
    while (place >= 0 && end < columns.length && columns[end]?.footing?.place === place) end += 1;
    const straddles = Array.from({ length: end - k }, (_, m) => k + m).some((m) => corners.has(m));
    if (!straddles && end - k >= FAN_FROM && columns[k]?.footing?.inRing === false) {
      for (let m = k; m < end; m += 1) {
        const foot = footOffset[m] ?? 0;
        const height = (heads[m] ?? 0) - foot;
        const aside = Math.min(
          Math.abs((along[m] ?? 0) - (footAlong[m] ?? 0)) * roundness,
          height * (roundness + STEEPEST),
        );
        heads[m] = foot + Math.sqrt(height * height - aside * aside);
      }
    }
    k = end;
  }
}

/** Heads of long stitches: level with their neighbours. */
function bridge(natural: Float64Array): void {
  for (let k = 0; k < natural.length; k += 1) {
    if (!Number.isNaN(natural[k] ?? 0)) continue;
    let end = k;
    while (end < natural.length && Number.isNaN(natural[end] ?? 0)) end += 1;
    const before = natural[k - 1];
    const after = natural[end];
    const level = before === undefined ? (after ?? 0) : after === undefined ? before : (before + after) / 2;
    for (let m = k; m < end; m += 1) natural[m] = level;
  }
}

function meanOf(columns: readonly Column[], natural: Float64Array): number {
  let total = 0;
  let count = 0;
  columns.forEach((column, k) => {
    if (column.element.kind === 'laid' || isBare(column)) return;
    total += natural[k] ?? 0;
    count += 1;
  });
  return count === 0 ? (natural[0] ?? 0) : total / count;
}

/** Chains upright at the start of a row that are no stitch of it. */
export function isBare({ element }: Column): boolean {
  return element.kind === 'post' && element.counted === NONE;
}
