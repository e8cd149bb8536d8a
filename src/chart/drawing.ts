/** What drawing one stitch of a placed fabric needs to know. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Ink } from '../scene/scene.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import type { Pen } from '../symbols/stitch-symbol.ts';
import type { Layout } from './layout.ts';
import type { SymbolBook } from './symbol-book.ts';

export interface Drawing {
  readonly fabric: Fabric;
  readonly rows: readonly StitchRow[];
  readonly layout: Layout;
  readonly book: SymbolBook;
  /** Stems that cross, and where along them others pass before them, in charts that break them there. */
  readonly crossed?: ReadonlyMap<number, readonly number[]> | undefined;
}

export interface StitchPen {
  readonly pen: Pen;
  readonly ink: Ink;
}
