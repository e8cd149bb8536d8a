/**
 * `work 21 sc evenly along row ends`, `work 48 sc evenly around` in a line and the fabric in, how many stitches went into
 * each place out.
 */

import { type Fabric, FLAG, INTO, targets } from '../fabric/fabric.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { EvenlyStep, Step } from '../notation/tree.ts';

/** A stitch's target along an edge. */
interface EdgeStitch {
  /** The place it goes into, by its number along the edge. */
  readonly place: number;
}

/**
 * The spread of every such step. A step that is worked more than once, as in `[…] twice`, is left out unless all
 * times are alike; so is everything when the stitches found do not add up to those asked for.
 */
export function evenSpreads(
  steps: readonly Step[],
  fabric: Fabric,
  rows: readonly number[],
  size: number,
): ReadonlyMap<EvenlyStep, readonly number[]> {
  const spreads = new Map<EvenlyStep, readonly number[]>();
  for (const edge of ['row ends', 'foundation'] as const) {
    const asked = evenlySteps(steps).filter((step) => step.edge === edge);
    const worked = edgeStitches(fabric, rows, edge === 'row ends' ? INTO.rowEnd : INTO.underside);
    const wanted = asked.map((step) => numberForSize(step.n, size) ?? 0);
    const each = wanted.reduce((sum, n) => sum + n, 0);
    // A special stitch is several stitches; which of them begin one is not told apart here.
    const plain = asked.every((step) => step.stitch.kind === 'stitch');
    if (!plain || each === 0 || worked.length % each !== 0) continue;
    let at = 0;
    for (const [i, step] of asked.entries()) {
      const n = wanted[i] ?? 0;
      const passes: number[][] = [];
      for (let start = at; start < worked.length; start += each)
        passes.push(spreadOf(worked.slice(start, start + n), fabric, edge));
      at += n;
      const [first] = passes;
      if (first !== undefined && passes.every((pass) => pass.join() === first.join()))
        spreads.set(step, first);
    }
  }
  const around = spreadAround(steps, fabric, rows, size);
  if (around !== null) spreads.set(around.step, around.spread);
  return spreads;
}

/** `work 48 sc evenly around`: the row's only such step, where it goes over all stitches below and no spaces. */
function spreadAround(
  steps: readonly Step[],
  fabric: Fabric,
  rows: readonly number[],
  size: number,
): { readonly step: EvenlyStep; readonly spread: readonly number[] } | null {
  const [step, more] = evenlySteps(steps);
  const [at, another] = rows;
  const row = fabric.rows[at ?? -1];
  const below = fabric.rows[row?.onto ?? -1];
  if (step?.edge !== 'all round' || more !== undefined || another !== undefined) return null;
  if (row === undefined || below === undefined || below.spaces > 0 || step.stitch.kind !== 'stitch')
    return null;
  const places = new Map<number, number>();
  for (let i = below.first; i < below.end; i += 1)
    if (((fabric.flags[i] ?? 0) & FLAG.counted) !== 0) places.set(i, places.size);
  const spread = [...places].map(() => 0);
  let worked = 0;
  for (let i = row.first; i < row.end; i += 1) {
    if (((fabric.flags[i] ?? 0) & FLAG.counted) === 0) continue;
    const place = places.get(targets(fabric, i)[0] ?? -1);
    if (place === undefined || fabric.where[i] !== INTO.top) return null;
    spread[place] = (spread[place] ?? 0) + 1;
    worked += 1;
  }
  // Rows that turn meet the places from the other end.
  const inOrder = below.direction === row.direction ? spread : spread.reverse();
  return worked === (numberForSize(step.n, size) ?? 0) ? { step, spread: inOrder } : null;
}

function evenlySteps(steps: readonly Step[]): EvenlyStep[] {
  return steps.flatMap((step) => {
    if (step.kind === 'evenly') return [step];
    return 'body' in step ? evenlySteps(step.body) : [];
  });
}

function edgeStitches(fabric: Fabric, rows: readonly number[], where: number): EdgeStitch[] {
  const found: EdgeStitch[] = [];
  for (const row of rows) {
    const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
    for (let i = first; i < end; i += 1) {
      const target = targets(fabric, i)[0];
      if (fabric.where[i] !== where || target === undefined) continue;
      found.push({ place: where === INTO.rowEnd ? rowWithEnd(fabric, target) : target });
    }
  }
  return found;
}

/** The row a stitch ends; a chain skipped from the foundation that counts as a stitch ends the row above it. */
function rowWithEnd(fabric: Fabric, target: number): number {
  const row = fabric.row[target] ?? 0;
  return fabric.rows[row]?.unit === null ? row + 1 : row;
}

/** Stitches in each place in the order they are met, 0 for a place passed over, also at the ends of a side. */
function spreadOf(stitches: readonly EdgeStitch[], fabric: Fabric, edge: EvenlyStep['edge']): number[] {
  const [first, last] = [stitches[0], stitches.at(-1)];
  if (first === undefined || last === undefined) return [];
  const step = last.place >= first.place ? 1 : -1;
  const [from, to] =
    edge === 'row ends' ? sideRows(fabric, first.place, last.place, step) : [first.place, last.place];
  const spread: number[] = Array.from({ length: Math.abs(to - from) + 1 }, () => 0);
  for (const { place } of stitches) {
    const index = Math.abs(place - from);
    spread[index] = (spread[index] ?? 0) + 1;
  }
  return spread;
}

/** The whole side that the rows from `first` to `last` lie on: every row of their part that can have an end. */
function sideRows(fabric: Fabric, first: number, last: number, step: 1 | -1): [number, number] {
  const part = fabric.rows[first]?.part;
  const hasEnd = (index: number): boolean => {
    const row = fabric.rows[index];
    return (
      row !== undefined && row.part === part && row.unit === 'row' && row.closing === 'flat' && !row.edging
    );
  };
  let [from, to] = [first, last];
  while (hasEnd(from - step)) from -= step;
  while (hasEnd(to + step)) to += step;
  return [from, to];
}
