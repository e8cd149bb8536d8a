/** Rows of cells in, strips out: a table with hairlines, its head drawn again on each page it runs on to. */

import type { Shape, Tag } from '../scene/scene.ts';
import { mmFromPt } from '../units.ts';
import { breakLines, type Run, runsWidth, type SetLine } from './break-lines.ts';
import { ruleShape } from './draw-lines.ts';
import { QUIET, RULE } from './page-grid.ts';
import { baselineMm, lineShapes, type Place, type Setting } from './set-text.ts';
import type { Strip } from './strip.ts';
import { tableTags, tagged } from './tags.ts';

export interface Cell {
  readonly runs: readonly Run[];
  /** Drawn before the text, in a box as wide as `markWidthMm` and one line high. */
  readonly mark?: Shape;
  readonly markWidthMm?: number;
}

export interface Column {
  readonly head: string;
  readonly align: 'start' | 'end';
}

const COLUMN_GAP_MM = 5;
/** Half a page has less to spare. */
const FOLDED_GAP_MM = 3;
const PAD_MM = 0.7;
const NARROWEST_MM = 14;

export function table(
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
  place: Place,
  setting: Setting,
): Strip[] {
  const heads = columns.map((column): Cell => ({ runs: [{ text: column.head, face: 'text', ink: QUIET }] }));
  const widths = columnWidths([heads, ...rows], columns.length, place.widthMm, setting);
  const tags = tableTags();
  const headRow = (tagOf: TagOf | null): Strip => ({
    ...tableRow(heads, columns, { widths, strokeMm: RULE.thinMm, size: 'small', tagOf }, place, setting),
    keepWithNext: true,
  });
  const head = headRow(tags.head);
  // Said once: on the pages after it the head is there for the eye alone.
  const headForTheEye = headRow(null);
  const body = rows.map((cells) =>
    tableRow(
      cells,
      columns,
      { widths, strokeMm: RULE.hairMm, size: 'body', tagOf: tags.row() },
      place,
      setting,
    ),
  );
  return [
    head,
    ...body.map((strip, index) => ({
      ...strip,
      keepWithNext: index === 0 && body.length > 1,
      ...(index > 0 ? { headAgain: headForTheEye } : {}),
    })),
  ];
}

function columnGapMm({ grid }: Setting): number {
  return grid.format.form === 'folded' ? FOLDED_GAP_MM : COLUMN_GAP_MM;
}

/** What the cell of a column is; null where it is there for the eye alone. */
type TagOf = (column: number) => Tag;

interface RowLook {
  readonly widths: readonly number[];
  readonly strokeMm: number;
  readonly size: 'small' | 'body';
  readonly tagOf: TagOf | null;
}

/** A head is small grey type over a heavier line; a row ends in a hairline. */
function tableRow(
  cells: readonly Cell[],
  columns: readonly Column[],
  { widths, strokeMm, size, tagOf }: RowLook,
  place: Place,
  setting: Setting,
): Strip {
  const type = setting.grid.type[size];
  const pitchMm = mmFromPt(type.linePt);
  const shapes: Shape[] = [];
  let tallest = 1;
  let xMm = place.xMm;
  columns.forEach((column, index) => {
    const cell = cells[index] ?? { runs: [] };
    const width = widths[index] ?? 0;
    const markMm = cell.markWidthMm ?? 0;
    const lines = breakLines(cell.runs, mmFromPt(type.fontPt), width - markMm, setting.measure);
    tallest = Math.max(tallest, lines.length);
    if (cell.mark) shapes.push({ kind: 'group', transform: [1, 0, 0, 1, xMm, PAD_MM], shapes: [cell.mark] });
    const words = lines.flatMap((line, row) =>
      lineShapes(
        line,
        type,
        lineStart(line, column, xMm + markMm, width - markMm),
        PAD_MM + row * pitchMm + baselineMm(type),
      ),
    );
    shapes.push(...(tagOf === null ? words : [tagged(words, tagOf(index))]));
    xMm += width + columnGapMm(setting);
  });
  const heightMm = tallest * pitchMm + 2 * PAD_MM;
  shapes.push(ruleShape(place.xMm, heightMm, place.widthMm, strokeMm, QUIET));
  return { kind: 'strip', heightMm, spaceBeforeMm: 0, keepWithNext: false, shapes };
}

function lineStart(line: SetLine, column: Column, xMm: number, widthMm: number): number {
  return column.align === 'end' ? xMm + widthMm - line.widthMm : xMm;
}

/** Each column as wide as its widest cell; when that is too much the widest give way first, evenly. */
function columnWidths(
  rows: readonly (readonly Cell[])[],
  count: number,
  widthMm: number,
  setting: Setting,
): number[] {
  const natural = Array.from({ length: count }, (_, index) =>
    Math.max(
      ...rows.map((cells, row) => {
        const type = row === 0 ? setting.grid.type.small : setting.grid.type.body;
        return (
          runsWidth(cells[index]?.runs ?? [], mmFromPt(type.fontPt), setting.measure) +
          (cells[index]?.markWidthMm ?? 0) +
          0.1
        );
      }),
    ),
  );
  const room = widthMm - columnGapMm(setting) * (count - 1);
  let cap = Math.max(...natural);
  while (natural.reduce((sum, width) => sum + Math.min(width, cap), 0) > room && cap > NARROWEST_MM)
    cap -= 0.5;
  const capped = natural.map((width) => Math.min(width, cap));
  const used = capped.reduce((sum, width) => sum + width, 0);
  if (used > room) return capped.map((width) => (width * room) / used);
  return capped.map((width) => width + (room - used) / count);
}
