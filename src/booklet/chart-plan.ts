/** A chart's size in, how to get it on paper out: in the text, on its side, or over several sheets. */

import { U_MM } from '../chart/metrics.ts';
import { type PageGrid, pageGrid } from './page-grid.ts';
import type { Orientation, PaperName } from './paper.ts';

/** Narrower than this between two stitches a printed symbol can no longer be told from its neighbours. */
const LEGIBLE_PITCH_MM = 2.2;
export const LEGIBLE_SCALE = LEGIBLE_PITCH_MM / U_MM;
/** More sheets than this nobody tapes together; a chart that would need them is drawn smaller, and says so. */
export const MOST_SHEETS = 24;
/** Strip of the neighbouring sheet drawn again at each inner edge, to lay the sheets by. */
export const OVERLAP_MM = 4;
/** Room above a chart that fills a page of its own, for its heading. */
export const SHEET_HEADING_MM = 14;

/** Between a chart and its key. */
export const KEY_GAP_MM = 5;

export type ChartPlan =
  | { readonly kind: 'in text'; readonly scale: number }
  | { readonly kind: 'sheet'; readonly scale: number; readonly orientation: Orientation }
  | {
      readonly kind: 'sheets';
      readonly scale: number;
      readonly orientation: Orientation;
      readonly across: number;
      readonly down: number;
      /** Size of one tile, overlap left out. */
      readonly tileWidthMm: number;
      readonly tileHeightMm: number;
    };

/** The drawing alone; its key keeps its own size. */
export interface ChartSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** `keyHeightMm` is what a key takes that is set in a width, the space above it included. */
export function planChart(
  chart: ChartSize,
  paper: PaperName,
  headingMm: number,
  keyHeightMm: (widthMm: number) => number,
): ChartPlan {
  const upright = pageGrid(paper, 'portrait');
  const sideways = pageGrid(paper, 'landscape');
  const inText = fitScale(
    chart,
    upright.bodyWidthMm,
    upright.bodyHeightMm - headingMm - keyHeightMm(upright.bodyWidthMm),
  );
  if (inText >= LEGIBLE_SCALE) return { kind: 'in text', scale: inText };
  const turned = fitScale(
    chart,
    sideways.bodyWidthMm,
    sideways.bodyHeightMm - SHEET_HEADING_MM - keyHeightMm(sideways.bodyWidthMm),
  );
  if (turned > inText && turned >= LEGIBLE_SCALE)
    return { kind: 'sheet', scale: turned, orientation: 'landscape' };
  return planSheets(chart, LEGIBLE_SCALE, [upright, sideways]);
}

function planSheets(chart: ChartSize, legible: number, grids: readonly PageGrid[]): ChartPlan {
  for (let scale = legible; ; scale *= 0.95) {
    const plans = grids
      .map((grid) => tiles(chart, scale, grid))
      .sort((a, b) => a.across * a.down - b.across * b.down);
    const [best] = plans;
    if (best && best.across * best.down <= MOST_SHEETS) return best;
  }
}

function tiles(chart: ChartSize, least: number, grid: PageGrid): Extract<ChartPlan, { kind: 'sheets' }> {
  const widthMm = grid.bodyWidthMm - 2 * OVERLAP_MM;
  const heightMm = grid.bodyHeightMm - SHEET_HEADING_MM - 2 * OVERLAP_MM;
  const across = Math.ceil((chart.widthMm * least) / widthMm);
  const down = Math.ceil((chart.heightMm * least) / heightMm);
  // As large as the same number of sheets can show it.
  const scale = Math.min(1, (across * widthMm) / chart.widthMm, (down * heightMm) / chart.heightMm);
  return {
    kind: 'sheets',
    scale,
    orientation: grid.orientation,
    across,
    down,
    // Even tiles, so that the last sheet does not hold a sliver.
    tileWidthMm: (chart.widthMm * scale) / across,
    tileHeightMm: (chart.heightMm * scale) / down,
  };
}

/** Never larger than drawn: a chart's symbols are drawn at the size they read best. */
function fitScale(chart: ChartSize, widthMm: number, heightMm: number): number {
  return Math.min(1, widthMm / chart.widthMm, heightMm / chart.heightMm);
}
