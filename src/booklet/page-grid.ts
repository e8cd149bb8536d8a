/** A page's format and orientation in; out comes where the running head, the columns and the page number stand, all in mm. */

import { mmFromIn } from '../units.ts';
import { type Orientation, type PageFormat, pageSize } from './paper.ts';
import { type Gaps, gapsOf, TYPE_SIZES, type TypeSizes } from './type-sizes.ts';

/** Thin lines, as little ink as shows clearly on a home printer. */
export const RULE = { hairMm: 0.15, thinMm: 0.25, boxMm: 0.25 } as const;

/** The one coloured ink is the charts' second ink; small print is faint grey. */
export const ACCENT = 'second';
export const QUIET = 'faint';

/** Home printers cannot reach the edge of the sheet; half an inch all round is common practice. */
export const SAFE_MARGIN_MM = mmFromIn(0.5);

export interface PageGrid {
  readonly orientation: Orientation;
  readonly format: PageFormat;
  readonly type: TypeSizes;
  readonly gap: Gaps;
  /** What is drawn beside type, boxes and keys, against its size on a whole sheet. */
  readonly drawn: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** The text area. */
  readonly leftMm: number;
  readonly topMm: number;
  readonly bodyWidthMm: number;
  readonly bodyHeightMm: number;
  /** Headings and row labels stand above what they head, in one column. */
  readonly oneColumn: boolean;
  /** Narrow column at the left for headings and row labels. */
  readonly sideWidthMm: number;
  /** The column to read in, measured from the left of the text area. */
  readonly mainXMm: number;
  readonly mainWidthMm: number;
  /** Baselines of the running head and the page number, and the line under the head. */
  readonly headBaselineMm: number;
  readonly headRuleMm: number;
  readonly footBaselineMm: number;
}

interface Margins {
  readonly sideMm: number;
  readonly topMm: number;
  readonly footMm: number;
  readonly headBaselineMm: number;
  readonly headRuleMm: number;
  /** From the foot of the page. */
  readonly footBaselineMm: number;
}

/** Side margins of whole sheets leave some 75 characters to a line in the main column. */
const FLAT_SIDE_MM = { A4: 20, Letter: 22 } as const;

const COLUMNS = {
  flat: { sideMm: 33, gutterMm: 5 },
  folded: { sideMm: 27, gutterMm: 4 },
} as const;

export function pageGrid(format: PageFormat, orientation: Orientation): PageGrid {
  const { widthMm: shortMm, heightMm: longMm } = pageSize(format);
  const upright = orientation === 'portrait';
  const widthMm = upright ? shortMm : longMm;
  const heightMm = upright ? longMm : shortMm;
  const margins = marginsOf(format, upright);
  const { sideMm: leftMm, topMm, footMm } = margins;
  const bodyWidthMm = widthMm - 2 * leftMm;
  const type = TYPE_SIZES[format.form];
  const oneColumn = format.form === 'large print';
  const columns = COLUMNS[format.form === 'folded' ? 'folded' : 'flat'];
  const mainXMm = oneColumn ? 0 : columns.sideMm + columns.gutterMm;
  return {
    orientation,
    format,
    type,
    gap: gapsOf(format.form),
    drawn: oneColumn ? type.body.fontPt / TYPE_SIZES.flat.body.fontPt : 1,
    widthMm,
    heightMm,
    leftMm,
    topMm,
    bodyWidthMm,
    bodyHeightMm: heightMm - topMm - footMm,
    oneColumn,
    sideWidthMm: oneColumn ? bodyWidthMm : columns.sideMm,
    mainXMm,
    mainWidthMm: bodyWidthMm - mainXMm,
    headBaselineMm: margins.headBaselineMm,
    headRuleMm: margins.headRuleMm,
    footBaselineMm: heightMm - margins.footBaselineMm,
  };
}

/** Margins of pages to be folded are the same at the fold and outside, and hold for either. */
function marginsOf({ paper, form }: PageFormat, upright: boolean): Margins {
  switch (form) {
    case 'flat':
      return {
        sideMm: upright ? FLAT_SIDE_MM[paper] : 14,
        topMm: upright ? 25 : 23,
        footMm: upright ? 22 : 20,
        headBaselineMm: 16.2,
        headRuleMm: 18.4,
        footBaselineMm: 14.2,
      };
    case 'folded':
      return {
        sideMm: 13.5,
        topMm: 22,
        footMm: 19.5,
        headBaselineMm: 15.6,
        headRuleMm: 17.4,
        footBaselineMm: 14,
      };
    case 'large print':
      return {
        sideMm: upright ? mmFromIn(1) : 16,
        topMm: 28,
        footMm: 26,
        headBaselineMm: 18.2,
        headRuleMm: 21.4,
        footBaselineMm: 15,
      };
  }
}
