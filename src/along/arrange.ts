/** Squares and how many of each -> where each lies in the blanket: row by row, and where it is wished no two alike side by side. It runs in a browser as well. */

import type { BlanketFigures, SquareFigures } from './figures.ts';
import type { Wish } from './plan-blanket.ts';

export interface Tile {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  /** Places it covers, from x on. */
  readonly covers: number;
}

export interface Arrangement {
  readonly tiles: readonly Tile[];
  /** Squares for which there was no place. */
  readonly over: number;
  /** Pairs of squares alike that lie side by side, or one above the other. */
  readonly alike: number;
}

export interface Arranging extends Wish {
  /** No two alike side by side, as far as that can be. */
  readonly apart: boolean;
}

/**
 * Place by place from the top left: of the squares that still fit, the one there is most left of, unless it lies to the
 * left or above already. What it comes to is then mended by swapping squares of one width.
 */
export function arrange({ squares }: Pick<BlanketFigures, 'squares'>, wish: Arranging): Arrangement {
  const { across, down, make, apart } = wish;
  const left = new Map(squares.map(({ id }) => [id, Math.max(0, make[id] ?? 0)]));
  const grid: (string | null)[][] = Array.from({ length: down }, () =>
    Array.from({ length: across }, () => null),
  );
  const tiles: Tile[] = [];
  for (let y = 0; y < down; y += 1) {
    for (let x = 0; x < across; x += 1) {
      if (grid[y]?.[x] != null) continue;
      const square = nextSquare(squares, left, { grid, x, y, across, apart });
      if (square === null) continue;
      left.set(square.id, (left.get(square.id) ?? 0) - 1);
      tiles.push({ id: square.id, x, y, covers: square.covers });
      for (let k = 0; k < square.covers; k += 1) {
        const row = grid[y];
        if (row !== undefined) row[x + k] = square.id;
      }
    }
  }
  const placed = apart ? swapped(tiles) : tiles;
  return {
    tiles: placed,
    over: [...left.values()].reduce((sum, n) => sum + n, 0),
    alike: alikePairs(placed),
  };
}

interface Spot {
  readonly grid: readonly (readonly (string | null)[])[];
  readonly x: number;
  readonly y: number;
  readonly across: number;
  readonly apart: boolean;
}

/** Wide ones first: they find no room later. */
function nextSquare(
  squares: readonly SquareFigures[],
  left: ReadonlyMap<string, number>,
  { grid, x, y, across, apart }: Spot,
): SquareFigures | null {
  const room = squares.filter(({ id, covers }) => (left.get(id) ?? 0) > 0 && x + covers <= across);
  if (!apart) return room[0] ?? null;
  const beside = [grid[y]?.[x - 1] ?? null, grid[y - 1]?.[x] ?? null];
  const weight = ({ id, covers }: SquareFigures): number =>
    (left.get(id) ?? 0) + (covers > 1 ? 1000 : 0) - (beside.includes(id) ? 1_000_000 : 0);
  return room.reduce<SquareFigures | null>(
    (best, square) => (best === null || weight(square) > weight(best) ? square : best),
    null,
  );
}

/** Swaps two squares of one width wherever that leaves fewer alike side by side, until no swap does. */
function swapped(tiles: readonly Tile[]): readonly Tile[] {
  let best = [...tiles];
  let alike = alikePairs(best);
  for (let pass = 0; pass < 3 && alike > 0; pass += 1) {
    for (let i = 0; i < best.length && alike > 0; i += 1) {
      if (!touchesAlike(best, i)) continue;
      for (let j = 0; j < best.length; j += 1) {
        const [one, other] = [best[i], best[j]];
        if (one === undefined || other === undefined || one.covers !== other.covers || one.id === other.id)
          continue;
        const tried = swapTiles(best, i, j);
        const now = alikePairs(tried);
        if (now >= alike) continue;
        best = tried;
        alike = now;
        break;
      }
    }
  }
  return best;
}

/** Two squares in each other's place. */
export function swapTiles(tiles: readonly Tile[], i: number, j: number): Tile[] {
  const [one, other] = [tiles[i], tiles[j]];
  if (one === undefined || other === undefined) return [...tiles];
  return tiles.map((tile, k) =>
    k === i ? { ...tile, id: other.id } : k === j ? { ...tile, id: one.id } : tile,
  );
}

function touchesAlike(tiles: readonly Tile[], i: number): boolean {
  const tile = tiles[i];
  return (
    tile !== undefined && tiles.some((other) => other !== tile && other.id === tile.id && touch(tile, other))
  );
}

export function alikePairs(tiles: readonly Tile[]): number {
  let pairs = 0;
  for (const [i, tile] of tiles.entries())
    for (const other of tiles.slice(i + 1)) if (other.id === tile.id && touch(tile, other)) pairs += 1;
  return pairs;
}

function touch(one: Tile, other: Tile): boolean {
  if (one.y === other.y) return one.x + one.covers === other.x || other.x + other.covers === one.x;
  return Math.abs(one.y - other.y) === 1 && one.x < other.x + other.covers && other.x < one.x + one.covers;
}
