/** Rounds with corners: as many as the round before, and as many stitches on one side as on the one across from it. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Sides } from '../fabric/corners.ts';
import { cornerSpaces, sidesOf } from '../fabric/corners.ts';
import type { FabricRow } from '../fabric/fabric.ts';
import { rowSubject } from '../fabric/row-subject.ts';
import type { Publication } from './publication.ts';

/** With fewer it is no shape with sides; with more, corners are points of an edging. */
const FEWEST = 3;
const MOST = 8;

export function unevenCorners({ pattern, sizes }: Publication): Diagnostic[] {
  const { file } = pattern.source;
  return sizes.flatMap(({ fabric }) => {
    const named = sizes.length > 1 ? [fabric.size] : [];
    const atCorners = cornerSpaces(fabric);
    let before: Round | null = null;
    const faults: Diagnostic[] = [];
    for (const row of fabric.rows) {
      const sides = row.side === null || row.closing !== 'joined' ? null : sidesOf(fabric, row, atCorners);
      if (sides === null || !isShape(sides)) {
        before = null;
        continue;
      }
      const where = { file, span: row.span, sizes: named };
      const goesOn = before !== null && before.row.part === row.part;
      if (before !== null && goesOn && changes(before, sides)) {
        const facts = {
          row: rowSubject(row.label),
          corners: sides.corners,
          before: rowSubject(before.row.label),
          had: before.sides.corners,
        };
        faults.push(diagnose('corner/count', where, facts));
      } else {
        const across = differentAcross(sides);
        if (across !== null)
          faults.push(diagnose('corner/sides', where, { row: rowSubject(row.label), ...across }));
      }
      before = { row, sides };
    }
    return faults;
  });
}

interface Round {
  readonly row: FabricRow;
  readonly sides: Sides;
}

/** A first round of spaces all alike may hold a corner in every second: none of them is one yet. */
function changes({ row, sides: { corners: had } }: Round, { corners }: Sides): boolean {
  const begins = row.onto === null || row.number === 1;
  return had !== corners && !(begins && had % corners === 0);
}

function isShape({ corners }: Sides): boolean {
  return corners >= FEWEST && corners <= MOST;
}

/** The first two sides across from each other that differ; a shape with an odd number of sides has none across. */
function differentAcross({
  corners,
  stitches,
}: Sides): { readonly one: number; readonly other: number } | null {
  if (corners % 2 !== 0) return null;
  for (let i = 0; i < corners / 2; i += 1) {
    const [one, other] = [stitches[i] ?? 0, stitches[i + corners / 2] ?? 0];
    if (one !== other) return { one, other };
  }
  return null;
}
