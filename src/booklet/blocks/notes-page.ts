/** A page that would be blank: lines for the maker to write on. */

import { ruleShape } from '../draw-lines.ts';
import type { FlowedPage } from '../flow.ts';
import { QUIET, RULE } from '../page-grid.ts';
import { wideHeading } from '../section.ts';
import type { Setting } from '../set-text.ts';
import type { Strip } from '../strip.ts';

/** Between two lines: room for handwriting. */
const LINE_MM = 9;

export function notesPage(setting: Setting): FlowedPage {
  const { grid } = setting;
  const heading = wideHeading('Notes of your own', setting).map(({ bookmark: _none, ...strip }) => strip);
  let yMm = 0;
  const head = heading.map((strip) => {
    const placed = { strip: { ...strip, ruleAbove: false }, yMm };
    yMm += strip.heightMm;
    return placed;
  });
  const heightMm = grid.bodyHeightMm - yMm;
  const lines: Strip = {
    kind: 'strip',
    heightMm,
    spaceBeforeMm: 0,
    keepWithNext: false,
    shapes: Array.from({ length: Math.floor(heightMm / LINE_MM) }, (_, index) =>
      ruleShape(0, (index + 1) * LINE_MM, grid.bodyWidthMm, RULE.hairMm, QUIET),
    ),
  };
  return { kind: 'strips', strips: [...head, { strip: lines, yMm }] };
}
