/** A pattern and the fabric of one size in, what it measures and takes out. All of it is reckoned from the gauge. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Measures, ScaleOf } from './measures.ts';
import { rowMeasures } from './piece-measures.ts';
import { largestPiece } from './piece-size.ts';
import { stitchWidthMm } from './row-heights.ts';
import { stitchesToWork } from './times-made.ts';
import { byFigures } from './yarn-scale.ts';
import { reckonYarn, yarnUse } from './yarn-use.ts';

/** `scaleOf` is what is known of the yarn in all sizes; the trade's figures alone where nothing is given. */
export function measure(pattern: Pattern, fabric: Fabric, scaleOf: ScaleOf = byFigures): Measures {
  const stitches = stitchesToWork(pattern, fabric);
  const { gauge } = pattern;
  if (gauge === null) return { widthMm: null, heightMm: null, aroundMm: null, yarn: [], stitches };
  const stitchMm = stitchWidthMm(gauge);
  const { widthMm, heightMm, aroundMm } = largestPiece(fabric, rowMeasures(pattern, fabric, gauge), stitchMm);
  // Of rows that are left to the maker nobody knows the length, nor what it takes.
  if (fabric.rows.some(({ open }) => open === true))
    return { widthMm, heightMm: null, aroundMm, yarn: [], stitches };
  return {
    widthMm,
    heightMm,
    aroundMm,
    yarn: yarnUse(pattern, fabric, reckonYarn(pattern, fabric, stitchMm), scaleOf),
    stitches,
  };
}

/** How large the largest piece is once each row is worked, the rows in order. */
export function sizesByRow(
  pattern: Pattern,
  fabric: Fabric,
): readonly ({ readonly row: number } & Pick<Measures, 'widthMm' | 'heightMm'>)[] {
  const { gauge } = pattern;
  if (gauge === null) return [];
  const measures = rowMeasures(pattern, fabric, gauge);
  const stitchMm = stitchWidthMm(gauge);
  return fabric.rows.map((_, row) => {
    const soFar = { ...fabric, rows: fabric.rows.slice(0, row + 1) };
    const { widthMm, heightMm } = largestPiece(soFar, measures, stitchMm);
    return { row, widthMm, heightMm };
  });
}
