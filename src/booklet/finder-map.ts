/** A chart and its sheets in, a small picture of the whole with the sheets numbered on it out, one of them marked. */

import { boundsOf } from '../scene/bounds.ts';
import type { PathPart, Scene, Shape } from '../scene/scene.ts';
import { applied, joined } from '../scene/transforms.ts';
import { mmFromPt } from '../units.ts';
import type { ChartPlan } from './chart-plan.ts';
import { boxShape } from './draw-lines.ts';
import { ACCENT, RULE } from './page-grid.ts';
import { textShape } from './set-text.ts';
import type { TypeSizes } from './type-sizes.ts';
import { walkShapes } from './walk-shapes.ts';

export interface FinderMap {
  readonly shapes: readonly Shape[];
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Where a chart has stitches, as runs of squares, in its own mm: its symbols themselves would be a blur at this size. */
export interface Silhouette {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly parts: readonly PathPart[];
}

/** Squares along the longer side of a silhouette; none is smaller than a stitch. */
const SQUARES = 90;
const LEAST_SQUARE_MM = 4;
/** A pale tint: figures on it keep their contrast. */
const TINT = '#dedbd6';
const LEAST_FIGURE_MM = mmFromPt(6);
/** Height and width of a figure as shares of the type size. */
const FIGURE = { heightShare: 0.67, widthShare: 0.55 } as const;

export function silhouetteOf(scene: Scene): Silhouette {
  const { widthMm, heightMm } = scene;
  const square = Math.max(LEAST_SQUARE_MM, Math.max(widthMm, heightMm) / SQUARES);
  const columns = Math.ceil(widthMm / square);
  const rows = Math.ceil(heightMm / square);
  const filled = new Uint8Array(columns * rows);
  const boxes = new Map(
    Object.entries(scene.symbols).map(([name, shapes]) => [name, boundsOf(shapes, scene.symbols)]),
  );
  const at = (mm: number, count: number): number => Math.max(0, Math.min(count - 1, Math.floor(mm / square)));
  for (const { shape, transform } of walkShapes(withoutLabels(scene.shapes))) {
    const box = shape.kind === 'use' ? boxes.get(shape.symbol) : null;
    if (shape.kind !== 'use' || !box) continue;
    const placed = joined(transform, shape.transform);
    const corners = [box.left, box.right].flatMap((x) =>
      [box.top, box.bottom].map((y) => applied(placed, x, y)),
    );
    const xs = corners.map(([x]) => x);
    const ys = corners.map(([, y]) => y);
    for (let row = at(Math.min(...ys), rows); row <= at(Math.max(...ys), rows); row += 1)
      for (let column = at(Math.min(...xs), columns); column <= at(Math.max(...xs), columns); column += 1)
        filled[row * columns + column] = 1;
  }
  return { widthMm, heightMm, parts: runs(filled, columns, rows, square) };
}

/** Numbers, arrows and brackets are no part of the piece. */
function withoutLabels(shapes: readonly Shape[]): Shape[] {
  return shapes.flatMap((shape): Shape[] => {
    if (shape.kind !== 'group') return [shape];
    return shape.data?.labels === undefined ? [{ ...shape, shapes: withoutLabels(shape.shapes) }] : [];
  });
}

function runs(filled: Uint8Array, columns: number, rows: number, square: number): PathPart[] {
  const parts: PathPart[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      if (!filled[row * columns + column]) continue;
      const from = column;
      while (column < columns && filled[row * columns + column]) column += 1;
      const [left, right] = [from * square, column * square];
      const [top, bottom] = [row * square, (row + 1) * square];
      parts.push(['M', left, top], ['L', right, top], ['L', right, bottom], ['L', left, bottom], ['Z']);
    }
  }
  return parts;
}

/** As large as the room allows. `current` is the index of the sheet it stands on; null marks none. */
export function finderMap(
  silhouette: Silhouette,
  { across, down }: Extract<ChartPlan, { kind: 'sheets' }>,
  room: { readonly widthMm: number; readonly heightMm: number },
  current: number | null,
  { body }: TypeSizes,
): FinderMap {
  const scale = Math.min(room.widthMm / silhouette.widthMm, room.heightMm / silhouette.heightMm);
  const widthMm = silhouette.widthMm * scale;
  const heightMm = silhouette.heightMm * scale;
  const tile = { widthMm: widthMm / across, heightMm: heightMm / down };
  const figures = String(across * down).length;
  const figureMm = Math.min(
    mmFromPt(body.fontPt),
    (tile.heightMm * 0.8) / FIGURE.heightShare,
    (tile.widthMm * 0.85) / (figures * FIGURE.widthShare),
  );
  const sheets = Array.from({ length: across * down }, (_, index): Shape => {
    const xMm = (index % across) * tile.widthMm;
    const yMm = Math.floor(index / across) * tile.heightMm;
    const here = index === current;
    const figure =
      figureMm < LEAST_FIGURE_MM
        ? []
        : [
            textShape(
              { text: String(index + 1), face: 'text-bold', ink: here ? 'paper' : 'ink' },
              { fontPt: figureMm / mmFromPt(1), linePt: 0 },
              xMm + tile.widthMm / 2,
              yMm + (tile.heightMm + figureMm * FIGURE.heightShare) / 2,
              'middle',
            ),
          ];
    return {
      kind: 'group',
      transform: null,
      data: here ? { sheet: String(index + 1), here: 'yes' } : { sheet: String(index + 1) },
      shapes: [
        boxShape({ xMm, yMm, ...tile }, { ink: ACCENT, widthMm: RULE.thinMm }, here ? ACCENT : 'none'),
        ...figure,
      ],
    };
  });
  const picture: Shape = {
    kind: 'group',
    transform: [scale, 0, 0, scale, 0, 0],
    shapes: [{ kind: 'path', parts: silhouette.parts, stroke: null, fill: TINT }],
  };
  return { shapes: [picture, ...sheets], widthMm, heightMm };
}
