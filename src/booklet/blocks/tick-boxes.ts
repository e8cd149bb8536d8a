/** Which rows in, boxes to tick out: one before a row, or a numbered run of them, ten to a line, under a range of rows. */

import type { Shape } from '../../scene/scene.ts';
import { mmFromPt } from '../../units.ts';
import { boxShape } from '../draw-lines.ts';
import { ACCENT, type PageGrid, QUIET, RULE } from '../page-grid.ts';
import { type Place, type Setting, textShape } from '../set-text.ts';
import type { Strip } from '../strip.ts';

const BOX_MM = 3.3;
const TICK_WIDTH_MM = 5.6;

const RUN = { perLine: 10, widthMm: 9.4, heightMm: 5.6, gapMm: 1.4, lineGapMm: 1.4 } as const;

/** Width of the box and the space after it. */
export function tickWidthMm({ grid }: Setting): number {
  return TICK_WIDTH_MM * grid.drawn;
}

/** One box on the first line of a row, centred on its capitals. */
export function tickBox({ grid }: Setting): Shape {
  const sideMm = BOX_MM * grid.drawn;
  const yMm = (mmFromPt(grid.type.body.linePt) - sideMm) / 2;
  return boxShape({ xMm: 0, yMm, widthMm: sideMm, heightMm: sideMm }, { ink: ACCENT, widthMm: RULE.boxMm });
}

/** Numbered boxes, to be crossed off one a row. */
export function tickRun(first: number, count: number, place: Place, { grid }: Setting): Strip[] {
  const widthMm = RUN.widthMm * grid.drawn;
  const gapMm = RUN.gapMm * grid.drawn;
  const perLine = Math.max(1, Math.min(RUN.perLine, Math.floor((place.widthMm + gapMm) / (widthMm + gapMm))));
  const strips: Strip[] = [];
  for (let at = 0; at < count; at += perLine) {
    const shapes = Array.from({ length: Math.min(perLine, count - at) }, (_, index) =>
      numberedBox(String(first + at + index), place.xMm + index * (widthMm + gapMm), grid),
    ).flat();
    strips.push({
      kind: 'strip',
      heightMm: RUN.heightMm * grid.drawn,
      spaceBeforeMm: (at === 0 ? 1.2 : RUN.lineGapMm) * grid.drawn,
      keepWithNext: false,
      shapes,
    });
  }
  return strips;
}

function numberedBox(number: string, xMm: number, { type, drawn }: PageGrid): Shape[] {
  const widthMm = RUN.widthMm * drawn;
  const heightMm = RUN.heightMm * drawn;
  const baseline = (heightMm + 0.67 * mmFromPt(type.small.fontPt)) / 2;
  return [
    boxShape({ xMm, yMm: 0, widthMm, heightMm }, { ink: ACCENT, widthMm: RULE.boxMm }),
    textShape({ text: number, face: 'text', ink: QUIET }, type.small, xMm + widthMm / 2, baseline, 'middle'),
  ];
}
