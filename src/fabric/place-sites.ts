/** The places a phrase names, as indices along the row below, each ready to be worked. */

import { describeWhat } from '../notation/describe-what.ts';
import type { Num } from '../notation/num.ts';
import { ordinal } from '../notation/ordinal.ts';
import type { Place, Stop, What } from '../notation/tree.ts';
import type { Span } from '../source/span.ts';
import { begunSpecial } from './begun-special.ts';
import { hasFlag, kindId } from './builder.ts';
import { describeSite } from './describe-site.ts';
import { FLAG, NONE } from './fabric.ts';
import {
  afterPlace,
  findFirst,
  findLast,
  findNext,
  isA,
  openRing,
  passChain,
  passPlace,
  reach,
} from './find-site.ts';
import { gapForSpace } from './gap-site.ts';
import { lastMade, siteOfGroup, siteOfSpace } from './part-sites.ts';
import { siteAtSide, siteLeftOver } from './row-edge.ts';
import type { Site } from './site.ts';
import { isOwed } from './site.ts';
import { limitOf } from './stop-limit.ts';
import { turningLoop, turningSpace, wholeTurningChain } from './turning-space.ts';
import { chainsOver, cornerOfOpening } from './work-opening.ts';
import type { Worker } from './worker.ts';
import { stuck, valueFor } from './worker.ts';

/** The nth of `count` places, found and passed one at a time as they are worked; null with the trouble noted when it is not there, and without where the stop of `each` is reached. */
export function nextSite(worker: Worker, what: What, span: Span, here = false): Site | null {
  const over = what.kind === 'space' ? chainsOver(worker, what.chains) : null;
  if (over !== null) return over;
  const gap = what.kind === 'corner' ? cornerOfOpening(worker) : gapForSpace(worker, what, span);
  if (gap !== null) return gap;
  const begun = what.kind === 'special' ? begunSpecial(worker, what.name) : -1;
  if (begun >= 0) return passed(worker, begun);
  const loop = turningLoop(worker, what, span);
  if (loop !== null) return loop;
  const named = here && what.kind === 'space' && what.of === undefined;
  const whole = named ? wholeTurningChain(worker, what.chains, span) : null;
  if (whole !== null) return whole;
  const index = findNext(worker, what, span, here);
  if (index < 0) return null;
  const site = worker.sites?.[index] ?? null;
  const asChain =
    what.kind === 'ch' ||
    (what.kind === 'any-of' && site !== null && what.of.find((each) => isA(site, each))?.kind === 'ch');
  if (asChain && site !== null && site.space !== NONE) {
    // One chain of a space, not the space.
    passChain(worker, index);
    return { ...site, space: NONE };
  }
  if (what.kind === 'special' && site !== null && site.special !== null)
    return middleOfSpecial(worker, index, what.name, span);
  passPlace(worker, index);
  return site;
}

/** How many places `next 3 sts` names in this size. */
export function howMany(worker: Worker, n: Num | null): number {
  return n === null ? 1 : (valueFor(worker, n.values) ?? 0);
}

/** The one place of `same st`, `first st`, `ring`, `top of tch` and the like; null with the trouble noted. */
export function singleSite(worker: Worker, place: Place): Site | null {
  const { sites } = worker;
  switch (place.kind) {
    case 'same':
      return place.asJoin && worker.into === null
        ? passed(worker, (sites?.length ?? 0) > 0 ? 0 : -1)
        : (spaceOfSame(worker, place.what) ?? sameSite(worker, place.what, place.span));
    case 'just-made':
      if (!worker.rowBegun && closedBy(worker) === (place.closedBy ?? closedBy(worker)))
        return sameSite(worker, place.what, place.span);
      // A row's own spaces are nothing it can be worked into.
      stuck(worker, {
        kind: 'used up',
        wanted: `${describeWhat(place.what, worker.terms)} just made`,
        span: place.span,
      });
      return null;
    case 'ring': {
      const ring = sites?.[0];
      if (ring?.kind === 'ring') {
        passPlace(worker, 0);
        return ring;
      }
      stuck(worker, {
        kind: 'not there',
        wanted: 'ring',
        found: sites === null ? 'nothing' : 'st',
        nth: 1,
        span: place.span,
      });
      return null;
    }
    case 'first':
      return passed(worker, findFirst(worker, place.what, 1, place.span));
    case 'last': {
      const begun = place.what.kind === 'special' ? begunSpecial(worker, place.what.name) : -1;
      return passed(worker, begun < 0 ? findLast(worker, place.what, 1, place.span) : begun);
    }
    case 'any':
      return passed(worker, findAny(worker, place.what, place.span));
    case 'from-hook':
      return fromHook(worker, howMany(worker, place.nth), place.span);
    case 'of-chain':
      return place.space === true ? turningSpace(worker, place) : turningChainSite(worker, place.span);
    case 'of-special':
      return siteOfSpecial(worker, place.nth, place.what, place.special, place.span, place.last === true);
    case 'of-group':
      return siteOfGroup(worker, place);
    case 'of-space':
      return siteOfSpace(worker, place);
    case 'last-made':
      return lastMade(worker, place);
    case 'next':
      return nextSite(worker, place.what, place.span, place.here === true);
    case 'each':
      return nextSite(worker, place.what, place.span);
    case 'left-over':
      return siteLeftOver(worker, place);
    case 'row-edge':
      return siteAtSide(worker, place);
    case 'passed':
      return wereSoMany(worker, place) && standThere(worker, place)
        ? passedSite(worker, place.what, place.span, place.nth ?? null)
        : null;
    // Found by files of their own.
    case 'below':
    case 'gap':
      return null;
  }
}

/** Whether the skipped stitches stand in the row they are said to stand in. */
function standThere(worker: Worker, { what, ofRow, span }: Extract<Place, { kind: 'passed' }>): boolean {
  const row = rowOfSite(worker, worker.passed[0] ?? -1);
  if (ofRow === undefined || row === ofRow) return true;
  const [sort, there] = [describeWhat(what, worker.terms), row === null ? 'elsewhere' : `in Rnd ${row}`];
  const wanted = `first skipped ${sort} of Rnd ${ofRow}`;
  return stuck(worker, { kind: 'not there', wanted, found: `${sort} skipped ${there}`, nth: 1, span });
}

/** The number of the row that made a place; null for none of the part's own. */
export function rowOfSite({ sites, rowRanges }: Worker, index: number): number | null {
  const node = sites?.[index]?.node ?? -1;
  return rowRanges.find(({ first, end }) => node >= first && node < end)?.number ?? null;
}

/** The stitch that closed the last space of the round below, where the work stands on it. */
function closedBy({ sites, last, builder }: Worker): string | null {
  const space = builder.spaces[sites?.[last]?.space ?? NONE];
  return space === undefined ? null : kindId(builder, space.end - 1);
}

function passed(worker: Worker, index: number): Site | null {
  if (index < 0) return null;
  passPlace(worker, index);
  return worker.sites?.[index] ?? null;
}

/** `sl st in next 3 dc and in ch-3 sp of same block`: the space that stands with the stitch just worked into, ahead of it. */
function spaceOfSame(worker: Worker, what: What): Site | null {
  const { sites, last, next } = worker;
  const at = sites?.[last];
  if (what.kind !== 'space' || what.of === undefined || at === undefined) return null;
  if (worker.into !== null || at.space !== NONE || at.group === NONE) return null;
  return passed(
    worker,
    sites?.findIndex((site, i) => i >= next && site.group === at.group && isA(site, what)) ?? -1,
  );
}

function sameSite(worker: Worker, what: What, span: Span): Site | null {
  if (worker.into !== null) return worker.into;
  const site = worker.sites?.[worker.last];
  if (site === undefined) {
    stuck(worker, {
      kind: 'not there',
      wanted: `same ${describeWhat(what, worker.terms)}`,
      found: 'nothing worked yet',
      nth: 1,
      span,
    });
    return null;
  }
  if (what.kind !== 'st' && !isA(site, what)) {
    const found = site.space === NONE ? 'st' : 'ch sp';
    stuck(worker, {
      kind: 'not there',
      wanted: `same ${describeWhat(what, worker.terms)}`,
      found,
      nth: worker.last + 1,
      span,
    });
    return null;
  }
  passPlace(worker, worker.last);
  // The first of the stitches round an opening, where yarn was joined, is gone back to with it.
  const skipped = worker.passed.length === 0 ? -1 : worker.passed.indexOf(worker.last);
  if (skipped >= 0) worker.passed = worker.passed.with(skipped, GONE_BACK_TO);
  return site;
}

/** Where yarn is joined: the first place of the sort, wherever it is. */
function findAny(worker: Worker, what: What, span: Span): number {
  const { sites } = worker;
  const index = sites?.findIndex((site) => isA(site, what)) ?? -1;
  // Of a flat piece any corner will do, and the first is where its last row begins.
  if (index < 0 && what.kind === 'corner' && worker.edging && sites !== null && sites.length > 0) return 0;
  if (index < 0) stuck(worker, { kind: 'used up', wanted: describeWhat(what, worker.terms), span });
  return index;
}

function fromHook(worker: Worker, nth: number, span: Span): Site | null {
  const site = worker.sites?.[nth - 1];
  if (site === undefined || site.kind !== 'chain' || site.space !== NONE) {
    const chains = worker.sites?.filter(({ kind, space }) => kind === 'chain' && space === NONE).length ?? 0;
    stuck(worker, { kind: 'no chain', wanted: `a ${ordinal(nth)} ch from hook`, chains, span });
    return null;
  }
  passPlace(worker, nth - 1);
  return site;
}

/** The next place, which must be a turning chain that counts as a stitch. */
function turningChainSite(worker: Worker, span: Span): Site | null {
  const index = behindSpace(worker) ?? findNext(worker, { kind: 'st' }, span);
  const site = worker.sites?.[index];
  if (site === undefined) return null;
  if (
    site.kind !== 'unknown' &&
    !(site.kind === 'stitch' && hasFlag(worker.builder, site.node, FLAG.turningChain))
  ) {
    stuck(worker, { kind: 'not there', wanted: 'top of the turning ch', found: 'st', nth: index + 1, span });
    return null;
  }
  passPlace(worker, index);
  return site;
}

/** The row's turning chain when stitches before it stand behind a space or gap, which need not be worked. */
function behindSpace(worker: Worker): number | null {
  const { sites } = worker;
  if (!worker.lastWasSpace || sites === null) return null;
  for (let i = worker.next; i < reach(worker); i += 1) {
    const site = sites[i];
    if (site?.isChain === true) return i;
    // The chains behind a dc in `ch 5 (counts as dc and ch 2)` belong to the chain that is named.
    if (site !== undefined && site.space !== NONE && sites[afterPlace(sites, i)]?.isChain === true) continue;
    if (site === undefined || site.space !== NONE) return null;
  }
  return null;
}

/** `V-st in next V-st`: into its middle, the space or the stitch there, and all of it is passed. */
function middleOfSpecial(worker: Worker, first: number, special: string, span: Span): Site | null {
  const { sites } = worker;
  const group = sites?.[first]?.group;
  const members: number[] = [];
  // Its first stitch may have been worked into by itself, as by `dc in first st`.
  let end = first;
  while (group !== NONE && sites?.[end - 1]?.group === group) end -= 1;
  for (; sites !== null && end < sites.length && sites[end]?.group === group; end = afterPlace(sites, end))
    members.push(end);
  const middle = members[(members.length - 1) / 2];
  if (middle !== undefined && middle < first && worker.last === middle) {
    // Its middle is where the row began: the next is the one behind it.
    worker.next = end;
    return nextSite(worker, { kind: 'special', name: special }, span);
  }
  if (middle === undefined || middle < first) {
    stuck(worker, { kind: 'which stitch', special, span });
    return null;
  }
  passPlace(worker, middle);
  worker.next = Math.max(worker.next, end);
  return sites?.[middle] ?? null;
}

/** The 3rd, or the middle, dc of the next shell: the shell is passed whole. */
function siteOfSpecial(
  worker: Worker,
  nth: number | 'center',
  what: What,
  special: string,
  span: Span,
  lastOne: boolean,
): Site | null {
  const { sites } = worker;
  if (sites === null) return null;
  const end = reach(worker);
  let first = worker.next;
  while (first < end && sites[first]?.special !== special) {
    const site = sites[first];
    if (site !== undefined && isOwed(site)) {
      stuck(worker, { kind: 'not there', wanted: `next ${special}`, found: 'st', nth: first + 1, span });
      return null;
    }
    first += 1;
  }
  const group = sites[first]?.group;
  const members: number[] = [];
  let last = first;
  for (; last < end && sites[last]?.group === group; last += 1) {
    const site = sites[last];
    const again = site !== undefined && site.space !== NONE && sites[last - 1]?.space === site.space;
    if (site !== undefined && isA(site, what) && !again) members.push(last);
  }
  const chosen = nth === 'center' ? (members.length - 1) / 2 : nth - 1;
  const index = members[chosen];
  if (index === undefined) {
    stuck(worker, { kind: 'which stitch', special, span });
    return null;
  }
  if (lastOne && sites.slice(last).some((site) => site.special === special)) {
    const count = sites.slice(last).filter(isOwed).length;
    stuck(worker, { kind: 'passed over', count, wanted: `last ${special}`, span });
    return null;
  }
  passPlace(worker, index);
  worker.next = Math.max(worker.next, last);
  return sites[index] ?? null;
}

/**
 * Whether "each" goes on: false at its stop. A place of another sort before the stop is left for the next call to
 * report.
 */
export function eachGoesOn(worker: Worker, what: What, stop: Stop): boolean {
  openRing(worker, what);
  const { sites } = worker;
  if (sites === null) return false;
  const end = Math.min(reach(worker), limitOf(worker, stop));
  for (let i = worker.next; i < end; i = afterPlace(sites, i)) {
    const site = sites[i];
    if (site === undefined) return false;
    // Behind the last V-st "each V-st to the end" is done: whether the stitches there are worked, the row will tell.
    if (what.kind === 'special' && !isA(site, what))
      return sites.slice(i, end).some((one) => isA(one, what)) || begunSpecial(worker, what.name) >= 0;
    // Spaces are passed over by "each st", stitches by "each ch-1 sp".
    if (isWanted(site, what)) return true;
  }
  return false;
}

/** Spaces are passed over by "each st", stitches by "each ch-1 sp". */
function isWanted(site: Site, what: What): boolean {
  if (what.kind === 'any-of') return what.of.some((each) => isWanted(site, each));
  // Whether spaces lie among stitches that only a count tells of is not known: the next step finds that out.
  if (what.kind === 'space') return site.space !== NONE || site.kind === 'unknown';
  return isOwed(site) || what.kind === 'ch';
}

/** Stands for a skipped place that has been gone back to. */
const GONE_BACK_TO = -1;

/** `first of the 10 skipped sts`: whether as many were skipped as is said. */
function wereSoMany(worker: Worker, { of, what, span }: Extract<Place, { kind: 'passed' }>): boolean {
  const said = of === undefined ? worker.passed.length : valueFor(worker, of.values);
  if (said === worker.passed.length) return true;
  const sts = describeWhat(what, worker.terms);
  const [wanted, found] = [`first of ${said} skipped ${sts}`, `hole over ${worker.passed.length}`];
  return stuck(worker, { kind: 'not there', wanted, found, nth: 1, span });
}

/** The nth of the stitches just skipped, or the first not yet gone back to; going back to it moves nothing on. */
function passedSite(worker: Worker, what: What, span: Span, nth: number | null): Site | null {
  const at = nth === null ? worker.passed.findIndex((one) => one !== GONE_BACK_TO) : nth - 1;
  const index = worker.passed[at];
  const rest = worker.passed.map((one, i) => (i === at ? GONE_BACK_TO : one));
  const site = index === undefined ? undefined : worker.sites?.[index];
  const wanted = `skipped ${describeWhat(what, worker.terms)}`;
  if (site === undefined) {
    stuck(worker, { kind: 'used up', wanted, span });
    return null;
  }
  if (!isA(site, what)) {
    stuck(worker, {
      kind: 'not there',
      wanted,
      found: describeSite(site, worker.terms),
      nth: (index ?? 0) + 1,
      span,
    });
    return null;
  }
  worker.passed = rest;
  // Round an opening they lie ahead, and are passed as they are worked.
  if (index !== undefined && index >= worker.next) passPlace(worker, index);
  return site;
}
