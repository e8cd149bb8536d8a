/** Where the columns of a row that goes up and down between peaks and valleys would best stand. */

import { NONE } from '../fabric/fabric.ts';
import type { Column } from './columns.ts';
import type { RowBends } from './find-bends.ts';
import type { Track } from './track.ts';

export interface BentRow {
  readonly columns: readonly Column[];
  readonly track: Track;
  readonly level: number;
  readonly way: 1 | -1;
  readonly bends: RowBends;
}

/** What stands at a bend stays there, and its neighbours find their places from it; the columns held out. */
export function holdBends(
  { columns, track, level, way, bends }: BentRow,
  wish: Float64Array,
  gap: Float64Array,
): number[] {
  if (bends.stitches.length === 0) return [];
  openEdges(columns, wish);
  const columnOf = new Map(columns.map(({ stitch }, k) => [stitch, k]));
  return bends.stitches
    .flatMap((stitches, bend) => {
      const [a, b] = stitches.map((stitch) => columnOf.get(stitch) ?? -1).sort((m, n) => m - n);
      if (a === undefined || b === undefined || a < 0 || b > a + 1) return [];
      const at = way * track.cornerAt(bend, level);
      const half = a === b ? 0 : (gap[b] ?? 0) / 2;
      wish[a] = at - half;
      wish[b] = at + half;
      return a === b ? [a] : [a, b];
    })
    .concat(holdEnds({ columns, track, level, way, bends }, wish))
    .sort((m, n) => m - n);
}

function holdEnds({ columns, track, level, way, bends }: BentRow, wish: Float64Array): number[] {
  const { endLegs, stitches } = bends;
  const first = columns.findIndex(isStitch);
  const last = columns.findLastIndex(isStitch);
  const [right, left] = endLegs;
  const held: number[] = [];
  if (right !== null) {
    const k = way === 1 ? first : last;
    wish[k] = way * (track.cornerAt(0, level) - right);
    held.push(k);
  }
  if (left !== null) {
    const k = way === 1 ? last : first;
    wish[k] = way * (track.cornerAt(stitches.length - 1, level) + left);
    held.push(k);
  }
  return held;
}

function isStitch({ element }: Column): boolean {
  return element.kind === 'stitch' || (element.kind === 'post' && element.counted !== NONE);
}

/** Of several worked into the first or last place of a row, one stands over it and the others beyond. */
function openEdges(columns: readonly Column[], wish: Float64Array): void {
  const placeAt = (k: number): number => columns[k]?.footing?.place ?? -1;
  const start = columns.findIndex(({ footing }) => footing !== null);
  const end = columns.length - 1;
  let inner = start;
  while (start >= 0 && placeAt(start) >= 0 && placeAt(inner + 1) === placeAt(start)) inner += 1;
  if (inner === end || columns[start]?.footing?.inRing) return;
  for (let k = inner - 1; k >= 0; k -= 1) wish[k] = (wish[k + 1] ?? 0) - 1;
  let outer = end;
  while (placeAt(end) >= 0 && placeAt(outer - 1) === placeAt(end)) outer -= 1;
  for (let k = outer + 1; k <= end; k += 1) wish[k] = (wish[k - 1] ?? 0) + 1;
}

/** Increases and decreases spread over a whole leg leave its stitches at even distances. */
export function evenOut(wish: Float64Array, held: readonly number[]): void {
  const fixed = [0, ...held, wish.length - 1];
  fixed.forEach((from, n) => {
    const to = fixed[n + 1] ?? from;
    spreadBetween(wish, from, to - from, wish[from] ?? 0, wish[to] ?? 0);
  });
}

/** Columns over the straight sides of an oval stay over what they are worked into; those between fill its ends evenly. */
export function evenEnds({ columns, track, level, way }: Omit<BentRow, 'bends'>, wish: Float64Array): void {
  const straight = columns.flatMap(({ footing }, k) =>
    footing !== null && !track.inBend(way * (wish[k] ?? 0), level) ? [k] : [],
  );
  const first = straight[0];
  const last = straight.at(-1);
  if (first === undefined || last === undefined) return;
  straight.slice(1).forEach((to, n) => {
    const from = straight[n] ?? to;
    spreadBetween(wish, from, to - from, wish[from] ?? 0, wish[to] ?? 0);
  });
  // The round begins and ends in one of its bends.
  const count = columns.length;
  const start = wish[last] ?? 0;
  const end = (wish[first] ?? 0) + track.around(level);
  const steps = count - last + first;
  for (let n = 1; n < steps; n += 1) {
    const k = last + n;
    const at = start + ((end - start) * n) / steps;
    wish[k % count] = k < count ? at : at - track.around(level);
  }
}

function spreadBetween(wish: Float64Array, from: number, steps: number, start: number, end: number): void {
  for (let n = 1; n < steps; n += 1) wish[from + n] = start + ((end - start) * n) / steps;
}
