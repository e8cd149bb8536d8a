/** Stitches worked along row ends against the length of those ends: too many ruffle, too few pull in. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { type Fabric, FLAG, INTO, targets } from '../fabric/fabric.ts';
import { howItLies } from '../measure/edge-lie.ts';
import { edgingSides } from '../measure/edgings.ts';
import { rowHeights, stitchWidthMm } from '../measure/row-heights.ts';
import type { Publication } from './publication.ts';

export function edgingRatio({ pattern, sizes }: Publication): Diagnostic[] {
  const { gauge, terms } = pattern;
  // Where no rows were counted nobody knows how long the ends are.
  if (gauge === null || gauge.rows === null) return [];
  return sizes.flatMap(({ index, fabric }) => {
    const isEdging = edgingSides(fabric).map((sides) => sides !== null);
    const heights = rowHeights(fabric, gauge, terms, isEdging);
    return fabric.rows.flatMap((row, at) => {
      const { stitches, ends, lengthMm } = alongEnds(fabric, at, heights);
      const wanted = lengthMm / stitchWidthMm(gauge);
      const lies = howItLies(stitches, wanted, ends);
      if (lies === 'flat') return [];
      const line = pattern.parts[row.part]?.instructions.lines[row.line];
      const span = line?.span ?? { start: 0, end: 1 };
      const name = pattern.sizes[index]?.name ?? '';
      const where = { file: pattern.source.file, span, sizes: pattern.sizes.length > 1 ? [name] : [] };
      const facts = {
        label: row.label,
        stitches,
        ends,
        wanted: Math.round(wanted),
        ruffles: lies === 'ruffles',
      };
      return [diagnose('edging/ratio', where, facts)];
    });
  });
}

/** Stitches of one row that go into row ends, how many ends those are, and how long together. */
function alongEnds(
  fabric: Fabric,
  at: number,
  heights: readonly number[],
): { readonly stitches: number; readonly ends: number; readonly lengthMm: number } {
  const { first = 0, end = 0 } = fabric.rows[at] ?? {};
  const into = new Set<number>();
  let stitches = 0;
  for (let i = first; i < end; i += 1) {
    if (fabric.where[i] !== INTO.rowEnd || ((fabric.flags[i] ?? 0) & FLAG.counted) === 0) continue;
    stitches += 1;
    for (const target of targets(fabric, i)) into.add(target);
  }
  let lengthMm = 0;
  for (const target of into) lengthMm += heights[fabric.row[target] ?? -1] ?? 0;
  return { stitches, ends: into.size, lengthMm };
}
