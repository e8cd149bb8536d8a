/** Runs and a type size in, strips one line high out: text set to a width, ready to flow. */

import type { Ink, Shape, Tag } from '../scene/scene.ts';
import { mmFromPt } from '../units.ts';
import { breakLines, type MeasureText, type Run, type SetLine } from './break-lines.ts';
import type { PageGrid } from './page-grid.ts';
import { moved, type Strip } from './strip.ts';
import { paragraphTag, tagged } from './tags.ts';
import type { TypeSize } from './type-sizes.ts';

/** What every block needs to know to set its type. */
export interface Setting {
  readonly measure: MeasureText;
  readonly grid: PageGrid;
}

export interface Place {
  readonly xMm: number;
  readonly widthMm: number;
}

/** Height of the capitals of both families as a share of the type size; read from the fonts (0.66 and 0.70). */
const CAPS = 0.67;

/** Baseline below the top of a line, capitals centred in the line. */
export function baselineMm(type: TypeSize): number {
  return (mmFromPt(type.linePt) + CAPS * mmFromPt(type.fontPt)) / 2;
}

export function lineShapes(line: SetLine, type: TypeSize, xMm: number, yMm: number): Shape[] {
  return line.pieces.map((piece) => textShape(piece, type, xMm + piece.xMm, yMm));
}

export function textShape(
  run: Run,
  type: TypeSize,
  xMm: number,
  baseline: number,
  align: 'start' | 'middle' | 'end' = 'start',
): Shape {
  const ink: Ink = run.ink ?? 'ink';
  return {
    kind: 'text',
    x: xMm,
    y: baseline,
    text: run.text,
    sizeMm: mmFromPt(type.fontPt),
    face: run.face,
    align,
    ink,
  };
}

/** Text broken to a width, one strip a line, no space above; all lines together are one paragraph, or what they are tagged as. */
export function setText(
  runs: readonly Run[],
  type: TypeSize,
  place: Place,
  setting: Setting,
  tag: Tag = paragraphTag(),
): Strip[] {
  const lines = breakLines(runs, mmFromPt(type.fontPt), place.widthMm, setting.measure);
  return lines.map((line, index) => ({
    kind: 'strip',
    heightMm: mmFromPt(type.linePt),
    spaceBeforeMm: 0,
    keepWithNext: false,
    shapes: [
      tagged(lineShapes(goingOn(line, index < lines.length - 1), type, place.xMm, baselineMm(type)), tag),
    ],
  }));
}

/** A line that others follow ends in a space: read on without the page, its last word would run into the next. */
function goingOn(line: SetLine, more: boolean): SetLine {
  const last = line.pieces.at(-1);
  if (!more || line.cut || last === undefined) return line;
  return { ...line, pieces: [...line.pieces.slice(0, -1), { ...last, text: `${last.text} ` }] };
}

/**
 * Two stacks of strips side by side, as a heading or a label in the side column and its text in the main one. All
 * of the left stack is drawn with the first line of the right one, so that it is read before it.
 */
export function beside(left: readonly Strip[], right: readonly Strip[]): Strip[] {
  const rows = Math.max(left.length, right.length);
  return Array.from({ length: rows }, (_, index) => {
    const a = left[index];
    const b = right[index];
    const { shapes: _shapes, ...rest } = b ?? blankStrip();
    return {
      ...rest,
      heightMm: Math.max(a?.heightMm ?? 0, rest.heightMm),
      // A heading of several lines is not parted from its own lines.
      keepWithNext: rest.keepWithNext || index < left.length - 1,
      shapes: [...(index === 0 ? stacked(left) : []), ...(b?.shapes ?? [])],
    };
  });
}

function blankStrip(): Strip {
  return { kind: 'strip', heightMm: 0, spaceBeforeMm: 0, keepWithNext: false, shapes: [] };
}

function stacked(strips: readonly Strip[]): Shape[] {
  let yMm = 0;
  return strips.map((strip) => {
    const shape = moved(strip.shapes, 0, yMm);
    yMm += strip.heightMm;
    return shape;
  });
}

/** The same where there are two columns; in one the left stack stands above the right one and stays with it. */
export function headedBy(left: readonly Strip[], right: readonly Strip[], setting: Setting): Strip[] {
  if (!setting.grid.oneColumn) return beside(left, right);
  return [...left.map((strip) => ({ ...strip, keepWithNext: true })), ...right];
}

export function mainColumn(setting: Setting): Place {
  return { xMm: setting.grid.mainXMm, widthMm: setting.grid.mainWidthMm };
}

export function sideColumn(setting: Setting): Place {
  return { xMm: 0, widthMm: setting.grid.sideWidthMm };
}

export function fullWidth(setting: Setting): Place {
  return { xMm: 0, widthMm: setting.grid.bodyWidthMm };
}
