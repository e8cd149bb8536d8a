/**
 * A piece worked in rounds in, its width and height out.
 *
 * A flat piece grows by one row's height all round in every round, so its rounds give the radius of a
 * circle, or of the circle that fits inside a polygon. A polygon lies with one side at the bottom: a hexagon is wider,
 * from corner to corner, than it is high, from side to side. The hole of a ring of chains is left out. A piece begun round a
 * chain is longer by that chain. When the last rounds, three or more, count no more than a round before them, they
 * stand up as the wall of a basket: its width comes from its way round (divided by pi, or by the sides of a polygon),
 * its height from the wall. A tube, begun in each chain of a ring, is all wall. A shape drawn in again at its top by
 * more than a quarter, such as a ball, has no height that can be told from its gauge.
 */

import { type Fabric, INTO, targets } from '../fabric/fabric.ts';

export interface PieceSize {
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  /** Once round what stands up without corners; null for what lies flat. */
  readonly aroundMm: number | null;
}

export interface RoundPiece {
  /** Rounds in the order worked, as indices of `fabric.rows`. */
  readonly rounds: readonly number[];
  readonly corners: number;
  readonly start: 'magic ring' | 'chain ring' | 'chain' | null;
}

const FEWEST_WALL_ROUNDS = 3;
/** The way round at the end against the widest, below which a piece is closed. */
const CLOSED_BELOW = 0.75;

export function roundSize(
  fabric: Fabric,
  piece: RoundPiece,
  heights: readonly number[],
  widths: readonly number[],
  stitchMm: number,
): PieceSize {
  const rounds = piece.rounds.filter((round) => (heights[round] ?? 0) > 0);
  const around = rounds.map((round) => widths[round] ?? 0);
  const tube = piece.start === 'chain ring' && !inRing(fabric, rounds[0]);
  const wall = tube ? rounds.length : wallRounds(around);
  if (wall < FEWEST_WALL_ROUNDS && !tube) return flatSize(fabric, piece, sumOf(rounds, heights), stitchMm);

  const widest = Math.max(...around);
  const closed = (around.at(-1) ?? 0) < widest * CLOSED_BELOW;
  const standing = rounds.slice(rounds.length - wall);
  return {
    widthMm: (widest * stitchMm) / aroundPerAcross(piece.corners),
    heightMm: closed ? null : sumOf(standing, heights),
    aroundMm: piece.corners < 3 ? widest * stitchMm : null,
  };
}

function flatSize(fabric: Fabric, piece: RoundPiece, radiusMm: number, stitchMm: number): PieceSize {
  const spineMm = piece.start === 'chain' ? spineStitches(fabric, piece.rounds[0]) * stitchMm : 0;
  const [across, high] = piece.start === 'chain' ? [2, 2] : radiiAcross(piece.corners);
  return { widthMm: spineMm + across * radiusMm, heightMm: high * radiusMm, aroundMm: null };
}

/** Width and height of a polygon lying on one side, in radii of the circle inside it; of a circle, two and two. */
function radiiAcross(corners: number): readonly [number, number] {
  if (corners < 3) return [2, 2];
  const toCorner = 1 / Math.cos(Math.PI / corners);
  const angles = Array.from({ length: corners }, (_, i) => ((2 * i + 1) * Math.PI) / corners);
  const xs = angles.map((angle) => toCorner * Math.sin(angle));
  const ys = angles.map((angle) => toCorner * Math.cos(angle));
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}

/** Perimeter over width: pi for a circle, 4 for a square, n tan(pi / n) for other polygons, side to side. */
function aroundPerAcross(corners: number): number {
  return corners < 3 ? Math.PI : corners * Math.tan(Math.PI / corners);
}

/** Rounds at the end that go no further round than some round before them. */
function wallRounds(around: readonly number[]): number {
  let widest = 0;
  let last = -1;
  for (const [i, width] of around.entries()) {
    // Half a stitch, so that a space reckoned a little wider is no increase.
    if (width > widest + 0.5) {
      widest = width;
      last = i;
    }
  }
  return around.length - 1 - last;
}

function inRing(fabric: Fabric, round: number | undefined): boolean {
  const row = fabric.rows[round ?? -1];
  if (row === undefined) return false;
  for (let i = row.first; i < row.end; i += 1) if (fabric.where[i] === INTO.ring) return true;
  return false;
}

/** From the middle of the first chain worked round to the middle of the last. */
function spineStitches(fabric: Fabric, round: number | undefined): number {
  const row = fabric.rows[round ?? -1];
  if (row === undefined) return 0;
  const chains = new Set<number>();
  for (let i = row.first; i < row.end; i += 1) {
    for (const target of targets(fabric, i)) if (target < row.first) chains.add(target);
  }
  return Math.max(0, chains.size - 1);
}

function sumOf(rows: readonly number[], heights: readonly number[]): number {
  return rows.reduce((sum, row) => sum + (heights[row] ?? 0), 0);
}
