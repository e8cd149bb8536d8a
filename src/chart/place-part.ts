/** One piece of a fabric, with what is worked onto its edges, in; every stitch of it placed out. */

import { type Fabric, FLAG, INTO } from '../fabric/fabric.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { bentTrack } from './bent-track.ts';
import { rowHeight } from './columns.ts';
import { type ChartContext, type Reach, widest } from './context.ts';
import { hasFlag, type RowElement, rowElements } from './elements.ts';
import { type Bends, findBends, NO_BENDS, type RowBends } from './find-bends.ts';
import { findCorners, NO_CORNERS } from './find-corners.ts';
import { SIDE } from './footing.ts';
import { anchorOf, type Layout, type Point } from './layout.ts';
import { seamU } from './metrics.ts';
import { cornerChains, firstCorner, firstFacing } from './piece-corners.ts';
import { BENDS, bendsOf, edgeTrack, ovalTrack, roundedTrack } from './piece-edges.ts';
import { placeLastArch } from './place-arches.ts';
import { centreEndOf, placeCentre, ringOffset } from './place-centre.ts';
import { type PlacedRow, placeRow, standing } from './place-row.ts';
import { type RowReading, readRow } from './read-row.ts';
import { rowLabel } from './row-label.ts';
import { rowWidths, straightRows } from './row-widths.ts';
import { numberedWithin, polygonTrack, ROW_TRACK, roundTrack, type Track } from './track.ts';

export interface PlacedPiece {
  readonly rows: readonly PlacedRow[];
  /** A ring in the middle that is no stitch of the fabric. */
  readonly bareRing: boolean;
}

/** Rounds start at the top. */
const TOP = Math.PI / 2;

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

interface Piece extends FlatShape {
  readonly context: ChartContext;
  readonly rowIndices: readonly number[];
  /** Worked round a centre, or round both sides of a chain. */
  readonly round: boolean;
  readonly oval: boolean;
  readonly corners: number;
  readonly firstStitch: number;
  /** Just past what lies in the middle. */
  readonly centreEnd: number;
  readonly magicRing: boolean;
}

function pieceOf(
  fabric: Fabric,
  rows: readonly StitchRow[],
  layout: Layout,
  parts: readonly number[],
): Piece {
  const part = fabric.parts[parts[0] ?? 0];
  const start = part?.start ?? null;
  const rowIndices = parts.flatMap((index) => rowsOf(fabric, index));
  const firstStitch = fabric.rows[part?.firstRow ?? 0]?.first ?? 0;
  const round = part?.shape === 'round';
  const said = Math.max(...parts.map((index) => fabric.parts[index]?.corners ?? 0));
  const found = said === 0 && round ? findCorners(fabric, rows, rowIndices) : NO_CORNERS;
  const corners = said === 0 ? found.corners : said;
  const oval = start === 'chain' && rowIndices.some((row) => worksUnder(fabric, row));
  const centreEnd = oval || !round ? firstStitch : centreEndOf(fabric, rows, start, firstStitch);
  const context: ChartContext = {
    fabric,
    rows,
    layout,
    cornerChains: cornerChains(fabric),
    cornerStitches: found.stitches,
    centreChain: start === 'chain' && round && !oval ? firstStitch : -1,
    // An oval has two sides, a flat piece four.
    underside: oval ? 1 : SIDE.bottom,
    ringOffset: ringOffset(centreEnd - firstStitch, start),
    reach: new Map(),
  };
  const magicRing = round && start === 'magic ring';
  const piece = { context, rowIndices, round, oval, corners, firstStitch, centreEnd, magicRing };
  return { ...piece, ...shapeOf(piece) };
}

interface FlatShape {
  /** Peaks and valleys that its rows run up and down between. */
  readonly bends: Bends | null;
  /** Rows whose edges run straight up. */
  readonly straight: ReadonlySet<number>;
}

function shapeOf(piece: Omit<Piece, keyof FlatShape>): FlatShape {
  const { context, rowIndices, round, centreEnd } = piece;
  const { fabric, rows } = context;
  if (round) return { bends: null, straight: new Set() };
  const flat = rowIndices
    .filter((row) => !goesRound(fabric, row))
    .map((row) => {
      const elements = rowElements(fabric, rows, row, centreEnd);
      return { row, elements, way: wayOf(piece, row, elements), heightU: rowHeight(fabric, rows, elements) };
    });
  const widths = new Map(
    flat.map(({ row, elements, way }) => [row, rowWidths(fabric, rows, elements, way)] as const),
  );
  return {
    bends: flat.length < rowIndices.length ? null : findBends(fabric, flat, widths),
    straight: straightRows(fabric, widths),
  };
}

interface Attempt extends PlacedPiece {
  /** How far the rounds would have to turn for the corners to meet what they are worked into. */
  readonly turnBy: number;
}

function placeRows(piece: Piece, startAngle: number): Attempt {
  const { context, round, oval, corners } = piece;
  const { fabric, rows } = context;
  const placed: PlacedRow[] = [];
  /** The foundation, for what leads from it to the first row. */
  const readings = new Map<number, RowReading>();
  let track = firstTrack(piece, startAngle);
  let turnBy = 0;
  let cornered = false;
  let inEdging = false;
  let bareRing = piece.magicRing;
  // The number of the last round stands outside it, where there is room.
  const outermost = piece.rowIndices.at(-1);
  for (const row of piece.rowIndices) {
    const elements = rowElements(fabric, rows, row, piece.centreEnd);
    placeCentre(context, elements, startAngle);
    if (elements.some((element) => element.kind === 'centre')) bareRing = false;
    const reading = readRow(context, row, elements);
    const closed = fabric.rows[row]?.closing !== 'flat';
    if (oval && track === ROW_TRACK && closed) track = ovalTrack(context, piece.firstStitch);
    if (!round && !inEdging && goesRound(fabric, row)) {
      inEdging = true;
      track = edgeTrack(placed);
    }
    let firstSide = 0;
    const turnsCorners = round && closed && corners > 2 && reading.corners.length === corners;
    if (turnsCorners) {
      if (!cornered) track = polygonTrack(corners, firstFacing(corners));
      const way = fabric.rows[row]?.direction === 'right' ? -1 : 1;
      const found = firstCorner(reading, corners, way, placed.length > 0);
      firstSide = way === 1 ? found.corner : found.corner + 1;
      if (!cornered && startAngle === TOP) turnBy = found.turnBy;
      cornered = true;
    }
    // A round of a cornered piece that turns no corners keeps to the line of the last one's shape.
    const along = cornered && !turnsCorners ? roundedTrack(corners, placed.at(-1)?.level ?? 1) : track;
    const done = placeRow(context, reading, {
      track: along,
      way: wayOf(piece, row, elements),
      closed,
      foundation: fabric.rows[row]?.onto === null && elements.some((element) => element.kind === 'laid'),
      seamU: seamU(numberedWithin(along) && row !== outermost ? rowLabel(fabric, row).length : 0),
      edgesHeld:
        !closed &&
        (piece.straight.has(row) || columnsUnder(fabric, row, placed) >= standing(reading.columns)),
      base: baseOf(piece, row),
      firstSide,
      bendOf:
        inEdging || (oval && closed)
          ? bendsOf(fabric, reading.columns, along, inEdging ? BENDS.edging : BENDS.oval)
          : () => null,
      bends: bendsOfRow(piece, row),
    });
    if (done === null) continue;
    placed.push(done);
    const under = readings.get(fabric.rows[row]?.onto ?? -1);
    if (under !== undefined) placeLastArch(context, under, reading);
    if (placed.length === 1) readings.set(row, reading);
    if (!closed && !inEdging) context.reach.set(row, reachWithPost(context, row, done));
  }
  return { rows: placed, bareRing, turnBy };
}

function bendsOfRow({ bends }: Piece, row: number): RowBends {
  return bends === null ? NO_BENDS : { ...bends, stitches: bends.stitches.get(row) ?? [] };
}

function firstTrack({ round, oval, bends }: Piece, startAngle: number): Track {
  if (bends !== null) return bentTrack(bends.bends, bends.slope);
  return round && !oval ? roundTrack([[0, 0]], startAngle) : ROW_TRACK;
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

/** A foundation is worked towards where the first row on it begins. */
function wayOf(
  { context, rowIndices }: Pick<Piece, 'context' | 'rowIndices'>,
  row: number,
  elements: readonly RowElement[],
): 1 | -1 {
  const { fabric } = context;
  const way = fabric.rows[row]?.direction === 'right' ? -1 : 1;
  if (fabric.rows[row]?.onto !== null || !elements.some((element) => element.kind === 'laid')) return way;
  const onIt = rowIndices.find((next) => fabric.rows[next]?.onto === row);
  if (onIt === undefined) return way;
  return fabric.rows[onIt]?.direction === 'right' ? 1 : -1;
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

/** Whether a row of a flat piece is worked along its edges. */
function goesRound(fabric: Fabric, row: number): boolean {
  return fabric.rows[row]?.edging === true || fabric.rows[row]?.closing !== 'flat';
}

function rowsOf(fabric: Fabric, part: number): number[] {
  const { firstRow, endRow } = fabric.parts[part] ?? { firstRow: 0, endRow: 0 };
  return Array.from({ length: endRow - firstRow }, (_, k) => firstRow + k);
}

function worksUnder(fabric: Fabric, row: number): boolean {
  const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
  return fabric.where.subarray(first, end).includes(INTO.underside);
}
