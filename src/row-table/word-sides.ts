/** A fabric's rounds -> how many stitches each has on a side, for those that have corners: `6 on each of 4 sides`. */

import { cornerSpaces, type Sides, sidesOf } from '../fabric/corners.ts';
import type { Fabric, FabricRow } from '../fabric/fabric.ts';
import { FLAG, NONE } from '../fabric/fabric.ts';

/** With fewer it is no shape with sides; with more, corners are points of an edging. */
const FEWEST = 3;
const MOST = 8;

interface RoundSides extends Sides {
  /** The corners are stitches, which belong to no side. */
  readonly ofStitches: boolean;
}

/** By the first stitch of the row. A single round of spaces in a ring is no shape yet. */
export function sidesByRow(fabric: Fabric): ReadonlyMap<number, string> {
  const spaces = cornerSpaces(fabric);
  const rounds = fabric.rows
    .filter(({ closing, side }) => closing === 'joined' && side !== null)
    .map((row) => ({ row, sides: sidesOfRound(fabric, row, spaces) }))
    .filter(({ sides }) => sides.corners >= FEWEST && sides.corners <= MOST);
  const alike = ({ row, sides }: (typeof rounds)[number]): boolean =>
    rounds.some(
      (other) => other.row !== row && other.row.part === row.part && other.sides.corners === sides.corners,
    );
  return new Map(rounds.filter(alike).map(({ row, sides }) => [row.first, wordSides(sides)]));
}

function sidesOfRound(fabric: Fabric, row: FabricRow, spaces: ReadonlySet<number>): RoundSides {
  const bySpaces = sidesOf(fabric, row, spaces);
  if (bySpaces.corners > 0) return { ...bySpaces, ofStitches: false };
  const stitches: number[] = [];
  let beforeFirst = 0;
  for (let i = row.first; i < row.end; i += 1) {
    if ((fabric.countsAs[i] ?? NONE) === NONE) continue;
    if (((fabric.flags[i] ?? 0) & FLAG.corner) !== 0) stitches.push(0);
    else if (stitches.length === 0) beforeFirst += 1;
    else stitches[stitches.length - 1] = (stitches[stitches.length - 1] ?? 0) + 1;
  }
  const last = stitches.length - 1;
  if (last >= 0) stitches[last] = (stitches[last] ?? 0) + beforeFirst;
  return { corners: stitches.length, stitches, ofStitches: true };
}

function wordSides({ corners, stitches, ofStitches }: RoundSides): string {
  const [first = 0] = stitches;
  const alike = stitches.every((n) => n === first);
  const sides = alike ? `${first} on each of ${corners} sides` : `sides of ${stitches.join(', ')}`;
  return ofStitches ? `${sides}, and ${corners} corner sts` : sides;
}
