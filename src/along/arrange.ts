/** Squares and how many of each -> where each lies in the blanket: row by row, and where it is wished no two alike side by side. It runs in a browser as well. */

import type { BlanketFigures, SquareFigures } from './figures.ts';
import { classOf, LIES, type Lie, rowPlaces, touch } from './lies.ts';
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
export function arrange(
  { squares, lie }: Pick<BlanketFigures, 'squares' | 'lie'>,
  wish: Arranging,
): Arrangement {
  const { across, down, make, apart } = wish;
  const left = new Map(squares.map(({ id }) => [id, Math.max(0, make[id] ?? 0)]));
  const grid: (string | null)[][] = Array.from({ length: down }, (_, y) =>
    Array.from({ length: rowPlaces(lie, across, y) }, () => null),
  );
  const tiles: Tile[] = [];
  for (let y = 0; y < down; y += 1) {
    for (let x = 0; x < (grid[y]?.length ?? 0); x += 1) {
      if (grid[y]?.[x] != null) continue;
      const square = nextSquare(squares, left, { lie, tiles, x, y, across, apart });
      if (square === null) continue;
      left.set(square.id, (left.get(square.id) ?? 0) - 1);
      tiles.push({ id: square.id, x, y, covers: square.covers });
      for (let k = 0; k < square.covers; k += 1) {
        const row = grid[y];
        if (row !== undefined) row[x + k] = square.id;
      }
    }
  }
  const placed = apart ? leastAlike(lie, tiles) : tiles;
  return {
    tiles: placed,
    over: [...left.values()].reduce((sum, n) => sum + n, 0),
    alike: alikePairs(lie, placed),
  };
}

/** Of hexagons, six neighbours leave little room, so they are also tried class by class: of three kinds or more that often comes out. */
function leastAlike(lie: Lie, tiles: readonly Tile[]): readonly Tile[] {
  const asLaid = swapped(lie, tiles);
  if (!LIES[lie].offset || alikePairs(lie, asLaid) === 0) return asLaid;
  const byClass = swapped(lie, laidByClass(tiles));
  return alikePairs(lie, byClass) < alikePairs(lie, asLaid) ? byClass : asLaid;
}

/** The same pieces in the same places: the kinds there are most of first, into the class with most places first. */
function laidByClass(tiles: readonly Tile[]): Tile[] {
  const most = (counts: ReadonlyMap<unknown, number>, one: unknown, other: unknown): number =>
    (counts.get(other) ?? 0) - (counts.get(one) ?? 0);
  const kinds = tally(tiles.map(({ id }) => id));
  const classes = tally(tiles.map(classOf));
  const ids = tiles
    .map(({ id }) => id)
    .sort((one, other) => most(kinds, one, other) || (one < other ? -1 : one > other ? 1 : 0));
  const places = tiles
    .map((tile, i) => ({ tile, i, of: classOf(tile) }))
    .sort((one, other) => most(classes, one.of, other.of) || one.of - other.of || one.i - other.i);
  const laid = [...tiles];
  for (const [k, { tile, i }] of places.entries()) laid[i] = { ...tile, id: ids[k] ?? tile.id };
  return laid;
}

function tally<T>(all: readonly T[]): ReadonlyMap<T, number> {
  const counts = new Map<T, number>();
  for (const one of all) counts.set(one, (counts.get(one) ?? 0) + 1);
  return counts;
}

interface Spot {
  readonly lie: Lie;
  /** Those that lie already. */
  readonly tiles: readonly Tile[];
  readonly x: number;
  readonly y: number;
  readonly across: number;
  readonly apart: boolean;
}

/** Wide ones first: they find no room later. */
function nextSquare(
  squares: readonly SquareFigures[],
  left: ReadonlyMap<string, number>,
  { lie, tiles, x, y, across, apart }: Spot,
): SquareFigures | null {
  const room = squares.filter(
    ({ id, covers }) => (left.get(id) ?? 0) > 0 && x + covers <= rowPlaces(lie, across, y),
  );
  if (!apart) return room[0] ?? null;
  const beside = new Set(tiles.filter((tile) => touch(lie, tile, { x, y, covers: 1 })).map(({ id }) => id));
  const weight = ({ id, covers }: SquareFigures): number =>
    (left.get(id) ?? 0) + (covers > 1 ? 1000 : 0) - (beside.has(id) ? 1_000_000 : 0);
  return room.reduce<SquareFigures | null>(
    (best, square) => (best === null || weight(square) > weight(best) ? square : best),
    null,
  );
}

/** Swaps two squares of one width wherever that leaves fewer alike side by side, until no swap does. */
function swapped(lie: Lie, tiles: readonly Tile[]): readonly Tile[] {
  let best = [...tiles];
  let alike = alikePairs(lie, best);
  for (let pass = 0; pass < 3 && alike > 0; pass += 1) {
    for (let i = 0; i < best.length && alike > 0; i += 1) {
      if (!touchesAlike(lie, best, i)) continue;
      for (let j = 0; j < best.length; j += 1) {
        const [one, other] = [best[i], best[j]];
        if (one === undefined || other === undefined || one.covers !== other.covers || one.id === other.id)
          continue;
        const tried = swapTiles(best, i, j);
        const now = alikePairs(lie, tried);
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

function touchesAlike(lie: Lie, tiles: readonly Tile[], i: number): boolean {
  const tile = tiles[i];
  return (
    tile !== undefined &&
    tiles.some((other) => other !== tile && other.id === tile.id && touch(lie, tile, other))
  );
}

export function alikePairs(lie: Lie, tiles: readonly Tile[]): number {
  let pairs = 0;
  for (const [i, tile] of tiles.entries())
    for (const other of tiles.slice(i + 1)) if (other.id === tile.id && touch(lie, tile, other)) pairs += 1;
  return pairs;
}
