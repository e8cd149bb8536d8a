/** A worked round in, its corner spaces and how many stitches lie between each two of them out. */

import type { Fabric, FabricRow } from './fabric.ts';
import { NONE } from './fabric.ts';

export interface Sides {
  readonly corners: number;
  /** Counted stitches of each side, the first from the first corner; the last goes over the start of the round. */
  readonly stitches: readonly number[];
}

/** The first chain of each space at a corner of the piece. */
export function cornerSpaces({ spaces }: Fabric): ReadonlySet<number> {
  return new Set(spaces.filter(({ corner }) => corner).map(({ first }) => first));
}

/** Corners that are chain spaces; one of several stitches into a stitch cannot be told from an increase for sure. */
export function sidesOf(fabric: Fabric, row: FabricRow, spaces: ReadonlySet<number>): Sides {
  const stitches: number[] = [];
  let beforeFirst = 0;
  let corners = 0;
  for (let i = row.first; i < row.end; i += 1) {
    if (spaces.has(i)) {
      corners += 1;
      stitches.push(0);
    } else if ((fabric.countsAs[i] ?? NONE) !== NONE) {
      if (corners === 0) beforeFirst += 1;
      else stitches[corners - 1] = (stitches[corners - 1] ?? 0) + 1;
    }
  }
  if (corners > 0) stitches[corners - 1] = (stitches[corners - 1] ?? 0) + beforeFirst;
  return { corners, stitches };
}
