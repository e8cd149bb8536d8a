/** One piece of a fabric, with what is worked onto its edges, in; every stitch of it placed out. */

import { type Fabric, FLAG } from '../fabric/fabric.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { bentTrack } from './bent-track.ts';
import { type ChartContext, type Reach, widest } from './context.ts';
import { hasFlag, rowElements } from './elements.ts';
import { NO_BENDS, type RowBends } from './find-bends.ts';
import { SIDE } from './footing.ts';
import { roomForPost, standBesideFirst } from './foundation-post.ts';
import { isBare } from './heads.ts';
import { outsideU } from './labels.ts';
import { anchorOf, type Layout, type Point } from './layout.ts';
import { SEAM_AT_CHAINS_U, seamU } from './metrics.ts';
import { goesRound, type Piece, pieceOf, wayOf } from './piece.ts';
import { firstCorner, firstFacing } from './piece-corners.ts';
import { BENDS, bendsOf, edgeTrack, ovalTrack, roundedTrack, sideTrack } from './piece-edges.ts';
import { placeLastArch } from './place-arches.ts';
import { placeBlocks } from './place-blocks.ts';
import { placeCentre, type Ring } from './place-centre.ts';
import { type PlacedRow, placeRow, standing } from './place-row.ts';
import { type RowReading, readRow } from './read-row.ts';
import { type RoomAbove, roomAbove } from './room-above.ts';
import { rowLabel } from './row-label.ts';
import { numberedWithin, polygonTrack, ROW_TRACK, roundTrack, runsStraight, type Track } from './track.ts';
import { type Around, layOut, unrolled, type Wall } from './walls.ts';

export interface PlacedPiece {
  readonly rows: readonly PlacedRow[];
  /** A ring in the middle that is no stitch of the fabric. */
  readonly bareRing: boolean;
  /** A ring of chains in the middle. */
  readonly ring: Ring | null;
  /** What of it is laid out straight though it is worked in rounds. */
  readonly wall: Wall | null;
}

/** Rounds start at the top; a fan opens upwards. */
const TOP = Math.PI / 2;
const BOTTOM = -Math.PI / 2;

/** Less than this the inner rounds need not be turned. */
const LEAST_TURN = 0.02;

/** `parts` are a part and the parts worked onto it, in order. */
export function placePiece(
  fabric: Fabric,
  rows: readonly StitchRow[],
  layout: Layout,
  parts: readonly number[],
): PlacedPiece {
  const piece = pieceOf(fabric, rows, layout, parts);
  const first = placeRows(piece, TOP);
  // Inner rounds without corners are turned so that the corners of the outer ones come out where they should.
  return Math.abs(first.turnBy) < LEAST_TURN ? first : placeRows(piece, TOP + first.turnBy);
}

interface Attempt extends PlacedPiece {
  /** How far the rounds would have to turn for the corners to meet what they are worked into. */
  readonly turnBy: number;
}

/** What changes from row to row as a piece is placed. */
interface Course {
  track: Track;
  /** Set once rounds are laid out straight. */
  wall: Wall | null;
  around: Around | null;
  /** A round with true corners has been placed. */
  cornered: boolean;
  inEdging: boolean;
  bareRing: boolean;
  ring: Ring | null;
  turnBy: number;
}

function placeRows(piece: Piece, startAngle: number): Attempt {
  const { context, oval } = piece;
  const { fabric, rows } = context;
  const placed: PlacedRow[] = [];
  /** The foundation, for what leads from it to the first row. */
  const readings = new Map<number, RowReading>();
  const course: Course = {
    track: firstTrack(piece, startAngle),
    wall: null,
    around: null,
    cornered: false,
    inEdging: false,
    bareRing: piece.magicRing,
    ring: null,
    turnBy: 0,
  };
  const blocks = piece.shape.blocks === null ? null : placeBlocks(context, piece.shape.blocks);
  placed.push(...(blocks?.rows ?? []));
  const inBlocks = new Set(placed.map(({ row }) => row));
  // The number of the last round stands outside it, where there is room.
  const outermost = piece.rowIndices.at(-1);
  for (const row of piece.rowIndices) {
    if (inBlocks.has(row)) continue;
    if (row === piece.shape.wall?.from) startWall(piece, course, placed);
    const elements = rowElements(fabric, rows, row, piece.centreEnd);
    course.ring ??= placeCentre(context, elements, startAngle);
    if (elements.some((element) => element.kind === 'centre')) course.bareRing = false;
    const way = wayOf(piece, row, elements);
    const read = readRow(context, row, elements);
    const foundation = fabric.rows[row]?.onto === null && elements.some((element) => element.kind === 'laid');
    const reading = course.around === null || foundation ? read : unrolled(read, course.around, way);
    const before = course.track;
    leaveTheFlat(piece, course, reading, placed, () => blocks?.edge ?? edgeTrack(placed));
    const startsSide = course.track !== before && runsStraight(course.track);
    const closed = fabric.rows[row]?.closing !== 'flat' && !runsStraight(course.track);
    const { track, firstSide } = alongCorners(piece, course, reading, placed, startAngle === TOP);
    const under = readings.get(fabric.rows[row]?.onto ?? -1);
    const done = placeRow(context, startsSide ? withoutPosts(reading) : reading, {
      track,
      way,
      closed,
      foundation,
      seamU:
        course.inEdging && reading.columns[0] !== undefined && isBare(reading.columns[0])
          ? SEAM_AT_CHAINS_U
          : seamU(numberedWithin(track) && row !== outermost ? rowLabel(fabric, row).length : 0),
      edgesHeld:
        !closed &&
        (piece.shape.straight.has(row) || columnsUnder(fabric, row, placed) >= standing(reading.columns)),
      base: startsSide ? firstFoot(reading) : baseOf(piece, row),
      firstSide,
      bendOf:
        course.inEdging || (oval && closed)
          ? bendsOf(fabric, reading.columns, track, course.inEdging ? BENDS.edging : BENDS.oval)
          : () => null,
      endsEven: oval && closed,
      above: piece.fan && !closed ? roomOver(piece, row, reading) : null,
      bends: roomForPost(bendsOfRow(piece, row), under, way),
    });
    if (done === null) continue;
    placed.push(piece.shape.bends === null ? done : standBesideFirst(context, under, reading, done));
    if (under !== undefined) placeLastArch(context, under, reading);
    if (placed.length === 1) readings.set(row, reading);
    if (foundation && piece.shape.wall?.from === row) course.around = aroundOf(done, reading.columns.length);
    if (!closed && !course.inEdging) context.reach.set(row, reachWithPost(context, row, done));
  }
  const { bareRing, ring, wall, turnBy } = course;
  return { rows: placed, bareRing, ring, wall, turnBy };
}

/** From here on rounds are laid out straight above what was placed. */
function startWall({ context, shape }: Piece, course: Course, placed: readonly PlacedRow[]): void {
  if (shape.wall === null || placed.length === 0) return;
  const { onto, top } = shape.wall;
  const outer = Math.max(...placed.map(({ level, high }) => Math.max(level, high)));
  const round = placed.filter(({ track }) => !runsStraight(track));
  course.wall = layOut(context, onto, top, outer + outsideU(round));
  course.track = course.wall.track;
  course.around = { widthU: top.widthU, middleS: 0 };
}

function aroundOf({ reach }: PlacedRow, chains: number): Around {
  return { widthU: chains, middleS: -(reach.left + reach.right) / 2 };
}

/** An oval goes round its foundation, an edging round its piece, what is worked into row ends along a side. */
function leaveTheFlat(
  { context, oval, round, firstStitch }: Piece,
  course: Course,
  { row, columns }: RowReading,
  placed: readonly PlacedRow[],
  edge: () => Track,
): void {
  const { fabric } = context;
  const closed = fabric.rows[row]?.closing !== 'flat';
  if (oval && course.track === ROW_TRACK && closed) course.track = ovalTrack(context, firstStitch);
  if (round || course.inEdging) return;
  if (goesRound(fabric, row)) {
    course.inEdging = true;
    course.track = edge();
    return;
  }
  const side = sideOfAll(columns);
  if (side === SIDE.left || side === SIDE.right) course.track = sideTrack(placed, side === SIDE.right);
}

/** The one side of the piece that all stitches of a row are worked into; null where there is none. */
function sideOfAll(columns: RowReading['columns']): number | null {
  let side: number | null = null;
  for (const { footing, element } of columns) {
    if (footing === null || element.kind !== 'stitch') continue;
    if (footing.side === null || (side !== null && footing.side !== side)) return null;
    side = footing.side;
  }
  return side;
}

/** Chains that lead to the first row along a side stand beside its first stitch. */
function withoutPosts(reading: RowReading): RowReading {
  const columns = reading.columns.map((column) =>
    column.element.kind === 'post' ? { ...column, footing: null } : column,
  );
  return { ...reading, columns };
}

function firstFoot({ columns }: RowReading): Point | null {
  return (
    columns.find(({ element, footing }) => element.kind === 'stitch' && footing !== null)?.footing?.foot ??
    null
  );
}

/** The line of a round that may turn true corners, and the side of the piece it begins on. */
function alongCorners(
  { context, round, corners }: Piece,
  course: Course,
  reading: RowReading,
  placed: readonly PlacedRow[],
  firstAttempt: boolean,
): { track: Track; firstSide: number } {
  const row = context.fabric.rows[reading.row];
  const turns = round && row?.closing !== 'flat' && corners > 2 && reading.corners.length === corners;
  // A round of a cornered piece that turns no corners keeps to the line of the last one's shape.
  if (!turns)
    return {
      track: course.cornered ? roundedTrack(corners, placed.at(-1)?.level ?? 1) : course.track,
      firstSide: 0,
    };
  if (!course.cornered) course.track = polygonTrack(corners, firstFacing(corners));
  const way = row?.direction === 'right' ? -1 : 1;
  const found = firstCorner(reading, corners, way, placed.length > 0);
  if (!course.cornered && firstAttempt) course.turnBy = found.turnBy;
  course.cornered = true;
  return { track: course.track, firstSide: way === 1 ? found.corner : found.corner + 1 };
}

function bendsOfRow({ shape: { bends } }: Piece, row: number): RowBends {
  return bends === null ? NO_BENDS : { ...bends, stitches: bends.stitches.get(row) ?? [] };
}

function roomOver(
  { context, rowIndices, centreEnd }: Piece,
  row: number,
  { columns }: RowReading,
): RoomAbove | null {
  const { fabric, rows } = context;
  const above = rowIndices.find((next) => fabric.rows[next]?.onto === row);
  return above === undefined
    ? null
    : roomAbove(context, columns, rowElements(fabric, rows, above, centreEnd));
}

function firstTrack(
  { round, oval, fan, rowIndices, shape: { bends, wall } }: Piece,
  startAngle: number,
): Track {
  if (bends !== null) return bentTrack(bends.bends, bends.slope);
  if (fan) return roundTrack([[0, 0]], BOTTOM);
  return round && !oval && wall?.from !== rowIndices[0] ? roundTrack([[0, 0]], startAngle) : ROW_TRACK;
}

/** Where a row begins: on top of the stitch before it, or of the one that stitch was joined to. */
function baseOf({ context, centreEnd, firstStitch }: Piece, row: number): Point | null {
  const { fabric, layout } = context;
  const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
  let start = first;
  while (start < end && hasFlag(fabric, start, FLAG.travel)) start += 1;
  const before = start - 1;
  if (before < centreEnd || before < firstStitch || !layout.placed[before]) return null;
  return anchorOf(layout, before);
}

/** A row whose turning chain was made with the foundation reaches as far as that. */
function reachWithPost({ fabric, reach }: ChartContext, row: number, done: PlacedRow): Reach {
  const onto = fabric.rows[row]?.onto ?? null;
  const under = onto === null || fabric.rows[onto]?.number !== null ? undefined : reach.get(onto);
  return under === undefined ? done.reach : widest([done.reach, under]);
}

function columnsUnder(fabric: Fabric, row: number, placed: readonly PlacedRow[]): number {
  const onto = fabric.rows[row]?.onto;
  // The row it stands on is nearly always the last one.
  return placed.findLast((under) => under.row === onto)?.columns ?? 0;
}
