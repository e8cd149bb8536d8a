/** Where a number might stand in, the nearest place to it where no stitch is drawn out. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Bounds } from '../scene/bounds.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { stitchRows } from './elements.ts';
import type { Layout, Point } from './layout.ts';
import { FIGURE_U, LABEL_MM, U_MM } from './metrics.ts';

/** A number's height in stitch units, and how wide each of its figures is, at a type size. */
const highU = (sizeMm: number): number => (sizeMm * 0.7) / U_MM;
const wideU = (sizeMm: number): number => (FIGURE_U * sizeMm) / LABEL_MM.size;
/** Half the width that a stem, an oval and the legs of a cluster are drawn with. */
const STEM_HALF_U = 0.18;
const OVAL_HALF_U = 0.22;
const CLUSTER_HALF_U = 0.42;
/** White that a number wants round it. */
export const AIR_U = 0.04;
/** Points looked at along a stitch. */
const SAMPLES = 6;

interface Drawn {
  readonly x: number;
  readonly y: number;
  readonly half: number;
}

function halfWidth(stitch: StitchRow | undefined): number {
  if (stitch?.lies === true) return OVAL_HALF_U;
  return stitch?.inOnePlace === true ? CLUSTER_HALF_U : STEM_HALF_U;
}

/** How near the nearest stitch of these rows is to numbers that may stand among them. */
export class LabelRoom {
  readonly #drawn: Drawn[] = [];

  constructor(fabric: Fabric, layout: Layout, rows: readonly number[]) {
    const table = stitchRows(fabric);
    for (const row of rows) {
      const { first = 0, end = 0 } = fabric.rows[row] ?? {};
      for (let i = first; i < end; i += 1) {
        if (!layout.placed[i]) continue;
        const half = halfWidth(table[fabric.kind[i] ?? 0]);
        const [footX, footY] = [layout.footX[i] ?? 0, layout.footY[i] ?? 0];
        const [dx, dy] = [(layout.headX[i] ?? 0) - footX, (layout.headY[i] ?? 0) - footY];
        for (let k = 0; k <= SAMPLES; k += 1)
          this.#drawn.push({ x: footX + (dx * k) / SAMPLES, y: footY + (dy * k) / SAMPLES, half });
      }
    }
  }

  /** No other number may stand on this one. */
  take({ x, y }: Point, figures: number): void {
    for (let k = 0; k < figures; k += 1)
      this.#drawn.push({ x: x + (k + 0.5 - figures / 2) * FIGURE_U, y, half: highU(LABEL_MM.size) / 2 });
  }

  /** Nor on anything else that stands there, in mm on paper. */
  takeBox({ left, top, right, bottom }: Bounds): void {
    const half = STEM_HALF_U / 2;
    const steps = (long: number): number => Math.max(1, Math.ceil(long / U_MM / (2 * half)));
    const [across, down] = [steps(right - left), steps(bottom - top)];
    for (let a = 0; a <= across; a += 1)
      for (let d = 0; d <= down; d += 1)
        this.#drawn.push({
          x: (left + ((right - left) * a) / across) / U_MM,
          y: -(top + ((bottom - top) * d) / down) / U_MM,
          half,
        });
  }

  /** White between a number of so many figures there and the nearest stitch, in stitch units; less than 0 where one lies over the other. */
  around({ x, y }: Point, figures: number, sizeMm: number = LABEL_MM.size): number {
    const halfWide = (figures * wideU(sizeMm)) / 2;
    const halfHigh = highU(sizeMm) / 2;
    let least = Number.POSITIVE_INFINITY;
    for (const drawn of this.#drawn) {
      const aside = Math.max(0, Math.abs(drawn.x - x) - halfWide);
      const above = Math.max(0, Math.abs(drawn.y - y) - halfHigh);
      least = Math.min(least, Math.hypot(aside, above) - drawn.half);
    }
    return least;
  }

  /** White between the nearest of these points and the nearest stitch. */
  aroundAll(points: readonly Point[]): number {
    let least = Number.POSITIVE_INFINITY;
    for (const drawn of this.#drawn)
      for (const { x, y } of points)
        least = Math.min(least, Math.hypot(drawn.x - x, drawn.y - y) - drawn.half);
    return least;
  }

  /** The first of the places, the best of them first, that has room for the number; the roomiest where none has. */
  roomiest(places: readonly Point[], figures: number): Point | null {
    let best: Point | null = null;
    let most = Number.NEGATIVE_INFINITY;
    for (const place of places) {
      const white = this.around(place, figures);
      if (white >= AIR_U) return place;
      if (white > most) [best, most] = [place, white];
    }
    return best;
  }
}
