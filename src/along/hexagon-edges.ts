/** How many hexagons lie across and down -> the edges that are joined, those that are free, and the corners along them, in their order round the blanket. It runs in a browser as well. */

import { type Lie, rowPlaces } from './lies.ts';

export interface HexagonEdges {
  /** Edges joined within the rows. */
  readonly inRows: number;
  /** Edges joined between the rows. */
  readonly betweenRows: number;
  /** Edges that nothing is joined to. */
  readonly free: number;
  /** Corners of one hexagon that stand out of the blanket. */
  readonly outer: number;
  /** Corners where two hexagons meet and the blanket goes in. */
  readonly inner: number;
}

/** Across one edge to the next hexagon: halves of a hexagon to the right, and rows down; in the order a maker who works to the left comes to them. */
const NEXT = [
  [1, -1],
  [-1, -1],
  [-2, 0],
  [-1, 1],
  [1, 1],
  [2, 0],
] as const;
/** The edge between the topmost corner and the one left of it. */
const UPPER_LEFT = 1;

/** Joined edges of two rows, one above the other: a row of zigzag. */
export function zigzagEdges(lie: Lie, across: number): number {
  const [flush, inset] = [rowPlaces(lie, across, 0), rowPlaces(lie, across, 1)];
  // A hexagon of the inset row lies under the one at its left and the one at its right, where there is one.
  return inset === flush ? 2 * inset - 1 : 2 * inset;
}

export function hexagonEdges(lie: Lie, across: number, down: number): HexagonEdges {
  const rows = Array.from({ length: down }, (_, y) => rowPlaces(lie, across, y));
  const pieces = rows.reduce((sum, n) => sum + n, 0);
  const inRows = pieces - down;
  const betweenRows = (down - 1) * zigzagEdges(lie, across);
  const free = 6 * pieces - 2 * (inRows + betweenRows);
  // Every outer corner turns by a sixth of a circle one way, every inner one the other way, and once round is one turn.
  return { inRows, betweenRows, free, outer: (free + 6) / 2, inner: (free - 6) / 2 };
}

/**
 * Round the blanket as a maker goes who works to the left: `O` is an outer corner, `I` an inner one, and one free edge
 * comes after each. It begins at the topmost corner of the last hexagon of the top row.
 */
export function cornersInOrder(lie: Lie, across: number, down: number): string {
  const there = new Set<string>();
  for (let y = 0; y < down; y += 1)
    for (let x = 0; x < rowPlaces(lie, across, y); x += 1) there.add(`${2 * x + (y % 2)},${y}`);
  const start = { x: 2 * (across - 1), y: 0, edge: UPPER_LEFT };
  let at = start;
  let corners = '';
  let corner = 'O';
  do {
    corners += corner;
    const next = (at.edge + 1) % NEXT.length;
    const [right, lower] = NEXT[next] ?? NEXT[0];
    const beside = { x: at.x + right, y: at.y + lower };
    const isJoined = there.has(`${beside.x},${beside.y}`);
    corner = isJoined ? 'I' : 'O';
    // At an inner corner the way goes on along the neighbour.
    at = isJoined ? { ...beside, edge: (next + NEXT.length - 2) % NEXT.length } : { ...at, edge: next };
  } while (at.x !== start.x || at.y !== start.y || at.edge !== start.edge);
  return corners;
}
