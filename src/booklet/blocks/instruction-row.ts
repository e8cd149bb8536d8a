/** One worded row in, its strips out: box and label at the side, text in the main column, count at its end. */

import type { Tag } from '../../scene/scene.ts';
import { mmFromPt } from '../../units.ts';
import type { WordedLine } from '../../wording/words.ts';
import { breakLines, runsWidth } from '../break-lines.ts';
import { keepNumbersTogether } from '../no-break.ts';
import {
  baselineMm,
  beside,
  headedBy,
  lineShapes,
  mainColumn,
  type Place,
  type Setting,
  setText,
} from '../set-text.ts';
import { keepTogether, noStrayLines, type Strip, withSpaceBefore } from '../strip.ts';
import { itemTags, tagged } from '../tags.ts';
import { walkShapes } from '../walk-shapes.ts';
import { tickBox, tickRun, tickWidthMm } from './tick-boxes.ts';

/** A row may be parted over two pages only when it is longer than this share of a page. */
const LONGEST_WHOLE = 0.5;

/** Its label, and its text with its count, are an item of a list. */
export function instructionRow(line: WordedLine, setting: Setting, list: Tag): Strip[] {
  const item = itemTags(list);
  const words = withCount(textStrips(line, setting, item.body), line.count, setting, item.body);
  const ticked =
    line.rows.length > 1
      ? tickRun(firstNumber(line.label), line.rows.length, rowColumn(setting), setting)
      : [];
  const side = sideStrips(line, setting, item.label);
  const whole = labelled(side, keepTogether([...words, ...ticked]), line, setting);
  const heightMm = whole.reduce((sum, strip) => sum + strip.heightMm + strip.spaceBeforeMm, 0);
  if (heightMm <= setting.grid.bodyHeightMm * LONGEST_WHOLE)
    return withSpaceBefore(whole, setting.grid.gap.row);
  return withSpaceBefore(
    labelled(side, [...words, ...noStrayLines(ticked)], line, setting),
    setting.grid.gap.row,
  );
}

/** In one column a label stands above its row, and the row is set in by the width of a box. */
function labelled(
  side: readonly Strip[],
  row: readonly Strip[],
  line: WordedLine,
  setting: Setting,
): Strip[] {
  return line.label === null ? beside(side, row) : headedBy(side, row, setting);
}

function rowColumn(setting: Setting): Place {
  const { xMm, widthMm } = mainColumn(setting);
  const setInMm = setting.grid.oneColumn ? tickWidthMm(setting) : 0;
  return { xMm: xMm + setInMm, widthMm: widthMm - setInMm };
}

function textStrips(line: WordedLine, setting: Setting, tag: Tag): Strip[] {
  return noStrayLines(
    setText(
      [{ text: keepNumbersTogether(line.text), face: 'text' }],
      setting.grid.type.body,
      rowColumn(setting),
      setting,
      tag,
    ),
  );
}

function sideStrips(line: WordedLine, setting: Setting, tag: Tag): Strip[] {
  const box = hasOneBox(line) ? [tickBox(setting)] : [];
  if (line.label === null) return box.length ? [sideStrip(box, setting)] : [];
  const tickMm = tickWidthMm(setting);
  const place = { xMm: tickMm, widthMm: setting.grid.sideWidthMm - tickMm };
  const label = setText(
    [{ text: keepNumbersTogether(line.label), face: 'text-bold' }],
    setting.grid.type.body,
    place,
    setting,
    tag,
  );
  return label.map((strip, index) => (index === 0 ? { ...strip, shapes: [...box, ...strip.shapes] } : strip));
}

/** A row, or in a booklet of all sizes, where a range is of another length in each, a line of any rows. */
function hasOneBox({ label, rows }: WordedLine): boolean {
  return rows.length === 1 || (rows.length === 0 && label !== null);
}

function sideStrip(shapes: Strip['shapes'], setting: Setting): Strip {
  return {
    kind: 'strip',
    heightMm: mmFromPt(setting.grid.type.body.linePt),
    spaceBeforeMm: 0,
    keepWithNext: false,
    shapes,
  };
}

/** The count in bold at the right: on the last line where there is room, else on a line of its own below. */
function withCount(strips: readonly Strip[], count: string | null, setting: Setting, tag: Tag): Strip[] {
  if (!count) return [...strips];
  const { xMm, widthMm } = rowColumn(setting);
  const sizeMm = mmFromPt(setting.grid.type.body.fontPt);
  const lines = breakLines(
    [{ text: keepNumbersTogether(count), face: 'text-bold' }],
    sizeMm,
    widthMm,
    setting.measure,
  );
  const { body } = setting.grid.type;
  const set = lines.map((line) => [
    tagged(lineShapes(line, body, xMm + widthMm - line.widthMm, baselineMm(body)), tag),
  ]);
  const last = strips.at(-1);
  const only = set.length === 1 ? set[0] : undefined;
  if (
    last &&
    only &&
    lastLineEnd(last, setting) + setting.grid.gap.count + (lines[0]?.widthMm ?? 0) <= xMm + widthMm
  ) {
    return [...strips.slice(0, -1), { ...last, shapes: [...last.shapes, ...only] }];
  }
  return [
    ...strips.slice(0, -1),
    ...keepTogether([...strips.slice(-1), ...set.map((shapes) => sideStrip(shapes, setting))]),
  ];
}

function lastLineEnd(strip: Strip, setting: Setting): number {
  return walkShapes(strip.shapes).reduce((end, { shape }) => {
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
