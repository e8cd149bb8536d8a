/** The gap between two stitches that "between next 2 sts" or "in sp before next dc" names. */

import { describeWhat } from '../notation/describe-what.ts';
import type { Place, Stop, What } from '../notation/tree.ts';
import type { Span } from '../source/span.ts';
import { begunSpecial } from './begun-special.ts';
import { describeSite } from './describe-site.ts';
import { INTO, NONE } from './fabric.ts';
import { afterPlace, countOwed, findFirst, findNext, isA, passPlace, reach, standAt } from './find-site.ts';
import type { Site } from './site.ts';
import { isOwed, plainSite } from './site.ts';
import { limitOf } from './stop-limit.ts';
import type { Worker } from './worker.ts';
import { stuck } from './worker.ts';

/**
 * The gap before a stitch, named by that stitch. Working into it passes what lies before and leaves the stitch behind
 * it to be passed or worked next.
 */
export function gapSite(worker: Worker, place: Extract<Place, { kind: 'gap' }>): Site | null {
  if (place.beforeChain === true) return gapBeforeChain(worker, place);
  const begun = place.what.kind === 'special' && begunSpecial(worker, place.what.name) >= 0;
  const { sites } = worker;
  const beside = place.shape !== undefined && worker.rowBegun ? behindFoot(sites ?? [], worker) : -1;
  const ahead = begun || place.apart !== null ? -1 : wholeAhead(worker, place);
  const first =
    begun || beside >= 0 ? worker.next : ahead >= 0 ? ahead : findNext(worker, place.what, place.span);
  if (first < 0 || sites === null) return null;
  if (place.first === true) return firstGap(worker, place);
  const size = place.what.kind === 'group' ? place.what.size : undefined;
  const after =
    place.apart === null
      ? first
      : beside >= 0
        ? beside
        : size === undefined
          ? behindGroup(worker, sites, first, place)
          : betweenSized(worker, sites, first, place, size);
  // Round the last of them comes the first again.
  const closes =
    place.shape !== undefined &&
    worker.round &&
    after === sites.length &&
    worker.next < after &&
    sites[0]?.kind !== 'gap';
  const site = sites[closes ? 0 : after];
  if (site === undefined) {
    stuck(worker, { kind: 'used up', wanted: describeWhat(place.what, worker.terms), span: place.span });
    return null;
  }
  const space = place.what.kind === 'group' ? spaceBetween(worker, sites, first, after) : -1;
  if (space >= 0) {
    passPlace(worker, space);
    return sites[space] ?? null;
  }
  // Come round, what is left of the petal the round began in is the rest of the first.
  const foot = sites[0]?.foot ?? NONE;
  const rest = place.shape !== undefined && worker.round && worker.rowBegun && foot !== NONE;
  const over = rest && sites.slice(after).every((one) => one.foot === foot || one.space !== NONE);
  worker.next = over ? sites.length : after;
  worker.last = place.shape === undefined ? after : after - 1;
  worker.lastWasSpace = true;
  return plainSite('gap', site.node, site.id);
}

/**
 * `before the next V-st` behind one whose space was worked into: where the next begins, also where that is the last, which
 * the repeat leaves. -1 where no other stands there.
 */
function wholeAhead(
  { sites, next, last, rowBegun }: Worker,
  { what }: Extract<Place, { kind: 'gap' }>,
): number {
  const group = sites?.[last]?.group ?? NONE;
  if (what.kind !== 'special' || sites === null || !rowBegun || group === NONE) return -1;
  let at = next;
  while (sites[at]?.group === group) at += 1;
  const site = sites[at];
  return site !== undefined && isA(site, what) ? at : -1;
}

/**
 * The yarn stands in a gap, joined there or brought there by slip stitches: a round begins with it, so that `in same sp`
 * is the gap, and the last gap is the one before the last stitch.
 */
export function standInGap(worker: Worker, place: Extract<Place, { kind: 'gap' }>): Site | null {
  const site = gapSite(worker, place);
  const { sites } = worker;
  if (site === null || sites === null) return null;
  const last = place.shape === undefined ? worker.last : worker.last + 1;
  // Between groups with chains between them lies a space, which is a place already.
  const own = site.kind === 'gap' ? { ...site, full: true as const } : null;
  if (worker.round) standAt(worker, sites, last);
  else worker.next = last;
  if (own !== null) worker.sites?.splice(worker.next, 0, own);
  worker.last = worker.next;
  return site;
}

/** `between last V-st and tch`: every stitch before it but that last one is worked, and the turning chain comes next. */
function gapBeforeChain(worker: Worker, { what, span }: Extract<Place, { kind: 'gap' }>): Site | null {
  const sites = worker.sites ?? [];
  const end = sites.findLastIndex(isOwed);
  const before = sites.findLastIndex((site, i) => i < end && isOwed(site));
  const [chain, last] = [sites[end], sites[before]];
  if (chain?.isChain !== true || last === undefined || !isA(last, what)) {
    const wanted = `${describeWhat(what, worker.terms)} before the turning ch`;
    if (chain?.kind === 'unknown') stuck(worker, { kind: 'unknown', span });
    else if (chain === undefined || last === undefined) stuck(worker, { kind: 'used up', wanted, span });
    else {
      const wrong = chain.isChain ? last : chain;
      const found = describeSite(wrong, worker.terms);
      stuck(worker, { kind: 'not there', wanted, found, nth: (wrong === chain ? end : before) + 1, span });
    }
    return null;
  }
  const group = last.group;
  const left = sites.findIndex((site, i) => i >= worker.next && i < end && isOwed(site));
  const beside = what.kind === 'group' && sites[left]?.foot === last.foot;
  if (left >= 0 && left !== before && !beside && (group === NONE || sites[left]?.group !== group)) {
    const count = countOwed(sites, worker.next, end);
    stuck(worker, { kind: 'passed over', count, wanted: `last ${describeWhat(what, worker.terms)}`, span });
    return null;
  }
  worker.next = end;
  worker.last = end;
  worker.lastWasSpace = true;
  return plainSite('gap', chain.node, chain.id);
}

/** `between first and 2nd sts`. */
function firstGap(worker: Worker, place: Extract<Place, { kind: 'gap' }>): Site | null {
  const second = findFirst(worker, place.what, 2, place.span);
  const site = worker.sites?.[second];
  if (site === undefined) return null;
  if (worker.next > second) {
    stuck(worker, { kind: 'used up', wanted: describeWhat(place.what, worker.terms), span: place.span });
    return null;
  }
  worker.next = second;
  worker.last = second;
  worker.lastWasSpace = true;
  return plainSite('gap', site.node, site.id);
}

/** Whether "between each 2 sts" has another two before its stop. */
export function gapGoesOn(worker: Worker, place: Extract<Place, { kind: 'gap' }>, stop: Stop): boolean {
  const { sites } = worker;
  if (sites === null) return false;
  const end = Math.min(reach(worker), limitOf(worker, stop));
  let first = worker.next;
  while (first < end && sites[first] !== undefined && sites[first]?.space !== NONE) first += 1;
  const after = first < end ? behind(sites, first, place) : end;
  return after < end && (place.what.kind !== 'group' || !standsAlone(sites, after));
}

/** The last stitch of a row by itself is no group: what lies before it is named otherwise. */
function standsAlone(sites: readonly Site[], at: number): boolean {
  return at === sites.length - 1 && sites[at]?.space === NONE && sites[at - 1]?.foot !== sites[at]?.foot;
}

/** Groups with a chain between them: the chain's space is what lies there; -1 when there is none. */
function spaceBetween(worker: Worker, sites: readonly Site[], first: number, after: number): number {
  let before = first;
  for (let at = first; at < after; at += 1) {
    const site = sites[at];
    if (site === undefined) break;
    if (isOwed(site)) before = at;
    else if (!isWithin(worker, sites, before, at)) return at;
  }
  return -1;
}

/** A chain between stitches that stand in one place is part of their group; a ring is no such place. */
function isWithin(worker: Worker, sites: readonly Site[], before: number, at: number): boolean {
  const left = sites[before];
  const right = sites[afterPlace(sites, at)];
  if (left === undefined || right === undefined || left.foot !== right.foot) return false;
  return worker.builder.where[left.node] !== INTO.ring;
}

/** The first stitch behind the group at an index, which a chain may end. */
function behindGroup(
  worker: Worker,
  sites: readonly Site[],
  index: number,
  place: Extract<Place, { kind: 'gap' }>,
): number {
  const end = behind(sites, index, place);
  if (place.what.kind !== 'group') return end;
  const space = spaceBetween(worker, sites, index, end);
  return space < 0 ? end : afterPlace(sites, space);
}

/** `next sp` where groups stand side by side with no chains at all: the gap between two of them. Null where there is any space, or no groups. */
export function gapForSpace(worker: Worker, what: What, span: Span): Site | null {
  const { sites } = worker;
  if (what.kind !== 'space' || what.chains !== null || what.corner || what.of !== undefined || sites === null)
    return null;
  if (!worker.rowBegun || !inGroups(sites)) return null;
  const two = { values: [2], span };
  return gapSite(worker, { kind: 'gap', what: { kind: 'group' }, apart: two, span });
}

/** All of it in groups, at least two, and nothing but the gap the row began in between them. */
function inGroups(sites: readonly Site[]): boolean {
  const feet = new Map<number, number>();
  for (const { kind, space, foot } of sites) {
    if (kind === 'gap') continue;
    if (space !== NONE || kind !== 'stitch' || foot === NONE) return false;
    feet.set(foot, (feet.get(foot) ?? 0) + 1);
  }
  return feet.size > 1 && [...feet.values()].every((n) => n > 1);
}

/** The first stitch behind the one at an index, or behind the whole special stitch it belongs to. */
function behind(sites: readonly Site[], index: number, { what }: Extract<Place, { kind: 'gap' }>): number {
  const whole = what.kind === 'special' ? sites[index]?.group : null;
  const foot = what.kind === 'group' ? sites[index]?.foot : null;
  let at = index + 1;
  for (; at < sites.length; at += 1) {
    const site = sites[at];
    if (site === undefined) break;
    if (whole !== null && site.group === whole) continue;
    if (foot !== null && site.foot === foot) continue;
    if (isOwed(site)) break;
  }
  return at;
}

/** Where what the hook stands in, all of one foot, ends; -1 where it stands in no such thing. */
function behindFoot(sites: readonly Site[], { last, next, lastWasSpace }: Worker): number {
  // From a gap it goes on to the far side of what stands next.
  const foot = sites[lastWasSpace && last === next - 1 ? next : last]?.foot ?? NONE;
  if (foot === NONE) return -1;
  // Come round, the rest of the first has been passed with what stands before it.
  let at = next === sites.length ? last + 1 : next;
  while (at < sites.length && sites[at]?.foot === foot) at += 1;
  return at;
}

/** The gap between two groups of just so many stitches each: others lie at the edge. */
function betweenSized(
  worker: Worker,
  sites: readonly Site[],
  from: number,
  place: Extract<Place, { kind: 'gap' }>,
  size: number,
): number {
  for (let at = from; at < sites.length; ) {
    const after = behindGroup(worker, sites, at, place);
    const further = behindGroup(worker, sites, after, place);
    // Of a corner's two groups, with a space between them, the near one counts.
    const left = [countOwed(sites, at, after), countOwed(sites, lastRun(sites, at, after), after)];
    const right = [
      countOwed(sites, after, further),
      countOwed(sites, after, firstRun(sites, after, further)),
    ];
    if (left.includes(size) && right.includes(size)) return after;
    at = after;
  }
  return sites.length;
}

/** Where the stitches before the first space from an index end. */
function firstRun(sites: readonly Site[], from: number, to: number): number {
  let at = from;
  while (at < to && sites[at]?.space === NONE) at += 1;
  return at;
}

/** Where the stitches behind the last space up to an index begin. */
function lastRun(sites: readonly Site[], from: number, to: number): number {
  let at = to;
  while (at > from && sites[at - 1]?.space === NONE) at -= 1;
  return at;
}
