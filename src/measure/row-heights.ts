/**
 * A fabric and its gauge in, the height of every row in mm out.
 *
 * Where the gauge names the stitch it was measured in, other rows stand to it as the stitch table's heights do (from
 * memory; hands differ widely), by what each adds (`heights-in-sc.ts`). Where it names a pattern, or nothing, the gauge
 * is taken to hold for the rows of the piece as they come, edgings left out: their mean is the gauge's row. Where only
 * stitches were counted, rows are as high as is usual (rules of thumb; hands differ far more in height than in width).
 */

import type { Fabric } from '../fabric/fabric.ts';
import type { Gauge } from '../pattern/pattern.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { findStitch } from '../stitches/table.ts';
import { heightsInSc, SC_HEIGHT_TO_WIDTH } from './heights-in-sc.ts';

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
  const inSc = heightsInSc(fabric);
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

function meanOf(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}
