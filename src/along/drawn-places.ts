/** Where each piece stands in a drawing of the blanket, whichever way the pieces lie: all lengths in pieces from side to side. It runs in a browser as well. */

import { LIES, type Lie, type Lying, middleInHalves, widthInHalves } from './lies.ts';
import { CORNERS_TO_SIDES, ROW_TO_ROW } from './plan-hexagons.ts';

export type Point = readonly [x: number, y: number];

export function drawnSize(lie: Lie, across: number, down: number): Point {
  const wide = widthInHalves(lie, across, down) / 2;
  return LIES[lie].offset ? [wide, CORNERS_TO_SIDES + (down - 1) * ROW_TO_ROW] : [wide, down];
}

export function drawnMiddle(lie: Lie, tile: Lying): Point {
  const x = middleInHalves(lie, tile) / 2;
  return [x, LIES[lie].offset ? CORNERS_TO_SIDES / 2 + tile.y * ROW_TO_ROW : tile.y + 0.5];
}

const REACH = CORNERS_TO_SIDES / 2;

/** Round the middle of a hexagon that stands on a corner. */
export const HEXAGON: readonly Point[] = [
  [0, -REACH],
  [0.5, -REACH / 2],
  [0.5, REACH / 2],
  [0, REACH],
  [-0.5, REACH / 2],
  [-0.5, -REACH / 2],
];

/** `0,-57.74 50,-28.87 …`, so many units to a piece. */
export function hexagonPoints(units: number): string {
  return HEXAGON.map((point) => point.map((n) => Math.round(n * units * 100) / 100).join(',')).join(' ');
}

/** A hexagon's own picture shows it lying on a side, so wide of the picture from corner to corner. */
const SHARE_OF_PICTURE = 0.86;

/** How large its square picture is drawn, in pieces; turned by `TURN` it then fills its place. */
export const PICTURE_OF_HEXAGON = CORNERS_TO_SIDES / SHARE_OF_PICTURE;
/** Degrees. */
export const TURN = 30;
