/** A chart's size in, how to get it on paper out: in the text, on its side, or over several sheets. */

import { U_MM } from '../chart/metrics.ts';
import { mmFromPt } from '../units.ts';
import { type PageGrid, pageGrid } from './page-grid.ts';
import type { Form, Orientation, PageFormat } from './paper.ts';

/**
 * The least legible size, as one stitch's share of its row on paper: drawn narrower, a symbol can no longer be told from
 * its neighbours at reading distance. Our own choice, made by looking at prints; no chart goes on paper smaller than this.
 */
export const LEAST_PITCH_MM = 2.2;
export const LEGIBLE_SCALE = LEAST_PITCH_MM / U_MM;
/**
 * In large print no figure of a chart is under 16 points either, and those among the stitches can grow only as the stitches
 * do: the smallest, in a ring, is drawn 2.7 mm high and may grow by a quarter in its place.
 */
const LARGE_PRINT_SCALE = mmFromPt(16) / (2.7 * 1.25);
/** Smallest and largest scale of a chart; drawn at 1 its symbols have the size they read best in ordinary print. */
const SCALES: Readonly<Record<Form, { readonly least: number; readonly most: number }>> = {
  flat: { least: LEGIBLE_SCALE, most: 1 },
  folded: { least: LEGIBLE_SCALE, most: 1 },
  'large print': { least: LARGE_PRINT_SCALE, most: LARGE_PRINT_SCALE * 1.2 },
};
/** More sheets than this nobody tapes together; a chart that would need them is left out, and the booklet says so. */
export const MOST_SHEETS = 24;
/** Strip of the neighbouring sheet drawn again at each inner edge, to lay the sheets by and to glue them. */
export const OVERLAP_MM = 6;
/** Room outside the overlap for the number of the sheet that joins there. */
export const NEIGHBOUR_MM = 5;
/** Room above a chart on one of several sheets, for its heading with the finder map beside it. */
const TILE_HEADING: Readonly<Record<Form, number>> = { flat: 25, folded: 25, 'large print': 30 };

/** Between a chart and its key. */
export const KEY_GAP_MM = 5;

export type ChartPlan =
  | { readonly kind: 'in text'; readonly scale: number }
  | {
      readonly kind: 'sheet';
      /** Of a folded booklet the whole paper, where half of it is too small: the sheet is then a loose one. */
      readonly format: PageFormat;
      readonly scale: number;
      readonly orientation: Orientation;
      /** Of a key at the right of the chart, where it is tall and narrow, the space between included; null for one below. */
      readonly keyBesideMm: number | null;
    }
  | {
      readonly kind: 'sheets';
      readonly format: PageFormat;
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

/** What stands with a chart and takes room from it, the space between included. */
export interface ChartRoom {
  /** Above it in the text. */
  readonly headingMm: number;
  /** Above it on a sheet of its own. */
  readonly sheetHeadingMm: (grid: PageGrid) => number;
  readonly keyMm: (grid: PageGrid) => number;
  /** What a key in one column takes at the right of a chart; null where there is no key. */
  readonly keyBeside: (grid: PageGrid) => ChartSize | null;
}

export function planChart(chart: ChartSize, format: PageFormat, room: ChartRoom): ChartPlan {
  const upright = pageGrid(format, 'portrait');
  const scales = SCALES[format.form];
  const inText = fitScale(chart, upright, room.headingMm + room.keyMm(upright), scales.most);
  if (inText >= scales.least) return { kind: 'in text', scale: inText };
  const turned = onOneSheet(chart, format, 'landscape', room);
  if (turned !== null && turned.scale > inText) return turned;
  const beside = keyBeside(chart, format, room);
  if (beside !== null) return beside;
  if (format.form !== 'folded') return planSheets(chart, format);
  const loose = { ...format, form: 'flat' } as const;
  const [best] = (['portrait', 'landscape'] as const)
    .flatMap((orientation) => onOneSheet(chart, loose, orientation, room) ?? [])
    .sort((a, b) => b.scale - a.scale);
  return best ?? keyBeside(chart, loose, room) ?? planSheets(chart, loose);
}

/** Null where it would be too small to read. */
function onOneSheet(
  chart: ChartSize,
  format: PageFormat,
  orientation: Orientation,
  room: ChartRoom,
): Extract<ChartPlan, { kind: 'sheet' }> | null {
  const grid = pageGrid(format, orientation);
  const scales = SCALES[format.form];
  const scale = fitScale(chart, grid, room.sheetHeadingMm(grid) + room.keyMm(grid), scales.most);
  return scale >= scales.least ? { kind: 'sheet', format, scale, orientation, keyBesideMm: null } : null;
}

/** On a sheet of its own with the key at its right: on whichever way of the paper it is larger. */
function keyBeside(
  chart: ChartSize,
  format: PageFormat,
  room: ChartRoom,
): Extract<ChartPlan, { kind: 'sheet' }> | null {
  const scales = SCALES[format.form];
  const [best] = (['portrait', 'landscape'] as const)
    .flatMap((orientation) => {
      const grid = pageGrid(format, orientation);
      const key = room.keyBeside(grid);
      const freeMm = grid.bodyHeightMm - room.sheetHeadingMm(grid);
      if (key === null || key.heightMm > freeMm) return [];
      const widthMm = grid.bodyWidthMm - key.widthMm;
      const scale = Math.min(scales.most, widthMm / chart.widthMm, freeMm / chart.heightMm);
      return scale >= scales.least
        ? [{ kind: 'sheet' as const, format, scale, orientation, keyBesideMm: key.widthMm }]
        : [];
    })
    .sort((a, b) => b.scale - a.scale);
  return best ?? null;
}

function planSheets(chart: ChartSize, format: PageFormat): ChartPlan {
  const [best] = (['portrait', 'landscape'] as const)
    .map((orientation) => tiles(chart, pageGrid(format, orientation)))
    .sort((a, b) => a.across * a.down - b.across * b.down);
  const sheets = best === undefined ? 0 : best.across * best.down;
  return best === undefined || sheets > MOST_SHEETS ? { kind: 'too large', sheets } : best;
}

export function tileHeadingMm({ format }: PageGrid): number {
  return TILE_HEADING[format.form];
}

function tiles(chart: ChartSize, grid: PageGrid): Extract<ChartPlan, { kind: 'sheets' }> {
  const { least, most } = SCALES[grid.format.form];
  const wide = fewest(chart.widthMm * least, grid.bodyWidthMm);
  const high = fewest(chart.heightMm * least, grid.bodyHeightMm - tileHeadingMm(grid));
  // As large as the same number of sheets can show it.
  const scale = Math.min(most, wide.roomMm / chart.widthMm, high.roomMm / chart.heightMm);
  return {
    kind: 'sheets',
    format: grid.format,
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

function fitScale(chart: ChartSize, grid: PageGrid, takenMm: number, most: number): number {
  return Math.min(most, grid.bodyWidthMm / chart.widthMm, (grid.bodyHeightMm - takenMm) / chart.heightMm);
}
