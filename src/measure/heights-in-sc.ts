/**
 * A fabric in, how high each of its rows is in rows of single crochet out, by the stitch table's heights.
 *
 * A row is as high as its tallest stitch, but a stitch that reaches into a row further down, a spike or the drop of a
 * mosaic, adds only what it stands up above the rows it passes. Where tall stitches stand on short ones and short ones on
 * tall ones, two rows together are as high as one of each. An arch of more chains than it is wide bows: where the next row
 * is worked into it, it lifts that by its rise, reckoned as two straight halves (computed; hands and blocking differ).
 */

import { type Fabric, type FabricRow, INTO, NONE, type Space, targets } from '../fabric/fabric.ts';
import { stitchById } from '../stitches/table.ts';
import { widthsOf } from './row-widths.ts';

/** Thirteen single crochet and 14 rows to 4 in, a published gauge; from memory hands range from 0.8 to 1.1. */
export const SC_HEIGHT_TO_WIDTH = 0.93;

/** What is said wherever heights go by that. */
export const HEIGHTS_AS_USUAL =
  'No rows were counted: they are taken to be as high as is usual, and hands differ.';

/** A row whose every stitch reaches far down still lies on what is below it. Our own choice. */
const LEAST = 0.5;
/** The space of a corner, a V-stitch or a mesh is filled by what goes into it. */
const FEWEST_OF_ARCH = 3;

export function heightsInSc(fabric: Fabric): readonly number[] {
  const rises = archRises(fabric);
  const heights: number[] = [];
  for (const [index, row] of fabric.rows.entries()) {
    if (row.unit === null && row.stitches === 0) heights.push(0);
    else heights.push(shareOfTwoRows(fabric, row) ?? heightOf(fabric, row, heights, rises.get(index) ?? 0));
  }
  return heights;
}

function heightOf(fabric: Fabric, row: FabricRow, heights: readonly number[], rise: number): number {
  let tallest = 0;
  let lowest = Number.POSITIVE_INFINITY;
  for (let i = row.first; i < row.end; i += 1) {
    const height = stitchHeight(fabric, i);
    // Chains that count as nothing, and slip stitches, stand no higher than what they lie on.
    if (height === 0) continue;
    tallest = Math.max(tallest, height - passed(fabric, row, i, heights));
    lowest = Math.min(lowest, height);
  }
  if (lowest === Number.POSITIVE_INFINITY) return 0;
  return Math.max(LEAST, tallest, rise > 0 ? lowest + rise : 0);
}

/** Of what it is counted as; nothing for what is not counted, nor for a chain that counts as a chain. */
function stitchHeight(fabric: Fabric, i: number): number {
  const counted = fabric.countsAs[i] ?? NONE;
  if (counted === NONE) return 0;
  const stitch = stitchById(fabric.stitches[counted] ?? 'ch');
  return stitch.family === 'chain' ? 0 : stitch.heightInSc;
}

/** How high the rows are together that a stitch goes past, between its own and the one it is worked into. */
function passed(fabric: Fabric, { onto }: FabricRow, i: number, heights: readonly number[]): number {
  const [target] = targets(fabric, i);
  const where = fabric.where[i];
  const reaches = where === INTO.top || where === INTO.space || where === INTO.post;
  if (target === undefined || !reaches) return 0;
  const into = fabric.row[target] ?? 0;
  let sum = 0;
  for (let at = onto; at !== null && at > into; at = fabric.rows[at]?.onto ?? null) sum += heights[at] ?? 0;
  return sum;
}

/** Half of what a stitch and the one below it come to, where that is the same all along the row; null where it is not. */
function shareOfTwoRows(fabric: Fabric, { first, end, byStitch, spaces, onto }: FabricRow): number | null {
  if (spaces > 0 || Object.keys(byStitch).length !== 2) return null;
  let two: number | null = null;
  for (let i = first; i < end; i += 1) {
    if ((fabric.countsAs[i] ?? NONE) === NONE) continue;
    const [below, more] = targets(fabric, i);
    const plain = fabric.where[i] === INTO.top && more === undefined;
    if (below === undefined || !plain || (fabric.countsAs[below] ?? NONE) === NONE) return null;
    if (onto !== null && (fabric.row[below] ?? 0) < onto) return null;
    const height = stitchHeight(fabric, i) + stitchHeight(fabric, below);
    if (two !== null && two !== height) return null;
    two = height;
  }
  return two === null ? null : two / 2;
}

/** For each row with arches that are worked into, their mean rise in rows of single crochet. */
function archRises(fabric: Fabric): ReadonlyMap<number, number> {
  const used = usedChains(fabric);
  const { spaces } = widthsOf(fabric);
  const byRow = new Map<number, number[]>();
  for (const [space, wide] of spaces) {
    const rise = riseOf(space, wide);
    if (rise === 0 || !isUsed(space, used)) continue;
    byRow.set(space.row, [...(byRow.get(space.row) ?? []), rise]);
  }
  return new Map(
    [...byRow].map(([row, rises]) => [row, rises.reduce((sum, one) => sum + one, 0) / rises.length]),
  );
}

/** Its ends stand in the middle of the stitches beside it. */
function riseOf({ first, end, corner }: Space, wide: number): number {
  const chains = end - first;
  const across = wide + 1;
  if (corner || chains < FEWEST_OF_ARCH || chains <= across) return 0;
  return Math.sqrt((chains / 2) ** 2 - (across / 2) ** 2) / SC_HEIGHT_TO_WIDTH;
}

function usedChains(fabric: Fabric): ReadonlySet<number> {
  const used = new Set<number>();
  for (let i = 0; i < fabric.count; i += 1)
    if (fabric.where[i] === INTO.space) for (const target of targets(fabric, i)) used.add(target);
  return used;
}

function isUsed({ first, end }: Space, used: ReadonlySet<number>): boolean {
  for (let i = first; i < end; i += 1) if (used.has(i)) return true;
  return false;
}
