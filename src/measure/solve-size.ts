/** A wanted size and how large the work comes out in, the whole number of pattern repeats and rows nearest to it out. */

import type { Measures } from './measures.ts';

export interface WantedSize {
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  /** Given by the pattern, and then not searched for. */
  readonly repeats: number | null;
  readonly rows: number | null;
}

/** Null where the size wants none, or none can be found. */
export interface SolvedSize {
  readonly repeats: number | null;
  readonly rows: number | null;
}

/** How far numbers are tried one by one for two that can be worked. */
const PROBES = 24;
/** How far about the estimate the nearest is looked for. */
const REACH = 8;
/** Repeats over which a row shows all that it has. */
const ENOUGH_ACROSS = 12;

/**
 * Repeats first, then rows with those repeats. `measureAt` gives null for a number that cannot be worked, such as rows
 * that would not end with the row the pattern ends with; a size without rows of its own is measured with as few as work.
 */
export function solveSize(
  wanted: WantedSize,
  measureAt: (repeats: number | null, rows: number | null) => Measures | null,
): SolvedSize {
  const { widthMm, heightMm } = wanted;
  let { repeats, rows } = wanted;
  if (repeats === null && widthMm !== null) {
    const someRows = rows ?? firstWorking((n) => measureAt(1, n));
    repeats = solveRepeats(widthMm, (n) => measureAt(n, someRows)?.widthMm ?? null);
  }
  // Rows are as high over a few repeats as over many, and those are sooner worked.
  const few = repeats === null ? null : Math.min(repeats, ENOUGH_ACROSS);
  if (rows === null && heightMm !== null)
    rows = solveRepeats(heightMm, (n) => measureAt(few, n)?.heightMm ?? null);
  return { repeats, rows };
}

/**
 * The whole number from 1 up whose measure is nearest to the target; of two equally near, the smaller. Null when
 * nothing can be worked. The measure is taken to grow evenly with the number, which steps and rounding may disturb.
 */
export function solveRepeats(targetMm: number, widthOf: (repeats: number) => number | null): number | null {
  const known = new Map<number, number | null>();
  const ask = (n: number): number | null => {
    const asked = known.get(n);
    if (asked !== undefined) return asked;
    const found = n < 1 ? null : widthOf(n);
    known.set(n, found);
    return found;
  };
  const low = firstWorking(ask);
  const high = low === null ? null : firstWorking(ask, low + 1);
  if (low === null) return null;
  if (high === null) return low;
  const [lowMm, highMm] = [ask(low) ?? 0, ask(high) ?? 0];
  const eachMm = (highMm - lowMm) / (high - low);
  let about = eachMm > 0 ? Math.max(low, Math.round(low + (targetMm - lowMm) / eachMm)) : low;
  for (;;) {
    const nearest = nearestIn(about - REACH, about + REACH, targetMm, ask) ?? low;
    // On the edge of what was looked at, a nearer one may lie beyond.
    if (Math.abs(nearest - about) < REACH || nearest === about) return nearest;
    about = nearest;
  }
}

function nearestIn(
  from: number,
  to: number,
  targetMm: number,
  ask: (n: number) => number | null,
): number | null {
  let best: number | null = null;
  let leastMm = Number.POSITIVE_INFINITY;
  for (let n = Math.max(1, from); n <= to; n += 1) {
    const mm = ask(n);
    if (mm === null || Math.abs(mm - targetMm) >= leastMm) continue;
    best = n;
    leastMm = Math.abs(mm - targetMm);
  }
  return best;
}

function firstWorking(ask: (n: number) => unknown, from = 1): number | null {
  for (let n = from; n < from + PROBES; n += 1) if (ask(n) !== null) return n;
  return null;
}
