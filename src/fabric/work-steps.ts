/** Steps of a row, worked in order on the worker's state; false when one could not be, with the trouble noted. */

import type { GroupStep, Place, Step, What, WorkStep } from '../notation/tree.ts';
import { isOnlyOne } from './begun-special.ts';
import { MOST_IN_PLACE } from './builder.ts';
import { cornerNext } from './corner-next.ts';
import { findFirst, passPlace, standAt } from './find-site.ts';
import { gapGoesOn, gapSite } from './gap-site.ts';
import { noteStep } from './ledger.ts';
import { makeInto, makeStitch, markCorner } from './make-stitch.ts';
import { markMade } from './mark-made.ts';
import { noteLayout } from './note-layout.ts';
import { noteMarker } from './note-marker.ts';
import { noteChains } from './notes-chains.ts';
import { eachGoesOn, howMany, nextSite, singleSite } from './place-sites.ts';
import { fastensDown } from './row-edge.ts';
import type { Site } from './site.ts';
import { legsOf, loopOf, whatOf } from './step-facts.ts';
import { hasLast, leavesEnough } from './too-few.ts';
import { endsAsSaid, limitOfEach } from './turning-space.ts';
import { noteUse } from './used-again.ts';
import { stepsBack, workBack } from './work-back.ts';
import { siteBelow } from './work-below.ts';
import { firstStitch, magicRing, skippedChains, workChain } from './work-chain.ts';
import { comesToCorner, goTo, startOfEdging, workAlong, workEvenly } from './work-edge.ts';
import { workElsewhere } from './work-elsewhere.ts';
import { workFromNothing } from './work-from-nothing.ts';
import { fastensOn, workJoin, workTravel } from './work-join.ts';
import { workBracket, workRepeat } from './work-repeat.ts';
import { workShaped } from './work-shaped.ts';
import { skipTo, workSkip } from './work-skip.ts';
import { chainJustMade, whereItBegins, workAlongRow, workAsDecrease, workStanding } from './work-special.ts';
import { asSquare, workSquare } from './work-square.ts';
import { workYarn } from './work-yarn.ts';
import type { Worker } from './worker.ts';
import { stuck, valueFor } from './worker.ts';

/** Steps and places worked in one size before it is called endless. */
const MOST_EFFORT = 3_000_000;

export function workSteps(worker: Worker, steps: readonly Step[]): boolean {
  for (let i = 0; i < steps.length; i += 1) {
    const step = steps[i];
    if (step === undefined) break;
    worker.effort += 1;
    if (worker.effort > MOST_EFFORT) return stuck(worker, { kind: 'too many', span: step.span });
    noteStep(worker, step);
    const back = step.kind === 'chain' ? stepsBack(worker, steps, i) : 0;
    if (back > 0) {
      if (!workBack(worker, steps.slice(i, i + back))) return false;
      i += back - 1;
      continue;
    }
    const square = worker.asSquares ? asSquare(worker, step, steps[i + 1]) : null;
    if (square !== null) {
      if (!workSquare(worker, square)) return false;
      i += 1;
      continue;
    }
    // A repeat to the end has to leave room for what follows it, so it works the rest of the list itself.
    if (step.kind === 'repeat' || step.kind === 'bracket') {
      const following = steps.slice(i + 1);
      const searches =
        step.stop.kind === 'end' || (step.stop.kind === 'times' && step.kind === 'repeat' && !step.stop.more);
      if (searches)
        return (step.kind === 'repeat' ? workRepeat : workBracket)(worker, step, following, workSteps);
      const done = (step.kind === 'repeat' ? workRepeat : workBracket)(worker, step, null, workSteps);
      if (!done) return false;
      continue;
    }
    const outer = worker.limit;
    const first = worker.builder.kind.length;
    worker.limit = Math.min(outer, limitOfEach(worker, step, steps[i + 1]));
    const done = workStep(worker, step, steps, i);
    worker.limit = outer;
    if (!done) return false;
    markMade(worker.builder, step, steps[i - 1], first);
  }
  return true;
}

function workStep(
  worker: Worker,
  step: Exclude<Step, { kind: 'repeat' | 'bracket' }>,
  steps: readonly Step[],
  i: number,
): boolean {
  switch (step.kind) {
    case 'work':
      return fastensOn(worker, step, steps[i + 1]) ?? workStitches(worker, step);
    case 'chain':
      return workChain(worker, step, steps.slice(i + 1));
    case 'skip':
      return workSkip(worker, step);
    case 'group':
      return workGroup(worker, step);
    case 'join':
      return workJoin(worker, step);
    case 'yarn':
      return workYarn(worker, step);
    case 'along':
      return workAlong(worker, step);
    case 'evenly':
      return workEvenly(worker, step);
    case 'loops':
      worker.rowLoop = step.loop;
      return true;
    case 'ring':
      if (worker.sites === null) magicRing(worker);
      return true;
    case 'square':
      return workSquare(worker, step);
    case 'leave':
      worker.leaves = true;
      worker.leavesSaid = step.n === undefined ? null : valueFor(worker, step.n.values);
      return true;
    // What a row does at its end, and whole rows, are seen to by the row; notes work nothing.
    case 'turn':
    case 'fasten off':
    case 'repeat rows':
    case 'corners':
    case 'shape':
      return true;
    case 'note':
      noteMarker(worker, step.text);
      noteLayout(worker, step.text);
      noteChains(worker, step.text);
      return step.endsOn === undefined || endsAsSaid(worker, step.endsOn, step.span);
  }
}

/** `sc in next 3 sts`, `3 dc in ring`, `sc2tog`, `shell in next ch`. */
function workStitches(worker: Worker, step: WorkStep): boolean {
  const { place } = step;
  const slips = step.stitch.kind === 'stitch' && step.stitch.id === 'sl-st';
  if (slips && (worker.joined || worker.travel.has(step))) return workTravel(worker, step);
  if (worker.joined && worker.into === null) return stuck(worker, { kind: 'after join', span: step.span });
  const bySpecial =
    workAlongRow(worker, step) ??
    workStanding(worker, step) ??
    workAsDecrease(worker, step, (one) => workNext(worker, one, 1, whatOf(one.place)));
  if (bySpecial !== null) return bySpecial;
  const times = step.times === null ? 1 : (valueFor(worker, step.times.values) ?? 0);
  const own = workFromNothing(worker, step, times);
  if (own !== null) return own;
  if (place === null) {
    const here = worker.into ?? whereItBegins(worker, step);
    if (here !== null) return repeatAt(worker, step, times, here);
    for (let n = 0; n < times; n += 1) if (!workNext(worker, step, 1, { kind: 'st' })) return false;
    return true;
  }
  if (!goTo(worker, place)) return false;
  switch (place.kind) {
    case 'next':
      return workNextPlaces(worker, step, times, place);
    case 'each':
      if (worker.sites === null) return stuck(worker, { kind: 'no foundation', span: place.span });
      if (!leavesEnough(worker, place.stop)) return false;
      if (step.shaping !== undefined) return workShaped(worker, step, step.shaping, loopOf(worker, step));
      for (;;) {
        const corner = cornerNext(worker, step, place);
        if (corner !== null) {
          const first = worker.builder.kind.length;
          if (!makeInto(worker, corner.work.body, corner.site, null, workSteps)) return false;
          if (corner.site.corner || corner.work.what.kind === 'corner') markCorner(worker, first);
          continue;
        }
        if (!eachGoesOn(worker, place.what, place.stop)) break;
        worker.effort += 1;
        if (!workNext(worker, step, times, place.what)) return false;
        for (let n = 1; n < (place.every ?? 1); n += 1) {
          if (eachGoesOn(worker, place.what, place.stop)) skipTo(worker, worker.next);
          // Every other of an odd number is plain; every third of seven may begin at any of them.
          else if (place.every !== 2)
            return stuck(worker, { kind: 'used up', wanted: 'st', span: place.span });
        }
      }
      return true;
    case 'gap': {
      if (place.each !== undefined) {
        while (gapGoesOn(worker, place, place.each)) {
          const between = gapSite(worker, place);
          if (between === null || !repeatAt(worker, step, times, between)) return false;
        }
        return true;
      }
      const site = gapSite(worker, place);
      return site !== null && repeatAt(worker, step, times, site);
    }
    case 'first':
    case 'last':
      if (place.kind === 'last' && place.n === null && isOnlyOne(worker, place.what))
        return workNext(worker, step, times, place.what);
      return workEnds(worker, step, times, place);
    case 'below': {
      for (let n = 0; n < times * howMany(worker, place.n); n += 1) {
        const site = siteBelow(worker, place);
        if (site === null || !repeatAt(worker, step, 1, site)) return false;
      }
      return true;
    }
    case 'passed': {
      for (let n = 0; n < howMany(worker, place.n ?? null); n += 1)
        if (!workSingle(worker, step, times, place)) return false;
      return true;
    }
    case 'ring':
      if (place.magic && worker.sites === null) magicRing(worker);
      return workSingle(worker, step, times, place);
    case 'from-hook': {
      const nth = howMany(worker, place.nth);
      const made = chainJustMade(worker, nth);
      if (made !== null) return repeatAt(worker, step, times, made);
      const site = singleSite(worker, place);
      if (site === null) return false;
      skippedChains(worker, nth, firstStitch(worker, [step]) ?? 'sc', step.skipped, place.span);
      return repeatAt(worker, step, times, site);
    }
    default:
      return workSingle(worker, step, times, place);
  }
}

function workSingle(worker: Worker, step: WorkStep, times: number, place: Place): boolean {
  const start = place.kind === 'same' && place.asJoin && worker.into === null ? startOfEdging(worker) : null;
  if (start !== null) return repeatAt(worker, step, times, start);
  // Where the yarn was joined to an edge that is not worked here.
  if (place.kind === 'same' && worker.elsewhere && worker.sites?.length === 0)
    return workElsewhere(worker, {
      ...step,
      kind: 'evenly',
      n: { values: [times], span: step.span },
      edge: 'elsewhere',
    });
  if (place.kind === 'same' && worker.edging && !worker.rowBegun && worker.last < 0 && worker.into === null)
    worker.last = 0;
  const begins = place.kind === 'any' && worker.round && !worker.rowBegun;
  const site = singleSite(worker, place);
  // A standing stitch in any space: the round begins there.
  if (begins && site !== null) {
    standAt(worker, worker.sites ?? [], worker.last);
    passPlace(worker, 0);
  }
  const first = worker.builder.kind.length;
  if (site === null || !repeatAt(worker, step, times, site)) return false;
  if (place.kind === 'row-edge') fastensDown(worker);
  // Three in an end stitch turn the corner of an edging.
  if ((worker.edging && times === 3 && place.kind === 'same') || (site.corner && times >= 3))
    markCorner(worker, first);
  return true;
}

/** `in next 3 sts`, `over next 2 sts`, `in corner`. */
function workNextPlaces(
  worker: Worker,
  step: WorkStep,
  times: number,
  place: Extract<Place, { kind: 'next' }>,
): boolean {
  const legs = legsOf(step);
  const n = howMany(worker, place.n);
  if (legs > 1 && n > 1) {
    if (n % legs !== 0) {
      const stitch = step.stitch.kind === 'stitch' ? step.stitch.id : step.stitch.name;
      return stuck(worker, { kind: 'legs', stitch, legs, given: n, span: step.span });
    }
    for (let i = 0; i < n / legs; i += 1) if (!workNext(worker, step, times, place.what)) return false;
    return true;
  }
  const corner = place.what.kind === 'corner' || (place.what.kind === 'space' && place.what.corner);
  for (let i = 0; i < n; i += 1) {
    const what: What = place.what.kind === 'corner' && comesToCorner(worker) ? { kind: 'st' } : place.what;
    const site = nextSite(worker, what, place.span, place.here === true);
    if (site === null) return false;
    const first = worker.builder.kind.length;
    if (!repeatAt(worker, step, times, site)) return false;
    // Three in what was a corner make a corner again.
    if (corner || (site.corner && times >= 3)) markCorner(worker, first);
  }
  return true;
}

/** One stitch into the next place, or a decrease over as many as it has legs, `times` times there. */
function workNext(
  worker: Worker,
  step: WorkStep,
  times: number,
  what: Parameters<typeof nextSite>[1],
): boolean {
  const legs = legsOf(step);
  // "Each" begins where slip stitches have led to; "next" is the one after it.
  const here = step.place?.kind === 'each';
  if (legs <= 1 || step.stitch.kind !== 'stitch') {
    const site = nextSite(worker, what, step.place?.span ?? step.span, here);
    return site !== null && repeatAt(worker, step, times, site);
  }
  const sites: Site[] = [];
  for (let leg = 0; leg < legs; leg += 1) {
    const site = nextSite(worker, what, step.place?.span ?? step.span, here);
    if (site === null) return false;
    sites.push(site);
  }
  return makeStitch(worker, step.stitch.id, sites, loopOf(worker, step), step.span);
}

/** `in first st`, `in last 2 sts`: `last` may only name what comes next. */
function workEnds(
  worker: Worker,
  step: WorkStep,
  times: number,
  place: Extract<Place, { kind: 'first' | 'last' }>,
): boolean {
  const n = howMany(worker, place.n);
  if (place.kind === 'last' && n !== 1) {
    if (!hasLast(worker, n, place)) return false;
    for (let i = 0; i < n; i += legsOf(step)) if (!workNext(worker, step, times, place.what)) return false;
    return true;
  }
  const legs = legsOf(step);
  // `sc2tog over first 2 sts` is one stitch, and the row begins with it.
  if (place.kind === 'first' && legs > 1 && n === legs && worker.next === 0)
    return workNext(worker, step, times, place.what);
  const corner = worker.builder.kind.length;
  for (let i = 0; i < n; i += 1) {
    let site: Site | null;
    if (place.kind === 'first') {
      const index = findFirst(worker, place.what, i + 1, place.span);
      if (index < 0) return false;
      passPlace(worker, index);
      site = worker.sites?.[index] ?? null;
    } else site = singleSite(worker, place);
    if (site !== null) noteUse(worker, site, corner, place);
    if (site === null || !repeatAt(worker, step, times, site)) return false;
  }
  if (worker.edging && times === 3) markCorner(worker, corner);
  return true;
}

/** All of a stitch's repeats at one place. */
function repeatAt(worker: Worker, step: WorkStep, times: number, site: Site): boolean {
  if (times > MOST_IN_PLACE) return stuck(worker, { kind: 'crowded', n: times, span: step.span });
  for (let n = 0; n < times; n += 1) {
    if (step.stitch.kind === 'special') {
      const special = worker.specials.get(step.stitch.name);
      if (special === undefined || !makeInto(worker, special.steps, site, special.name, workSteps))
        return false;
    } else {
      const id = step.stitch.id;
      if (id === 'ch') continue;
      if (!makeStitch(worker, id, [site], loopOf(worker, step), step.span)) return false;
    }
  }
  return true;
}

function workGroup(worker: Worker, step: GroupStep): boolean {
  const { place } = step;
  if (place.kind === 'ring' && place.magic && worker.sites === null) magicRing(worker);
  if (worker.into !== null && place.kind === 'same')
    return makeInto(worker, step.body, worker.into, null, workSteps);
  const cornered =
    'what' in place && (place.what.kind === 'corner' || (place.what.kind === 'space' && place.what.corner));
  const into = (site: Site): boolean => {
    const first = worker.builder.kind.length;
    if (!makeInto(worker, step.body, site, null, workSteps)) return false;
    if (cornered || site.corner) markCorner(worker, first);
    return true;
  };
  if (place.kind === 'each') {
    if (worker.sites === null) return stuck(worker, { kind: 'no foundation', span: place.span });
    if (!leavesEnough(worker, place.stop)) return false;
    while (eachGoesOn(worker, place.what, place.stop)) {
      const site = nextSite(worker, place.what, place.span, true);
      if (site === null || !into(site)) return false;
    }
    return true;
  }
  const n = place.kind === 'next' ? howMany(worker, place.n) : 1;
  if (place.kind === 'from-hook' && chainJustMade(worker, howMany(worker, place.nth)) === null)
    skippedChains(
      worker,
      howMany(worker, place.nth),
      firstStitch(worker, step.body) ?? 'sc',
      step.skipped ?? null,
      place.span,
    );
  for (let i = 0; i < n; i += 1) {
    const site =
      place.kind === 'below'
        ? siteBelow(worker, place)
        : place.kind === 'gap'
          ? gapSite(worker, place)
          : singleSite(worker, place);
    if (site === null || !into(site)) return false;
  }
  return true;
}
