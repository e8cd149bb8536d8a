/**
 * A fabric with the heights and widths of its rows in, the finished size of its largest piece out.
 *
 * Parts that go on from an earlier part belong to its piece. A piece of rows is as wide as its widest row and as high
 * as its rows together; an edging adds its own height on every side it lies on.
 */

import type { Fabric } from '../fabric/fabric.ts';
import type { Sides } from './edgings.ts';
import { type PieceSize, roundSize } from './round-size.ts';

export interface RowMeasures {
  readonly heightsMm: readonly number[];
  /** In stitches. */
  readonly widths: readonly number[];
  readonly edgings: readonly (Sides | null)[];
}

const NOTHING: PieceSize = { widthMm: null, heightMm: null, aroundMm: null };

export function largestPiece(fabric: Fabric, measures: RowMeasures, stitchMm: number): PieceSize {
  const roots = fabric.parts.flatMap((part, index) => (part.onto === null ? [index] : []));
  const sizes = roots.map((root) => pieceSize(fabric, root, measures, stitchMm));
  const none = NOTHING;
  return sizes.reduce((largest, size) => (areaOf(size) > areaOf(largest) ? size : largest), sizes[0] ?? none);
}

function areaOf({ widthMm, heightMm }: PieceSize): number {
  return (widthMm ?? 0) * (heightMm ?? 0);
}

function pieceSize(fabric: Fabric, root: number, measures: RowMeasures, stitchMm: number): PieceSize {
  const part = fabric.parts[root];
  if (part === undefined) return NOTHING;
  const parts = partsOf(fabric, root);
  const rows = fabric.rows.flatMap((row, index) => (parts.has(row.part) ? [index] : []));
  // A part may end in a round that edges its rows; what it is shows in how it begins.
  const begins = rows.find((row) => (measures.heightsMm[row] ?? 0) > 0);
  if (begins === undefined || fabric.rows[begins]?.closing === 'flat')
    return flatSize(rows, measures, stitchMm);
  const rounds = rows.filter((row) => fabric.rows[row]?.closing !== 'flat');
  const corners = Math.max(...[...parts].map((index) => fabric.parts[index]?.corners ?? 0));
  return roundSize(
    fabric,
    { rounds, corners, start: part.start },
    measures.heightsMm,
    measures.widths,
    stitchMm,
  );
}

/** The part and all that go on from it, directly or by way of another. */
function partsOf(fabric: Fabric, root: number): ReadonlySet<number> {
  const found = new Set([root]);
  for (const [index, part] of fabric.parts.entries())
    if (part.onto !== null && found.has(part.onto)) found.add(index);
  return found;
}

function flatSize(
  rows: readonly number[],
  { heightsMm, widths, edgings }: RowMeasures,
  stitchMm: number,
): PieceSize {
  let [widest, heightMm, edgeWidthMm] = [0, 0, 0];
  for (const row of rows) {
    const edging = edgings[row] ?? null;
    const rowMm = heightsMm[row] ?? 0;
    if (edging === null) {
      // A foundation chain is as wide as its row, whose first stitches may have skipped some of it.
      if (rowMm > 0) widest = Math.max(widest, widths[row] ?? 0);
      heightMm += rowMm;
    } else {
      edgeWidthMm += edging.sides * rowMm;
      heightMm += edging.ends * rowMm;
    }
  }
  if (widest === 0) return NOTHING;
  return { widthMm: widest * stitchMm + edgeWidthMm, heightMm, aroundMm: null };
}
