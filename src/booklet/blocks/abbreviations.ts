/** The abbreviations a pattern uses in, two columns of them out, read down the left one first. */

import type { Tag } from '../../scene/scene.ts';
import { mmFromPt } from '../../units.ts';
import type { WordedAbbreviation } from '../../wording/words.ts';
import { runsWidth } from '../break-lines.ts';
import { mainColumn, type Setting, setText } from '../set-text.ts';
import { moved, type Strip } from '../strip.ts';
import { type ItemTags, itemTags, listTag } from '../tags.ts';

const COLUMN_GAP_MM = 6;
const ABBR_GAP_MM = 3;
/** No wider than this for the abbreviations, so that meanings keep their room. */
const ABBR_WIDEST_MM = 24;
const ENTRY_GAP_MM = 0.7;
/** A list of no more than this stays whole; a longer one is set in blocks of a few lines, so that it fills its pages. */
const LONGEST_WHOLE = 36;
const BLOCK = 16;

export function abbreviations(entries: readonly WordedAbbreviation[], setting: Setting): Strip[] {
  const size = entries.length <= LONGEST_WHOLE ? LONGEST_WHOLE : BLOCK;
  const blocks: Strip[] = [];
  const list = listTag();
  for (let at = 0; at < entries.length; at += size)
    blocks.push(block(entries.slice(at, at + size), list, setting));
  return blocks;
}

function block(entries: readonly WordedAbbreviation[], list: Tag, setting: Setting): Strip {
  const { xMm, widthMm } = mainColumn(setting);
  const columns = setting.grid.oneColumn ? 1 : 2;
  const columnMm = (widthMm - COLUMN_GAP_MM * (columns - 1)) / columns;
  const bold = entries.map(({ abbr }) =>
    runsWidth([{ text: abbr, face: 'text-bold' }], mmFromPt(setting.grid.type.body.fontPt), setting.measure),
  );
  const abbrMm = Math.min(
    ABBR_WIDEST_MM * setting.grid.drawn,
    Math.max(...bold) + ABBR_GAP_MM * setting.grid.drawn,
  );
  const set = entries.map((entry) => setEntry(entry, { abbrMm, columnMm, ...itemTags(list) }, setting));
  const half = columns === 1 ? set.length : evenSplit(set.map(({ heightMm }) => heightMm));
  const left = stack(set.slice(0, half), xMm);
  const right = stack(set.slice(half), xMm + columnMm + COLUMN_GAP_MM);
  return {
    kind: 'strip',
    heightMm: Math.max(left.heightMm, right.heightMm),
    spaceBeforeMm: ENTRY_GAP_MM,
    keepWithNext: false,
    shapes: [...left.shapes, ...right.shapes],
  };
}

interface EntryPlace extends ItemTags {
  readonly abbrMm: number;
  readonly columnMm: number;
}

function setEntry(
  { abbr, meaning }: WordedAbbreviation,
  { abbrMm, columnMm, label, body }: EntryPlace,
  setting: Setting,
): Strip {
  const names = setText(
    [{ text: abbr, face: 'text-bold' }],
    setting.grid.type.body,
    { xMm: 0, widthMm: abbrMm - 1 },
    setting,
    label,
  );
  const meanings = setText(
    [{ text: meaning, face: 'text' }],
    setting.grid.type.body,
    { xMm: abbrMm, widthMm: columnMm - abbrMm },
    setting,
    body,
  );
  const a = stack(names, 0, 0);
  const b = stack(meanings, 0, 0);
  return {
    kind: 'strip',
    heightMm: Math.max(a.heightMm, b.heightMm),
    spaceBeforeMm: 0,
    keepWithNext: false,
    shapes: [...a.shapes, ...b.shapes],
  };
}

function stack(
  strips: readonly Strip[],
  xMm: number,
  gapMm = ENTRY_GAP_MM,
): Pick<Strip, 'heightMm' | 'shapes'> {
  let yMm = 0;
  const shapes = strips.map((strip) => {
    const shape = moved(strip.shapes, xMm, yMm);
    yMm += strip.heightMm + gapMm;
    return shape;
  });
  return { heightMm: Math.max(0, yMm - gapMm), shapes };
}

/** How many go in the left column for the two to be as even as they can be, the left the longer. */
function evenSplit(heights: readonly number[]): number {
  const total = heights.reduce((sum, height) => sum + height, 0);
  let sum = 0;
  const at = heights.findIndex((height) => {
    sum += height;
    return sum >= total / 2 - 0.01;
  });
  return at < 0 ? heights.length : at + 1;
}
