/** A planned blanket -> its size, seams and border as lines, the same for the planner's page and for the command line. */

import { printCm, printIn } from '../units.ts';
import type { BlanketPlan, HexagonsPlan, SquaresPlan } from './plan-blanket.ts';

/** `sts` or `stitches`. */
export type StitchWord = 'sts' | 'stitches';

export function sizeLine({ widthMm, heightMm }: BlanketPlan): string {
  return `Finished ${printCm(widthMm)} by ${printCm(heightMm)} (${printIn(widthMm)} by ${printIn(heightMm)})`;
}

export function borderLines(plan: BlanketPlan, stitches: StitchWord): string[] {
  return plan.shape === 'squares' ? ofSquares(plan, stitches) : ofHexagons(plan, stitches);
}

function ofSquares({ border }: SquaresPlan, stitches: StitchWord): string[] {
  return [
    ...border.rounds.map(
      ([top, side], r) =>
        `Border round ${r + 1}: ${top} ${stitches} along top and bottom, ${side} along each side`,
    ),
    ...(border.repeats === null
      ? []
      : [`Edging: ${border.repeats[0]} repeats along top and bottom, ${border.repeats[1]} along each side`]),
  ];
}

function ofHexagons({ border, edges }: HexagonsPlan, stitches: StitchWord): string[] {
  return [
    `Round the blanket: ${edges.free} edges, ${edges.outer} outer and ${edges.inner} inner corners`,
    ...border.rounds.map((round, r) => `Border round ${r + 1}: ${round.stitches} ${stitches}`),
  ];
}

/** Seams of hexagons; `18 seams within the rows, 20 stitches each`. */
export function hexagonSeamLines({ seams, seamStitches }: HexagonsPlan, stitches: StitchWord): string[] {
  const [inRows, between] = seams;
  return [
    `Seams within the rows: ${inRows.count}, ${seamStitches[0]} ${stitches} each`,
    `Seams between the rows, in zigzag: ${between.count}, ${seamStitches[1]} ${stitches} each`,
  ];
}
