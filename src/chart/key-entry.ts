/** What a chart's key is made from, and one of its entries. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Shape } from '../scene/scene.ts';
import type { StitchRow, Terms } from '../stitches/stitch-row.ts';
import type { Labels } from './labels.ts';
import type { YarnInk } from './row-pens.ts';
import type { SymbolBook } from './symbol-book.ts';

export interface KeyInput {
  readonly fabric: Fabric;
  readonly rows: readonly StitchRow[];
  readonly book: SymbolBook;
  /** The stitches drawn, as runs of the fabric's arrays. */
  readonly drawn: readonly (readonly [first: number, end: number])[];
  readonly terms: Terms;
  readonly labels: Labels;
  /** One repeat is marked. */
  readonly bracket: boolean;
  /** Stitches, or rows, are drawn once for many. */
  readonly folded: { readonly across: boolean; readonly up: boolean };
  readonly bareRing: boolean;
  /** A stem is broken where another crosses before it. */
  readonly broken: boolean;
  /** What triangles mark. */
  readonly yarnMarks: ReadonlySet<'join' | 'cut'>;
  /** By the fabric's own numbering of yarns; null for those drawn in the chart's two inks. */
  readonly yarnInks: readonly (YarnInk | null)[];
  /** Neighbouring rows differ in ink. */
  readonly secondInk: boolean;
}

export interface KeyEntry {
  /** Drawn with its foot at the origin, or round it, in mm. */
  readonly shapes: readonly Shape[];
  readonly heightMm: number;
  readonly abbr: string | null;
  readonly words: string;
}
