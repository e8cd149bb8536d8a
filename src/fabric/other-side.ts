/** Rows told by the side before them, `Work the other side in the same way`, made the rows that side took. */

import type { Line } from '../notation/line.ts';
import type { Place, RepeatRowsStep, Step } from '../notation/tree.ts';

/** Null where no row before it goes along a side of the piece. */
export function otherSide(rep: RepeatRowsStep, history: readonly Line[]): RepeatRowsStep | null {
  const begun = history.findLastIndex(({ steps, readable }) => readable && steps.some(goesAlong));
  return begun < 0 ? null : { ...rep, last: history.length - begun };
}

function goesAlong(step: Step): boolean {
  if (step.kind === 'along' || step.kind === 'evenly') return step.edge === 'row ends';
  if ('body' in step && step.body.some(goesAlong)) return true;
  return 'place' in step && step.place !== null && isRowEnd(step.place);
}

function isRowEnd(place: Place): boolean {
  return 'what' in place && place.what.kind === 'row-end';
}
