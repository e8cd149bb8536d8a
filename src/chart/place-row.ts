/** One row or round and the line it runs along in; its stitches placed in the layout, and where its label goes, out. */

import { targets } from '../fabric/fabric.ts';
import { CHAIN_THICKNESS_U } from '../symbols/chain.ts';
import { archPoints } from './arch.ts';
import { type Column, columnsOf, isColumn } from './columns.ts';
import type { ChartContext } from './context.ts';
import { type Corner, cornersOf } from './corners.ts';
import type { RowElement } from './elements.ts';
import { footings } from './footing.ts';
import { headOffsets } from './heads.ts';
import { anchorOf, headOf, type Layout, type Point, place } from './layout.ts';
import { PITCH_U } from './metrics.ts';
import { leastLevel, leastLevelOfSides, type Side, sidesOf, spreadAlong, spreadSides } from './spread.ts';
import type { Track } from './track.ts';

export interface RowReading {
  readonly row: number;
  readonly elements: readonly RowElement[];
  readonly columns: readonly Column[];
  readonly corners: readonly Corner[];
}

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
  readonly endS: number;
  /** Foot and head of the first column, outwards: the label stands between. */
  readonly low: number;
  readonly high: number;
}

/** `elements` of a row in, what it is worked into found: everything before it must have been placed. */
export function readRow(context: ChartContext, row: number, elements: readonly RowElement[]): RowReading {
  const stitches = elements.flatMap((element) =>
    element.kind === 'stitch' ? [element.stitch] : element.kind === 'post' ? [element.first] : [],
  );
  const found = footings(context, stitches);
  const byStitch = new Map(stitches.map((stitch, k) => [stitch, found[k] ?? null]));
  const columns = columnsOf(context.fabric, context.rows, elements, (stitch) => byStitch.get(stitch) ?? null);
  return { row, elements, columns, corners: cornersOf(context, elements, columns) };
}

export interface RowSetting {
  readonly track: Track;
  /** 1 where the work goes left or anticlockwise, -1 the other way. */
  readonly way: 1 | -1;
  readonly closed: boolean;
  /** Neither end of the row is to move outwards: it has no more stitches than the row it stands on. */
  readonly edgesHeld: boolean;
  /** What the row begins on: the top of the last stitch before it. */
  readonly base: Point | null;
  /** Side of the piece that the round begins on, for pieces with true corners. */
  readonly firstSide: number;
  readonly bendOf: (column: Column) => number | null;
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
  const natural = Math.max(...columns.map((column, k) => (column.long ? 0 : (footOffset[k] ?? 0) + column.heightU)));
  const least = !closed ? natural : sides.length > 0 ? leastLevelOfSides(columns, sides, track) : leastLevel(columns, track);
  const level = Math.max(natural, least);
  const spreading = { columns, track, level, way, closed, base, bendOf: setting.bendOf, edgesHeld: setting.edgesHeld } as const;
  const along = sides.length > 0 ? spreadSides(spreading, sides) : spreadAlong(spreading);
  pinCorners(corners, sides, setting, level, way, along);
  const footAlong = Float64Array.from(columns, ({ footing }, k) =>
    footing === null || footing.inRing ? (along[k] ?? 0) : track.locate(footing.middle.x, footing.middle.y, level).s,
  );
  const heads = headOffsets({ columns, along, footAlong, footOffset, corners: new Set(sides.length > 0 ? corners.map(({ after }) => after) : []), extra: level - natural });

  columns.forEach((column, k) => {
    placeColumn(context, column, { track, level, way, s: along[k] ?? 0, foot: footOffset[k] ?? 0, head: heads[k] ?? 0 });
  });
  placeArches(context, reading, { track, level, way, closed, along, heads });
  placePicots(context, elements);
  placeDots(context, elements.slice(firstColumn), way, track);
  const high = heads[0] ?? 0;
  const low = footOffset[0] ?? 0;
  return { row, level, way, columns: columns.length, track, startS: along[0] ?? 0, endS: along[columns.length - 1] ?? 0, low, high };
}

function footOffsets(context: ChartContext, columns: readonly Column[], setting: RowSetting, sides: readonly Side[]): Float64Array {
  const { track, base } = setting;
  const sideOf = new Map<number, number>();
  for (const side of sides) for (const k of side.columns) sideOf.set(k, side.side);
  const offsets = new Float64Array(columns.length).fill(Number.NaN);
  let last = base === null ? context.ringOffset : track.locate(base.x, base.y, 0).offset;
  columns.forEach((column, k) => {
    const { footing } = column;
    if (footing?.inRing) last = context.ringOffset;
    else if (footing !== null) last = offsetOf(track, footing.middle, footing.side ?? undefined, sideOf.get(k));
    else if (column.element.kind !== 'laid' && k > 0) {
      const before = columns[k - 1];
      // A post at the end of the foundation stands on its chain.
      if (before?.element.kind === 'laid') last = CHAIN_THICKNESS_U / 2;
    }
    offsets[k] = column.element.kind === 'laid' && context.fabric.rows[context.fabric.row[column.stitch] ?? 0]?.onto === null ? 0 : last;
  });
  return offsets;
}

function offsetOf(track: Track, point: Point, side: number | undefined, cornered: number | undefined): number {
  const on = side ?? (cornered === undefined ? undefined : ((cornered % track.corners) + track.corners) % track.corners);
  return track.locate(point.x, point.y, 0, on).offset;
}

/** Stitches that stand in a corner itself. */
function pinCorners(
  corners: readonly Corner[],
  sides: readonly Side[],
  setting: RowSetting,
  level: number,
  way: 1 | -1,
  along: Float64Array,
): void {
  if (sides.length === 0) return;
  corners.forEach((corner, q) => {
    const side = setting.firstSide + q * way;
    if (corner.pinned) along[corner.after] = setting.track.cornerAt(way === 1 ? side : side - 1, level);
  });
}

interface ColumnPlace {
  readonly track: Track;
  readonly level: number;
  readonly way: 1 | -1;
  readonly s: number;
  readonly foot: number;
  readonly head: number;
}

function placeColumn(context: ChartContext, column: Column, at: ColumnPlace): void {
  const { element, footing } = column;
  switch (element.kind) {
    case 'stitch':
      placeStitch(context, element.stitch, footing, at);
      return;
    case 'post':
      placePost(context, element.first, element.end, footing, at);
      return;
    case 'laid':
      placeLaid(context.layout, element.stitch, at);
      return;
  }
}

function placeStitch(context: ChartContext, stitch: number, footing: Column['footing'], at: ColumnPlace): void {
  const head = at.track.point(at.s, at.level, at.head);
  const own = at.track.point(at.s, at.level, at.foot);
  let foot: Point = own;
  if (footing?.inRing) foot = towardsMiddle(head, context.ringOffset);
  else if (footing !== null) foot = footing.foot;
  place(context.layout, stitch, { footX: foot.x, footY: foot.y, headX: head.x, headY: head.y, upX: head.upX, upY: head.upY });
}

function towardsMiddle(head: Point, offset: number): Point {
  const away = Math.hypot(head.x, head.y) || 1;
  return { x: (head.x / away) * offset, y: (head.y / away) * offset };
}

function placePost(context: ChartContext, first: number, end: number, footing: Column['footing'], at: ColumnPlace): void {
  const { layout } = context;
  const head = at.track.point(at.s, at.level, at.head);
  const own = at.track.point(at.s, at.level, at.foot);
  const isRing = footing?.inRing ?? false;
  // In a space it stands among the feet of the stitches after it; elsewhere upright.
  const foot = isRing ? towardsMiddle(head, context.ringOffset) : (footing?.inSpace ?? false) ? (footing?.foot ?? own) : own;
  const chains = end - first;
  // Air under the first chain, as under the foot of a stitch.
  const from = 0.06;
  for (let k = 0; k < chains; k += 1) {
    const t0 = from + ((1 - from) * k) / chains;
    const t1 = from + ((1 - from) * (k + 1)) / chains;
    place(layout, first + k, {
      footX: foot.x + (head.x - foot.x) * t0,
      footY: foot.y + (head.y - foot.y) * t0,
      headX: foot.x + (head.x - foot.x) * t1,
      headY: foot.y + (head.y - foot.y) * t1,
      upX: head.upX,
      upY: head.upY,
    });
  }
}

function placeLaid(layout: Layout, stitch: number, at: ColumnPlace): void {
  const half = (PITCH_U.laid / 2) * at.way;
  const from = at.track.point(at.s - half, at.level, at.foot);
  const to = at.track.point(at.s + half, at.level, at.foot);
  const middle = at.track.point(at.s, at.level, at.foot + CHAIN_THICKNESS_U / 2);
  place(layout, stitch, {
    footX: from.x,
    footY: from.y,
    headX: to.x,
    headY: to.y,
    anchorX: middle.x,
    anchorY: middle.y,
    upX: middle.upX,
    upY: middle.upY,
  });
}

interface ArchSetting {
  readonly track: Track;
  readonly level: number;
  readonly way: 1 | -1;
  readonly closed: boolean;
  readonly along: Float64Array;
  readonly heads: Float64Array;
}

function placeArches(context: ChartContext, { elements, columns }: RowReading, setting: ArchSetting): void {
  const { layout } = context;
  let column = -1;
  elements.forEach((element, e) => {
    if (isColumn(element)) column += 1;
    if (element.kind !== 'arch') return;
    const k = Math.max(0, column);
    const before = columns[k];
    const isLast = column + 1 >= columns.length;
    const after = isLast ? columns[0] : columns[column + 1];
    if (before === undefined || after === undefined) return;
    const chains = element.end - element.first;
    const from = headOf(layout, before.stitch);
    const s0 = setting.along[k] ?? 0;
    let s1 = setting.along[isLast ? 0 : column + 1] ?? 0;
    let to: Point = headOf(layout, after.stitch);
    if (isLast && setting.closed) {
      s1 += setting.way * setting.track.around(setting.level);
      const join = elements.slice(e + 1).find((next) => next.kind === 'dot');
      const joined = join?.kind === 'dot' ? targets(context.fabric, join.stitch)[0] : undefined;
      if (joined !== undefined && layout.placed[joined]) to = anchorOf(layout, joined);
    } else if (isLast) {
      s1 = s0 + setting.way * chains * PITCH_U.chain;
      to = setting.track.point(s1, setting.level, setting.heads[k] ?? 0);
    }
    const offset = ((setting.heads[k] ?? 0) + (setting.heads[isLast ? k : column + 1] ?? 0)) / 2;
    const crest = setting.track.point((s0 + s1) / 2, setting.level, offset);
    placeArch(layout, element.first, element.end, from, to, crest);
  });
}

/** Air between an arch and the heads it hangs between, at most and as a share of the distance. */
const ARCH_END_U = 0.34;
const ARCH_END_SHARE = 0.17;

function placeArch(layout: Layout, first: number, end: number, from: Point, to: Point, crest: Point & { upX: number; upY: number }): void {
  const chains = end - first;
  const chord = Math.hypot(to.x - from.x, to.y - from.y) || 1e-6;
  const trim = Math.min(ARCH_END_U, chord * ARCH_END_SHARE) / chord;
  const fromX = from.x + (to.x - from.x) * trim;
  const fromY = from.y + (to.y - from.y) * trim;
  const toX = to.x + (from.x - to.x) * trim;
  const toY = to.y + (from.y - to.y) * trim;
  // Round a centre it bows at least as far as the round itself.
  const round = (crest.x - (from.x + to.x) / 2) * crest.upX + (crest.y - (from.y + to.y) / 2) * crest.upY;
  const least = Math.max(Math.min(round, chord), chord * (chains >= 3 ? 0.17 : 0.05));
  const at = archPoints({ fromX, fromY, toX, toY, upX: crest.upX, upY: crest.upY, length: chains * PITCH_U.chain, leastBow: least });
  for (let k = 0; k < chains; k += 1) {
    const start = at(k / chains);
    const stop = at((k + 1) / chains);
    const middle = at((k + 0.5) / chains);
    place(layout, first + k, {
      footX: start.x,
      footY: start.y,
      headX: stop.x,
      headY: stop.y,
      anchorX: middle.x + (middle.upX * CHAIN_THICKNESS_U) / 2,
      anchorY: middle.y + (middle.upY * CHAIN_THICKNESS_U) / 2,
      upX: middle.upX,
      upY: middle.upY,
    });
  }
}

/** A loop of chains on the head of the stitch before it, closed by a dot at its foot. */
function placePicots(context: ChartContext, elements: readonly RowElement[]): void {
  const { layout, fabric } = context;
  for (const element of elements) {
    if (element.kind !== 'picot') continue;
    const chains = element.end - element.first;
    const closing = element.end;
    const held = Math.min(element.first, targets(fabric, closing)[0] ?? element.first);
    const stitch = held === element.first ? element.first - 1 : held;
    const foot = anchorOf(layout, stitch);
    const upX = layout.upX[stitch] ?? 0;
    const upY = layout.upY[stitch] ?? 1;
    const radius = Math.max(0.3, (chains * PITCH_U.ring) / (2 * Math.PI));
    const lift = 0.2;
    const centreX = foot.x + upX * (radius + lift);
    const centreY = foot.y + upY * (radius + lift);
    const at = (t: number): { x: number; y: number; upX: number; upY: number } => {
      // From the foot round to the foot again.
      const angle = Math.atan2(-upY, -upX) - (0.04 + 0.92 * t) * 2 * Math.PI;
      return { x: centreX + radius * Math.cos(angle), y: centreY + radius * Math.sin(angle), upX: Math.cos(angle), upY: Math.sin(angle) };
    };
    for (let k = 0; k < chains; k += 1) {
      const start = at(k / chains);
      const stop = at((k + 1) / chains);
      const middle = at((k + 0.5) / chains);
      place(layout, element.first + k, {
        footX: start.x,
        footY: start.y,
        headX: stop.x,
        headY: stop.y,
        anchorX: middle.x + middle.upX * 0.19,
        anchorY: middle.y + middle.upY * 0.19,
        upX: middle.upX,
        upY: middle.upY,
      });
    }
    placeDot(layout, closing, foot, { x: upX, y: upY }, 0);
  }
}

/** How far before the stitch it joins to a joining dot stands, and how far above the stitch it moves along. */
const JOIN_BACK_U = 0.4;

function placeDots(context: ChartContext, elements: readonly RowElement[], way: 1 | -1, track: Track): void {
  const { fabric, layout } = context;
  for (const element of elements) {
    if (element.kind !== 'dot') continue;
    const into = targets(fabric, element.stitch);
    let x = 0;
    let y = 0;
    for (const target of into) {
      x += (layout.anchorX[target] ?? 0) / into.length;
      y += (layout.anchorY[target] ?? 0) / into.length;
    }
    const nearest = into[Math.floor(into.length / 2)] ?? 0;
    const up = { x: layout.upX[nearest] ?? 0, y: layout.upY[nearest] ?? 1 };
    const isJoin = fabric.row[nearest] === fabric.row[element.stitch];
    // On the side the round comes back from: clockwise of its start where work goes anticlockwise.
    const back = isJoin && track.around(1) !== Number.POSITIVE_INFINITY ? JOIN_BACK_U * way : 0;
    placeDot(layout, element.stitch, { x: x + up.y * back, y: y - up.x * back }, up, isJoin ? -0.18 : 0);
    // What is worked after it goes on from the stitch it joins to.
    layout.anchorX[element.stitch] = x;
    layout.anchorY[element.stitch] = y;
  }
}

function placeDot(layout: Layout, i: number, at: Point, up: Point, lift: number): void {
  const foot = { x: at.x + up.x * lift, y: at.y + up.y * lift };
  place(layout, i, {
    footX: foot.x,
    footY: foot.y,
    headX: foot.x + up.x * 0.36,
    headY: foot.y + up.y * 0.36,
    upX: up.x,
    upY: up.y,
    anchorX: at.x,
    anchorY: at.y,
  });
}
