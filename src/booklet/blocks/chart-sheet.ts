/** A chart too wide for the text and the plan for it in, a sheet of its own out, turned on its side. */

import type { Scene, Tag } from '../../scene/scene.ts';
import { type ChartPlan, type ChartSize, KEY_GAP_MM } from '../chart-plan.ts';
import { scaledShapes } from '../draw-lines.ts';
import { keyColumnMm, layKey } from '../lay-key.ts';
import { ACCENT, pageGrid, QUIET } from '../page-grid.ts';
import { type Setting, setText } from '../set-text.ts';
import type { KeyEntry } from '../split-key.ts';
import { type Bookmark, moved, type Sheet } from '../strip.ts';
import { figureTag, headingTag, paragraphTag, tagged } from '../tags.ts';
import type { Block } from './cut-stack.ts';

export interface SheetChart {
  readonly title: string;
  /** What is not drawn stitch for stitch. */
  readonly note: string | null;
  /** Without its key. */
  readonly scene: Scene;
  readonly entries: readonly KeyEntry[];
}

export function wholeSheet(
  { title, note, scene, entries }: SheetChart,
  plan: Extract<ChartPlan, { kind: 'sheet' }>,
  bookmark: Bookmark,
  { measure }: Pick<Setting, 'measure'>,
): Sheet {
  const grid = pageGrid(plan.format, plan.orientation);
  const { keyBesideMm } = plan;
  const beside = keyBesideMm !== null;
  const key = layKey(entries, grid, beside ? keyBesideMm - BESIDE_GAP_MM : grid.bodyWidthMm);
  const tag = headingTag(bookmark.level === 1 ? 2 : 3);
  const heading = sheetHeading(title, note, grid.bodyWidthMm, { measure, grid }, tag);
  const headingMm = sheetHeadingMm(heading);
  const drawnMm = scene.heightMm * plan.scale;
  const freeMm = grid.bodyHeightMm - headingMm - drawnMm - (beside ? 0 : KEY_GAP_MM + key.heightMm);
  const chartMm = scene.widthMm * plan.scale;
  // With a key at its right the two stand in the middle together.
  const xMm = (grid.bodyWidthMm - chartMm - (keyBesideMm ?? 0)) / 2;
  const yMm = headingMm + Math.max(0, freeMm / 3);
  const keyAt = beside
    ? { xMm: xMm + chartMm + BESIDE_GAP_MM, yMm: yMm + Math.max(0, (drawnMm - key.heightMm) / 2) }
    : { xMm: 0, yMm: yMm + drawnMm + KEY_GAP_MM };
  return {
    kind: 'sheet',
    format: plan.format,
    orientation: plan.orientation,
    shapes: [
      ...heading.shapes,
      tagged([scaledShapes(scene.shapes, plan.scale, xMm, yMm)], figureTag(scene.alternative)),
      moved(key.shapes, keyAt.xMm, Math.min(keyAt.yMm, grid.bodyHeightMm - key.heightMm)),
    ],
    underPage: [],
    symbols: scene.symbols,
    bookmark,
  };
}

const BESIDE_GAP_MM = 6;

/** A key of one column, as wide as its words, and the space between it and the chart at its left. */
export function keyBeside(entries: readonly KeyEntry[], { grid, measure }: Setting): ChartSize | null {
  if (entries.length === 0) return null;
  const widthMm = keyColumnMm(entries, measure) * grid.drawn;
  return { widthMm: widthMm + BESIDE_GAP_MM, heightMm: layKey(entries, grid, widthMm).heightMm };
}

/** Between the heading of a sheet and its chart, and the least that both take: charts of one pattern then stand alike. */
const BELOW_HEADING_MM = 4;
const LEAST_HEADING_MM = 14;

export function sheetHeadingMm({ heightMm }: Block): number {
  return Math.max(LEAST_HEADING_MM, heightMm + BELOW_HEADING_MM);
}

/** The chart's name, and below it which sheet this is or what is not drawn. */
export function sheetHeading(
  title: string,
  note: string | null,
  widthMm: number,
  setting: Setting,
  tag: Tag = paragraphTag(),
): Block {
  const { part, small } = setting.grid.type;
  const place = { xMm: 0, widthMm };
  const lines = [
    ...setText([{ text: title, face: 'title-bold', ink: ACCENT }], part, place, setting, tag),
    ...(note ? setText([{ text: note, face: 'text', ink: QUIET }], small, place, setting) : []),
  ];
  let heightMm = 0;
  const shapes = lines.map((line) => {
    const shape = moved(line.shapes, 0, heightMm);
    heightMm += line.heightMm;
    return shape;
  });
  return { shapes, heightMm };
}
