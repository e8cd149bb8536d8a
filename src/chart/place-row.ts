/** One row or round and the line it runs along in; its stitches placed in the layout, and where its label goes, out. */

import { NONE, targets } from '../fabric/fabric.ts';
import { CHAIN_THICKNESS_U } from '../symbols/chain.ts';
import { type Column, isColumn } from './columns.ts';
import type { ChartContext, Reach } from './context.ts';
import type { Corner } from './corners.ts';
import type { Post } from './elements.ts';
import type { RowBends } from './find-bends.ts';
import { headOffsets, isBare } from './heads.ts';
import type { Layout, Point } from './layout.ts';
import { FAN_ROUNDNESS } from './metrics.ts';
import { aliasPosts, placeArches } from './place-arches.ts';
import { placeColumn } from './place-columns.ts';
import { placeDots, placePicots } from './place-loops.ts';
import type { RowReading } from './read-row.ts';
import type { RoomAbove } from './room-above.ts';
import {
  keptFromCorners,
  leastLevel,
  leastLevelOfSides,
  levelOfFan,
  type Side,
  sidesOf,
  spreadAlong,
  spreadSides,
} from './spread.ts';
import { runsStraight, type Track } from './track.ts';

export interface PlacedRow {
  readonly row: number;
  /** How far out the row reaches. */
  readonly level: number;
  readonly way: 1 | -1;
  /** How many take a place in it. */
  readonly columns: number;
  /** The line it runs along, and where on it its first and last columns stand. */
  readonly track: Track;
  readonly startS: number;
  /** The chains it begins with, which the number of a flat row stands beside; null for none. */
  readonly chains: Post | null;
  /** Half the width that the first column is drawn with. */
  readonly startHalfU: number;
  readonly endS: number;
  /** Chains lead across from its last column to its first. */
  readonly archOverSeam: boolean;
  /** Leftmost and rightmost column. */
  readonly reach: Reach;
  /** Foot and head of the first column, outwards: the label stands between. */
  readonly low: number;
  readonly high: number;
}

export interface RowSetting {
  readonly track: Track;
  /** 1 where the work goes left or anticlockwise, -1 the other way. */
  readonly way: 1 | -1;
  readonly closed: boolean;
  /** Room left in a round for its number. */
  readonly seamU: number;
  /** Laid down for a first row that its last chains stand up for. */
  readonly foundation: boolean;
  /** Neither end of the row is to move outwards: it has no more stitches than the row it stands on. */
  readonly edgesHeld: boolean;
  /** What the row begins on: the top of the last stitch before it. */
  readonly base: Point | null;
  /** Side of the piece that the round begins on, for pieces with true corners. */
  readonly firstSide: number;
  readonly bendOf: (column: Column) => number | null;
  /** The stitches round the ends of an oval stand at even distances. */
  readonly endsEven: boolean;
  /** The stitches beside each bend of rows that go up and down. */
  readonly bends: RowBends;
  readonly above: RoomAbove | null;
}

/** Null when nothing of the row takes a place. */
export function placeRow(context: ChartContext, reading: RowReading, setting: RowSetting): PlacedRow | null {
  const { columns, elements, corners, row } = reading;
  const { track, closed, base, way } = setting;
  const firstColumn = elements.findIndex(isColumn);
  placeDots(context, firstColumn < 0 ? elements : elements.slice(0, firstColumn), way, track);
  if (columns.length === 0) return null;
  const sides = track.corners > 0 ? sidesOf(columns, corners, setting.firstSide, way) : [];
  const footOffset = footOffsets(context, columns, setting, sides);
  const natural = Math.max(
    ...columns.map((column, k) => (column.long ? 0 : (footOffset[k] ?? 0) + column.heightU)),
  );
  const least = !closed
    ? track.circle
      ? levelOfFan(columns, natural, setting.above)
      : natural
    : sides.length > 0
      ? leastLevelOfSides(columns, sides, track, setting.seamU)
      : leastLevel(columns, track, setting.seamU);
  // Chains of a foundation lie where they are measured, whatever stands up at their end.
  const level = setting.foundation ? 0 : Math.max(natural, least);
  const spreading = {
    columns,
    track,
    level,
    way,
    closed,
    base,
    bendOf: setting.bendOf,
    bends: setting.bends,
    above: setting.above,
    endsEven: setting.endsEven,
    edgesHeld: setting.edgesHeld,
    seamU: setting.seamU,
  } as const;
  const headsAt = (at: Float64Array): Float64Array =>
    headOffsets({
      columns,
      along: at,
      footAlong: Float64Array.from(columns, ({ footing }, k) =>
        footing === null || footing.inRing
          ? (at[k] ?? 0)
          : track.locate(footing.middle.x, footing.middle.y, level).s,
      ),
      footOffset,
      corners: new Set(
        sides.length > 0 ? corners.map(({ after }) => after) : besideBends(columns, setting.bends),
      ),
      // Where the row opens about the ring it follows that more than the fan's own foot.
      roundness: setting.above?.opens ? FAN_ROUNDNESS.aboutRing : FAN_ROUNDNESS.plain,
      evens: runsStraight(track),
      extra: Math.max(0, level - natural),
    });
  let along = sides.length > 0 ? spreadSides(spreading, sides) : spreadAlong(spreading);
  let heads = headsAt(along);
  if (sides.length > 0) {
    along = spreadSides(spreading, keptFromCorners(spreading, sides, heads));
    heads = headsAt(along);
  }

  pinCorners(corners, setting, level, along, heads);
  if (closed && !setting.endsEven) fanOutAtBends(columns, setting, level, heads);

  columns.forEach((column, k) => {
    placeColumn(context, column, {
      track,
      level,
      way,
      s: along[k] ?? 0,
      foot: footOffset[k] ?? 0,
      head: heads[k] ?? 0,
    });
  });
  placeArches(context, reading, { track, level, way, closed, along, heads, onNext: setting.foundation });
  aliasPosts(context.layout, elements);
  placePicots(context, elements);
  placeDots(context, elements.slice(firstColumn), way, track);
  // Chains that are no stitch of the row may end below its top.
  const high = Math.max(heads[0] ?? 0, heads[1] ?? 0);
  const low = footOffset[0] ?? 0;
  return {
    row,
    level,
    way,
    columns: standing(columns),
    track,
    archOverSeam: closed && (columns.at(-1)?.chainsAfter ?? 0) > 0,
    reach: reachOf(context.layout, columns),
    startS: along[0] ?? 0,
    chains: columns[0]?.element.kind === 'post' ? columns[0].element : null,
    // Of the room it has, what its neighbour has as well is air.
    startHalfU:
      columns[0]?.element.kind === 'post' ? 0.2 : Math.max(0.3, (columns[0]?.widthU ?? 0) / 2 - 0.12),
    endS: along[columns.length - 1] ?? 0,
    low,
    high,
  };
}

/** The first column of the two at each bend, or the one that stands in it. */
function besideBends(columns: readonly Column[], { stitches }: RowBends): number[] {
  return stitches.flatMap((beside) => {
    const found = columns.findIndex(({ stitch }) => beside.includes(stitch));
    return found < 0 ? [] : [found];
  });
}

/** How many columns stand for stitches. */
export function standing(columns: readonly Column[]): number {
  return columns.filter(({ element }) => element.kind !== 'post' || element.counted !== NONE).length;
}

/** Half the width of a stitch that is all stem and bar: what is wider reaches further. */
const SLIM_U = 0.5;

function reachOf(layout: Layout, columns: readonly Column[]): Reach {
  const reach = { left: Number.POSITIVE_INFINITY, right: Number.NEGATIVE_INFINITY };
  for (const { stitch, widthU, element } of columns) {
    const x = layout.headX[stitch] ?? 0;
    const beside = element.kind === 'stitch' ? Math.max(0, widthU / 2 - SLIM_U) : 0;
    reach.left = Math.min(reach.left, x - beside);
    reach.right = Math.max(reach.right, x + beside);
  }
  return reach;
}

function footOffsets(
  context: ChartContext,
  columns: readonly Column[],
  setting: RowSetting,
  sides: readonly Side[],
): Float64Array {
  const { track, base } = setting;
  const sideOf = new Map<number, number>();
  for (const side of sides) for (const k of side.columns) sideOf.set(k, side.side);
  const offsets = new Float64Array(columns.length).fill(Number.NaN);
  let last = base === null ? context.ringOffset : track.locate(base.x, base.y, 0).offset;
  columns.forEach((column, k) => {
    const { footing } = column;
    if (footing?.inRing) last = context.ringOffset;
    else if (footing !== null) {
      const from =
        isBare(column) || (sideOf.has(k) && standsInCorner(context, column)) ? footing.foot : footing.middle;
      last = offsetOf(track, from, footing.side ?? undefined, sideOf.get(k));
    } else if (column.element.kind !== 'laid' && k > 0) {
      const before = columns[k - 1];
      // A post at the end of the foundation stands on its chain.
      if (before?.element.kind === 'laid') last = CHAIN_THICKNESS_U / 2;
    }
    offsets[k] =
      column.element.kind === 'laid' &&
      context.fabric.rows[context.fabric.row[column.stitch] ?? 0]?.onto === null
        ? 0
        : last;
  });
  levelInCorners(context, columns, sideOf, offsets);
  return offsets;
}

/** Among those worked into the space at a corner. */
function standsInCorner({ fabric, cornerChains }: ChartContext, { stitch, footing }: Column): boolean {
  return footing?.inSpace === true && cornerChains.has(targets(fabric, stitch)[0] ?? NONE);
}

/** Feet in the space at a corner lie along its bow; on each side of it their heads are as high as from the highest of them. */
function levelInCorners(
  context: ChartContext,
  columns: readonly Column[],
  sideOf: ReadonlyMap<number, number>,
  offsets: Float64Array,
): void {
  const highest = new Map<string, number>();
  const keys = columns.map((column, k) =>
    sideOf.has(k) && standsInCorner(context, column) ? `${sideOf.get(k)} ${column.footing?.place}` : null,
  );
  keys.forEach((key, k) => {
    if (key !== null) highest.set(key, Math.max(highest.get(key) ?? 0, offsets[k] ?? 0));
  });
  keys.forEach((key, k) => {
    if (key !== null) offsets[k] = highest.get(key) ?? offsets[k] ?? 0;
  });
}

function offsetOf(
  track: Track,
  point: Point,
  side: number | undefined,
  cornered: number | undefined,
): number {
  const on =
    side ??
    (cornered === undefined ? undefined : ((cornered % track.corners) + track.corners) % track.corners);
  return track.locate(point.x, point.y, 0, on).offset;
}

/** Nearer the middle of its bend than the line itself what goes round a corner would run together. */
function fanOutAtBends(
  columns: readonly Column[],
  { bendOf }: RowSetting,
  level: number,
  heads: Float64Array,
): void {
  columns.forEach((column, k) => {
    if (bendOf(column) !== null) heads[k] = Math.max(heads[k] ?? level, level);
  });
}

/** Stitches that stand in a corner itself, where the two sides beside them meet. */
function pinCorners(
  corners: readonly Corner[],
  { track, firstSide, way }: RowSetting,
  level: number,
  along: Float64Array,
  heads: Float64Array,
): void {
  if (track.corners === 0) return;
  corners.forEach(({ after, pinned }, q) => {
    if (!pinned) return;
    const head = Math.max(heads[after - 1] ?? 0, heads[after] ?? 0, heads[after + 1] ?? 0);
    const side = firstSide + q * way;
    // Half a side is shorter at the height of the heads than at the level the sides are measured at.
    const shorter = (track.around(level) - track.around(head)) / (2 * track.corners);
    along[after] = track.cornerAt(way === 1 ? side : side - 1, level) + shorter;
    heads[after] = head;
  });
}
