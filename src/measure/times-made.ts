/** A pattern and its fabric in, how many of each part are made and how many stitches that takes out. */

import { type Fabric, FLAG, stitchId } from '../fabric/fabric.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { stitchById } from '../stitches/table.ts';

/** How many of each part are made, by its index in the fabric. */
export function timesMade(pattern: Pattern, fabric: Fabric): number[] {
  return fabric.parts.map(({ name }) => pattern.parts.find((part) => part.name === name)?.make ?? 1);
}

/** Stitches to work in all the pieces made: joins, chains and the magic ring left out. */
export function stitchesToWork(pattern: Pattern, fabric: Fabric): number {
  const makes = timesMade(pattern, fabric);
  let stitches = 0;
  for (let i = 0; i < fabric.count; i += 1) {
    const { family } = stitchById(stitchId(fabric, i));
    if (family === 'chain' || family === 'start' || ((fabric.flags[i] ?? 0) & FLAG.join) !== 0) continue;
    stitches += makes[fabric.rows[fabric.row[i] ?? 0]?.part ?? 0] ?? 1;
  }
  return stitches;
}
