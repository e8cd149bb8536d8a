/** A step of the work in, one thing it says of its stitches out. */

import type { Place, What, WorkStep } from '../notation/tree.ts';
import { stitchById } from '../stitches/table.ts';
import { LOOPS } from './make-stitch.ts';
import type { Worker } from './worker.ts';

/** A row end named while the work is elsewhere: the side comes next. */
export function goesToRowEnds(worker: Worker, place: Place): boolean {
  return whatOf(place).kind === 'row-end' && worker.sites?.[0]?.kind !== 'row end';
}

export function whatOf(place: Place | null): What {
  return place !== null && 'what' in place ? place.what : { kind: 'st' };
}

export function loopOf(worker: Worker, step: WorkStep): number {
  return LOOPS[step.loop === 'both' ? worker.rowLoop : step.loop];
}

export function legsOf(step: WorkStep): number {
  return step.stitch.kind === 'stitch' ? stitchById(step.stitch.id).uses : 1;
}
