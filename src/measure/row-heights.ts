/**
 * A fabric and its gauge in, the height of every row in mm out.
 *
 * A row is as high as its tallest stitch. Where the gauge names the stitch it was measured in, other rows stand to it
 * as the stitch table's heights do (from memory; hands differ widely). Where it names a pattern, or nothing, the gauge
 * is taken to hold for the rows of the piece as they come, edgings left out: their mean is the gauge's row.
 */

import type { Fabric, FabricRow } from '../fabric/fabric.ts';
import type { Gauge } from '../pattern/pattern.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { findStitch, stitchById } from '../stitches/table.ts';

/** One height for each of `fabric.rows`; 0 for foundation chains and rounds of slip stitch. */
export function rowHeights(
  fabric: Fabric,
  gauge: Gauge,
  terms: Terms,
  edgings: readonly boolean[],
): number[] {
  const inSc = fabric.rows.map(heightInSc);
  const rowMm = gauge.overMm / gauge.rows;
  const measured = gauge.of === null ? null : findStitch(gauge.of, terms);
  const base =
    measured === null
      ? meanOf(inSc.filter((height, i) => height > 0 && edgings[i] !== true))
      : measured.heightInSc;
  // A gauge over slip stitch, or a piece that is all edging, gives nothing to compare with.
  const mmPerSc = rowMm / (base > 0 ? base : 1);
  return inSc.map((height) => height * mmPerSc);
}

function heightInSc(row: FabricRow): number {
  if (row.unit === null && row.stitches === 0) return 0;
  const worked = Object.keys(row.byStitch).filter((id) => stitchById(id).family !== 'chain');
  return Math.max(0, ...worked.map((id) => stitchById(id).heightInSc));
}

function meanOf(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}
