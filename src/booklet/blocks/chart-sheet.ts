/** A chart too wide for the text and the plan for it in, a sheet of its own out, turned on its side. */

import type { Scene, Shape } from '../../scene/scene.ts';
import { mmFromPt } from '../../units.ts';
import { type ChartPlan, KEY_GAP_MM, SHEET_HEADING_MM } from '../chart-plan.ts';
import { scaledShapes } from '../draw-lines.ts';
import { layKey } from '../lay-key.ts';
import { ACCENT, pageGrid, QUIET, TYPE } from '../page-grid.ts';
import type { PaperName } from '../paper.ts';
import { baselineMm, textShape } from '../set-text.ts';
import type { KeyEntry } from '../split-key.ts';
import { type Bookmark, moved, type Sheet } from '../strip.ts';

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
  paper: PaperName,
): Sheet {
  const grid = pageGrid(paper, plan.orientation);
  const key = layKey(entries, grid.bodyWidthMm);
  const drawnMm = scene.heightMm * plan.scale;
  const freeMm = grid.bodyHeightMm - SHEET_HEADING_MM - drawnMm - KEY_GAP_MM - key.heightMm;
  const xMm = (grid.bodyWidthMm - scene.widthMm * plan.scale) / 2;
  const yMm = SHEET_HEADING_MM + Math.max(0, freeMm / 3);
  return {
    kind: 'sheet',
    orientation: plan.orientation,
    shapes: [
      ...sheetHeading(title, note),
      scaledShapes(scene.shapes, plan.scale, xMm, yMm),
      moved(key.shapes, 0, yMm + drawnMm + KEY_GAP_MM),
    ],
    underPage: [],
    symbols: scene.symbols,
    bookmark,
  };
}

/** The chart's name, and below it which sheet this is. */
export function sheetHeading(title: string, note: string | null): Shape[] {
  const heading = textShape(
    { text: title, face: 'title-bold', ink: ACCENT },
    TYPE.part,
    0,
    baselineMm(TYPE.part),
  );
  if (!note) return [heading];
  const y = mmFromPt(TYPE.part.linePt) + baselineMm(TYPE.small);
  return [heading, textShape({ text: note, face: 'text', ink: QUIET }, TYPE.small, 0, y)];
}
