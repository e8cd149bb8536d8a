/**
 * A fabric and its gauge in, the height of every row in mm out.
 *
 * A row is as high as its tallest stitch, but where tall stitches stand on short ones and short ones on tall ones, two
 * rows together are as high as one of each. Where the gauge names the stitch it was measured in, other rows stand to it
 * as the stitch table's heights do (from memory; hands differ widely). Where it names a pattern, or nothing, the gauge
 * is taken to hold for the rows of the piece as they come, edgings left out: their mean is the gauge's row. Where only
 * stitches were counted, rows are as high as is usual (rules of thumb; hands differ far more in height than in width).
 */

import type { Fabric, FabricRow } from '../fabric/fabric.ts';
import { INTO, NONE, targets } from '../fabric/fabric.ts';
import type { Gauge } from '../pattern/pattern.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { findStitch, stitchById } from '../stitches/table.ts';

/** Thirteen single crochet and 14 rows to 4 in, a published gauge; from memory hands range from 0.8 to 1.1. */
export const SC_HEIGHT_TO_WIDTH = 0.93;

/** Width of a stitch at a gauge, in mm. */
export function stitchWidthMm({ overMm, stitches }: Gauge): number {
  return overMm / stitches;
}

/** One height for each of `fabric.rows`; 0 for foundation chains and rounds of slip stitch. */
export function rowHeights(
  fabric: Fabric,
  gauge: Gauge,
  terms: Terms,
  edgings: readonly boolean[],
): number[] {
  const inSc = fabric.rows.map((row) => shareOfTwoRows(fabric, row) ?? heightInSc(row));
  // Without a row counted a row of single crochet is to its stitches as it usually is, and others to that.
  if (gauge.rows === null) {
    const scMm = SC_HEIGHT_TO_WIDTH * stitchWidthMm(gauge);
    return inSc.map((height) => height * scMm);
  }
  const rowMm = gauge.upMm / gauge.rows;
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

/** Half of what a stitch and the one below it come to, where that is the same all along the row; null where it is not. */
function shareOfTwoRows(fabric: Fabric, { first, end, byStitch, spaces }: FabricRow): number | null {
  if (spaces > 0 || Object.keys(byStitch).length !== 2) return null;
  let two: number | null = null;
  for (let i = first; i < end; i += 1) {
    if ((fabric.countsAs[i] ?? NONE) === NONE) continue;
    const [below, more] = targets(fabric, i);
    const plain = fabric.where[i] === INTO.top && more === undefined;
    if (below === undefined || !plain || (fabric.countsAs[below] ?? NONE) === NONE) return null;
    const height = heightOf(fabric, i) + heightOf(fabric, below);
    if (two !== null && two !== height) return null;
    two = height;
  }
  return two === null ? null : two / 2;
}

function heightOf(fabric: Fabric, i: number): number {
  return stitchById(fabric.stitches[fabric.countsAs[i] ?? NONE] ?? 'ch').heightInSc;
}

function meanOf(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}
