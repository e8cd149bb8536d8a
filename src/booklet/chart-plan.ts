/** A chart's size in, how to get it on paper out: in the text, on its side, or over several sheets. */

import { U_MM } from '../chart/metrics.ts';
import { type PageGrid, pageGrid } from './page-grid.ts';
import type { Orientation, PaperName } from './paper.ts';

/**
 * The least legible size, as one stitch's share of its row on paper: drawn narrower, a symbol can no longer be told from
 * its neighbours at reading distance. Our own choice, made by looking at prints; no chart goes on paper smaller than this.
 */
export const LEAST_PITCH_MM = 2.2;
export const LEGIBLE_SCALE = LEAST_PITCH_MM / U_MM;
/** More sheets than this nobody tapes together; a chart that would need them is left out, and the booklet says so. */
export const MOST_SHEETS = 24;
/** Strip of the neighbouring sheet drawn again at each inner edge, to lay the sheets by and to glue them. */
export const OVERLAP_MM = 6;
/** Room outside the overlap for the number of the sheet that joins there. */
export const NEIGHBOUR_MM = 5;
/** Room above a chart that fills a page of its own, for its heading. */
export const SHEET_HEADING_MM = 14;
/** The same above one of several sheets, with the finder map beside the heading. */
export const TILE_HEADING_MM = 25;

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
    }
  /** More sheets than anyone would lay together, at a size that can be read. */
  | { readonly kind: 'too large'; readonly sheets: number };

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
  return planSheets(chart, [upright, sideways]);
}

function planSheets(chart: ChartSize, grids: readonly PageGrid[]): ChartPlan {
  const [best] = grids
    .map((grid) => tiles(chart, grid))
    .sort((a, b) => a.across * a.down - b.across * b.down);
  const sheets = best === undefined ? 0 : best.across * best.down;
  return best === undefined || sheets > MOST_SHEETS ? { kind: 'too large', sheets } : best;
}

function tiles(chart: ChartSize, grid: PageGrid): Extract<ChartPlan, { kind: 'sheets' }> {
  const wide = fewest(chart.widthMm * LEGIBLE_SCALE, grid.bodyWidthMm);
  const high = fewest(chart.heightMm * LEGIBLE_SCALE, grid.bodyHeightMm - TILE_HEADING_MM);
  // As large as the same number of sheets can show it.
  const scale = Math.min(1, wide.roomMm / chart.widthMm, high.roomMm / chart.heightMm);
  return {
    kind: 'sheets',
    scale,
    orientation: grid.orientation,
    across: wide.count,
    down: high.count,
    // Even tiles, so that the last sheet does not hold a sliver.
    tileWidthMm: (chart.widthMm * scale) / wide.count,
    tileHeightMm: (chart.heightMm * scale) / high.count,
  };
}

/** What joins at one edge of a sheet takes of it. */
export const JOIN_MM = OVERLAP_MM + NEIGHBOUR_MM;

/** The fewest sheets in a line that hold a length: an edge where no other joins needs no room. */
function fewest(lengthMm: number, sheetMm: number): { count: number; roomMm: number } {
  for (let count = 1; ; count += 1) {
    const roomMm = count * (sheetMm - Math.min(count - 1, 2) * JOIN_MM);
    if (roomMm >= lengthMm) return { count, roomMm };
  }
}

/** Never larger than drawn: a chart's symbols are drawn at the size they read best. */
function fitScale(chart: ChartSize, widthMm: number, heightMm: number): number {
  return Math.min(1, widthMm / chart.widthMm, heightMm / chart.heightMm);
}
