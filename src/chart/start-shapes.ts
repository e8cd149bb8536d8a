/** Where a flat piece begins in, the mark that points there out. */

import type { Ink, Shape } from '../scene/scene.ts';
import { arrowShapes, startMark } from './arrow.ts';
import type { SymbolBook } from './symbol-book.ts';

/** The shaft behind the head, where there is one. */
const SHAFT_MM = 2.4;

/** On paper, in mm, pointing along `ux`: a solid head, or an arrow where a solid triangle says that yarn is cut. */
export function startShapes(book: SymbolBook, x: number, y: number, ux: number, ink: Ink): Shape[] {
  if (!book.set.marksYarn) return [startMark(x, y, ux, 0, ink)];
  const tip = x + ux * 1.9;
  return arrowShapes(
    [
      [tip - ux * (SHAFT_MM + 1.5), y],
      [tip, y],
    ],
    ink,
  );
}
