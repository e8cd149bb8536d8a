/** A pattern and the fabric of one size in, what it measures and takes out. All of it is reckoned from the gauge. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { edgingSides } from './edgings.ts';
import type { Measures, ScaleOf } from './measures.ts';
import { largestPiece } from './piece-size.ts';
import { rowHeights, stitchWidthMm } from './row-heights.ts';
import { rowWidths } from './row-widths.ts';
import { stitchesToWork } from './times-made.ts';
import { byFigures } from './yarn-scale.ts';
import { reckonYarn, yarnUse } from './yarn-use.ts';

/** `scaleOf` is what is known of the yarn in all sizes; the trade's figures alone where nothing is given. */
export function measure(pattern: Pattern, fabric: Fabric, scaleOf: ScaleOf = byFigures): Measures {
  const stitches = stitchesToWork(pattern, fabric);
  const { gauge } = pattern;
  if (gauge === null) return { widthMm: null, heightMm: null, aroundMm: null, yarn: [], stitches };
  const stitchMm = stitchWidthMm(gauge);
  const edgings = edgingSides(fabric);
  const heightsMm = rowHeights(
    fabric,
    gauge,
    pattern.terms,
    edgings.map((sides) => sides !== null),
  );
  const { widthMm, heightMm, aroundMm } = largestPiece(
    fabric,
    { heightsMm, widths: rowWidths(fabric), edgings },
    stitchMm,
  );
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
