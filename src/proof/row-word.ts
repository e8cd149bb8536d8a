/** A worked row in, its stitches as a list of numbers out: two rows are worked alike where their numbers are the same. */

import { cornerSpaces } from '../fabric/corners.ts';
import type { Fabric } from '../fabric/fabric.ts';
import { FLAG, NONE, targets } from '../fabric/fabric.ts';

/** One number a stitch, in the order they are made. */
export interface RowWord {
  /** As published: `Row 2`. */
  readonly label: string;
  readonly stitches: readonly number[];
  /** Indices of the stitches where a corner is, in order. */
  readonly corners: readonly number[];
  /** How many stitches are counted. */
  readonly counted: number;
}

/** The number of each sort of stitch; shared by the rows that are compared. */
export type Alphabet = Map<string, number>;

/**
 * All rows of a fabric. Markers are left out: they change nothing that is worked. With `byStep` a place is told from the
 * place of the stitch before also near the ends of a row, so that the same work at an end has the same number.
 */
export function rowWords(fabric: Fabric, alphabet: Alphabet, byStep = false): RowWord[] {
  const atCorners = cornerSpaces(fabric);
  return fabric.rows.map((row, index) => {
    const stitches: number[] = [];
    const corners: number[] = [];
    const into = new Map<number, number>();
    for (let i = row.first; i < row.end; i += 1) {
      const sort = `${itself(fabric, i)} ${whereInto(fabric, i, index, into, byStep)}`;
      const known = alphabet.get(sort) ?? alphabet.size;
      alphabet.set(sort, known);
      if (((fabric.flags[i] ?? 0) & FLAG.corner) !== 0 || atCorners.has(i)) corners.push(i - row.first);
      stitches.push(known);
    }
    return { label: row.label, stitches, corners, counted: row.stitches };
  });
}

/** What stitch it is, in which yarn, what it counts as, and whether it begins a group. */
function itself(fabric: Fabric, i: number): string {
  const counts = fabric.countsAs[i] ?? NONE;
  const group = fabric.groups[fabric.group[i] ?? NONE];
  return [
    fabric.stitches[fabric.kind[i] ?? 0],
    counts === NONE ? '-' : fabric.stitches[counts],
    fabric.yarns[fabric.yarn[i] ?? 0],
    fabric.loop[i],
    (fabric.flags[i] ?? 0) & ~(FLAG.marked | FLAG.cut | FLAG.joinsYarn),
    group === undefined ? '' : `${group.special ?? '()'}${group.first === i ? '<' : ''}`,
  ].join(' ');
}

/**
 * What it goes into, told by the step from the place of the stitch before, so that the same work further along has the
 * same number; or by how far it is from the nearer end of the row below where that is less, as where a row begins and
 * where a round comes back to its start. `into` remembers the last place by how many rows below it is.
 */
function whereInto(
  fabric: Fabric,
  i: number,
  row: number,
  into: Map<number, number>,
  byStep: boolean,
): string {
  const told: string[] = [];
  for (const target of targets(fabric, i)) {
    const ofRow = fabric.row[target] ?? 0;
    const below = row - ofRow;
    if (below === 0) {
      // A join goes back to the start however long the round is.
      const fromStart = target - (fabric.rows[row]?.first ?? 0);
      told.push(fromStart < i - target ? `own start ${fromStart}` : `own ${i - target}`);
      continue;
    }
    const step = target - (into.get(below) ?? Number.POSITIVE_INFINITY);
    into.set(below, target);
    const { first, end } = fabric.rows[ofRow] ?? { first: 0, end: 0 };
    const [fromStart, fromEnd] = [target - first, end - 1 - target];
    if (byStep || Math.abs(step) <= Math.min(fromStart, fromEnd)) told.push(`${below}: ${step}`);
    else told.push(fromStart < fromEnd ? `${below}: start ${fromStart}` : `${below}: end ${fromEnd}`);
  }
  return `${fabric.where[i]} ${told.join(', ')}`;
}
