/** A chart too large for the text and the plan for it in, sheets of their own out: one turned, or many to lay together. */

import type { Scene, Shape } from '../../scene/scene.ts';
import { mmFromPt } from '../../units.ts';
import { type ChartPlan, KEY_GAP_MM, OVERLAP_MM, SHEET_HEADING_MM } from '../chart-plan.ts';
import { cutTile } from '../cut-tile.ts';
import { boxShape, scaledShapes } from '../draw-lines.ts';
import { layKey } from '../lay-key.ts';
import { ACCENT, pageGrid, QUIET, TYPE } from '../page-grid.ts';
import type { PaperName } from '../paper.ts';
import { baselineMm, textShape } from '../set-text.ts';
import type { KeyEntry } from '../split-key.ts';
import { type Bookmark, moved, type Sheet } from '../strip.ts';

export interface SheetChart {
  readonly title: string;
  /** Without its key. */
  readonly scene: Scene;
  readonly entries: readonly KeyEntry[];
}

export function wholeSheet(
  { title, scene, entries }: SheetChart,
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
      ...sheetHeading(title, null),
      scaledShapes(scene.shapes, plan.scale, xMm, yMm),
      moved(key.shapes, 0, yMm + drawnMm + KEY_GAP_MM),
    ],
    underPage: [],
    symbols: scene.symbols,
    bookmark,
  };
}

export function tileSheets(
  { title, scene }: SheetChart,
  plan: Extract<ChartPlan, { kind: 'sheets' }>,
  paper: PaperName,
): Sheet[] {
  const grid = pageGrid(paper, plan.orientation);
  return Array.from({ length: plan.across * plan.down }, (_, index) => {
    const column = index % plan.across;
    const row = Math.floor(index / plan.across);
    const leftMm = (grid.bodyWidthMm - plan.tileWidthMm) / 2;
    const frame = {
      xMm: grid.leftMm + leftMm,
      yMm: grid.topMm + SHEET_HEADING_MM + OVERLAP_MM,
      widthMm: plan.tileWidthMm,
      heightMm: plan.tileHeightMm,
    };
    const tile = {
      left: (column * plan.tileWidthMm - OVERLAP_MM) / plan.scale,
      top: (row * plan.tileHeightMm - OVERLAP_MM) / plan.scale,
      right: ((column + 1) * plan.tileWidthMm + OVERLAP_MM) / plan.scale,
      bottom: ((row + 1) * plan.tileHeightMm + OVERLAP_MM) / plan.scale,
    };
    const drawn = scaledShapes(
      cutTile(scene, tile),
      plan.scale,
      frame.xMm - column * plan.tileWidthMm,
      frame.yMm - row * plan.tileHeightMm,
    );
    const note = `Sheet ${index + 1} of ${plan.across * plan.down}: row ${row + 1} of ${plan.down}, column ${column + 1} of ${plan.across}`;
    return {
      kind: 'sheet',
      orientation: plan.orientation,
      shapes: sheetHeading(title, note),
      underPage: [drawn, ...mask(frame, grid.widthMm, grid.heightMm), ...cornerMarks(frame)],
      symbols: scene.symbols,
    };
  });
}

function sheetHeading(title: string, note: string | null): Shape[] {
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

interface Frame {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Paper-white over all that lies outside the tile and its overlap. */
function mask(frame: Frame, pageWidthMm: number, pageHeightMm: number): Shape[] {
  const left = frame.xMm - OVERLAP_MM;
  const top = frame.yMm - OVERLAP_MM;
  const right = frame.xMm + frame.widthMm + OVERLAP_MM;
  const bottom = frame.yMm + frame.heightMm + OVERLAP_MM;
  return [
    { xMm: 0, yMm: 0, widthMm: pageWidthMm, heightMm: top },
    { xMm: 0, yMm: bottom, widthMm: pageWidthMm, heightMm: pageHeightMm - bottom },
    { xMm: 0, yMm: top, widthMm: left, heightMm: bottom - top },
    { xMm: right, yMm: top, widthMm: pageWidthMm - right, heightMm: bottom - top },
  ].map((box) => boxShape(box, null, 'paper'));
}

/** A small cross at each corner of the tile: laid on the neighbour's, the sheets join true. */
function cornerMarks({ xMm, yMm, widthMm, heightMm }: Frame): Shape[] {
  const armMm = 2.5;
  return [xMm, xMm + widthMm].flatMap((x) =>
    [yMm, yMm + heightMm].map(
      (y): Shape => ({
        kind: 'path',
        parts: [
          ['M', x - armMm, y],
          ['L', x + armMm, y],
          ['M', x, y - armMm],
          ['L', x, y + armMm],
        ],
        stroke: { ink: ACCENT, widthMm: 0.2 },
        fill: 'none',
      }),
    ),
  );
}
