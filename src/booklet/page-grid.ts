/** Paper and orientation in; out comes where the running head, the columns and the page number stand, all in mm. */

import { type Orientation, PAPERS, type PaperName } from './paper.ts';

/** Type sizes and the line pitch that goes with each, in points. */
export const TYPE = {
  body: { fontPt: 10.5, linePt: 15 },
  small: { fontPt: 8.5, linePt: 12 },
  caption: { fontPt: 9, linePt: 12.5 },
  side: { fontPt: 11, linePt: 15 },
  section: { fontPt: 16, linePt: 21 },
  part: { fontPt: 12.5, linePt: 17 },
  lead: { fontPt: 12.5, linePt: 18.5 },
  size: { fontPt: 16, linePt: 22 },
} as const;

/** Thin lines, as little ink as shows clearly on a home printer. */
export const RULE = { hairMm: 0.15, thinMm: 0.25, boxMm: 0.25 } as const;

/** The one coloured ink is the charts' second ink; small print is faint grey. */
export const ACCENT = 'second';
export const QUIET = 'faint';

/** Space between things, in mm. */
export const GAP = {
  section: 7,
  part: 5.5,
  afterHeading: 2.6,
  paragraph: 1.6,
  row: 2.1,
  afterSection: 3,
  count: 4,
} as const;

/** Home printers cannot reach the edge of the sheet; half an inch all round is common practice. */
export const SAFE_MARGIN_MM = 12.7;

export interface PageGrid {
  readonly orientation: Orientation;
  readonly widthMm: number;
  readonly heightMm: number;
  /** The text area. */
  readonly leftMm: number;
  readonly topMm: number;
  readonly bodyWidthMm: number;
  readonly bodyHeightMm: number;
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

/** Side margins that leave some 75 characters to a line in the main column. */
const SIDE_MARGIN_MM = { A4: 20, Letter: 22 } as const;
const LANDSCAPE_MARGIN_MM = 14;
const SIDE_COLUMN_MM = 33;
const GUTTER_MM = 5;

export function pageGrid(paper: PaperName, orientation: Orientation): PageGrid {
  const { widthMm: shortMm, heightMm: longMm } = PAPERS[paper];
  const upright = orientation === 'portrait';
  const widthMm = upright ? shortMm : longMm;
  const heightMm = upright ? longMm : shortMm;
  const leftMm = upright ? SIDE_MARGIN_MM[paper] : LANDSCAPE_MARGIN_MM;
  const topMm = upright ? 25 : 23;
  const footMm = upright ? 22 : 20;
  const bodyWidthMm = widthMm - 2 * leftMm;
  const mainXMm = SIDE_COLUMN_MM + GUTTER_MM;
  return {
    orientation,
    widthMm,
    heightMm,
    leftMm,
    topMm,
    bodyWidthMm,
    bodyHeightMm: heightMm - topMm - footMm,
    sideWidthMm: SIDE_COLUMN_MM,
    mainXMm,
    mainWidthMm: bodyWidthMm - mainXMm,
    headBaselineMm: 16.2,
    headRuleMm: 18.4,
    footBaselineMm: heightMm - 14.2,
  };
}
