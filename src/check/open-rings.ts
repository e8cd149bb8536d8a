/** A first round worked along a chain, one side of it only, though the chain was not joined into a ring. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Fabric, FabricRow } from '../fabric/fabric.ts';
import { FLAG, INTO, targets } from '../fabric/fabric.ts';
import { rowSubject } from '../fabric/row-subject.ts';
import type { Publication } from './publication.ts';

/** So many chains of the foundation worked into make a round of it; the rounds of a circle all go into one. */
const FEWEST = 6;

export function openRings({ pattern, sizes }: Publication): Diagnostic[] {
  const told = new Set<number>();
  return sizes.flatMap(({ fabric }) =>
    fabric.rows.flatMap((row, i) => {
      const chain = fabric.rows[i - 1];
      if (chain === undefined || row.onto !== i - 1 || told.has(row.span.start)) return [];
      if (!isOpenChain(fabric, chain) || row.unit !== 'round' || !goesAlong(fabric, row)) return [];
      told.add(row.span.start);
      const where = { file: pattern.source.file, span: chain.span };
      return [diagnose('row/no-ring', where, { row: rowSubject(row.label) })];
    }),
  );
}

function isOpenChain(fabric: Fabric, { side, first, end }: FabricRow): boolean {
  if (side !== null) return false;
  for (let i = first; i < end; i += 1) if (((fabric.flags[i] ?? 0) & FLAG.join) !== 0) return false;
  return end - first >= FEWEST;
}

/** Into many of the chains, and into the other side of none. */
function goesAlong(fabric: Fabric, { first, end }: FabricRow): boolean {
  const into = new Set<number>();
  for (let i = first; i < end; i += 1) {
    if (fabric.where[i] === INTO.underside) return false;
    for (const target of targets(fabric, i)) if (target < first) into.add(target);
  }
  return into.size >= FEWEST;
}
