/** Sizes near a wanted measure -> what is told of each, in the terminal and on the page. */

import type { NearSize, NearSizes } from '../check/near-sizes.ts';
import type { Units } from '../measure/materials.ts';
import { printCm, printIn, printMm } from '../units.ts';
import { inUnits } from '../wording/finished-size.ts';

export interface NearTable {
  /** `repeats across`. */
  readonly counted: string;
  /** `width`. */
  readonly side: 'width' | 'height';
  readonly near: readonly NearSize[];
}

/** Those that there are, across before up. */
export function nearTables({ repeats, rows, rounds }: NearSizes): NearTable[] {
  const tables: NearTable[] = [
    { counted: 'repeats across', side: 'width', near: repeats ?? [] },
    { counted: 'rows', side: 'height', near: rows ?? [] },
    { counted: 'rounds', side: 'width', near: rounds ?? [] },
  ];
  return tables.filter(({ near }) => near.length > 0);
}

/** That a wish is smaller than the pattern's least: which that is; null where it is not. */
export function leastWords({ counted, side, near }: NearTable): string | null {
  const [least] = near;
  if (least === undefined || !least.nearest || least.offMm < EXACT_MM) return null;
  const is = `${printCm(least.mm)} (${printIn(least.mm)})`;
  const n = `${least.count} ${least.count === 1 ? counted.replace(/s\b/, '') : counted}`;
  return `No ${side} less than ${is} comes out: that is ${n}.`;
}

/** Count, measure and miss: `7`, `30.5 cm (12 in)`, `5 mm more`. */
export function nearCells(
  { count, mm, offMm }: NearSize,
  units: Units = 'metric',
): readonly [string, string, string] {
  return [String(count), inUnits(mm, units), missWords(offMm, units)];
}

/** Nobody measures a piece of crochet finer. */
const EXACT_MM = 0.5;
const A_CM = 10;

function missWords(offMm: number, units: Units): string {
  const off = Math.abs(offMm);
  if (off < EXACT_MM) return 'as wanted';
  const inMetric = Math.round(off) < A_CM ? printMm(Math.round(off)) : printCm(off);
  return `${units === 'metric' ? inMetric : printIn(off)} ${offMm > 0 ? 'more' : 'less'}`;
}
