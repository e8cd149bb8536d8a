/**
 * A worked size in, the outline of each of its flat pieces out: how wide it is at every height, as it lies finished.
 * Edgings are left out; a piece worked in rounds has no outline here, its size says it.
 */

import type { Fabric } from '../fabric/fabric.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { edgingSides } from './edgings.ts';
import { rowHeights, stitchWidthMm } from './row-heights.ts';
import { rowWidths } from './row-widths.ts';

export interface OutlinePoint {
  readonly heightMm: number;
  readonly widthMm: number;
}

export interface Outline {
  readonly part: string;
  /** From the foundation up; where the width changes, and the two ends. */
  readonly points: readonly OutlinePoint[];
}

/** Changes of width smaller than this, or than this share of the piece, are the steps of a slope, no turn of the edge. */
const SAME_MM = 6;
const SAME_SHARE = 0.05;

/** Empty without a gauge. */
export function outlines(pattern: Pattern, fabric: Fabric): Outline[] {
  const { gauge } = pattern;
  if (gauge === null) return [];
  const stitchMm = stitchWidthMm(gauge);
  const edgings = edgingSides(fabric);
  const isEdging = edgings.map((sides) => sides !== null);
  const heights = rowHeights(fabric, gauge, pattern.terms, isEdging);
  const widths = rowWidths(fabric);
  return fabric.parts.flatMap((part): Outline[] => {
    if (part.shape !== 'flat' || part.onto !== null) return [];
    const points: OutlinePoint[] = [];
    let heightMm = 0;
    for (let row = part.firstRow; row < part.endRow; row += 1) {
      const rowMm = heights[row] ?? 0;
      if (isEdging[row] || rowMm === 0 || fabric.rows[row]?.closing !== 'flat') continue;
      const widthMm = (widths[row] ?? 0) * stitchMm;
      if (points.length === 0) points.push({ heightMm: 0, widthMm });
      heightMm += rowMm;
      points.push({ heightMm, widthMm });
    }
    if (points.length < 2) return [];
    const same = Math.max(SAME_MM, SAME_SHARE * Math.max(...points.map(({ widthMm }) => widthMm)));
    return [{ part: part.name, points: turnsOf(points, same) }];
  });
}

/** Points between which the edge runs straight are left out. */
function turnsOf(points: readonly OutlinePoint[], same: number): OutlinePoint[] {
  const [first] = points;
  const last = points.at(-1);
  if (first === undefined || last === undefined) return [];
  let furthest = 0;
  let at = -1;
  points.forEach(({ heightMm, widthMm }, k) => {
    const share = (heightMm - first.heightMm) / Math.max(1e-6, last.heightMm - first.heightMm);
    const away = Math.abs(widthMm - (first.widthMm + (last.widthMm - first.widthMm) * share));
    if (away > furthest) {
      furthest = away;
      at = k;
    }
  });
  if (furthest < same || at <= 0 || at >= points.length - 1) return [first, last];
  return [...turnsOf(points.slice(0, at + 1), same), ...turnsOf(points.slice(at), same).slice(1)];
}
