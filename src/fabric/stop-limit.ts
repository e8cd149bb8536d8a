/** How far along the row below a repeat or "each" may go: to the end, to the last few, to the next corner. */

import type { Stop, What } from '../notation/tree.ts';
import { NONE } from './fabric.ts';
import { afterPlace, isA, reach } from './find-site.ts';
import type { Site } from './site.ts';
import { isOwed } from './site.ts';
import type { Worker } from './worker.ts';
import { valueFor } from './worker.ts';

/** Index of the first place out of reach; -1 when the stop names more places than there are left. */
export function limitOf(worker: Worker, stop: Stop): number {
  const { sites } = worker;
  const end = reach(worker);
  if (sites === null) return 0;
  switch (stop.kind) {
    case 'end':
    case 'times':
      return end;
    case 'leaving':
      return leaving(sites, worker.next, end, valueFor(worker, stop.n.values) ?? 0, stop.what);
    case 'before':
      return shortOf(
        sites,
        worker.next,
        before(worker, sites, end, stop.what, stop.centre === true),
        stop.less === undefined ? 0 : (valueFor(worker, stop.less.values) ?? 0),
      );
  }
}

function leaving(sites: readonly Site[], from: number, end: number, n: number, what: What): number {
  let left = n;
  if (left === 0) return end;
  if (what.kind === 'group') return lastSpreads(sites, from, end, n, what.size);
  for (let i = end - 1; i >= from; i -= 1) {
    const site = sites[i];
    if (site === undefined || !counts(site, sites[i - 1], what)) continue;
    left -= 1;
    if (left === 0) return what.kind === 'stitch' ? ofSort(sites, from, i, end, n, what) : i;
  }
  return -1;
}

/** Where the last few lots of stitches in one place begin; -1 where there are not so many. */
function lastSpreads(sites: readonly Site[], from: number, end: number, n: number, size?: number): number {
  let left = n;
  let behind = end;
  for (let i = end - 1; i >= from; i -= 1) {
    if (sites[i - 1]?.foot === sites[i]?.foot && i > from) continue;
    const many = size === undefined ? behind - i > 1 : behind - i === size;
    if (many && (sites[i]?.foot ?? NONE) !== NONE) left -= 1;
    if (left === 0) return i;
    behind = i;
  }
  return -1;
}

/** "to last sc" where three dc stand behind it: none of the last is an sc, so the last sc it is. */
function ofSort(
  sites: readonly Site[],
  from: number,
  lastFew: number,
  end: number,
  n: number,
  what: What,
): number {
  const isOf = (site: Site): boolean => site.kind === 'unknown' || isA(site, what);
  if (sites.slice(lastFew, end).some(isOf)) return lastFew;
  let left = n;
  for (let i = lastFew - 1; i >= from; i -= 1) {
    const site = sites[i];
    if (site !== undefined && isOf(site)) left -= 1;
    if (left === 0) return i;
  }
  return lastFew;
}

/** "last 3 sts" counts stitches, "last ch-1 sp" spaces of that length, "last 3 sc" stitches of any sort that should be sc. */
function counts(site: Site, before: Site | undefined, what: What): boolean {
  if (what.kind === 'space') return isA(site, what) && before?.space !== site.space;
  if (what.kind === 'ch') return site.kind === 'chain' || site.kind === 'underside';
  // "last shell" is one of however many stitches.
  if (what.kind === 'special') return isA(site, what) && before?.group !== site.group;
  return isOwed(site);
}

/** The next corner, or the next place of the sort named. */
function before(worker: Worker, sites: readonly Site[], end: number, what: What, centre: boolean): number {
  const cornerSpaces = what.kind === 'corner' || (what.kind === 'space' && what.corner);
  // The space in the middle of a shawl is wider than those of its V-sts.
  const flagged = !centre && cornerSpaces && sites.some((site) => site.corner);
  const longest =
    cornerSpaces && !flagged ? sites.reduce((most, site) => Math.max(most, site.spaceChains), 0) : 0;
  for (let i = worker.next; i < end; i = afterPlace(sites, i)) {
    const site = sites[i];
    if (site === undefined) break;
    if (
      flagged
        ? site.corner
        : cornerSpaces
          ? site.space !== NONE && site.spaceChains === longest
          : isA(site, what)
    )
      return i;
  }
  return end;
}

/** So many stitches before a place. */
function shortOf(sites: readonly Site[], from: number, at: number, less: number): number {
  let left = less;
  let i = at;
  while (left > 0 && i > from) {
    i -= 1;
    const site = sites[i];
    if (site !== undefined && isOwed(site)) left -= 1;
  }
  return i;
}
