/** The entries of a chart's key and a width in, the key set in columns at its own size out. */

import type { Shape, Tag } from '../scene/scene.ts';
import type { MeasureText } from './break-lines.ts';
import { scaledShapes } from './draw-lines.ts';
import type { PageGrid } from './page-grid.ts';
import type { KeyEntry } from './split-key.ts';
import { moved } from './strip.ts';
import { figureTag, itemTags, listTag, tagged } from './tags.ts';

/** Middle of the symbols, from the left of a column; and the narrowest column that the words of most stitches fit. */
const SYMBOL_MIDDLE_MM = 5;
const COLUMN_MM = 52;
const COLUMN_GAP_MM = 5;
const LINE_MM = 6.2;
const LINE_GAP_MM = 1.6;

export interface LaidKey {
  readonly shapes: readonly Shape[];
  readonly heightMm: number;
}

/** Set for ordinary print and enlarged: in large print its words grow with all others. */
export function layKey(
  entries: readonly KeyEntry[],
  { bodyWidthMm, drawn }: PageGrid,
  widthMm = bodyWidthMm,
): LaidKey {
  const { shapes, heightMm } = laidOut(entries, widthMm / drawn);
  if (drawn === 1) return { shapes, heightMm };
  return { shapes: [scaledShapes(shapes, drawn, 0, 0)], heightMm: heightMm * drawn };
}

/** The narrowest column that all words fit. */
export function keyColumnMm(entries: readonly KeyEntry[], measure: MeasureText): number {
  const ends = entries.map(({ shapes, symbolXMm }) =>
    Math.max(
      0,
      ...shapes.flatMap((shape) =>
        shape.kind === 'text' ? [shape.x + measure(shape.text, shape.face, shape.sizeMm) - symbolXMm] : [],
      ),
    ),
  );
  return SYMBOL_MIDDLE_MM + Math.max(0, ...ends);
}

/** Down the columns, the first the longest. */
function laidOut(entries: readonly KeyEntry[], widthMm: number): LaidKey {
  const widest = Math.max(COLUMN_MM, ...entries.map(widthFromColumn));
  const columns = Math.max(
    1,
    Math.min(entries.length, Math.floor((widthMm + COLUMN_GAP_MM) / (widest + COLUMN_GAP_MM))),
  );
  const columnMm = (widthMm - COLUMN_GAP_MM * (columns - 1)) / columns;
  const rows = Math.ceil(entries.length / columns);
  const shapes: Shape[] = [];
  const list = listTag();
  let heightMm = 0;
  const heights = Array.from({ length: rows }, (_, row) => {
    const inRow = entries.filter((_entry, index) => index % rows === row);
    return Math.max(LINE_MM, ...inRow.map((entry) => entry.heightMm + LINE_GAP_MM));
  });
  entries.forEach((entry, index) => {
    const row = index % rows;
    const column = Math.floor(index / rows);
    const topMm = heights.slice(0, row).reduce((sum, height) => sum + height, 0);
    const middleMm = topMm + (heights[row] ?? LINE_MM) / 2;
    const xMm = column * (columnMm + COLUMN_GAP_MM) + SYMBOL_MIDDLE_MM - entry.symbolXMm;
    shapes.push(moved(taggedEntry(entry, list), xMm, middleMm - entry.topMm - entry.heightMm / 2));
  });
  for (const height of heights) heightMm += height;
  return { shapes, heightMm };
}

/** The symbol labels what is said of it; drawn, it is a figure that is said to stand for it. */
function taggedEntry({ shapes }: KeyEntry, list: Tag): Shape[] {
  const { label, body } = itemTags(list);
  const words = shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
  const [symbol, ...rest] = shapes;
  if (symbol === undefined) return [];
  const meaning = words.at(-1) ?? '';
  const labelled =
    symbol.kind === 'text'
      ? tagged([symbol], label)
      : tagged([symbol], figureTag(`Symbol: ${meaning}`, label));
  return [labelled, ...(rest.length > 0 ? [tagged(rest, body)] : [])];
}

function widthFromColumn(entry: KeyEntry): number {
  return entry.rightMm - entry.symbolXMm + SYMBOL_MIDDLE_MM;
}
