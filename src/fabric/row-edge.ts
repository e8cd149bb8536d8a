/** The stitch at one side of a row, and a fan fastened down there. */

import type { Place, Step } from '../notation/tree.ts';
import { addFlag, countedId, firstTarget } from './builder.ts';
import { FLAG, NONE } from './fabric.ts';
import { isA } from './find-site.ts';
import type { Site } from './site.ts';
import { footOf, plainSite } from './site.ts';
import { skippedUnder } from './work-below.ts';
import type { RowRange, Worker } from './worker.ts';
import { stuck } from './worker.ts';

/** The last stitch of a row so many below, at the side where the row in hand ends; null with the trouble noted. */
export function siteAtSide(
  worker: Worker,
  { back, said, span }: Extract<Place, { kind: 'row-edge' }>,
): Site | null {
  const row = worker.rowRanges[worker.row - back];
  if (row === undefined || !row.flat || row.first >= row.end || worker.row - back < worker.pieceFirst) {
    stuck(worker, { kind: 'used up', wanted: said, span });
    return null;
  }
  return { ...rowEnd(worker, row, worker.direction), kind: 'stitch' };
}

/**
 * The stitch that the row below passed without a word, right before what comes next there; the row ends with it and
 * leaves what lies over the fan. Null with the trouble noted where all were worked into.
 */
export function siteLeftOver(
  worker: Worker,
  { what, said, span }: Extract<Place, { kind: 'left-over' }>,
): Site | null {
  const { builder, sites, next, last } = worker;
  // The rest of a shell that was worked into is passed with it.
  const shell = sites?.[last]?.group ?? NONE;
  const over = sites
    ?.slice(next)
    .find(({ space, group }) => space === NONE && (group === NONE || group !== shell));
  const below = over === undefined ? NONE : firstTarget(builder, over.node);
  const free = skippedUnder(worker, worker.row - 2);
  const row = worker.rowRanges[worker.row - 2];
  const toward = row?.direction === worker.direction ? -1 : 1;
  // It stands in the same place as the one that is worked into beside it.
  const foot = below < 0 || row === undefined ? NONE : footOf(builder, below, row.first);
  const site = free.find((one) => below >= 0 && one.node === below + toward && one.foot === foot);
  if (site === undefined || site.special !== null || !isA(site, what)) {
    stuck(worker, { kind: 'used up', wanted: said, span });
    return null;
  }
  worker.leaves = true;
  return site;
}

/** The stitch made last only fastens a fan down: it is no place of the next row, though that may name it. */
export function fastensDown({ builder }: Worker): void {
  addFlag(builder, builder.kind.length - 1, FLAG.fastens);
}

/** The stitch at one side of a row: seen from the right side, a row worked to the left ends at the left. */
export function rowEnd(worker: Worker, row: RowRange, side: 'left' | 'right'): Site {
  const counted: number[] = row.countedStart >= 0 ? [row.countedStart] : [];
  for (let i = row.first; i < row.end; i += 1) if (countedId(worker.builder, i) !== null) counted.push(i);
  const node = row.direction === side ? counted[counted.length - 1] : counted[0];
  const id = node === undefined ? null : countedId(worker.builder, node);
  return plainSite('row end', node ?? row.first, id ?? 'ch');
}

/** Whether any of the steps goes back to a stitch that the row before it left. */
export function goesBackToLeft(steps: readonly Step[]): boolean {
  return steps.some(
    (step) =>
      ('place' in step && step.place?.kind === 'left-over') || ('body' in step && goesBackToLeft(step.body)),
  );
}
