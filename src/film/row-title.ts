/** A row of a fabric in, what a chapter and a link call it out: `Round 3`, `Rounds 8 to 14`. */

import type { Fabric } from '../fabric/fabric.ts';

/** `whole` names all rows from it on that the same line of the instructions made. */
export function rowTitle(fabric: Fabric, at: number, whole: boolean): string {
  const first = fabric.rows[at];
  if (first === undefined || first.number === null || first.unit === null) return first?.label ?? '';
  const noun = first.unit === 'row' ? 'Row' : 'Round';
  let last = at;
  while (whole && fabric.rows[last + 1]?.line === first.line && fabric.rows[last + 1]?.part === first.part)
    last += 1;
  const to = fabric.rows[last]?.number ?? first.number;
  return to === first.number ? `${noun} ${first.number}` : `${noun}s ${first.number} to ${to}`;
}
