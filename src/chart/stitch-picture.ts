/** One stitch of the table in, its chart symbol by itself out, for the page that tells how stitches are made. */

import { boundsOf } from '../scene/bounds.ts';
import type { Scene } from '../scene/scene.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { drawnAlone } from './key-stitches.ts';
import { SymbolBook } from './symbol-book.ts';

/** Air round the strokes, so that none is cut off at the edge. */
const MARGIN_MM = 0.8;

/** Decoration beside the stitch's name, so its words say no more than whose symbol it is. */
export function stitchPicture(row: StitchRow): Scene {
  const book = new SymbolBook();
  const shapes = drawnAlone(book, row);
  const symbols = book.all();
  const box = boundsOf(shapes, symbols) ?? { left: 0, top: 0, right: 0, bottom: 0 };
  const [x, y] = [MARGIN_MM - box.left, MARGIN_MM - box.top];
  return {
    widthMm: box.right - box.left + 2 * MARGIN_MM,
    heightMm: box.bottom - box.top + 2 * MARGIN_MM,
    title: `Symbol of ${row.us.name}`,
    alternative: '',
    symbols,
    shapes: [{ kind: 'group', transform: [1, 0, 0, 1, x, y], shapes }],
  };
}
