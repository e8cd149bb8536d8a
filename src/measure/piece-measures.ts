/** A pattern and a fabric in, how high and wide each row is and how large the largest piece comes out. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Gauge, Pattern } from '../pattern/pattern.ts';
import { edgingSides } from './edgings.ts';
import { largestPiece, type RowMeasures } from './piece-size.ts';
import { rowHeights, stitchWidthMm } from './row-heights.ts';
import { rowWidths } from './row-widths.ts';

export function rowMeasures({ terms }: Pattern, fabric: Fabric, gauge: Gauge): RowMeasures {
  const edgings = edgingSides(fabric);
  const isEdging = edgings.map((sides) => sides !== null);
  return { heightsMm: rowHeights(fabric, gauge, terms, isEdging), widths: rowWidths(fabric), edgings };
}

export interface Piece {
  /** Null without a gauge. */
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  /** 0 for a piece of rows or a circle. */
  readonly corners: number;
}

export function pieceOf(pattern: Pattern, fabric: Fabric): Piece {
  const { gauge } = pattern;
  const corners = Math.max(0, ...fabric.parts.map((part) => part.corners));
  if (gauge === null) return { widthMm: null, heightMm: null, corners };
  return { ...largestPiece(fabric, rowMeasures(pattern, fabric, gauge), stitchWidthMm(gauge)), corners };
}
