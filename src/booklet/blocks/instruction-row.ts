/** One worded row in, its strips out: box and label at the side, text in the main column, count at its end. */

import { mmFromPt } from '../../units.ts';
import type { WordedLine } from '../../wording/words.ts';
import { breakLines, runsWidth } from '../break-lines.ts';
import { keepNumbersTogether } from '../no-break.ts';
import { GAP, TYPE } from '../page-grid.ts';
import { baselineMm, beside, lineShapes, mainColumn, type Setting, setText } from '../set-text.ts';
import { keepTogether, noStrayLines, type Strip, withSpaceBefore } from '../strip.ts';
import { TICK_WIDTH_MM, tickBox, tickRun } from './tick-boxes.ts';

/** A row may be parted over two pages only when it is longer than this share of a page. */
const LONGEST_WHOLE = 0.5;

export function instructionRow(line: WordedLine, setting: Setting): Strip[] {
  const words = withCount(textStrips(line, setting), line.count, setting);
  const ticked =
    line.rows.length > 1 ? tickRun(firstNumber(line.label), line.rows.length, mainColumn(setting)) : [];
  const side = sideStrips(line, setting);
  const whole = beside(side, keepTogether([...words, ...ticked]));
  const heightMm = whole.reduce((sum, strip) => sum + strip.heightMm + strip.spaceBeforeMm, 0);
  if (heightMm <= setting.grid.bodyHeightMm * LONGEST_WHOLE) return withSpaceBefore(whole, GAP.row);
  return withSpaceBefore(beside(side, [...words, ...noStrayLines(ticked)]), GAP.row);
}

function textStrips(line: WordedLine, setting: Setting): Strip[] {
  return noStrayLines(
    setText(
      [{ text: keepNumbersTogether(line.text), face: 'text' }],
      TYPE.body,
      mainColumn(setting),
      setting,
    ),
  );
}

function sideStrips(line: WordedLine, setting: Setting): Strip[] {
  const box = line.rows.length === 1 ? [tickBox()] : [];
  if (line.label === null) return box.length ? [sideStrip(box)] : [];
  const place = { xMm: TICK_WIDTH_MM, widthMm: setting.grid.sideWidthMm - TICK_WIDTH_MM };
  const label = setText(
    [{ text: keepNumbersTogether(line.label), face: 'text-bold' }],
    TYPE.body,
    place,
    setting,
  );
  return label.map((strip, index) => (index === 0 ? { ...strip, shapes: [...box, ...strip.shapes] } : strip));
}

function sideStrip(shapes: Strip['shapes']): Strip {
  return {
    kind: 'strip',
    heightMm: mmFromPt(TYPE.body.linePt),
    spaceBeforeMm: 0,
    keepWithNext: false,
    shapes,
  };
}

/** The count in bold at the right: on the last line where there is room, else on a line of its own below. */
function withCount(strips: readonly Strip[], count: string | null, setting: Setting): Strip[] {
  if (!count) return [...strips];
  const { xMm, widthMm } = mainColumn(setting);
  const sizeMm = mmFromPt(TYPE.body.fontPt);
  const lines = breakLines(
    [{ text: keepNumbersTogether(count), face: 'text-bold' }],
    sizeMm,
    widthMm,
    setting.measure,
  );
  const set = lines.map((line) =>
    lineShapes(line, TYPE.body, xMm + widthMm - line.widthMm, baselineMm(TYPE.body)),
  );
  const last = strips.at(-1);
  const only = set.length === 1 ? set[0] : undefined;
  if (last && only && lastLineEnd(last, setting) + GAP.count + (lines[0]?.widthMm ?? 0) <= xMm + widthMm) {
    return [...strips.slice(0, -1), { ...last, shapes: [...last.shapes, ...only] }];
  }
  return [...strips.slice(0, -1), ...keepTogether([...strips.slice(-1), ...set.map(sideStrip)])];
}

function lastLineEnd(strip: Strip, setting: Setting): number {
  return strip.shapes.reduce((end, shape) => {
    if (shape.kind !== 'text') return end;
    return Math.max(
      end,
      shape.x + runsWidth([{ text: shape.text, face: shape.face }], shape.sizeMm, setting.measure),
    );
  }, 0);
}

/** 4 of `Rows 4–27`: the number of the first box. */
function firstNumber(label: string | null): number {
  return Number(/\d+/.exec(label ?? '')?.[0] ?? 1);
}
