/** The outlines of each size in, the section that shows them with their measures out: one beside its heading, several two to a line. */

import { type Bounds, boundsOf } from '../../scene/bounds.ts';
import type { Scene } from '../../scene/scene.ts';
import { mmFromPt } from '../../units.ts';
import type { BookletInput } from '../booklet-input.ts';
import { breakLines, type Run } from '../break-lines.ts';
import { scaledShapes } from '../draw-lines.ts';
import type { Edition } from '../edition.ts';
import type { HouseWords } from '../house-words.ts';
import { keepNumbersTogether } from '../no-break.ts';
import type { Form } from '../paper.ts';
import { paragraphs, plain, sideSection, wideHeading } from '../section.ts';
import { baselineMm, lineShapes, mainColumn, type Setting } from '../set-text.ts';
import { keepTogether, moved, type Strip } from '../strip.ts';
import { figureTag, paragraphTag, tagged } from '../tags.ts';
import { walkShapes } from '../walk-shapes.ts';
import type { Block } from './cut-stack.ts';

const MOST_COLUMNS = 2;
const COLUMN_GAP_MM = 6;

/** Figures of a drawing on paper, no smaller: common practice, and 16 points in large print. */
const LEAST_MM: Readonly<Record<Form, number>> = {
  flat: mmFromPt(6),
  folded: mmFromPt(8),
  'large print': mmFromPt(16),
};

export function measures(
  { sizes }: BookletInput,
  { holds }: Edition,
  house: HouseWords,
  setting: Setting,
): Strip[] {
  const outlines = sizes.flatMap(({ name, schematics }) =>
    schematics.map(({ part, scene }) => ({
      label: [sizes.length > 1 ? name : '', part].filter((word) => word !== '').join(', '),
      scene,
    })),
  );
  if (outlines.length === 0) return [];
  const columns = holds === 'words' ? 0 : columnsFor(outlines, setting);
  if (columns === 0) return sideSection(house.measures, inWords(outlines, setting), setting);
  const widthMm = figureWidth(columns, outlines.length, setting);
  const figures = outlines.map(({ label, scene }): Block => {
    const { left, top, bottom, scale } = drawnSize(scene, widthMm, setting);
    const drawnMm = (bottom - top) * scale;
    const words = caption(label, scene.alternative, widthMm, setting);
    const gapMm = setting.grid.gap.paragraph;
    return {
      // Words above and below have room in the drawing whether they stand there or not.
      shapes: [
        tagged(
          [scaledShapes(scene.shapes, scale, -left * scale, -top * scale)],
          figureTag(`${label === '' ? 'Outline' : `Outline of ${label}`}: ${scene.alternative}`),
        ),
        moved(words.shapes, 0, drawnMm + gapMm),
      ],
      heightMm: drawnMm + gapMm + words.heightMm,
    };
  });
  const lines = Array.from({ length: Math.ceil(figures.length / columns) }, (_, line) =>
    figures.slice(line * columns, (line + 1) * columns),
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

interface Outline {
  readonly label: string;
  readonly scene: Scene;
}

/** One alone stands beside its heading. */
function figureWidth(columns: number, figures: number, { grid }: Setting): number {
  if (figures === 1 && columns === 1) return grid.mainWidthMm;
  return (grid.bodyWidthMm - COLUMN_GAP_MM * (columns - 1)) / columns;
}

/** As many as leave every figure large enough to read; none where even one does not. */
function columnsFor(outlines: readonly Outline[], setting: Setting): number {
  const most = setting.grid.oneColumn ? 1 : MOST_COLUMNS;
  for (let columns = most; columns > 0; columns -= 1) {
    const widthMm = figureWidth(columns, outlines.length, setting);
    if (outlines.every(({ scene }) => drawnSize(scene, widthMm, setting).readable)) return columns;
  }
  return 0;
}

function drawnSize(
  scene: Scene,
  widthMm: number,
  { grid }: Setting,
): Bounds & { readonly scale: number; readonly readable: boolean } {
  const box = boundsOf(scene.shapes) ?? { left: 0, top: 0, right: 1, bottom: 1 };
  const figures = walkShapes(scene.shapes).flatMap(({ shape }) =>
    shape.kind === 'text' ? [shape.sizeMm] : [],
  );
  const least = figures.length > 0 ? LEAST_MM[grid.format.form] / Math.min(...figures) : 0;
  const scale = Math.min(Math.max(1, least), widthMm / (box.right - box.left));
  return { ...box, scale, readable: scale >= least };
}

function inWords(outlines: readonly Outline[], setting: Setting): Strip[] {
  return paragraphs(
    outlines.map(({ label, scene }) => [
      ...boldLabel(label),
      ...plain(keepNumbersTogether(scene.alternative)),
    ]),
    setting,
  );
}

function boldLabel(label: string): Run[] {
  return label === '' ? [] : [{ text: `${label}: `, face: 'text-bold' }];
}

/** Which size and piece it is, and the measures in words. */
function caption(label: string, words: string, widthMm: number, setting: Setting): Block {
  const lines = breakLines(
    [...boldLabel(label), ...plain(keepNumbersTogether(words))],
    mmFromPt(setting.grid.type.caption.fontPt),
    widthMm,
    setting.measure,
  );
  const type = setting.grid.type.caption;
  const lineMm = mmFromPt(type.linePt);
  return {
    shapes: [
      tagged(
        lines.flatMap((line, index) => lineShapes(line, type, 0, index * lineMm + baselineMm(type))),
        paragraphTag(),
      ),
    ],
    heightMm: lines.length * lineMm,
  };
}
