/** Which of the places along the row below a phrase means: `next st`, `next ch-2 sp`, `last sc`, `corner`. */

import { describeWhat } from '../notation/describe-what.ts';
import type { What } from '../notation/tree.ts';
import type { Span } from '../source/span.ts';
import { stitchById } from '../stitches/table.ts';
import { describeSite } from './describe-site.ts';
import { NONE } from './fabric.ts';
import type { Site } from './site.ts';
import { isOwed, plainSite } from './site.ts';
import { plainName } from './special-name.ts';
import type { Worker } from './worker.ts';
import { stuck } from './worker.ts';

/** The places in reach. */
export function reach(worker: Worker): number {
  return Math.min(worker.sites?.length ?? 0, worker.limit);
}

/** Whether a place is of the sort meant. */
export function isA(site: Site, what: What): boolean {
  // Whatever is at a corner, it is a stitch to join yarn in.
  if (site.kind === 'unknown' && site.corner)
    return what.kind === 'corner' || what.kind === 'space' || what.kind === 'st';
  if (site.kind === 'unknown') return what.kind === 'st' || what.kind === 'stitch' || what.kind === 'special';
  switch (what.kind) {
    case 'st':
      return isOwed(site) && site.kind !== 'row end';
    case 'stitch':
      if (what.alone === true && site.special !== null) return false;
      return (
        site.kind === 'stitch' &&
        (site.id === what.id ||
          (site.special === null && isStitch(site.id) && stitchById(site.id).legOf === what.id))
      );
    case 'special':
      return site.special !== null && isNamed(site.special, what.name);
    case 'ch':
      if (what.of !== undefined) return site.space !== NONE && site.spaceChains === what.of;
      return site.kind === 'chain' || site.kind === 'underside' || site.isChain;
    case 'space':
      if (site.kind === 'gap') return what.chains === null && !what.corner && what.of === undefined;
      return (
        site.space !== NONE &&
        (what.chains === null || what.chains === site.spaceChains) &&
        !(what.side === true && site.corner) &&
        (what.of === undefined || (site.special !== null && isNamed(site.special, what.of)))
      );
    case 'any-of':
      return what.of.some((each) => isA(site, each));
    case 'group':
      return isOwed(site) && site.kind === 'stitch';
    case 'marked':
      return site.marked;
    case 'corner':
      return site.corner && (what.of === undefined || what.of === site.id);
    case 'row-end':
      return site.kind === 'row end';
  }
}

/**
 * Index of the next place of a sort. Between it and the hook may lie only what the trade passes over without a
 * word: chains of spaces before a stitch, stitches before a space. -1 with the trouble noted otherwise.
 */
export function findNext(worker: Worker, what: What, span: Span, here = false): number {
  openRing(worker, what);
  const { sites } = worker;
  if (sites === null) {
    stuck(worker, { kind: 'no foundation', span });
    return -1;
  }
  const end = reach(worker);
  let from = worker.next;
  const sort = cornerSort(worker, sites, what);
  if (worker.travelled && !here && !worker.rowBegun && from === 0 && worker.into === null)
    from = afterPlace(sites, 0);
  for (let i = from; i < end; i += 1) {
    const site = sites[i];
    if (site === undefined) break;
    if (worker.passesRest && (restOfLast(worker, site) || isBesideOwn(site, what))) continue;
    if (isA(site, what) && (sort !== 'corner sp' || site.corner)) return i;
    if (passesOver(site, sort === 'corner sp' ? CORNER_SPACE : what) || restOfLast(worker, site)) continue;
    if (worker.leftLater && what.kind === 'special' && i === from && site.kind === 'stitch') continue;
    if (worker.passesSpaces && what.kind === 'space' && site.space !== NONE) continue;
    // `dc in last sp, dc in next dc`: the last stitch of the fan, between the two.
    if (worker.passesSpaces && worker.lastWasSpace && i === from && site.kind === 'stitch') continue;
    if (site.kind === 'unknown') stuck(worker, { kind: 'unknown', span });
    else
      stuck(worker, {
        kind: 'not there',
        wanted: `next ${describeWhat(what, worker.terms)}`,
        found: describeSite(site, worker.terms),
        nth: ordinalOf(sites, i),
        span,
      });
    return -1;
  }
  stuck(worker, { kind: 'used up', wanted: describeWhat(what, worker.terms), span });
  return -1;
}

const CORNER_SPACE: What = { kind: 'space', chains: null, corner: true };

/**
 * Whether only a space at a corner will do: `next corner sp` on a round whose corners can be told, and `next corner`
 * in a round that goes from space to space, where the stitches between are passed.
 */
function cornerSort(worker: Worker, sites: readonly Site[], what: What): 'corner sp' | null {
  if (what.kind === 'space' && what.corner) return sites.some(isCornerSpace) ? 'corner sp' : null;
  if (what.kind !== 'corner' || !(worker.lastWasSpace || !worker.rowBegun)) return null;
  const next = sites.slice(worker.next).find(({ corner }) => corner);
  return next !== undefined && isCornerSpace(next) ? 'corner sp' : null;
}

export function isCornerSpace({ corner, space }: Site): boolean {
  return corner && space !== NONE;
}

/** A tube: chains joined to a ring and then worked into one by one rather than into the ring. */
export function openRing(worker: Worker, what: What): void {
  const ring = worker.sites?.[0];
  if (ring?.kind !== 'ring' || worker.ringChains === 0 || worker.rowBegun) return;
  if (what.kind !== 'ch' && what.kind !== 'st') return;
  worker.sites = Array.from({ length: worker.ringChains }, (_, i) => plainSite('chain', ring.node + i, 'ch'));
  worker.next = 0;
}

/** Index of the last place of a sort in the row below; -1 with the trouble noted when it is not there or not next. */
export function findLast(worker: Worker, what: What, fromEnd: number, span: Span): number {
  const { sites } = worker;
  if (sites === null) {
    stuck(worker, { kind: 'no foundation', span });
    return -1;
  }
  const wanted = `last ${describeWhat(what, worker.terms)}`;
  let left = fromEnd;
  for (let i = sites.length - 1; i >= 0; i -= 1) {
    const site = sites[i];
    if (site === undefined || passesOver(site, what)) continue;
    if (site.space !== NONE && i > 0 && sites[i - 1]?.space === site.space) continue;
    left -= 1;
    if (left > 0) continue;
    if (!isA(site, what)) {
      const before = fromEnd === 1 ? lastOfSort(worker, sites, what) : -1;
      if (before >= 0) return before;
      stuck(worker, {
        kind: 'not there',
        wanted,
        found: describeSite(site, worker.terms),
        nth: ordinalOf(sites, i),
        span,
      });
      return -1;
    }
    if (i < worker.next && i !== worker.last) {
      stuck(worker, { kind: 'used up', wanted: describeWhat(what, worker.terms), span });
      return -1;
    }
    const between = countOwed(sites, behindRest(worker, sites), i);
    if (between > 0 && isOwed(site)) {
      stuck(worker, { kind: 'passed over', count: between, wanted, span });
      return -1;
    }
    return i;
  }
  stuck(worker, { kind: 'used up', wanted: describeWhat(what, worker.terms), span });
  return -1;
}

/** "shell in last sc, sk 2 dc, sc in top of tch": the last of its sort when it is the one that comes next; else -1. */
function lastOfSort(worker: Worker, sites: readonly Site[], what: What): number {
  if (what.kind !== 'stitch') return -1;
  const index = sites.findLastIndex((site) => site.kind === 'stitch' && isA(site, what));
  return index >= worker.next && countOwed(sites, behindRest(worker, sites), index) === 0 ? index : -1;
}

/** Index of the nth place of the row below whatever has been worked, for "first st"; -1 with the trouble noted. */
export function findFirst(worker: Worker, what: What, nth: number, span: Span): number {
  const { sites } = worker;
  if (sites === null) {
    stuck(worker, { kind: 'no foundation', span });
    return -1;
  }
  let left = nth;
  for (let i = 0; i < sites.length; i += 1) {
    const site = sites[i];
    if (site === undefined || passesOver(site, what)) continue;
    left -= 1;
    if (left > 0) continue;
    if (isA(site, what)) return i;
    stuck(worker, {
      kind: 'not there',
      wanted: `first ${describeWhat(what, worker.terms)}`,
      found: describeSite(site, worker.terms),
      nth,
      span,
    });
    return -1;
  }
  stuck(worker, { kind: 'used up', wanted: describeWhat(what, worker.terms), span });
  return -1;
}

/** Moves past a place: all the chains of a space, or the one stitch. */
export function passPlace(worker: Worker, index: number): void {
  const { sites } = worker;
  if (sites === null) return;
  worker.last = index;
  worker.next = Math.max(worker.next, afterPlace(sites, index));
  worker.lastWasSpace = sites[index]?.space !== NONE;
}

/** Turns the round so that it starts at a place. */
export function standAt(worker: Worker, sites: readonly Site[], index: number): void {
  worker.sites = index === 0 ? [...sites] : [...sites.slice(index), ...sites.slice(0, index)];
  worker.next = 0;
  worker.last = 0;
  worker.lastWasSpace = false;
}

/** Moves past one chain, of a space or not. */
export function passChain(worker: Worker, index: number): void {
  worker.last = index;
  worker.next = Math.max(worker.next, index + 1);
  worker.lastWasSpace = false;
}

/** Index just behind a place. */
export function afterPlace(sites: readonly Site[], index: number): number {
  const site = sites[index];
  if (site === undefined || site.space === NONE) return index + 1;
  let end = index + 1;
  while (sites[end]?.space === site.space) end += 1;
  return end;
}

/** How many places from `from` to before `to` must be accounted for. */
export function countOwed(sites: readonly Site[], from: number, to: number): number {
  let owed = 0;
  for (let i = from; i < to; i += 1) {
    const site = sites[i];
    if (site !== undefined && isOwed(site)) owed += 1;
  }
  return owed;
}

/** How many spaces begin from `from` to before `to`. */
export function countSpaces(sites: readonly Site[], from: number, to: number): number {
  let spaces = 0;
  for (let i = from; i < to; i += 1) {
    const site = sites[i];
    if (site !== undefined && site.space !== NONE && sites[i - 1]?.space !== site.space) spaces += 1;
  }
  return spaces;
}

/** After a space inside a shell the shell's other stitches are passed without a word. */
function restOfLast(worker: Worker, site: Site): boolean {
  const last = worker.lastWasSpace ? worker.sites?.[worker.last] : undefined;
  return last !== undefined && last.group !== NONE && last.group === site.group && site.kind === 'stitch';
}

/** A plain space on the way to `2-ch sp of shell`. */
function isBesideOwn({ space, special }: Site, what: What): boolean {
  return what.kind === 'space' && what.of !== undefined && space !== NONE && special === null;
}

/** Index of the first place that is still to be accounted for. */
function behindRest(worker: Worker, sites: readonly Site[]): number {
  let at = worker.next;
  for (let site = sites[at]; site !== undefined && restOfLast(worker, site); site = sites[at]) at += 1;
  return at;
}

/** What the trade passes over without a word on the way to a place of this sort. */
function passesOver(site: Site, what: What): boolean {
  switch (what.kind) {
    case 'space':
      // On the way to the space of a shell those between the stitches of the row are passed as well.
      return (
        site.kind === 'stitch' || (what.of !== undefined && site.space !== NONE && site.special === null)
      );
    case 'ch':
    case 'row-end':
      return false;
    case 'corner':
      return false;
    case 'any-of':
      return what.of.every((each) => passesOver(site, each));
    default:
      return !isOwed(site);
  }
}

/** Which one it is, counting as a maker counts: the nth stitch, or the nth space. */
function ordinalOf(sites: readonly Site[], index: number): number {
  const site = sites[index];
  if (site === undefined) return index + 1;
  return isOwed(site)
    ? countOwed(sites, 0, index) + 1
    : countSpaces(sites, 0, index) + (sites[index - 1]?.space === site.space ? 0 : 1);
}

function isStitch(id: string): boolean {
  return id !== '' && id !== 'ch';
}

/** The beginning cluster of a round is a cluster: `beg cl` answers to `cl`. */
function isNamed(special: string, name: string): boolean {
  return special === name || plainName(special) === name;
}
