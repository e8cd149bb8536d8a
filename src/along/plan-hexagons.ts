/** The figures of an along of hexagons -> edges, seams, border and size of a blanket of them. It runs in a browser as well. */

import { type HexagonEdges, hexagonEdges } from './hexagon-edges.ts';
import { type Lie, widthInHalves } from './lies.ts';

/** A round of a border with corners that go out and corners that go in. */
export interface ZigzagRound {
  /** Of the whole round. */
  readonly stitches: number;
  /** How many of them are worked over several places, and over how many. */
  readonly together: number;
  readonly of: 2 | 3;
}

export interface HexagonLie {
  readonly edges: HexagonEdges;
  readonly rounds: readonly ZigzagRound[];
}

/** From corner to corner of a hexagon, against the same from side to side. */
export const CORNERS_TO_SIDES = 2 / Math.sqrt(3);
/** From row to row, against the same from hexagon to hexagon within a row. */
export const ROW_TO_ROW = Math.sqrt(3) / 2;
/** An edge against the hexagon from side to side. */
export const EDGE_TO_SIDES = 1 / Math.sqrt(3);

/**
 * A corner of a sixth of a turn takes 1.15 stitches more, or fewer, in each round of single crochet. So the outer corners
 * get two more in the rounds with odd numbers, and the inner ones two fewer in those with even numbers: never more than
 * one stitch off, and every corner keeps a stitch in its middle.
 */
export function zigzagRounds(
  { free, outer, inner }: HexagonEdges,
  stitches: number,
  rounds: number,
): readonly ZigzagRound[] {
  const made: ZigzagRound[] = [];
  let count = 0;
  for (let round = 1; round <= rounds; round += 1) {
    if (round === 1) count = free * stitches + 3 * outer + inner;
    else if (round % 2 === 0) count -= 2 * inner;
    else count += 2 * outer;
    made.push({
      stitches: count,
      together: round === 1 || round % 2 === 0 ? inner : 0,
      of: round === 1 ? 2 : 3,
    });
  }
  return made;
}

/** As many rounds as leave a stitch on an edge between two inner corners. */
export function mostRounds(stitches: number): number {
  return 2 * Math.ceil(stitches / 2) - 1;
}

export function hexagonLie(
  { lie, stitches, rounds }: { readonly lie: Lie; readonly stitches: number; readonly rounds: number },
  across: number,
  down: number,
): HexagonLie {
  const edges = hexagonEdges(lie, across, down);
  return { edges, rounds: zigzagRounds(edges, stitches, rounds) };
}

/** Width and height with the border: flat edges stand at the sides, corners at the top and at the bottom. */
export function hexagonSizeMm(
  {
    lie,
    sizeMm,
    addsMm,
    borderMm,
  }: { readonly lie: Lie; readonly sizeMm: number; readonly addsMm: number; readonly borderMm: number },
  across: number,
  down: number,
): readonly [widthMm: number, heightMm: number] {
  const stepMm = sizeMm + addsMm;
  return [
    (widthInHalves(lie, across, down) / 2) * stepMm - addsMm + 2 * borderMm,
    (sizeMm + 2 * borderMm) * CORNERS_TO_SIDES + (down - 1) * stepMm * ROW_TO_ROW,
  ];
}
