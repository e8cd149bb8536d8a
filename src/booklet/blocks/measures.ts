/** The outlines of each size in, the section that shows them with their measures out: one beside its heading, several two to a line. */

import { boundsOf } from '../../scene/bounds.ts';
import { mmFromPt } from '../../units.ts';
import type { BookletInput } from '../booklet-input.ts';
import { breakLines, type Run } from '../break-lines.ts';
import { scaledShapes } from '../draw-lines.ts';
import type { HouseWords } from '../house-words.ts';
import { keepNumbersTogether } from '../no-break.ts';
import { plain, sideSection, wideHeading } from '../section.ts';
import { baselineMm, lineShapes, mainColumn, type Setting } from '../set-text.ts';
import { keepTogether, moved, type Strip } from '../strip.ts';
import type { Block } from './cut-stack.ts';

const COLUMNS = 2;
const COLUMN_GAP_MM = 6;

export function measures({ sizes }: BookletInput, house: HouseWords, setting: Setting): Strip[] {
  const widthMm = (setting.grid.bodyWidthMm - COLUMN_GAP_MM * (COLUMNS - 1)) / COLUMNS;
  const figures = sizes.flatMap(({ name, schematics }) =>
    schematics.map(({ part, scene }): Block => {
      const label = [sizes.length > 1 ? name : '', part].filter((word) => word !== '').join(', ');
      // Words above and below have room in the drawing whether they stand there or not.
      const { left = 0, top = 0, right = 0, bottom = 0 } = boundsOf(scene.shapes) ?? {};
      const scale = Math.min(1, widthMm / (right - left));
      const drawnMm = (bottom - top) * scale;
      const words = caption(label, scene.alternative, widthMm, setting);
      return {
        shapes: [
          scaledShapes(scene.shapes, scale, -left * scale, -top * scale),
          moved(words.shapes, 0, drawnMm + setting.grid.gap.paragraph),
        ],
        heightMm: drawnMm + setting.grid.gap.paragraph + words.heightMm,
      };
    }),
  );
  const lines = Array.from({ length: Math.ceil(figures.length / COLUMNS) }, (_, line) =>
    figures.slice(line * COLUMNS, (line + 1) * COLUMNS),
  );
  const strips = lines.map(
    (line, index): Strip => ({
      kind: 'strip',
      heightMm: Math.max(...line.map(({ heightMm }) => heightMm)),
      spaceBeforeMm: index === 0 ? setting.grid.gap.afterHeading : setting.grid.gap.part,
      keepWithNext: false,
      shapes: line.map(({ shapes }, column) => moved(shapes, column * (widthMm + COLUMN_GAP_MM), 0)),
    }),
  );
  const [first, ...rest] = strips;
  if (first === undefined) return [];
  if (figures.length === 1)
    return sideSection(
      house.measures,
      [{ ...first, shapes: [moved(first.shapes, mainColumn(setting).xMm, 0)] }],
      setting,
    );
  return [...keepTogether([...wideHeading(house.measures, setting), first]), ...rest];
}

/** Which size and piece it is, and the measures in words. */
function caption(label: string, words: string, widthMm: number, setting: Setting): Block {
  const bold: Run[] = label === '' ? [] : [{ text: `${label}: `, face: 'text-bold' }];
  const lines = breakLines(
    [...bold, ...plain(keepNumbersTogether(words))],
    mmFromPt(setting.grid.type.caption.fontPt),
    widthMm,
    setting.measure,
  );
  const lineMm = mmFromPt(setting.grid.type.caption.linePt);
  return {
    shapes: lines.flatMap((line, index) =>
      lineShapes(line, setting.grid.type.caption, 0, index * lineMm + baselineMm(setting.grid.type.caption)),
    ),
    heightMm: lines.length * lineMm,
  };
}
