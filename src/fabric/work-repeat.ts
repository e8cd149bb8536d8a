/** Repeats: a number of times, to the end with room for what follows, or up to a place. */

import { describeWhat } from '../notation/describe-what.ts';
import type { BracketStep, RepeatStep, Step, Stop } from '../notation/tree.ts';
import { NONE } from './fabric.ts';
import { countOwed, countSpaces, reach } from './find-site.ts';
import { inPass } from './ledger.ts';
import type { WorkSteps } from './make-stitch.ts';
import type { Site } from './site.ts';
import { limitOf } from './stop-limit.ts';
import type { Trouble, UpTo } from './trouble.ts';
import type { Mark, Worker } from './worker.ts';
import { markWorker, restore, stuck, valueFor } from './worker.ts';

/**
 * Works a repeat from an asterisk. `following` are the steps behind it when it has to leave room for them, which are
 * then worked too; null otherwise.
 */
export function workRepeat(
  worker: Worker,
  step: RepeatStep | BracketStep,
  following: readonly Step[] | null,
  work: WorkSteps,
): boolean {
  const stop: Stop = step.stop;
  switch (stop.kind) {
    case 'times': {
      const written = valueFor(worker, stop.n.values) ?? 0;
      if (step.kind === 'bracket') return passes(worker, step, written, work);
      if (stop.more) return passes(worker, step, written + 1, work);
      return following === null
        ? passes(worker, step, written, work)
        : twoSenses(worker, step, written, following, work);
    }
    case 'end':
      if (following === null) return toLimit(worker, step, work);
      return step.kind === 'repeat' && step.endsWith !== undefined && endsInWork(step.body)
        ? endingWith(worker, step, following, work)
        : toEnd(worker, step, following, work);
    case 'leaving':
    case 'before':
      return toLimit(worker, step, work);
  }
}

export const workBracket: typeof workRepeat = workRepeat;

/** A number of passes; the last one ends at `**` where the text says so. */
function passes(worker: Worker, step: RepeatStep | BracketStep, n: number, work: WorkSteps): boolean {
  for (let pass = 0; pass < n; pass += 1) {
    const body = pass === n - 1 ? lastBody(step) : step.body;
    if (!inPass(worker, step, pass, false, () => work(worker, body))) return false;
  }
  return true;
}

function lastBody(step: RepeatStep | BracketStep): readonly Step[] {
  return step.kind === 'repeat' && step.lastPassEnds !== null
    ? step.body.slice(0, step.lastPassEnds)
    : step.body;
}

/** "rep from * 5 times" means five more passes to some and five in all to others: whichever makes the row come out. */
function twoSenses(
  worker: Worker,
  step: RepeatStep,
  written: number,
  following: readonly Step[],
  work: WorkSteps,
): boolean {
  const before = markWorker(worker);
  const tries = [written + 1, written].map((n) => {
    restore(worker, before);
    return { n, fits: passes(worker, step, n, work) && work(worker, following) && worker.fits() };
  });
  const fitting = tries.filter(({ fits }) => fits);
  restore(worker, before);
  const [only] = fitting;
  worker.wavered = true;
  if (fitting.length === 1 && only !== undefined)
    return passes(worker, step, only.n, work) && work(worker, following);
  return stuck(worker, {
    kind: 'two senses',
    times: written,
    fits: fitting.length === 0 ? 'neither' : 'both',
    span: step.stop.span,
  });
}

/**
 * `ending last rep with hdc in last st`: the last pass without its last step, then what follows. `ending with …` is
 * taken to come after a whole pass where that uses the row up, and as a changed last pass where only that does.
 */
function endingWith(worker: Worker, step: RepeatStep, following: readonly Step[], work: WorkSteps): boolean {
  const before = markWorker(worker);
  const short: RepeatStep = { ...step, lastPassEnds: step.body.length - 1 };
  const tries = step.endsWith === 'row' ? [step, short] : [short, step];
  for (const one of tries) {
    restore(worker, before);
    if (toEnd(worker, one, following, work) && usedUp(worker) && worker.fits()) {
      if (one !== tries[0]) worker.wavered = true;
      return true;
    }
  }
  restore(worker, before);
  return toEnd(worker, tries[0] ?? step, following, work);
}

/** Only a stitch at the end of the body can be the one that the ending stands for. */
function endsInWork(body: readonly Step[]): boolean {
  const last = body[body.length - 1];
  return body.length > 1 && last !== undefined && (last.kind === 'work' || last.kind === 'group');
}

/** `sc in last st` after a repeat is another stitch: not the one that the last pass went into. */
function landsAnew(worker: Worker, end: Mark, following: readonly Step[]): boolean {
  const first = following.find(worksSomething);
  const place = first !== undefined && 'place' in first ? first.place : null;
  if (place?.kind !== 'last' || (place.what.kind !== 'st' && place.what.kind !== 'stitch')) return true;
  return (worker.below ?? worker).next > end.next;
}

/**
 * To the end of the row, leaving room for what follows: as many passes as can be worked, then as many fewer as it
 * takes for the rest to use the row up exactly.
 */
function toEnd(
  worker: Worker,
  step: RepeatStep | BracketStep,
  following: readonly Step[],
  work: WorkSteps,
): boolean {
  const start = markWorker(worker);
  const trail = trailOf(worker, step, work);
  if (trail === null) return false;
  const { ends, failed } = trail;
  const usesUp = following.some(worksSomething);
  const comesOut = (): boolean => work(worker, following) && !(trail.midway && owedLeft(worker));
  let only = -1;
  for (let i = ends.length - 1; i >= 0; i -= 1) {
    const end = ends[i];
    if (end === undefined) break;
    restore(worker, end);
    const done = comesOut() && landsAnew(worker, end, following);
    if (done && worker.fits()) return true;
    // It uses the row up and does not make what is stated: then the count is what is wrong.
    if (done && only < 0 && usedUp(worker)) only = i;
    // Without anything more to work, fewer passes only leave more over.
    if (!usesUp) break;
    if (i < ends.length - MOST_PASSES_BACK) break;
  }
  if (only >= 0) {
    again(worker, step, start, only + 1, work);
    return comesOut();
  }
  const last = again(worker, step, start, ends.length, work);
  const comesTo = failed === null || leftOver(worker) === 0;
  if (comesTo && comesOut() && landsAnew(worker, last, following)) return true;
  // The first pass itself cannot be worked: what is wrong in it says more than that it does not come out.
  const wrong = worker.trouble;
  if (failed !== null && (!isShort(failed) || ends.length === 0)) {
    restore(worker, last);
    return stuck(worker, failed);
  }
  if (comesTo && wrong !== null && !isShort(wrong)) {
    restore(worker, last);
    return stuck(worker, wrong);
  }
  const trouble = unevenness(worker, step, { start, trail, following, upTo: null }, work);
  again(worker, step, start, ends.length, work);
  return stuck(worker, trouble);
}

/** Back to where the repeat begins and through some of its passes: what has been gone back over is no longer there. */
function again(
  worker: Worker,
  step: RepeatStep | BracketStep,
  start: Mark,
  n: number,
  work: WorkSteps,
): Mark {
  restore(worker, start);
  passes(worker, step, n, work);
  return markWorker(worker);
}

/** Fewer places are left than are asked for: how the passes come out says why. */
function isShort({ kind }: Trouble): boolean {
  return kind === 'used up' || kind === 'too few';
}

/** What follows a repeat takes few passes' room; further back nothing new can fit. */
const MOST_PASSES_BACK = 2_000;

/** Up to a limit, which the passes must reach exactly. */
function toLimit(worker: Worker, step: RepeatStep | BracketStep, work: WorkSteps): boolean {
  const outer = worker.limit;
  const limit = limitOf(worker, step.stop);
  const start = markWorker(worker);
  const uneven = (trail: Trail): Trouble =>
    unevenness(worker, step, { start, trail, following: [], upTo: upToOf(worker, step.stop) }, work);
  if (limit < 0) return stuck(worker, uneven({ ends: [], failed: null, midway: false }));
  worker.limit = Math.min(outer, limit);
  // A narrow size may leave the repeat no room at all: it is then not worked.
  if (nothingLeft(worker) || noSpaceLeft(worker, step)) {
    worker.limit = outer;
    return true;
  }
  const trail = trailOf(worker, step, work);
  if (trail === null) {
    worker.limit = outer;
    return false;
  }
  const { ends, failed, midway } = trail;
  const last = ends[ends.length - 1] ?? start;
  restore(worker, last);
  const over = midway ? countOwed(worker.sites ?? [], worker.next, reach(worker)) : leftOver(worker);
  worker.limit = outer;
  if (over === 0) return true;
  if (failed !== null && !isShort(failed)) return stuck(worker, failed);
  worker.limit = Math.min(outer, limit);
  const trouble = uneven(trail);
  worker.limit = outer;
  return stuck(worker, trouble);
}

function upToOf(worker: Worker, stop: Stop): UpTo | null {
  if (stop.kind === 'leaving') return { kind: 'last', n: valueFor(worker, stop.n.values) ?? 0 };
  return stop.kind === 'before' ? { kind: 'next', what: describeWhat(stop.what, worker.terms) } : null;
}

/** How the passes of a repeat went. */
interface Trail {
  /** The state after each pass that could be finished. */
  readonly ends: readonly Mark[];
  /** Why the next could not. */
  readonly failed: Trouble | null;
  /** The one that could not be finished had worked into a stitch already: it wanted what is left over. */
  readonly midway: boolean;
}

/**
 * Works passes until one cannot be finished: the state after each pass that could, and why the next could not.
 * With `**` a pass may end there, so the state at each `**` is an end too, and only those are.
 */
function trailOf(worker: Worker, step: RepeatStep | BracketStep, work: WorkSteps): Trail | null {
  const ends: Mark[] = [];
  const half = step.kind === 'repeat' ? step.lastPassEnds : null;
  for (;;) {
    const before = markWorker(worker);
    const at = progress(worker);
    if (ends.length > 0 && nothingLeft(worker)) return { ends, failed: null, midway: false };
    const first = half === null ? step.body : step.body.slice(0, half);
    if (!inPass(worker, step, ends.length, false, () => work(worker, first))) {
      const failed = worker.trouble;
      const midway = stoppedMidway(worker, before);
      restore(worker, before);
      return { ends, failed, midway };
    }
    if (progress(worker) === at || closesAnew(worker, before, step.body)) {
      restore(worker, before);
      stuck(worker, { kind: 'endless', span: step.span });
      return null;
    }
    const end = markWorker(worker);
    ends.push(end);
    if (half === null) continue;
    if (!inPass(worker, step, ends.length - 1, true, () => work(worker, step.body.slice(half)))) {
      const failed = worker.trouble;
      const midway = stoppedMidway(worker, end);
      restore(worker, end);
      return { ends, failed, midway };
    }
  }
}

/** Once the round is closed its own top is what is worked into: a pass that closes it again has ever more of that before it. */
function closesAnew({ joined, sites }: Worker, before: Mark, body: readonly Step[]): boolean {
  return before.joined && joined && sites !== before.sites && body.some(({ kind }) => kind === 'join');
}

function stoppedMidway(worker: Worker, before: Mark): boolean {
  return worker.last !== before.last && worker.sites?.[worker.last]?.space === NONE;
}

function usedUp(worker: Worker): boolean {
  const { sites, next, lastWasSpace } = worker.below ?? worker;
  return sites === null || unworked(sites, next, sites.length, lastWasSpace) === 0;
}

/** Whether stitches of the row below are left behind the last place worked. */
function owedLeft(worker: Worker): boolean {
  const { sites, next } = worker.below ?? worker;
  return sites !== null && countOwed(sites, next, sites.length) > 0;
}

/** How far along the row below the work has come. */
function progress(worker: Worker): string {
  return `${worker.next} ${worker.skippedUsed} ${worker.sites?.length ?? 0}`;
}

/** From space to space, with none left before the last one: the stitches between are passed as ever. */
function noSpaceLeft(worker: Worker, { body }: RepeatStep | BracketStep): boolean {
  const first = body.find((step) => step.kind === 'work' || step.kind === 'group');
  const what = first?.place != null && 'what' in first.place ? first.place.what : null;
  const { sites, next, lastWasSpace } = worker;
  return what?.kind === 'space' && lastWasSpace && countSpaces(sites ?? [], next, reach(worker)) === 0;
}

function nothingLeft(worker: Worker): boolean {
  return worker.sites !== null && worker.next >= reach(worker);
}

/** Places that should have been worked and were not: stitches after a stitch, spaces in any case. */
export function leftOver(worker: Worker): number {
  const { sites } = worker;
  if (sites === null) return 0;
  return unworked(sites, worker.next, reach(worker), worker.lastWasSpace);
}

export function unworked(sites: readonly Site[], next: number, end: number, lastWasSpace: boolean): number {
  if (sites[0]?.kind === 'ring') return 0;
  return lastWasSpace ? countSpaces(sites, next, end) : countOwed(sites, next, end);
}

interface Uneven {
  readonly start: Mark;
  readonly trail: Trail;
  readonly following: readonly Step[];
  readonly upTo: UpTo | null;
}

/** What the passes use, what follows them, and what there is, so that a maker can see where it goes wrong. */
function unevenness(worker: Worker, step: RepeatStep | BracketStep, found: Uneven, work: WorkSteps): Trouble {
  const { start, trail, following, upTo } = found;
  const { ends } = trail;
  const sites = start.sites ?? [];
  const first = ends[0];
  const bySpaces = first?.lastWasSpace === true || (first === undefined && sites[start.next]?.space !== NONE);
  const spaces = bySpaces && !trail.midway;
  const count = spaces ? countSpaces : countOwed;
  const firstEnd = first?.next ?? start.next;
  const second = ends[1];
  const short = step.kind === 'repeat' && step.lastPassEnds !== null;
  const uses =
    second !== undefined
      ? count(sites, firstEnd, second.next)
      : short
        ? 0
        : count(sites, start.next, firstEnd);
  const available = count(sites, start.next, Math.min(sites.length, start.limit, worker.limit));
  let passes = ends.length;
  let after = 0;
  // As many passes as leave room for what follows them.
  for (let i = ends.length - 1; i >= 0; i -= 1) {
    const end = ends[i];
    if (end === undefined) break;
    restore(worker, end);
    const done = work(worker, following);
    if (done && !landsAnew(worker, end, following)) continue;
    const { trouble } = worker;
    const passedOver = trouble?.kind === 'passed over' && !spaces ? trouble.count : null;
    if (!done && passedOver === null) continue;
    passes = i + 1;
    const state = worker.below ?? worker;
    if (passedOver !== null) after = available - count(sites, start.next, end.next) - passedOver;
    else if (state.sites === start.sites) after = count(sites, end.next, state.next);
    break;
  }
  const end = ends[passes - 1]?.next ?? start.next;
  return {
    kind: 'uneven',
    uses,
    passes,
    used: count(sites, start.next, end),
    after,
    available,
    before: count(sites, 0, start.next),
    below: count(sites, 0, sites.length),
    ofChains: sites[0]?.kind === 'chain' && sites[0].space === NONE,
    upTo,
    unit: spaces ? 'space' : 'stitch',
    span: step.span,
  };
}

/** Whether a step takes up places of the row below. */
function worksSomething(step: Step): boolean {
  return (
    step.kind === 'work' ||
    step.kind === 'group' ||
    step.kind === 'skip' ||
    step.kind === 'repeat' ||
    step.kind === 'bracket'
  );
}
