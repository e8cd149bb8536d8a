/**
 * The rows of a flat piece in, the peaks and valleys they run up and down between out: where row upon row stitches are
 * added in one place and taken away in another, with plain stitches between. A row of shells over shells is none.
 */

import type { Fabric } from '../fabric/fabric.ts';
import type { Bend } from './bent-track.ts';
import type { RowElement } from './elements.ts';
import { type Lying, placeIn, type RowWidths } from './row-widths.ts';

export interface FlatRow {
  readonly row: number;
  readonly elements: readonly RowElement[];
  readonly way: 1 | -1;
  readonly heightU: number;
}

/** The stitches of a row on both sides of a bend, or twice the one that stands in it. */
export type BendStitches = readonly [number, number];

/** What a row needs to know of the bends it runs over. */
export interface RowBends {
  readonly stitches: readonly BendStitches[];
  readonly wave: boolean;
  readonly endLegs: EndLegs;
}

export const NO_BENDS: RowBends = { stitches: [], wave: false, endLegs: [null, null] };

/** How long the legs at the two ends of the rows are where each end is half a bend; null where it is free. */
export type EndLegs = readonly [number | null, number | null];

export interface Bends {
  readonly bends: readonly Bend[];
  readonly slope: number;
  /** By row, bend by bend. */
  readonly stitches: ReadonlyMap<number, readonly BendStitches[]>;
  /** Its increases and decreases are spread over whole legs. */
  readonly wave: boolean;
  readonly endLegs: EndLegs;
}

/** A place where a row has grown or shrunk against the one below. */
interface Change {
  readonly at: number;
  /** Where in the row below it lies. */
  readonly under: number;
  readonly amount: number;
  /** Plain stitches, one over one, since the change before. */
  readonly plain: number;
  /** In how many places: many make a wave, one a peak. */
  readonly places: number;
  /** Where the last of them is. */
  readonly to: number;
  /** At one end of its row, which it shapes. */
  readonly edge: boolean;
}

/** Changes nearer than this are one. */
const TOGETHER_U = 2.6;
/** A change of less is shaping along the way. */
const LEAST_CHANGE = 1.5;
/** Between two peaks lie this many plain stitches, or their changes are spread over so many places. */
const LEAST_PLAIN = 2;
const LEAST_PLACES = 3;
/** Share of the rows with changes that must bend alike. */
const ALIKE = 0.7;
/** Less slope than this is hardly seen; more, and the rows lie too close to draw. */
const SLOPE = { least: 0.18, most: 1.25 } as const;

export function findBends(
  fabric: Fabric,
  flat: readonly FlatRow[],
  widths: ReadonlyMap<number, RowWidths>,
): Bends | null {
  const changes = new Map(
    flat.flatMap(({ row }) => {
      const own = widths.get(row);
      const under = widths.get(fabric.rows[row]?.onto ?? -1);
      return own && under ? [[row, changesOf(fabric, own, under)] as const] : [];
    }),
  );
  const pattern = commonest([...changes.values()].map(signsOf));
  if (pattern === '') return null;
  const bent = flat.filter(({ row }) => signsOf(changes.get(row) ?? []) === pattern);
  const working = flat.filter(({ row }) => changes.has(row));
  const changing = working.filter(({ row }) => (changes.get(row) ?? []).length > 0);
  if (bent.length < 2 || bent.length < changing.length * ALIKE) return null;
  if (!stacked(fabric, bent, changes, widths)) return null;
  const first = bent[0];
  const found = first && changes.get(first.row);
  if (!first || !found) return null;
  const grown = bent.reduce((sum, { row }) => sum + meanGrowth(changes.get(row) ?? []), 0);
  const high = working.reduce((sum, { heightU }) => sum + heightU, 0);
  const slope = Math.min(SLOPE.most, grown / Math.max(1e-6, high));
  if (slope < SLOPE.least) return null;
  const stitches = new Map(
    bent.map(({ row }) => {
      const lying = widths.get(row)?.lying ?? [];
      return [row, (changes.get(row) ?? []).map(({ at }) => beside(lying, at))] as const;
    }),
  );
  const base = belowFirst(fabric, flat, first.row, found, widths, stitches);
  if (base === null) return null;
  return {
    slope,
    bends: found.map(({ amount }, k) => ({ kind: amount > 0 ? 'peak' : 'valley', s: base[k] ?? 0 })),
    stitches,
    wave: found.some(({ places }) => places >= LEAST_PLACES),
    endLegs: endLegsOf(fabric, bent, changes, widths, base),
  };
}

/** A leg that neither grows nor shrinks has half a bend at its free end. */
function endLegsOf(
  fabric: Fabric,
  bent: readonly FlatRow[],
  changes: ReadonlyMap<number, readonly Change[]>,
  widths: ReadonlyMap<number, RowWidths>,
  base: readonly number[],
): EndLegs {
  const shares = [0, 0];
  let rightmost = 0;
  let leftmost = 0;
  for (const { row } of bent) {
    const own = widths.get(row) ?? NO_WIDTHS;
    const under = widths.get(fabric.rows[row]?.onto ?? -1) ?? NO_WIDTHS;
    const all = changes.get(row) ?? [];
    const first = all[0];
    const last = all.at(-1);
    if (!first || !last) continue;
    const ends = [
      (first.at - first.under) / first.amount,
      (own.widthU - last.at - (under.widthU - last.under)) / last.amount,
    ];
    ends.forEach((end, k) => {
      shares[k] = (shares[k] ?? 0) + end / bent.length;
    });
    rightmost = Math.max(rightmost, first.at);
    leftmost = Math.max(leftmost, own.widthU - last.at);
  }
  const half = (k: number): boolean => base.length > 0 && Math.abs(shares[k] ?? 0) < HALF_BEND;
  return [half(0) ? rightmost - 0.5 : null, half(1) ? leftmost - 0.5 : null];
}

/** Half of what a bend adds goes to each of its legs: where less than half of that shows, the far end takes it away. */
const HALF_BEND = 0.25;

function changesOf(fabric: Fabric, own: RowWidths, under: RowWidths): Change[] {
  const single: Change[] = [];
  let plain = 0;
  let before: { to: number; ownTo: number } | null = null;
  const note = (at: number, underAt: number, amount: number, edge = false): void => {
    if (Math.abs(amount) < 0.5) return;
    single.push({ at, under: underAt, amount, plain, places: 1, to: at, edge });
    plain = 0;
  };
  const stitches = own.lying.filter(({ chain }) => !chain);
  const placed = stitches.map(({ stitch }) => placeIn(fabric, under, stitch));
  for (let k = 0; k < stitches.length; ) {
    const first = stitches[k];
    const place = placed[k];
    if (!first || !place) {
      k += 1;
      before = null;
      continue;
    }
    let end = k + 1;
    while (end < stitches.length && isSame(place, placed[end] ?? null)) end += 1;
    const last = stitches[end - 1] ?? first;
    if (before)
      note(
        (before.ownTo + first.from) / 2,
        (before.to + place.from) / 2,
        first.from - before.ownTo - (place.from - before.to),
      );
    const grown = last.to - first.from - (place.to - place.from);
    if (Math.abs(grown) < 0.5) plain += 1;
    const edge = (k === 0) !== (end === stitches.length);
    note((first.from + last.to) / 2, (place.from + place.to) / 2, grown, edge);
    before = { to: place.to, ownTo: last.to };
    k = end;
  }
  return joined(single);
}

function isSame(a: { from: number; to: number }, b: { from: number; to: number } | null): boolean {
  return b !== null && a.from === b.from && a.to === b.to;
}

/** Changes of one kind beside each other are one bend. */
function joined(single: readonly Change[]): Change[] {
  const all: Change[] = [];
  for (const change of single) {
    const last = all.at(-1);
    if (last && Math.sign(last.amount) === Math.sign(change.amount) && change.at - last.to <= TOGETHER_U) {
      const amount = last.amount + change.amount;
      const share = change.amount / amount;
      all[all.length - 1] = {
        amount,
        at: last.at + (change.at - last.at) * share,
        under: last.under + (change.under - last.under) * share,
        plain: last.plain,
        places: last.places + 1,
        to: change.to,
        edge: last.edge || change.edge,
      };
    } else all.push(change);
  }
  return all.filter(({ amount, edge }) => !edge && Math.abs(amount) >= LEAST_CHANGE);
}

/** `+-+` where plain stitches lie between and peaks and valleys take turns; empty for what does not bend. */
function signsOf(changes: readonly Change[]): string {
  const signs = changes.map(({ amount }) => (amount > 0 ? '+' : '-')).join('');
  if (/\+\+|--/.test(signs)) return '';
  const clear = changes.every(
    ({ plain, places }, k) =>
      k === 0 || plain >= LEAST_PLAIN || Math.min(places, changes[k - 1]?.places ?? 0) >= LEAST_PLACES,
  );
  return clear ? signs : '';
}

function commonest(all: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const one of all) if (one !== '') counts.set(one, (counts.get(one) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? '';
}

function meanGrowth(changes: readonly Change[]): number {
  return changes.reduce((sum, { amount }) => sum + Math.abs(amount) / 2, 0) / Math.max(1, changes.length);
}

/** How far a bend may lie beside the one below. */
const BESIDE_U = 1.6;

/** Whether each bend lies over the one below it. */
function stacked(
  fabric: Fabric,
  bent: readonly FlatRow[],
  changes: ReadonlyMap<number, readonly Change[]>,
  widths: ReadonlyMap<number, RowWidths>,
): boolean {
  const byRow = new Set(bent.map(({ row }) => row));
  return bent.every(({ row }) => {
    let under = fabric.rows[row]?.onto ?? null;
    let places = (changes.get(row) ?? []).map((change) => change.under);
    while (under !== null && !byRow.has(under)) {
      places = places.map((place) => down(fabric, widths, under ?? 0, place));
      under = fabric.rows[under]?.onto ?? null;
    }
    if (under === null) return true;
    const below = changes.get(under) ?? [];
    return places.every((place, k) => Math.abs(place - (below[k]?.at ?? 0)) <= BESIDE_U);
  });
}

/** What of the row below lies under a place of a row. */
function down(fabric: Fabric, widths: ReadonlyMap<number, RowWidths>, row: number, place: number): number {
  const own = widths.get(row);
  const under = widths.get(fabric.rows[row]?.onto ?? -1);
  if (!own || !under) return place;
  const near = own.lying.filter(({ chain }) => !chain);
  let best = place;
  let least = Number.POSITIVE_INFINITY;
  for (const { stitch, from, to } of near) {
    const into = placeIn(fabric, under, stitch);
    const away = Math.abs((from + to) / 2 - place);
    if (into === null || away >= least) continue;
    least = away;
    best = (into.from + into.to) / 2 + (place - (from + to) / 2);
  }
  return best;
}

/**
 * Follows the bends of the first bent row down: the stitches of the rows below that they lie over are noted. Where along
 * the foundation they come out; null where several begin in one ring.
 */
function belowFirst(
  fabric: Fabric,
  flat: readonly FlatRow[],
  first: number,
  changes: readonly Change[],
  widths: ReadonlyMap<number, RowWidths>,
  stitches: Map<number, readonly BendStitches[]>,
): number[] | null {
  let places = changes.map(({ under }) => under);
  let row = fabric.rows[first]?.onto ?? null;
  while (row !== null && widths.has(row)) {
    const { lying, widthU } = widths.get(row) ?? NO_WIDTHS;
    const onto = fabric.rows[row]?.onto ?? null;
    const base = flat.find((one) => one.row === row);
    if (base?.elements.some(({ kind }) => kind === 'laid'))
      // Chains are laid from nought on, the way the foundation is worked.
      return places.map((place) => place - 0.5 - (base.way === -1 ? widthU - 1 : 0));
    if (lying.length === 0) break;
    stitches.set(
      row,
      places.map((place) => beside(lying, place)),
    );
    if (onto === null) break;
    const on = row;
    places = places.map((place) => down(fabric, widths, on, place));
    row = onto;
  }
  return changes.length === 1 ? [0] : null;
}

const NO_WIDTHS: RowWidths = { lying: [], at: new Map(), widthU: 0 };

function beside(lying: readonly Lying[], at: number): BendStitches {
  const stitches = lying.filter(({ chain }) => !chain);
  const inIt = stitches.find(({ from, to }) => Math.abs((from + to) / 2 - at) < 0.3);
  if (inIt) return [inIt.stitch, inIt.stitch];
  const after = stitches.findIndex(({ from, to }) => (from + to) / 2 > at);
  return [stitches[after - 1]?.stitch ?? -1, stitches[after]?.stitch ?? -1];
}
