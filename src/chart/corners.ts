/** A round's elements in, the corners of the piece that it turns out, in the order they are worked. */

import { FLAG, NONE } from '../fabric/fabric.ts';
import { type Column, isColumn } from './columns.ts';
import type { ChartContext } from './context.ts';
import { hasFlag, type RowElement } from './elements.ts';

export interface Corner {
  /** The corner lies after this column. */
  readonly after: number;
  /** Whether that column stands in the corner itself. */
  readonly pinned: boolean;
  /** Chains that lie across the corner. */
  readonly chains: number;
}

/** Corner spaces where there are any; otherwise the middles of what is worked at each corner. */
export function cornersOf(
  context: ChartContext,
  elements: readonly RowElement[],
  columns: readonly Column[],
): Corner[] {
  const spaces = cornerSpaces(context, elements);
  return spaces.length > 0 ? spaces : cornerStitches(context, columns);
}

function cornerSpaces(context: ChartContext, elements: readonly RowElement[]): Corner[] {
  const corners: Corner[] = [];
  let column = -1;
  for (const element of elements) {
    if (isColumn(element)) column += 1;
    if (element.kind !== 'arch' || column < 0 || !context.cornerChains.has(element.first)) continue;
    corners.push({ after: column, pinned: false, chains: element.end - element.first });
  }
  return corners;
}

function cornerStitches(context: ChartContext, columns: readonly Column[]): Corner[] {
  const runs = cornerRuns(context, columns);
  const firstRun = runs[0];
  const lastRun = runs.at(-1);
  // A round that starts in the middle of a corner comes back to it at its end.
  if (
    firstRun &&
    lastRun &&
    runs.length > 1 &&
    lastRun.at(-1) === columns.length - 1 &&
    firstRun[0] === firstStitch(columns)
  ) {
    if (placeOf(columns, firstRun) === placeOf(columns, lastRun)) {
      runs.pop();
      runs[0] = [...lastRun, ...firstRun];
    }
  }
  return runs
    .map((run) => {
      const middle = (run.length - 1) / 2;
      return { after: run[Math.floor(middle)] ?? 0, pinned: Number.isInteger(middle), chains: 0 };
    })
    .sort((a, b) => a.after - b.after);
}

/** Neighbours at a corner that share a place. */
function cornerRuns(context: ChartContext, columns: readonly Column[]): number[][] {
  const runs: number[][] = [];
  for (const [k, column] of columns.entries()) {
    if (!isCorner(context, column.stitch) || !standsAlone(column)) continue;
    const run = runs.at(-1);
    const before = run?.at(-1);
    const place = column.footing?.place ?? null;
    if (run && before === k - 1 && (placeOf(columns, run) === place || placeOf(columns, run) === null))
      run.push(k);
    else runs.push([k]);
  }
  return runs;
}

function isCorner({ fabric, cornerStitches }: ChartContext, stitch: number): boolean {
  return hasFlag(fabric, stitch, FLAG.corner) || cornerStitches.has(stitch);
}

function standsAlone({ element }: Column): boolean {
  return element.kind === 'stitch' || (element.kind === 'post' && element.counted !== NONE);
}

function placeOf(columns: readonly Column[], run: readonly number[]): number | null {
  for (const k of run) {
    const place = columns[k]?.footing?.place;
    if (place !== undefined) return place;
  }
  return null;
}

function firstStitch(columns: readonly Column[]): number {
  return columns.findIndex(standsAlone);
}
