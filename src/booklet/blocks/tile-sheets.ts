/** A chart too large for one sheet and the plan for it in, its sheets out, each with the marks to lay it to its neighbours. */

import type { Shape } from '../../scene/scene.ts';
import { mmFromPt } from '../../units.ts';
import { type ChartPlan, JOIN_MM, NEIGHBOUR_MM, OVERLAP_MM, tileHeadingMm } from '../chart-plan.ts';
import { cutTile } from '../cut-tile.ts';
import { boxShape, scaledShapes } from '../draw-lines.ts';
import { finderMap, type Silhouette, silhouetteOf } from '../finder-map.ts';
import { ACCENT, type PageGrid, pageGrid } from '../page-grid.ts';
import { type Setting, textShape } from '../set-text.ts';
import { moved, type Sheet } from '../strip.ts';
import { figureTag, tagged } from '../tags.ts';
import { type SheetChart, sheetHeading } from './chart-sheet.ts';

/** Of the width of a sheet, and below it before the chart. */
const MAP_SHARE = 0.55;
const BELOW_MAP_MM = 4;

export function tileSheets(
  { title, scene }: SheetChart,
  plan: Extract<ChartPlan, { kind: 'sheets' }>,
  { measure }: Pick<Setting, 'measure'>,
): Sheet[] {
  const grid = pageGrid(plan.format, plan.orientation);
  const headingMm = tileHeadingMm(grid);
  const silhouette = silhouetteOf(scene);
  const several = plan.across * plan.down > 1;
  return Array.from({ length: plan.across * plan.down }, (_, index) => {
    const column = index % plan.across;
    const row = Math.floor(index / plan.across);
    const beside = neighbours(index, plan);
    const joins = (toX: number, toY: number): number =>
      beside.some((neighbour) => neighbour.toX === toX && neighbour.toY === toY) ? JOIN_MM : 0;
    const [left, right, above, below] = [joins(-1, 0), joins(1, 0), joins(0, -1), joins(0, 1)];
    const freeXMm = grid.bodyWidthMm - left - right - plan.tileWidthMm;
    const freeYMm = grid.bodyHeightMm - headingMm - above - below - plan.tileHeightMm;
    const frame = {
      xMm: grid.leftMm + left + freeXMm / 2,
      yMm: grid.topMm + headingMm + above + Math.max(0, freeYMm / 3),
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
      format: plan.format,
      orientation: plan.orientation,
      shapes: sheetHeading(title, several ? note : null, grid.bodyWidthMm * (several ? 1 - MAP_SHARE : 1), {
        measure,
        grid,
      }).shapes,
      underPage: [
        tagged([drawn], figureTag(`${title}, ${note}. ${scene.alternative}`)),
        ...mask(frame, grid.widthMm, grid.heightMm),
        ...(several ? cornerMarks(frame) : []),
        ...beside.flatMap((neighbour) => joinMarks(frame, neighbour, grid)),
        ...(several ? [mapAtHead(silhouette, plan, index, grid)] : []),
      ],
      symbols: scene.symbols,
    };
  });
}

/** At the right of the heading. */
function mapAtHead(
  silhouette: Silhouette,
  plan: Extract<ChartPlan, { kind: 'sheets' }>,
  index: number,
  grid: PageGrid,
): Shape {
  const room = { widthMm: grid.bodyWidthMm * MAP_SHARE, heightMm: tileHeadingMm(grid) - BELOW_MAP_MM };
  const map = finderMap(silhouette, plan, room, index, grid.type);
  return moved(map.shapes, grid.leftMm + grid.bodyWidthMm - map.widthMm, grid.topMm);
}

interface Neighbour {
  readonly sheet: number;
  /** Which way it lies. */
  readonly toX: -1 | 0 | 1;
  readonly toY: -1 | 0 | 1;
}

function neighbours(index: number, { across, down }: { across: number; down: number }): Neighbour[] {
  const column = index % across;
  const row = Math.floor(index / across);
  const all: (Neighbour | null)[] = [
    column > 0 ? { sheet: index, toX: -1, toY: 0 } : null,
    column < across - 1 ? { sheet: index + 2, toX: 1, toY: 0 } : null,
    row > 0 ? { sheet: index + 1 - across, toX: 0, toY: -1 } : null,
    row < down - 1 ? { sheet: index + 1 + across, toX: 0, toY: 1 } : null,
  ];
  return all.filter((neighbour) => neighbour !== null);
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
        stroke: { ink: ACCENT, widthMm: 0.3 },
        fill: 'none',
      }),
    ),
  );
}

/** Broken line along the join, ends of the strip that overlaps, and the number of the sheet that lies beyond. */
function joinMarks(frame: Frame, { sheet, toX, toY }: Neighbour, { type }: PageGrid): Shape[] {
  const middleX = frame.xMm + frame.widthMm / 2;
  const middleY = frame.yMm + frame.heightMm / 2;
  const x = middleX + (toX * frame.widthMm) / 2;
  const y = middleY + (toY * frame.heightMm) / 2;
  // Along the edge.
  const halfX = toX === 0 ? frame.widthMm / 2 : 0;
  const halfY = toY === 0 ? frame.heightMm / 2 : 0;
  const outX = x + toX * OVERLAP_MM;
  const outY = y + toY * OVERLAP_MM;
  const figureMm = mmFromPt(type.small.fontPt);
  const tip = 1.5;
  return [
    {
      kind: 'path',
      parts: [
        ['M', x - halfX, y - halfY],
        ['L', x + halfX, y + halfY],
      ],
      stroke: { ink: ACCENT, widthMm: 0.2, dashMm: [2, 1.4] },
      fill: 'none',
    },
    {
      kind: 'path',
      parts: [
        ['M', outX - halfX, outY - halfY],
        ['L', outX + halfX, outY + halfY],
      ],
      stroke: { ink: ACCENT, widthMm: 0.12 },
      fill: 'none',
    },
    {
      kind: 'group',
      transform: null,
      data: { neighbour: String(sheet) },
      shapes: [
        arrowHead(outX + toX, outY + toY, toX, toY, tip),
        textShape(
          { text: String(sheet), face: 'text-bold', ink: ACCENT },
          type.small,
          toX === 0 ? outX + tip * 2.4 : outX + toX * (NEIGHBOUR_MM / 2),
          toY === 0 ? outY - tip * 1.2 : outY + toY * 1.8 + figureMm * 0.33,
          'middle',
        ),
      ],
    },
  ];
}

/** Its base at a point, pointing one way along an axis. */
function arrowHead(x: number, y: number, toX: number, toY: number, sizeMm: number): Shape {
  return {
    kind: 'path',
    parts: [
      ['M', x - (toY * sizeMm) / 1.4, y - (toX * sizeMm) / 1.4],
      ['L', x + toX * sizeMm, y + toY * sizeMm],
      ['L', x + (toY * sizeMm) / 1.4, y + (toX * sizeMm) / 1.4],
      ['Z'],
    ],
    stroke: null,
    fill: ACCENT,
  };
}
