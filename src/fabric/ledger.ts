/** Notes kept while a row is worked: where each of its steps begins, and each pass of its repeats. */

import type { Step } from '../notation/tree.ts';
import type { LedgerEntry, Worker } from './worker.ts';

/** Notes a step of the row, or of a repeat's first pass; what lies deeper is part of these. */
export function noteStep(worker: Worker, step: Step): void {
  if (worker.depth < 2) note(worker, step, worker.depth === 0 ? 'row' : 'first pass');
}

/** Works what a pass of a repeat works; `goesOn` for the second half of a pass that could have ended there. */
export function inPass(
  worker: Worker,
  step: Step,
  pass: number,
  goesOn: boolean,
  work: () => boolean,
): boolean {
  const { depth } = worker;
  if (depth === 0 && !goesOn) note(worker, step, 'pass');
  worker.depth = depth + (depth === 0 && pass === 0 ? 1 : 2);
  const done = work();
  worker.depth = depth;
  return done;
}

/** Works steps that are no steps of the row: those of a special stitch or of a bracket into one place. */
export function within(worker: Worker, work: () => boolean): boolean {
  const { depth } = worker;
  worker.depth = depth + 2;
  const done = work();
  worker.depth = depth;
  return done;
}

function note(worker: Worker, step: Step, of: LedgerEntry['of']): void {
  worker.ledger.push({
    step,
    of,
    first: worker.builder.kind.length,
    sites: worker.sites,
    next: worker.next,
    behindSpace: worker.lastWasSpace,
  });
}
