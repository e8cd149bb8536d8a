/** A worked square or hexagon in, the stitches along each of its edges and what its corners are out; or why they cannot be counted. */

import { cornerSpaces } from '../fabric/corners.ts';
import { type Fabric, type FabricRow, FLAG, NONE, targets } from '../fabric/fabric.ts';

export interface Edges {
  readonly kind: 'edges';
  /** The round they are counted in: `Rnd 6`. */
  readonly round: string;
  /** In the order worked, from the first corner of the round; stitches of corners left out. */
  readonly counts: readonly number[];
  /** Chains of each corner's space; 0 where a stitch is the corner. */
  readonly cornerChains: number;
}

export interface NoEdges {
  readonly kind: 'none';
  /** Goes on a sentence: `it ends with Row 27, and its sides are row ends`. */
  readonly why: string;
}

/** So many in one stitch turn a corner. */
const SEVERAL = 3;

export function edgesOf(fabric: Fabric, wanted: number): Edges | NoEdges {
  const last = fabric.rows.findLast(({ stitches, spaces }) => stitches + spaces > 0);
  if (last === undefined) return none('nothing is worked in it');
  if (last.closing === 'flat') return none(`it ends with ${last.label}, and its sides are the ends of rows`);
  const spaces = cornerSpaces(fabric);
  const middles = cornerStitches(fabric, last, spaces, wanted);
  const sides: number[] = [];
  const corners: number[] = [];
  let beforeFirst = 0;
  for (let i = last.first; i < last.end; i += 1) {
    const counted = (fabric.countsAs[i] ?? NONE) !== NONE;
    if (spaces.has(i) || middles.has(i)) {
      corners.push(spaces.has(i) ? chainsFrom(fabric, i) : 0);
      sides.push(0);
    } else if (counted) {
      const side = sides.length - 1;
      if (side < 0) beforeFirst += 1;
      else sides[side] = (sides[side] ?? 0) + 1;
    }
  }
  if (corners.length !== wanted)
    return none(`${last.label} has ${corners.length === 0 ? 'no corners' : `${corners.length} corners`}`);
  if (sideSpaces(fabric, last, spaces) > 0)
    return none(`${last.label} has chain spaces along its sides, which can be joined in more ways than one`);
  sides[wanted - 1] = (sides[wanted - 1] ?? 0) + beforeFirst;
  const [chains = 0] = corners;
  if (corners.some((other) => other !== chains))
    return none(`the corners of ${last.label} are not all alike`);
  return { kind: 'edges', round: last.label, counts: sides, cornerChains: chains };
}

/** Stitches said to be corners; where no corner is said at all, the middle ones of as many lots of three or more in one place as it has corners. */
function cornerStitches(
  fabric: Fabric,
  { first, end }: FabricRow,
  spaces: ReadonlySet<number>,
  wanted: number,
): ReadonlySet<number> {
  const counted: number[] = [];
  let hasSpaces = false;
  for (let i = first; i < end; i += 1) {
    if (spaces.has(i)) hasSpaces = true;
    if ((fabric.countsAs[i] ?? NONE) !== NONE) counted.push(i);
  }
  const said = counted.filter((i) => ((fabric.flags[i] ?? 0) & FLAG.corner) !== 0);
  if (said.length > 0 || hasSpaces) return new Set(said);
  const middles: number[] = [];
  for (let from = 0, to = 0; from < counted.length; from = to) {
    const place = placeOf(fabric, counted[from]);
    for (to = from + 1; to < counted.length && placeOf(fabric, counted[to]) === place; ) to += 1;
    const middle = counted[(from + to - 1) / 2];
    if (to - from >= SEVERAL && middle !== undefined) middles.push(middle);
  }
  return middles.length === wanted ? new Set(middles) : new Set();
}

/** The one stitch that a stitch is worked into; null for a decrease and the like. */
function placeOf(fabric: Fabric, stitch: number | undefined): number | null {
  if (stitch === undefined) return null;
  const [place, more] = targets(fabric, stitch);
  // A number of its own for what shares no place, so that it is alike to nothing.
  return place === undefined || more !== undefined ? -1 - stitch : place;
}

function none(why: string): NoEdges {
  return { kind: 'none', why };
}

function chainsFrom(fabric: Fabric, first: number): number {
  const space = fabric.spaces.find((one) => one.first === first);
  return space === undefined ? 0 : space.end - space.first;
}

function sideSpaces(fabric: Fabric, { first, end }: FabricRow, corners: ReadonlySet<number>): number {
  return fabric.spaces.filter(
    (space) => space.first >= first && space.first < end && !corners.has(space.first),
  ).length;
}
