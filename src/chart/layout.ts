/** Where every stitch of a fabric is drawn: parallel arrays in stitch units, y up, filled as rows are placed. */

export interface Layout {
  /** Where the stitch enters, and where it ends; for a chain the two ends of its oval. */
  readonly footX: Float64Array;
  readonly footY: Float64Array;
  readonly headX: Float64Array;
  readonly headY: Float64Array;
  /** Where a later stitch enters this one. */
  readonly anchorX: Float64Array;
  readonly anchorY: Float64Array;
  /** Outwards at the anchor, of length 1. */
  readonly upX: Float64Array;
  readonly upY: Float64Array;
  /** 1 once placed. */
  readonly placed: Uint8Array;
}

export function emptyLayout(count: number): Layout {
  return {
    footX: new Float64Array(count),
    footY: new Float64Array(count),
    headX: new Float64Array(count),
    headY: new Float64Array(count),
    anchorX: new Float64Array(count),
    anchorY: new Float64Array(count),
    upX: new Float64Array(count),
    upY: new Float64Array(count),
    placed: new Uint8Array(count),
  };
}

export interface Placing {
  readonly footX: number;
  readonly footY: number;
  readonly headX: number;
  readonly headY: number;
  readonly upX: number;
  readonly upY: number;
  /** The head, unless said otherwise. */
  readonly anchorX?: number;
  readonly anchorY?: number;
}

export function place(layout: Layout, i: number, at: Placing): void {
  layout.footX[i] = at.footX;
  layout.footY[i] = at.footY;
  layout.headX[i] = at.headX;
  layout.headY[i] = at.headY;
  layout.anchorX[i] = at.anchorX ?? at.headX;
  layout.anchorY[i] = at.anchorY ?? at.headY;
  layout.upX[i] = at.upX;
  layout.upY[i] = at.upY;
  layout.placed[i] = 1;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export function anchorOf(layout: Layout, i: number): Point {
  return { x: layout.anchorX[i] ?? 0, y: layout.anchorY[i] ?? 0 };
}

export function headOf(layout: Layout, i: number): Point {
  return { x: layout.headX[i] ?? 0, y: layout.headY[i] ?? 0 };
}

export function footOf(layout: Layout, i: number): Point {
  return { x: layout.footX[i] ?? 0, y: layout.footY[i] ?? 0 };
}
