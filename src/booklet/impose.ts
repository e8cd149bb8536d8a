/** The pages of a booklet in, all of half a sheet, the sides of the sheets to print out, in the order a printer takes them. */

import type { Scene, Shape, Transform } from '../scene/scene.ts';
import { creepMm, foldedSheets, type SheetSide } from './folding.ts';
import { PAPERS, type PaperName } from './paper.ts';

/** Front and back of each sheet, the outermost first. */
export function imposedSides(pages: readonly Scene[], paper: PaperName, title: string): Scene[] {
  const sheets = foldedSheets(pages.length);
  return sheets.flatMap(({ front, back }, index) =>
    [front, back].map((side, turned) =>
      imposedSide(side, pages, {
        paper,
        creep: creepMm(index + 1),
        title: `${title}, sheet ${index + 1} of ${sheets.length}, ${turned === 0 ? 'front' : 'back'}`,
      }),
    ),
  );
}

interface SideSetting {
  readonly paper: PaperName;
  readonly creep: number;
  readonly title: string;
}

/** The fold lies in the middle of the sheet, also where two pages are a little narrower than it. */
function imposedSide(
  { left, right }: SheetSide,
  pages: readonly Scene[],
  { paper, creep, title }: SideSetting,
): Scene {
  const { widthMm: heightMm, heightMm: widthMm } = PAPERS[paper];
  const foldMm = widthMm / 2;
  const leftPage = left === null ? undefined : pages[left - 1];
  const rightPage = right === null ? undefined : pages[right - 1];
  const both = [leftPage, rightPage].filter((page) => page !== undefined);
  return {
    widthMm,
    heightMm,
    title,
    alternative: both.map(({ title: name }) => name).join('; '),
    symbols: Object.assign({}, ...both.map(({ symbols }) => symbols)),
    shapes: [
      ...(leftPage ? [placed(leftPage, foldMm - uprightWidth(leftPage) + creep)] : []),
      ...(rightPage ? [placed(rightPage, foldMm - creep)] : []),
    ],
  };
}

function uprightWidth({ widthMm, heightMm }: Scene): number {
  return Math.min(widthMm, heightMm);
}

/** A page that lies on its side is stood up with its head to the left: a reader turns the booklet to the right. */
function placed(page: Scene, xMm: number): Shape {
  const lying = page.widthMm > page.heightMm;
  const transform: Transform = lying ? [0, -1, 1, 0, xMm, page.widthMm] : [1, 0, 0, 1, xMm, 0];
  return { kind: 'group', transform, shapes: page.shapes };
}

/** A sheet without anything on it: the back of one that is printed on its front alone. */
export function blankSide(widthMm: number, heightMm: number, title: string): Scene {
  return { widthMm, heightMm, title, alternative: '', symbols: {}, shapes: [] };
}
