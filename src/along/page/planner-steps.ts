/** A key pressed on a piece of the blanket -> the piece it leads to. */

import type { Tile } from '../arrange.ts';
import { type Lie, middleInHalves } from '../lies.ts';

/** Null for other keys, and where there is none that way. */
export function stepped(lie: Lie, tiles: readonly Tile[], from: number, key: string): number | null {
  const tile = tiles[from];
  if (tile === undefined) return null;
  const at = (x: number, y: number): number =>
    tiles.findIndex((other) => other.y === y && x >= other.x && x < other.x + other.covers);
  const found = {
    ArrowLeft: at(tile.x - 1, tile.y),
    ArrowRight: at(tile.x + tile.covers, tile.y),
    ArrowUp: nextRow(lie, tiles, tile, -1),
    ArrowDown: nextRow(lie, tiles, tile, 1),
    Home: 0,
    End: tiles.length - 1,
  }[key];
  return found === undefined || found < 0 ? null : found;
}

/** Straight up or down among squares; among hexagons to the same place of the next row, half a hexagon aside, and so on in zigzag. */
function nextRow(lie: Lie, tiles: readonly Tile[], tile: Tile, by: 1 | -1): number {
  const y = tile.y + by;
  const straight = tiles.findIndex(
    (other) => other.y === y && tile.x >= other.x && tile.x < other.x + other.covers,
  );
  if (straight >= 0) return straight;
  // The last of a longer row has nothing at its right in the next one, only at its left.
  return tiles.findLastIndex(
    (other) => other.y === y && Math.abs(middleInHalves(lie, other) - middleInHalves(lie, tile)) <= 1,
  );
}
