/** One piece of a fabric in, what shape it is drawn in out: before any stitch of it is placed. */

import { type Fabric, FLAG, INTO, type Into, targets } from '../fabric/fabric.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { rowHeight } from './columns.ts';
import type { ChartContext } from './context.ts';
import { hasFlag, type RowElement, rowElements } from './elements.ts';
import { type Bends, findBends } from './find-bends.ts';
import { type Blocks, findBlocks } from './find-blocks.ts';
import { findCorners, NO_CORNERS } from './find-corners.ts';
import { SIDE } from './footing.ts';
import type { Layout } from './layout.ts';
import { cornerChains } from './piece-corners.ts';
import { centreEndOf, ringOffset } from './place-centre.ts';
import { type RowWidths, rowWidths, straightRows } from './row-widths.ts';
import { wallFrom } from './walls.ts';

export interface Piece {
  readonly context: ChartContext;
  readonly rowIndices: readonly number[];
  /** Worked round a centre, or round both sides of a chain. */
  readonly round: boolean;
  readonly oval: boolean;
  /** Rows that begin in a ring and are turned. */
  readonly fan: boolean;
  readonly corners: number;
  readonly firstStitch: number;
  /** Just past what lies in the middle. */
  readonly centreEnd: number;
  readonly magicRing: boolean;
  readonly shape: PieceShape;
}

export interface PieceShape {
  /** Peaks and valleys that its rows run up and down between. */
  readonly bends: Bends | null;
  /** Rows whose edges run straight up. */
  readonly straight: ReadonlySet<number>;
  /** Of a piece worked from corner to corner. */
  readonly blocks: Blocks | null;
  /** The first round that is laid out straight, and the one whose top it stands on. */
  readonly wall: { readonly from: number; readonly onto: number; readonly top: RowWidths } | null;
}

type Outline = Omit<Piece, 'shape'>;

export function pieceOf(
  fabric: Fabric,
  rows: readonly StitchRow[],
  layout: Layout,
  parts: readonly number[],
): Piece {
  const part = fabric.parts[parts[0] ?? 0];
  const rowIndices = parts.flatMap((index) => rowsOf(fabric, index));
  const firstStitch = fabric.rows[part?.firstRow ?? 0]?.first ?? 0;
  const round = part?.shape === 'round';
  const fan = !round && rowIndices.some((row) => worksInto(fabric, row, INTO.ring));
  const start = fan ? ringStart(fabric, rows, firstStitch) : (part?.start ?? null);
  const said = Math.max(...parts.map((index) => fabric.parts[index]?.corners ?? 0));
  const found = said === 0 && round ? findCorners(fabric, rows, rowIndices) : NO_CORNERS;
  const corners = said === 0 ? found.corners : said;
  const oval = start === 'chain' && rowIndices.some((row) => worksInto(fabric, row, INTO.underside));
  const centreEnd = oval || (!round && !fan) ? firstStitch : centreEndOf(fabric, rows, start, firstStitch);
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
    gapsEntered: gapsEntered(fabric, rowIndices),
    reach: new Map(),
  };
  const magicRing = (round || fan) && start === 'magic ring';
  const piece: Outline = {
    context,
    rowIndices,
    round,
    oval,
    fan,
    corners,
    firstStitch,
    centreEnd,
    magicRing,
  };
  const asRing = { ...piece, shape: shapeOf(piece) };
  const wall = asRing.shape.wall;
  if (wall === null || start !== 'chain ring' || !isTube(asRing, wall.top)) return asRing;
  // Nothing of it is drawn round a middle: its ring of chains is laid out as well.
  return {
    ...asRing,
    centreEnd: firstStitch,
    shape: { ...asRing.shape, wall: { ...wall, from: rowIndices[0] ?? 0 } },
  };
}

/** A tube begins with a ring of about as many chains as it has stitches. */
function isTube({ firstStitch, centreEnd, context }: Piece, top: RowWidths): boolean {
  const ring = centreEnd - firstStitch - 1;
  const { fabric } = context;
  const first = fabric.rows.findIndex(({ onto, first: begins }) => onto !== null && begins >= centreEnd);
  return !worksInto(fabric, first, INTO.ring) && ring >= top.widthU * 0.75;
}

interface MeasuredRow {
  readonly row: number;
  readonly elements: readonly RowElement[];
  readonly way: 1 | -1;
  readonly heightU: number;
}

function shapeOf(piece: Outline): PieceShape {
  const { context, rowIndices, round, corners, centreEnd } = piece;
  const { fabric, rows } = context;
  const measured = rowIndices.map((row): MeasuredRow => {
    const elements = rowElements(fabric, rows, row, centreEnd);
    return { row, elements, way: wayOf(piece, row, elements), heightU: rowHeight(fabric, rows, elements) };
  });
  const widths = new Map(
    measured.map(({ row, elements, way }) => [row, rowWidths(fabric, rows, elements, way)] as const),
  );
  if (round)
    return {
      bends: null,
      straight: new Set(),
      blocks: null,
      wall: corners > 0 ? null : wallOf(piece, measured, widths),
    };
  const flat = measured.filter(({ row }) => !goesRound(fabric, row));
  const blocks = findBlocks(
    fabric,
    rows,
    flat.map(({ row }) => row),
  );
  const flatWidths = new Map(flat.map(({ row }) => [row, widths.get(row) ?? NOTHING] as const));
  return {
    bends: blocks !== null || flat.length < rowIndices.length ? null : findBends(fabric, flat, flatWidths),
    straight: straightRows(fabric, flatWidths),
    blocks,
    wall: null,
  };
}

const NOTHING: RowWidths = { lying: [], at: new Map(), widthU: 0 };

function wallOf(
  { context, oval, rowIndices }: Outline,
  measured: readonly MeasuredRow[],
  widths: ReadonlyMap<number, RowWidths>,
): PieceShape['wall'] {
  const { fabric, ringOffset: middle } = context;
  const rounds = measured.filter(
    ({ row }) => fabric.rows[row]?.onto !== null || fabric.rows[row]?.number !== null,
  );
  const sizes = rounds.map(({ row, heightU }) => ({ row, heightU, widthU: widths.get(row)?.widthU ?? 0 }));
  const chain = widths.get(rowIndices[0] ?? -1)?.widthU ?? 0;
  const from = wallFrom(
    sizes,
    oval ? { ringU: 0, chainU: Math.max(0, chain - 1) } : { ringU: middle, chainU: 0 },
  );
  const first = from === null ? undefined : rounds[from]?.row;
  if (first === undefined) return null;
  // Rounds worked into the ring itself stay about it.
  if (worksInto(fabric, first, INTO.ring)) return null;
  const onto = fabric.rows[first]?.onto ?? null;
  if (onto === null) return null;
  return { from: first, onto, top: widths.get(onto) ?? NOTHING };
}

/** A foundation is worked towards where the first row on it begins; joined into a ring, the way that goes on. */
export function wayOf(
  { context, rowIndices }: Pick<Piece, 'context' | 'rowIndices'>,
  row: number,
  elements: readonly RowElement[],
): 1 | -1 {
  const { fabric } = context;
  const way = fabric.rows[row]?.direction === 'right' ? -1 : 1;
  if (fabric.rows[row]?.onto !== null || !elements.some((element) => element.kind === 'laid')) return way;
  const onIt = rowIndices.find((next) => fabric.rows[next]?.onto === row);
  if (onIt === undefined) return way;
  const on = fabric.rows[onIt]?.direction === 'right' ? -1 : 1;
  const last = (fabric.rows[row]?.end ?? 0) - 1;
  return hasFlag(fabric, last, FLAG.join) ? on : on === 1 ? -1 : 1;
}

/** Whether a row of a flat piece is worked along its edges. */
export function goesRound(fabric: Fabric, row: number): boolean {
  return fabric.rows[row]?.edging === true || fabric.rows[row]?.closing !== 'flat';
}

function rowsOf(fabric: Fabric, part: number): number[] {
  const { firstRow, endRow } = fabric.parts[part] ?? { firstRow: 0, endRow: 0 };
  return Array.from({ length: endRow - firstRow }, (_, k) => firstRow + k);
}

function worksInto(fabric: Fabric, row: number, where: Into): boolean {
  const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
  return fabric.where.subarray(first, end).includes(where);
}

function gapsEntered(fabric: Fabric, rowIndices: readonly number[]): ReadonlySet<number> {
  const entered = new Set<number>();
  for (const row of rowIndices) {
    const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
    for (let i = first; i < end; i += 1)
      if (fabric.where[i] === INTO.between) for (const target of targets(fabric, i)) entered.add(target);
  }
  return entered;
}

function ringStart(fabric: Fabric, rows: readonly StitchRow[], first: number): 'magic ring' | 'chain ring' {
  return rows[fabric.kind[first] ?? 0]?.family === 'chain' ? 'chain ring' : 'magic ring';
}
