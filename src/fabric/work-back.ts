/** Chains that a row makes on its way and works back along: `ch 4, sc in 2nd ch from hook, hdc in next ch, dc in next ch`. */

import type { Step } from '../notation/tree.ts';
import { addFlag, kindId } from './builder.ts';
import { FLAG, NONE } from './fabric.ts';
import { countOwed } from './find-site.ts';
import { chainLength, workChain } from './work-chain.ts';
import type { Worker } from './worker.ts';
import { stuck, valueFor } from './worker.ts';

/**
 * How many steps from `at` on are such a chain and the stitches back along it; 0 where none stands here. A chain closed
 * into a picot has no chains left to work into, and the first row goes along a chain of another sort.
 */
export function stepsBack(worker: Worker, steps: readonly Step[], at: number): number {
  const chain = steps[at];
  const turn = steps[at + 1];
  const { sites } = worker;
  if (chain?.kind !== 'chain' || turn?.kind !== 'work' || turn.place?.kind !== 'from-hook' || sites === null)
    return 0;
  const [first] = sites;
  if (!worker.rowBegun && first?.kind === 'chain' && first.space === NONE) return 0;
  const nth = valueFor(worker, turn.place.nth.values) ?? 0;
  if (nth < 2 || nth >= chainLength(worker, chain.n)) return 0;
  let end = at + 2;
  while (isAlongChain(steps[end])) end += 1;
  return end === at + 2 ? 0 : end - at;
}

function isAlongChain(step: Step | undefined): boolean {
  if (step?.kind === 'note') return true;
  if (step?.kind === 'skip') return step.what.kind === 'ch';
  if (step?.kind !== 'work' && step?.kind !== 'group') return false;
  const { place } = step;
  return place !== null && 'what' in place && place.kind !== 'same' && place.what.kind === 'ch';
}

/** Works them on the chain alone; the row below waits, and no chain of it may be left out. */
export function workBack(worker: Worker, [chain, ...back]: readonly Step[]): boolean {
  if (chain?.kind !== 'chain') return false;
  const { sites, next, last, lastWasSpace, limit, into, countedStart, skippedSpace, chainAssumed, builder } =
    worker;
  const first = builder.kind.length;
  worker.sites = null;
  worker.into = null;
  worker.limit = Number.POSITIVE_INFINITY;
  worker.rowBegun = false;
  const done = workChain(worker, chain, back) && worker.workSteps(worker, back) && wholeChain(worker, back);
  Object.assign(worker, {
    sites,
    next,
    last,
    lastWasSpace,
    limit,
    into,
    countedStart,
    skippedSpace,
    chainAssumed,
  });
  worker.rowBegun = true;
  // They are all worked or stood up on: none is a space of the row.
  for (let i = first; i < builder.kind.length && kindId(builder, i) === 'ch'; i += 1) {
    builder.countsAs[i] = NONE;
    addFlag(builder, i, FLAG.turningChain);
  }
  return done;
}

function wholeChain(worker: Worker, back: readonly Step[]): boolean {
  const { sites, next } = worker;
  const count = countOwed(sites ?? [], next, sites?.length ?? 0);
  const span = back[back.length - 1]?.span;
  if (count === 0 || span === undefined) return true;
  return stuck(worker, { kind: 'passed over', count, wanted: 'st below the ch', span });
}
