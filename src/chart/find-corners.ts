/**
 * The rounds of a piece that the fabric gives no corners in, the corners its increases make out: the same odd number
 * worked into one place at even distances, single stitches between. `3 sc in next sc` at four places is a square.
 */

import { type Fabric, INTO, NONE, targets } from '../fabric/fabric.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';

export interface FoundCorners {
  readonly corners: number;
  /** The stitches that stand in them. */
  readonly stitches: ReadonlySet<number>;
}

export const NO_CORNERS: FoundCorners = { corners: 0, stitches: new Set() };

const FEWEST = 3;
const MOST = 8;

export function findCorners(
  fabric: Fabric,
  rows: readonly StitchRow[],
  rowIndices: readonly number[],
): FoundCorners {
  const last = rowIndices.at(-1);
  const outer = last === undefined ? [] : cornersOfRound(fabric, rows, last);
  if (outer.length === 0) return NO_CORNERS;
  const all = rowIndices
    .map((row) => cornersOfRound(fabric, rows, row))
    .filter((found) => found.length === outer.length);
  return { corners: outer.length, stitches: new Set(all.flat()) };
}

function cornersOfRound(fabric: Fabric, rows: readonly StitchRow[], row: number): number[] {
  const places = placesOf(fabric, rows, row);
  if (places === null) return [];
  const sizes = new Set(places.map((place) => place.length));
  const several = Math.max(...sizes);
  if (several % 2 === 0 || several < 3 || sizes.size !== 2 || !sizes.has(1)) return [];
  const at = places.flatMap((place, k) => (place.length > 1 ? [k] : []));
  if (at.length < FEWEST || at.length > MOST) return [];
  const sides = at.map((k, n) =>
    n + 1 < at.length ? (at[n + 1] ?? 0) - k : (at[0] ?? 0) + places.length - k,
  );
  if (Math.max(...sides) !== Math.min(...sides) || (sides[0] ?? 0) < 2) return [];
  return at.flatMap((k) => places[k]?.[(several - 1) / 2] ?? []);
}

/** Stitches of a round by the place they are worked into; null when they are not all alike. */
function placesOf(fabric: Fabric, rows: readonly StitchRow[], row: number): number[][] | null {
  const { first = 0, end = 0, closing = 'flat' } = fabric.rows[row] ?? {};
  if (closing === 'flat') return null;
  const places: number[][] = [];
  let kind = NONE;
  let before = NONE;
  let start = NONE;
  for (let i = first; i < end; i += 1) {
    const counted = fabric.countsAs[i] ?? NONE;
    if (counted === NONE) continue;
    if (rows[counted]?.uses !== 1 || (kind !== NONE && counted !== kind)) return null;
    kind = counted;
    const into = fabric.where[i] === INTO.top ? (targets(fabric, i)[0] ?? NONE) : NONE;
    const place = places.at(-1);
    if (place && into !== NONE && into === before) place.push(i);
    else places.push([i]);
    if (places.length === 1) start = into;
    before = into;
  }
  // A round begun in the middle of a place comes back to it at its end.
  const last = places.length > 1 && start !== NONE && before === start ? places.pop() : undefined;
  if (last !== undefined) places[0]?.unshift(...last);
  return places;
}
