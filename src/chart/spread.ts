/** The columns of a row and the line it runs along in, where along the line each stands out. */

import { type Column, gapAfter } from './columns.ts';
import type { Corner } from './corners.ts';
import type { RowBends } from './find-bends.ts';
import { isBare } from './heads.ts';
import type { Point } from './layout.ts';
import { PITCH_U } from './metrics.ts';
import { keepApart, type Wishes } from './pool-adjacent.ts';
import type { RoomAbove } from './room-above.ts';
import { evenEnds, evenOut, holdBends } from './spread-bends.ts';
import { mod, type Track } from './track.ts';

export interface Spreading {
  readonly columns: readonly Column[];
  readonly track: Track;
  readonly level: number;
  /** 1 where the work goes left or anticlockwise, -1 the other way. */
  readonly way: 1 | -1;
  /** A round: its end comes back to its start. */
  readonly closed: boolean;
  /** Room left in a round between its last stitch and its first, where its number stands. */
  readonly seamU: number;
  /** Where the row begins, for columns that are worked into nothing. */
  readonly base: Point | null;
  readonly edgesHeld: boolean;
  /** Corner of each column of an edging that is worked round a corner; null along the sides. */
  readonly bendOf: (column: Column) => number | null;
  /** The stitches round the ends of an oval stand at even distances. */
  readonly endsEven: boolean;
  /** The stitches beside each bend of rows that go up and down. */
  readonly bends: RowBends;
  /** What the next row about a ring needs; null for others. */
  readonly above: RoomAbove | null;
}

/** Little, but enough to order columns that have no wish of their own. */
const NO_WISH_WEIGHT = 0.01;
/** A round begins where the last one did; the edges of a row run straight. */
const HELD_WEIGHT = 400;
/** And edgings turn their corners where the piece does. */
const AT_CORNER_WEIGHT = 6;
/** What is worked round a corner stands this share of the way back to what it is worked into. */
const CORNER_EASE = 0.15;
/** The most that a round's stitches move apart to fill it evenly. */
const LOOSEST = 1.7;

/** Rows, and rounds without true corners. */
export function spreadAlong(spreading: Spreading): Float64Array {
  const { columns, track, level, way, closed, seamU } = spreading;
  const gap = gapsOf(columns);
  const around = track.around(level);
  if (closed && track.circle) loosen(gap, around - seamU);
  if (spreading.above !== null) openFor(spreading.above, columns, gap, level);
  const { wish, weight, wished } = wishesAlong(spreading, gap);
  // About the middle of a fan.
  if (!wished && !closed && track.circle) centre(wish, gap, (way * around) / 2);
  if (!wished && closed) {
    // Into the ring: evenly round it.
    const room = around - Math.max(seamU, (around - seamU) / Math.max(1, columns.length));
    for (let k = 0; k < columns.length; k += 1) wish[k] = (room * k) / Math.max(1, columns.length - 1);
  }
  const start = columns.findIndex((column) => column.widthU >= 0.8);
  if (closed && start >= 0 && standsAlone(columns, start)) weight[start] = HELD_WEIGHT;
  if (!closed && spreading.edgesHeld && spreading.bends.stitches.length === 0) {
    if (start >= 0) weight[start] = HELD_WEIGHT;
    weight[columns.length - 1] = HELD_WEIGHT;
  }
  const free = keepApart({ wish, weight, gap });
  if (!closed) return (track.circle ? drawnIn(free, gap) : free).map((w) => w * way);
  const first = free[0] ?? 0;
  const last = free[columns.length - 1] ?? 0;
  const excess = Math.max(0, last - first - (around - seamU)) / 2;
  const along =
    excess === 0
      ? free
      : (acrossSeam({ wish, weight, gap }, free, around, seamU) ??
        keepApart({ wish, weight, gap, least: first + excess, most: last - excess }));
  return along.map((w) => w * way);
}

/**
 * The end of a round and its start want the same place: they move apart together, each as far as its neighbours do.
 * Reckoned from where the round has most room to spare; null where it has none.
 */
function acrossSeam(
  { wish, weight, gap }: Wishes,
  free: Float64Array,
  around: number,
  seamU: number,
): Float64Array | null {
  const count = wish.length;
  let cut = 0;
  let most = 0;
  for (let k = 1; k < count; k += 1) {
    const spare = (free[k] ?? 0) - (free[k - 1] ?? 0) - (gap[k] ?? 0);
    if (spare > most) {
      most = spare;
      cut = k;
    }
  }
  const from = (values: Float64Array): Float64Array =>
    Float64Array.from(values, (_, k) => values[(k + cut) % count] ?? 0);
  const rolled = from(wish).map((at, k) => (k + cut < count ? at : at + around));
  const gaps = from(gap);
  gaps[count - cut] = seamU;
  const placed = keepApart({ wish: rolled, weight: from(weight), gap: gaps });
  if (cut === 0 || (placed[count - 1] ?? 0) - (placed[0] ?? 0) > around - (gap[cut] ?? 0)) return null;
  return Float64Array.from(wish, (_, k) =>
    k < cut ? (placed[k + count - cut] ?? 0) - around : (placed[k - cut] ?? 0),
  );
}

/** Nothing else of the round is worked where this column is. */
function standsAlone(columns: readonly Column[], k: number): boolean {
  const place = columns[k]?.footing?.place ?? -1;
  return place < 0 || (columns[k + 1]?.footing?.place !== place && columns.at(-1)?.footing?.place !== place);
}

/** Least level at which a round without corners has room for all its stitches. */
export function leastLevel(columns: readonly Column[], track: Track, seamU: number): number {
  const needed = sum(gapsOf(columns)) + seamU;
  const atNought = track.around(0);
  const grows = track.around(1) - atNought;
  return (needed - atNought) / grows;
}

/** The most that neighbours in a fan stand apart, as a share of the least: it narrows where stitches become fewer. */
const DRAWN_IN = 1.35;

function drawnIn(along: Float64Array, gap: Float64Array): Float64Array {
  const count = along.length;
  const near = new Float64Array(count);
  for (let k = 1; k < count; k += 1)
    near[k] = (near[k - 1] ?? 0) + Math.min((along[k] ?? 0) - (along[k - 1] ?? 0), (gap[k] ?? 0) * DRAWN_IN);
  const middle = ((along[0] ?? 0) + (along[count - 1] ?? 0)) / 2 - (near[count - 1] ?? 0) / 2;
  return near.map((at) => at + middle);
}

/** How far a fan about a ring may open: a little more than half round. */
const WIDEST_FAN = 3.5;
/** And a row that opens to the next one. */
const WIDEST_OPENED = 3.9;

/** An arch that hardly bows, the air at its ends with it, as a share of its chains' length. */
const FLAT_ARCH = 1.35;

/** How much more each gap of a row at a level would have to be for what is worked onto the row to stand straight above. */
function moreFor(
  above: RoomAbove,
  columns: readonly Column[],
  gap: Float64Array,
  level: number,
): Float64Array {
  if (!above.opens) return new Float64Array(gap.length);
  const share = level / Math.max(level + above.heightU, above.lengthU / WIDEST_FAN);
  return gap.map((own, k) => {
    const flat = FLAT_ARCH * PITCH_U.chain * (columns[k - 1]?.chainsAfter ?? 0);
    return Math.max(0, Math.max((above.gap[k] ?? 0) * share, flat) - own);
  });
}

/** As far as the row has room it opens to what is worked onto it. */
function openFor(above: RoomAbove, columns: readonly Column[], gap: Float64Array, level: number): void {
  const more = moreFor(above, columns, gap, level);
  const room = Math.max(0, WIDEST_OPENED * level - sum(gap));
  const given = Math.min(1, room / Math.max(1e-9, sum(more)));
  for (let k = 0; k < gap.length; k += 1) gap[k] = (gap[k] ?? 0) + given * (more[k] ?? 0);
}

/** How much further out a row may go to open. */
const FURTHER_OUT = 1.08;

/** Level at which a row about a ring has room, and opens to what is worked onto it where that is near. */
export function levelOfFan(columns: readonly Column[], natural: number, above: RoomAbove | null): number {
  const gap = gapsOf(columns);
  const level = Math.max(natural, sum(gap) / WIDEST_FAN);
  if (above === null) return level;
  const opened = (sum(gap) + sum(moreFor(above, columns, gap, level))) / WIDEST_OPENED;
  return Math.max(level, Math.min(level * FURTHER_OUT, opened));
}

export interface Side {
  /** Number of the side the corner before it starts; may run past the last side, as angles do. */
  readonly side: number;
  readonly columns: readonly number[];
  /** Room kept from the corners at its two ends. */
  readonly before: number;
  readonly after: number;
}

/** The sides of a round with true corners, and the columns along each. */
export function sidesOf(
  columns: readonly Column[],
  corners: readonly Corner[],
  firstSide: number,
  way: 1 | -1,
): Side[] {
  const count = corners.length;
  const bounds = corners.map((corner) => corner.after);
  const tail = range((bounds[count - 1] ?? 0) + 1, columns.length);
  return corners.map((corner, q) => {
    const from = q === 0 ? 0 : (bounds[q - 1] ?? 0) + 1;
    const own = range(from, corner.after + (corner.pinned ? 0 : 1));
    const previous = corners[(q + count - 1) % count] ?? corner;
    return {
      side: firstSide + q * way,
      columns: q === 0 ? [...tail, ...own] : own,
      before: cornerRoom(previous),
      after: cornerRoom(corner),
    };
  });
}

/** Least level at which every side has room for its stitches. */
export function leastLevelOfSides(
  columns: readonly Column[],
  sides: readonly Side[],
  track: Track,
  seamU: number,
): number {
  const sideAtOne = track.around(1) / track.corners;
  return Math.max(
    ...sides.map((side) => (side.before + side.after + sum(sideGaps(columns, side, seamU))) / sideAtOne),
  );
}

/** A side is shorter at the height that the heads beside its corners come to: they keep their room from the corner there. */
export function keptFromCorners(spreading: Spreading, sides: readonly Side[], heads: Float64Array): Side[] {
  const { columns, track, level } = spreading;
  const length = track.around(level) / track.corners;
  return sides.map((side) => {
    const short = (k: number | undefined): number =>
      k === undefined
        ? 0
        : Math.max(0, (track.around(level) - track.around(heads[k] ?? level)) / (2 * track.corners));
    const [before, after] = [short(side.columns[0]), short(side.columns.at(-1))];
    const spare = length - side.before - side.after - sum(sideGaps(columns, side, spreading.seamU));
    const share = Math.max(0, Math.min(1, spare / Math.max(1e-9, before + after)));
    return { ...side, before: side.before + before * share, after: side.after + after * share };
  });
}

/** Rounds with true corners: each side by itself, its ends kept from the corners. */
export function spreadSides(spreading: Spreading, sides: readonly Side[]): Float64Array {
  const { columns, track, level, way } = spreading;
  const along = new Float64Array(columns.length);
  const length = track.around(level) / track.corners;
  for (const side of sides) {
    const gap = sideGaps(columns, side, spreading.seamU);
    const from = way === 1 ? side.side * length : -(side.side + 1) * length;
    const own = mod(side.side, track.corners);
    const turns = (side.side - own) * length;
    let wished = false;
    const wish = new Float64Array(side.columns.length).fill(Number.NaN);
    side.columns.forEach((k, at) => {
      const column = columns[k];
      const point = column?.footing?.inRing
        ? null
        : (column?.footing?.middle ?? (k === 0 ? spreading.base : null));
      if (point === null || column?.element.kind === 'laid') return;
      wish[at] = way * (track.locate(point.x, point.y, level, own).s + turns);
      wished = true;
    });
    if (!wished) centre(wish, gap, from + length / 2);
    const weight = fillWishes(wish, gap);
    const placed = keepApart({
      wish,
      weight,
      gap,
      least: from + side.before,
      most: from + length - side.after,
    });
    side.columns.forEach((k, at) => {
      along[k] = way * (placed[at] ?? 0);
    });
  }
  return along;
}

function gapsOf(columns: readonly Column[]): Float64Array {
  const gap = new Float64Array(columns.length);
  for (let k = 1; k < columns.length; k += 1) {
    const before = columns[k - 1];
    const column = columns[k];
    if (before && column) gap[k] = gapAfter(before, column);
  }
  return gap;
}

function sideGaps(columns: readonly Column[], side: Side, seamU: number): Float64Array {
  const gap = new Float64Array(side.columns.length);
  for (let at = 1; at < side.columns.length; at += 1) {
    const k = side.columns[at] ?? 0;
    const before = columns[side.columns[at - 1] ?? 0];
    const column = columns[k];
    if (before && column)
      gap[at] = k === 0 ? Math.max(seamU, gapAfter(before, column)) : gapAfter(before, column);
  }
  return gap;
}

function loosen(gap: Float64Array, room: number): void {
  const factor = Math.min(LOOSEST, room / Math.max(1e-9, sum(gap)));
  if (factor > 1) for (let k = 0; k < gap.length; k += 1) gap[k] = (gap[k] ?? 0) * factor;
}

/** Room a corner needs on each side of it. */
function cornerRoom(corner: Corner): number {
  if (corner.pinned) return 0.72;
  return corner.chains === 0 ? 0.45 : 0.34 * corner.chains + 0.34;
}

/** Where each would best stand: over what it is worked into. */
function wishesAlong(
  spreading: Spreading,
  gap: Float64Array,
): { wish: Float64Array; weight: Float64Array; wished: boolean } {
  const { columns, track, level, way, closed } = spreading;
  const around = track.around(level);
  const wish = new Float64Array(columns.length).fill(Number.NaN);
  let last = Number.NaN;
  let wished = false;
  columns.forEach((column, k) => {
    const point = column.footing?.inRing
      ? null
      : (column.footing?.middle ?? (k === 0 ? spreading.base : null));
    if (point === null) return;
    const bend = spreading.bendOf(column);
    const found = track.locate(point.x, point.y, level, column.footing?.side ?? undefined).s;
    const turned = bend === null ? found : track.cornerAt(bend, level);
    const back = mod(found - turned + around / 2, around) - around / 2;
    let at = way * (bend === null || spreading.endsEven ? turned : turned + back * CORNER_EASE);
    // Round and round: the next is a little on from the last, never most of the way back.
    if (closed && !Number.isNaN(last)) at = last - around / 4 + mod(at - last + around / 4, around);
    wish[k] = at;
    last = at;
    wished = true;
  });
  const held = holdBends(spreading, wish, gap);
  const weight = fillWishes(wish, gap);
  // Chains that are no stitch of a row make way for its first stitch.
  if (!closed && columns[0] !== undefined && isBare(columns[0])) weight[0] = NO_WISH_WEIGHT;
  for (const k of held) weight[k] = HELD_WEIGHT;
  if (closed && !spreading.endsEven) keepToCorners(spreading, weight);
  if (spreading.bends.wave) evenOut(wish, held);
  if (closed && spreading.endsEven) evenEnds(spreading, wish);
  return { wish, weight, wished };
}

/** What turns a corner of an edging stays there, and the chains that begin a round, which are no stitch, make way. */
function keepToCorners({ columns, bendOf }: Spreading, weight: Float64Array): void {
  columns.forEach((column, k) => {
    if (bendOf(column) !== null) weight[k] = AT_CORNER_WEIGHT;
  });
  if (columns[0] !== undefined && isBare(columns[0]) && columns.some((column) => bendOf(column) !== null))
    weight[0] = NO_WISH_WEIGHT;
}

/** Gives those without a wish a place beside their neighbours; how much each counts out. */
function fillWishes(wish: Float64Array, gap: Float64Array): Float64Array {
  const weight = new Float64Array(wish.length).fill(1);
  const known = wish.findIndex((at) => !Number.isNaN(at));
  if (known < 0) {
    for (let k = 0; k < wish.length; k += 1)
      wish[k] = (k === 0 ? 0 : (wish[k - 1] ?? 0)) + (gap[k] ?? PITCH_U.laid);
    return weight;
  }
  for (let k = known - 1; k >= 0; k -= 1) {
    wish[k] = (wish[k + 1] ?? 0) - (gap[k + 1] ?? 0);
    weight[k] = NO_WISH_WEIGHT;
  }
  for (let k = known + 1; k < wish.length; k += 1) {
    if (!Number.isNaN(wish[k] ?? 0)) continue;
    wish[k] = (wish[k - 1] ?? 0) + (gap[k] ?? 0);
    weight[k] = NO_WISH_WEIGHT;
  }
  return weight;
}

function centre(wish: Float64Array, gap: Float64Array, middle: number): void {
  let at = middle - sum(gap) / 2;
  for (let k = 0; k < wish.length; k += 1) {
    at += k === 0 ? 0 : (gap[k] ?? 0);
    wish[k] = at;
  }
}

function sum(values: Float64Array): number {
  return values.reduce((total, value) => total + value, 0);
}

function range(from: number, end: number): number[] {
  return Array.from({ length: Math.max(0, end - from) }, (_, k) => from + k);
}
