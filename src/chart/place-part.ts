/** One piece of a fabric, with what is worked onto its edges, in; every stitch of it placed out. */

import { FLAG, type Fabric, INTO, targets } from '../fabric/fabric.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { CHAIN_THICKNESS_U } from '../symbols/chain.ts';
import { MAGIC_RING_RADIUS_U } from '../symbols/magic-ring.ts';
import type { Column } from './columns.ts';
import type { ChartContext } from './context.ts';
import { hasFlag, type RowElement, rowElements } from './elements.ts';
import { anchorOf, type Layout, type Point, place } from './layout.ts';
import { PITCH_U } from './metrics.ts';
import { type PlacedRow, placeRow, type RowReading, readRow } from './place-row.ts';
import { mod, polygonTrack, ROW_TRACK, roundTrack, type Track } from './track.ts';

export interface PlacedPiece {
  readonly rows: readonly PlacedRow[];
  /** A ring in the middle that is no stitch of the fabric. */
  readonly bareRing: boolean;
}

/** `parts` are a part and the parts worked onto it, in order. */
export function placePiece(fabric: Fabric, rows: readonly StitchRow[], layout: Layout, parts: readonly number[]): PlacedPiece {
  const piece = new Piece(fabric, rows, layout, parts);
  const first = piece.place(Math.PI / 2);
  // Inner rounds without corners are turned so that the corners of the outer ones come out where they should.
  return first.turnBy === 0 ? first : piece.place(Math.PI / 2 + first.turnBy);
}

interface Attempt extends PlacedPiece {
  readonly turnBy: number;
}

const LEAST_TURN = 0.02;

/** One piece being placed: what is known grows row by row. */
class Piece {
  private readonly context: ChartContext;
  private readonly round: boolean;
  private readonly corners: number;
  private readonly centreEnd: number;
  private readonly oval: boolean;
  private readonly firstStitch: number;
  private readonly rowIndices: readonly number[];

  constructor(fabric: Fabric, rows: readonly StitchRow[], layout: Layout, parts: readonly number[]) {
    const part = fabric.parts[parts[0] ?? 0];
    this.rowIndices = parts.flatMap((index) => rowsOf(fabric, index));
    this.firstStitch = fabric.rows[part?.firstRow ?? 0]?.first ?? 0;
    this.round = part?.shape === 'round';
    this.corners = Math.max(...parts.map((index) => fabric.parts[index]?.corners ?? 0));
    this.oval = part?.start === 'chain' && this.rowIndices.some((row) => worksUnder(fabric, row));
    this.centreEnd = this.oval || !this.round ? this.firstStitch : centreEndOf(fabric, rows, part?.start ?? null, this.firstStitch);
    this.context = {
      fabric,
      rows,
      layout,
      cornerChains: cornerChains(fabric, this.rowIndices, this.corners),
      centreChain: part?.start === 'chain' && this.round && !this.oval ? this.firstStitch : -1,
      ringOffset: ringOffset(this.centreEnd - this.firstStitch, part?.start ?? null),
      rowMiddleX: new Map(),
    };
  }

  place(startAngle: number): Attempt {
    const { fabric, rows } = this.context;
    const placed: PlacedRow[] = [];
    let track: Track = this.round && !this.oval ? roundTrack([[0, 0]], startAngle) : ROW_TRACK;
    let turnBy = 0;
    let cornered = false;
    let inEdging = false;
    let bareRing = this.round && fabric.parts[fabric.rows[this.rowIndices[0] ?? 0]?.part ?? 0]?.start === 'magic ring';
    for (const row of this.rowIndices) {
      const elements = rowElements(fabric, rows, row, this.centreEnd);
      this.placeCentre(elements, startAngle);
      if (elements.some((element) => element.kind === 'centre')) bareRing = false;
      const reading = readRow(this.context, row, elements);
      const closed = fabric.rows[row]?.closing !== 'flat';
      if (this.oval && track === ROW_TRACK && closed) track = this.ovalTrack();
      if (!this.round && !inEdging && this.goesRound(row)) {
        inEdging = true;
        track = this.edgeTrack(placed);
      }
      let firstSide = 0;
      if (this.round && closed && this.corners > 2 && reading.corners.length === this.corners) {
        if (!cornered) track = polygonTrack(this.corners, firstFacing(this.corners));
        const found = this.firstCorner(reading, track, startAngle, placed.length > 0);
        firstSide = fabric.rows[row]?.direction === 'right' ? found.corner + 1 : found.corner;
        if (!cornered) turnBy = found.turnBy;
        cornered = true;
      }
      // A round of a cornered piece that turns no corners keeps to the line of the last one's shape.
      const along = cornered && reading.corners.length !== this.corners ? this.plainTrack(placed) : track;
      const done = placeRow(this.context, reading, {
        track: along,
        way: this.wayOf(row, elements),
        closed,
        edgesHeld: !closed && this.columnsUnder(row, placed) >= reading.columns.length,
        base: this.baseOf(row),
        firstSide,
        bendOf: (column) => (inEdging ? this.bendOf(column, along) : null),
      });
      if (done === null) continue;
      placed.push(done);
      if (!closed) this.context.rowMiddleX.set(row, along.point((done.startS + done.endS) / 2, done.level, 0).x);
    }
    return { rows: placed, bareRing, turnBy: Math.abs(turnBy) < LEAST_TURN || startAngle !== Math.PI / 2 ? 0 : turnBy };
  }

  /** Where a row begins: on top of the stitch before it, or of the one that stitch was joined to. */
  private baseOf(row: number): Point | null {
    const { fabric, layout } = this.context;
    const first = fabric.rows[row]?.first ?? 0;
    let start = first;
    while (start < (fabric.rows[row]?.end ?? 0) && hasFlag(fabric, start, FLAG.travel)) start += 1;
    const before = start - 1;
    if (before < this.centreEnd || before < this.firstStitch || !layout.placed[before]) return null;
    return anchorOf(layout, before);
  }

  /** A foundation is worked towards where the first row on it begins. */
  private wayOf(row: number, elements: readonly RowElement[]): 1 | -1 {
    const { fabric } = this.context;
    const way = fabric.rows[row]?.direction === 'right' ? -1 : 1;
    if (fabric.rows[row]?.onto !== null || !elements.some((element) => element.kind === 'laid')) return way;
    const onIt = this.rowIndices.find((next) => fabric.rows[next]?.onto === row);
    if (onIt === undefined) return way;
    return fabric.rows[onIt]?.direction === 'right' ? 1 : -1;
  }

  private columnsUnder(row: number, placed: readonly PlacedRow[]): number {
    const onto = this.context.fabric.rows[row]?.onto;
    return placed.find((under) => under.row === onto)?.columns ?? 0;
  }

  private placeCentre(elements: readonly RowElement[], startAngle: number): void {
    const { layout, fabric, rows } = this.context;
    for (const element of elements) {
      if (element.kind !== 'centre') continue;
      const chains: number[] = [];
      for (let i = element.first; i < element.end; i += 1) {
        const family = rows[fabric.kind[i] ?? 0]?.family;
        if (family === 'chain') chains.push(i);
        else if (family === 'start') place(layout, i, { footX: 0, footY: 0, headX: 0, headY: 0, upX: 0, upY: 1 });
        else placeJoin(layout, i, ringRadius(chains.length), startAngle);
      }
      if (chains.length > 0) placeRing(layout, chains, startAngle);
    }
  }

  /** Whether a row of a flat piece is worked along its edges. */
  private goesRound(row: number): boolean {
    const { fabric } = this.context;
    return fabric.rows[row]?.edging === true || fabric.rows[row]?.closing !== 'flat';
  }

  /** Corner that a round's first corner falls on, and how far the inner rounds must turn to meet it. */
  private firstCorner(reading: RowReading, track: Track, startAngle: number, onRounds: boolean): { corner: number; turnBy: number } {
    const corner = reading.corners[0];
    const count = this.corners;
    const turn = (2 * Math.PI) / count;
    const nearby = [corner?.after ?? 0, (corner?.after ?? 0) + 1].flatMap((k) => {
      const footing = reading.columns[k % reading.columns.length]?.footing;
      return footing && !footing.inRing && (k === corner?.after || !corner?.pinned) ? [footing.middle] : [];
    });
    if (nearby.length === 0 || !onRounds) return { corner: 0, turnBy: 0 };
    const x = nearby.reduce((sum, point) => sum + point.x / Math.hypot(point.x, point.y), 0);
    const y = nearby.reduce((sum, point) => sum + point.y / Math.hypot(point.x, point.y), 0);
    const angle = Math.atan2(y, x);
    const firstCornerAt = firstFacing(count) + turn / 2;
    const nearest = Math.round((angle - firstCornerAt) / turn);
    const turnBy = firstCornerAt + nearest * turn - angle;
    return { corner: mod(nearest, count), turnBy: track.corners > 0 && startAngle === Math.PI / 2 ? turnBy : 0 };
  }

  private plainTrack(placed: readonly PlacedRow[]): Track {
    const level = placed.at(-1)?.level ?? 1;
    const turn = (2 * Math.PI) / this.corners;
    const out = (level * 0.8) / Math.cos(turn / 2);
    const first = firstFacing(this.corners) - turn / 2;
    return roundTrack(Array.from({ length: this.corners }, (_, k) => [out * Math.cos(first + k * turn), out * Math.sin(first + k * turn)] as const));
  }

  private ovalTrack(): Track {
    const { fabric, layout, rows } = this.context;
    let left = Number.POSITIVE_INFINITY;
    let right = Number.NEGATIVE_INFINITY;
    for (let i = this.firstStitch; i < fabric.count && layout.placed[i]; i += 1) {
      if (rows[fabric.kind[i] ?? 0]?.family !== 'chain' || hasFlag(fabric, i, FLAG.turningChain)) continue;
      const x = layout.anchorX[i] ?? 0;
      left = Math.min(left, x);
      right = Math.max(right, x);
    }
    return roundTrack([
      [right, 0],
      [left, 0],
    ]);
  }

  /** Round a flat piece: its four edges as straight lines. */
  private edgeTrack(placed: readonly PlacedRow[]): Track {
    const first = placed[0];
    const last = placed.at(-1);
    if (first === undefined || last === undefined) return ROW_TRACK;
    const [bottomLeft, bottomRight] = endsOf(first);
    const [topLeft, topRight] = endsOf(last);
    const out = 0.5;
    const bottom = -CHAIN_THICKNESS_U / 2;
    const top = last.level;
    return roundTrack([
      [topRight + out, top],
      [topLeft - out, top],
      [bottomLeft - out, bottom],
      [bottomRight + out, bottom],
    ]);
  }

  private bendOf(column: Column, track: Track): number | null {
    const { fabric } = this.context;
    const { footing, element } = column;
    if (element.kind !== 'stitch' || footing === null || !hasFlag(fabric, column.stitch, FLAG.corner)) return null;
    const onFlat = targets(fabric, column.stitch).every((target) => fabric.rows[fabric.row[target] ?? 0]?.closing === 'flat');
    if (!onFlat) return null;
    let best = 0;
    let nearest = Number.POSITIVE_INFINITY;
    for (let k = 0; k < 4; k += 1) {
      const corner = track.point(track.cornerAt(k, 1), 1, 0);
      const away = Math.hypot(corner.x - footing.middle.x, corner.y - footing.middle.y);
      if (away < nearest) {
        nearest = away;
        best = k;
      }
    }
    return best;
  }
}

/** First chains of corner spaces. What the corners of a round are worked into are the corners of the round before. */
function cornerChains(fabric: Fabric, rowIndices: readonly number[], corners: number): ReadonlySet<number> {
  const chains = new Set(fabric.spaces.flatMap((space) => (space.corner ? [space.first] : [])));
  if (corners === 0) return chains;
  for (const row of [...rowIndices].reverse()) {
    const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
    const under = new Set<number>();
    for (let i = first; i < end; i += 1) {
      const into = chains.has(i) && fabric.where[i - 1] === INTO.space ? targets(fabric, i - 1)[0] : undefined;
      if (into !== undefined) under.add(into);
    }
    if (under.size === corners) for (const chain of under) chains.add(chain);
  }
  return chains;
}

function rowsOf(fabric: Fabric, part: number): number[] {
  const { firstRow, endRow } = fabric.parts[part] ?? { firstRow: 0, endRow: 0 };
  return Array.from({ length: endRow - firstRow }, (_, k) => firstRow + k);
}

function worksUnder(fabric: Fabric, row: number): boolean {
  const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
  return fabric.where.subarray(first, end).includes(INTO.underside);
}

/** The way the first side of a piece with corners faces, so that it lies on a level side. */
function firstFacing(corners: number): number {
  return corners % 2 === 0 ? Math.PI / 2 : Math.PI / 2 - Math.PI / corners;
}

/** Just past the ring or first chain in the middle of a round piece. */
function centreEndOf(fabric: Fabric, rows: readonly StitchRow[], start: 'magic ring' | 'chain ring' | 'chain' | null, first: number): number {
  const familyOf = (i: number): string | undefined => rows[fabric.kind[i] ?? 0]?.family;
  if (start === 'chain') return first + 1;
  if (start === 'magic ring') return familyOf(first) === 'start' ? first + 1 : first;
  if (start !== 'chain ring') return first;
  let i = first;
  while (i < fabric.count && familyOf(i) === 'chain') i += 1;
  return familyOf(i) === 'slip' ? i + 1 : i;
}

function ringRadius(chains: number): number {
  return chains === 1 ? 0 : Math.max(0.6, (chains * PITCH_U.ring) / (2 * Math.PI));
}

function ringOffset(centreStitches: number, start: 'magic ring' | 'chain ring' | 'chain' | null): number {
  if (start === 'chain ring') return ringRadius(centreStitches - 1) + CHAIN_THICKNESS_U / 2;
  return start === 'chain' ? CHAIN_THICKNESS_U / 2 + 0.12 : MAGIC_RING_RADIUS_U;
}

function placeRing(layout: Layout, chains: readonly number[], startAngle: number): void {
  const only = chains.length === 1 ? chains[0] : undefined;
  if (only !== undefined) {
    place(layout, only, { footX: -PITCH_U.ring / 2, footY: 0, headX: PITCH_U.ring / 2, headY: 0, upX: 0, upY: 1, anchorX: 0, anchorY: 0 });
    return;
  }
  const radius = ringRadius(chains.length);
  const step = (2 * Math.PI) / chains.length;
  chains.forEach((i, k) => {
    const from = startAngle + k * step;
    const middle = from + step / 2;
    const upX = Math.cos(middle);
    const upY = Math.sin(middle);
    const out = radius + CHAIN_THICKNESS_U / 2;
    place(layout, i, {
      footX: radius * Math.cos(from),
      footY: radius * Math.sin(from),
      headX: radius * Math.cos(from + step),
      headY: radius * Math.sin(from + step),
      upX,
      upY,
      anchorX: upX * out,
      anchorY: upY * out,
    });
  });
}

/** The dot that joins a ring lies inside it, where its ends meet. */
function placeJoin(layout: Layout, i: number, radius: number, startAngle: number): void {
  const upX = Math.cos(startAngle);
  const upY = Math.sin(startAngle);
  const from = radius - 0.55;
  place(layout, i, {
    footX: upX * from,
    footY: upY * from,
    headX: upX * (from + 0.36),
    headY: upY * (from + 0.36),
    upX,
    upY,
    anchorX: upX * radius,
    anchorY: upY * radius,
  });
}

function endsOf({ track, level, startS, endS }: PlacedRow): [left: number, right: number] {
  const a = track.point(startS, level, 0).x;
  const b = track.point(endS, level, 0).x;
  return [Math.min(a, b), Math.max(a, b)];
}
