/** Which rows in, boxes to tick out: one before a row, or a numbered run of them, ten to a line, under a range of rows. */

import type { Shape } from '../../scene/scene.ts';
import { mmFromPt } from '../../units.ts';
import { boxShape } from '../draw-lines.ts';
import { ACCENT, QUIET, RULE, TYPE } from '../page-grid.ts';
import { type Place, textShape } from '../set-text.ts';
import type { Strip } from '../strip.ts';

const BOX_MM = 3.3;
/** Width of the box and the space after it. */
export const TICK_WIDTH_MM = 5.6;

const RUN = { perLine: 10, widthMm: 9.4, heightMm: 5.6, gapMm: 1.4, lineGapMm: 1.4 } as const;

/** One box on the first line of a row, centred on its capitals. */
export function tickBox(): Shape {
  const yMm = (mmFromPt(TYPE.body.linePt) - BOX_MM) / 2;
  return boxShape({ xMm: 0, yMm, widthMm: BOX_MM, heightMm: BOX_MM }, { ink: ACCENT, widthMm: RULE.boxMm });
}

/** Numbered boxes, to be crossed off one a row. */
export function tickRun(first: number, count: number, place: Place): Strip[] {
  const perLine = Math.max(
    1,
    Math.min(RUN.perLine, Math.floor((place.widthMm + RUN.gapMm) / (RUN.widthMm + RUN.gapMm))),
  );
  const strips: Strip[] = [];
  for (let at = 0; at < count; at += perLine) {
    const shapes = Array.from({ length: Math.min(perLine, count - at) }, (_, index) => {
      const xMm = place.xMm + index * (RUN.widthMm + RUN.gapMm);
      return numberedBox(String(first + at + index), xMm);
    }).flat();
    strips.push({
      kind: 'strip',
      heightMm: RUN.heightMm,
      spaceBeforeMm: at === 0 ? 1.2 : RUN.lineGapMm,
      keepWithNext: false,
      shapes,
    });
  }
  return strips;
}

function numberedBox(number: string, xMm: number): Shape[] {
  const baseline = (RUN.heightMm + 0.67 * mmFromPt(TYPE.small.fontPt)) / 2;
  return [
    boxShape(
      { xMm, yMm: 0, widthMm: RUN.widthMm, heightMm: RUN.heightMm },
      { ink: ACCENT, widthMm: RULE.boxMm },
    ),
    textShape(
      { text: number, face: 'text', ink: QUIET },
      TYPE.small,
      xMm + RUN.widthMm / 2,
      baseline,
      'middle',
    ),
  ];
}
