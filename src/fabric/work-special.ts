/** Special stitches that do not simply go into one place: decreases by another name, and picots that stand on the last stitch. */

import type { Step, WorkStep } from '../notation/tree.ts';
import { stitchById } from '../stitches/table.ts';
import type { Builder } from './builder.ts';
import { closeGroup, kindId, openGroup } from './builder.ts';
import { FLAG, NONE } from './fabric.ts';
import { passPlace } from './find-site.ts';
import { within } from './ledger.ts';
import { makeInto } from './make-stitch.ts';
import { eachGoesOn, howMany } from './place-sites.ts';
import type { Site } from './site.ts';
import { plainSite } from './site.ts';
import { plainName } from './special-name.ts';
import type { SpecialWork, Worker } from './worker.ts';
import { valueFor } from './worker.ts';

/** The one decrease a special stitch is another name for, such as `dec: sc2tog`; null for any other. */
function decreaseOf(special: SpecialWork): WorkStep | null {
  const [only, more] = special.steps;
  if (only === undefined || more !== undefined || only.kind !== 'work' || only.stitch.kind !== 'stitch')
    return null;
  const own = only.place === null || only.place.kind === 'next';
  return own && stitchById(only.stitch.id).uses > 1 ? only : null;
}

/**
 * Works `dec`, `dec over next 4 sts` or `dec around` where that is a decrease's other name: each over places of its
 * own. Null when it is something else, or is put into one place, as a cluster is.
 */
export function workAsDecrease(
  worker: Worker,
  step: WorkStep,
  workNext: (step: WorkStep) => boolean,
): boolean | null {
  if (step.stitch.kind !== 'special' || worker.into !== null) return null;
  const special = worker.specials.get(step.stitch.name);
  const decrease = special === undefined ? null : decreaseOf(special);
  if (special === undefined || decrease === null || decrease.stitch.kind !== 'stitch') return null;
  const legs = stitchById(decrease.stitch.id).uses;
  const { place } = step;
  const one = (): boolean => {
    const before = worker.group;
    worker.group = openGroup(worker.builder, special.name);
    const opened = worker.group;
    const done = workNext({ ...decrease, place: place ?? decrease.place, times: null });
    closeGroup(worker.builder, opened);
    worker.group = before;
    return done;
  };
  if (place !== null && place.kind === 'each') {
    while (eachGoesOn(worker, place.what, place.stop)) if (!one()) return false;
    return true;
  }
  const times = step.times === null ? 1 : (valueFor(worker, step.times.values) ?? 0);
  const places = place === null ? times * legs : place.kind === 'next' ? howMany(worker, place.n) : 1;
  if (places < legs || places % legs !== 0) return null;
  for (let n = 0; n < places / legs; n += 1) if (!one()) return false;
  return true;
}

/**
 * Works a special stitch that moves along the row by itself: crossed stitches, a spike that covers the next stitch, a
 * first block begun on chains of its own. `over next 2 sts` says how many places it takes, which its steps show.
 */
export function workAlongRow(worker: Worker, step: WorkStep): boolean | null {
  if (step.stitch.kind !== 'special' || worker.into !== null) return null;
  const special = worker.specials.get(step.stitch.name);
  const own = step.place === null || step.place.kind === 'next';
  if (special === undefined || !own) return null;
  if (standsOnOwnChain(special)) return workOwnChain(worker, special);
  const begins = worker.sites === null && special.steps[0]?.kind === 'chain';
  if (!begins && !special.steps.some(movesAlong)) return null;
  const times = step.times === null ? 1 : (valueFor(worker, step.times.values) ?? 0);
  for (let n = 0; n < times; n += 1) {
    const { group } = worker;
    const opened = openGroup(worker.builder, special.name);
    worker.group = opened;
    const done = within(worker, () => worker.workSteps(worker, special.steps));
    closeGroup(worker.builder, opened);
    worker.group = group;
    if (!done) return false;
  }
  return true;
}

/** `ch 6, dc in 4th ch from hook, dc in next 2 ch`: a block that is worked into chains it makes itself. */
function standsOnOwnChain({ steps }: SpecialWork): boolean {
  const [first, second, third] = steps;
  return (
    first?.kind === 'chain' &&
    second?.kind === 'work' &&
    second.place?.kind === 'from-hook' &&
    third?.kind === 'work'
  );
}

/** Works such a block: its chains are its foundation, and those it leaves unworked a space. The row below waits. */
function workOwnChain(worker: Worker, special: SpecialWork): boolean {
  const { sites, next, last, group, builder, chainAssumed } = worker;
  const first = builder.kind.length;
  const opened = openGroup(builder, special.name);
  worker.group = opened;
  worker.inSpecial = true;
  worker.sites = null;
  const done = within(worker, () => worker.workSteps(worker, special.steps));
  closeGroup(builder, opened);
  worker.group = group;
  worker.inSpecial = false;
  worker.countedStart = NONE;
  // Its skipped chains are what the block is made of, not a turning chain that may or may not count.
  worker.chainAssumed = chainAssumed;
  const end = builder.kind.length;
  const worked = new Set(builder.into.slice(builder.intoStart[first] ?? builder.into.length));
  for (let i = first; i < end && kindId(builder, i) === 'ch'; i += 1) {
    builder.countsAs[i] = NONE;
    // The chains at the foot are used up; the others stand as a space.
    builder.flags[i] = worked.has(i) ? FLAG.turningChain : 0;
  }
  worker.sites = sites ?? [];
  worker.next = sites === null ? 0 : next;
  worker.last = last;
  return done;
}

/**
 * `sl st in next ch-2 sp, beg cl`: what begins a round and is described as worked into the same place goes where the
 * slip stitches came to. Null for anything else.
 */
export function whereItBegins(worker: Worker, { stitch }: WorkStep): Site | null {
  if (stitch.kind !== 'special' || plainName(stitch.name) === stitch.name) return null;
  if (!worker.travelled || worker.rowBegun || worker.last !== 0) return null;
  const steps = worker.specials.get(stitch.name)?.steps ?? [];
  const placed = steps.find((step) => 'place' in step && step.place !== null);
  const same = placed !== undefined && 'place' in placed && placed.place?.kind === 'same';
  const site = same ? worker.sites?.[0] : undefined;
  if (site !== undefined) passPlace(worker, 0);
  return site ?? null;
}

function movesAlong(step: Step): boolean {
  if (step.kind === 'skip' || step.kind === 'square') return true;
  if (step.kind !== 'work' || step.place === null) return false;
  const { place } = step;
  return place.kind === 'below' || place.kind === 'passed' || place.kind === 'gap';
}

/** Works a special stitch that goes into nothing below, such as a picot: it stands on the stitch before it. */
export function workStanding(worker: Worker, step: WorkStep): boolean | null {
  if (step.stitch.kind !== 'special' || step.place !== null) return null;
  const special = worker.specials.get(step.stitch.name);
  if (special === undefined || !special.steps.every(standsByItself)) return null;
  const site = worker.into ?? worker.sites?.[Math.max(0, worker.last)];
  if (site === undefined) return null;
  const times = step.times === null ? 1 : (valueFor(worker, step.times.values) ?? 0);
  for (let n = 0; n < times; n += 1)
    if (!makeInto(worker, special.steps, site, special.name, worker.workSteps)) return false;
  return true;
}

function standsByItself(step: Step): boolean {
  return (
    step.kind === 'chain' ||
    step.kind === 'note' ||
    (step.kind === 'work' && (step.place?.kind === 'from-hook' || step.place?.kind === 'last-made'))
  );
}

/** The nth chain from the hook among those just made in this row; null when so many were not. */
export function chainJustMade(worker: Worker, nth: number): Site | null {
  const { builder } = worker;
  if (!worker.rowBegun && worker.into === null) return null;
  return nth >= 1 && trailingChains(builder, worker.rowFirst) >= nth
    ? plainSite('chain', builder.kind.length - nth, 'ch')
    : null;
}

function trailingChains(builder: Builder, rowFirst: number): number {
  let chains = 0;
  for (let i = builder.kind.length - 1; i >= rowFirst && kindId(builder, i) === 'ch'; i -= 1) chains += 1;
  return chains;
}
