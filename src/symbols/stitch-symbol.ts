/**
 * What every chart symbol gives: shapes in stitch units, foot at the origin and head straight up at the length asked
 * for, so that a stitch may stretch and lean between where it is worked and where it ends.
 */

import type { PathPart, Shape, Stroke } from '../scene/scene.ts';

export interface StitchSymbol {
  /** From foot to head where nothing stretches it. */
  readonly heightU: number;
  /** Room from the middle of one to the middle of the next. */
  readonly widthU: number;
  readonly draw: (lengthU: number, pen: Pen) => readonly Shape[];
  /**
   * One part-worked leg, without the top bar. In a cluster it bulges sideways by `bulgeU` and its slashes are short;
   * null for a leg that stands free, as in a decrease.
   */
  readonly leg: (lengthU: number, bulgeU: number | null, pen: Pen) => readonly Shape[];
  /** Where a later stitch goes into it, as a share of its length, for what lies along the row: the middle unless said. */
  readonly enteredAt?: number;
  /** Whether its head has a bar, which legs worked together then share. */
  readonly barred: boolean;
}

/** The two pens that alternate rows are drawn with. */
export type Pen = 'firm' | 'light';

/** Widths of the pens, in stitch units; far enough apart to be told in grey. */
const PEN_U: Readonly<Record<Pen, number>> = { firm: 0.105, light: 0.085 };

/** Air between a foot and what it stands on, so that rows do not run together. */
export const FOOT_GAP_U = 0.14;

export function penStroke(pen: Pen): Stroke {
  return { ink: 'ink', widthMm: PEN_U[pen] };
}

export function drawn(parts: readonly PathPart[], pen: Pen): Shape {
  return { kind: 'path', parts, stroke: penStroke(pen), fill: 'none' };
}

export function line(x1: number, y1: number, x2: number, y2: number): PathPart[] {
  return [
    ['M', x1, y1],
    ['L', x2, y2],
  ];
}
