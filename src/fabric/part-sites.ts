/** One stitch or chain out of several that are named together, as a site: the 3rd of 5 dc, the middle chain of a space. */

import { describeWhat } from '../notation/describe-what.ts';
import type { Place, What } from '../notation/tree.ts';
import { countedId } from './builder.ts';
import { NONE } from './fabric.ts';
import { afterPlace, findNext, isA, passPlace, reach } from './find-site.ts';
import type { Site } from './site.ts';
import { plainSite } from './site.ts';
import type { Worker } from './worker.ts';
import { stuck } from './worker.ts';

/** The 3rd, or the middle, of the next 5 dc, which stand in one place: they are passed together. */
export function siteOfGroup(worker: Worker, place: Extract<Place, { kind: 'of-group' }>): Site | null {
  if (place.shape !== undefined) return siteOfShape(worker, place, place.shape);
  const { sites } = worker;
  const first = place.any === true ? anyGroup(worker, place) : groupStart(worker, place);
  if (sites === null || first < 0) return null;
  const chosen = place.nth === 'center' ? (place.n - 1) / 2 : place.nth - 1;
  const site = sites[first + chosen];
  if (site === undefined) {
    stuck(worker, {
      kind: 'which stitch',
      special: `${place.n} ${describeWhat(place.what, worker.terms)}`,
      span: place.span,
    });
    return null;
  }
  passPlace(worker, first + chosen);
  // Where yarn is joined anew the work goes on from there.
  if (place.any === true) return site;
  worker.next = Math.max(worker.next, first + place.n);
  return site;
}

/** The middle one of a sort in the next petal: whatever stands in one place is passed with it, and so is the rest of the last. */
function siteOfShape(
  worker: Worker,
  { nth, what, span }: Extract<Place, { kind: 'of-group' }>,
  shape: string,
): Site | null {
  const sites = worker.sites ?? [];
  const wanted = `next ${shape}`;
  const behind = worker.rowBegun ? sites[worker.last]?.foot : undefined;
  let first = worker.next;
  while (first < reach(worker) && (sites[first]?.foot === behind || sites[first]?.space !== NONE)) first += 1;
  const foot = sites[first]?.foot ?? NONE;
  let end = first;
  while (end < reach(worker) && (sites[end]?.foot === foot || sites[end]?.space !== NONE)) end += 1;
  const own = Array.from({ length: end - first }, (_, i) => first + i).filter((i) => isIn(sites[i], what));
  const chosen = nth === 'center' ? (own.length - 1) / 2 : nth - 1;
  const at = own[chosen];
  if (end - first < FEWEST_IN_SHAPE || foot === NONE || own.length === 0) {
    stuck(worker, { kind: 'used up', wanted, span });
    return null;
  }
  if (at === undefined) {
    stuck(worker, { kind: 'which stitch', special: shape, span });
    return null;
  }
  passPlace(worker, at);
  // Come round, what is left is the rest of the first one.
  const isRest = (site: Site): boolean => site.foot === sites[0]?.foot || site.space !== NONE;
  worker.next = worker.round && sites.slice(end).every(isRest) ? sites.length : end;
  return sites[at] ?? null;
}

/** Fewer in one place are no petal. */
const FEWEST_IN_SHAPE = 3;

/** The first place of the round where just so many of a stitch stand on one foot; -1 with the trouble noted. */
function anyGroup(worker: Worker, { n, what, span }: Extract<Place, { kind: 'of-group' }>): number {
  const sites = worker.sites ?? [];
  for (let i = 0; i < sites.length; i += 1) {
    if (!isIn(sites[i], what)) continue;
    const end = groupEnd(sites, i, sites.length, what);
    if (end - i === n) return i;
    i = end - 1;
  }
  if (sites.some(({ kind }) => kind === 'unknown')) stuck(worker, { kind: 'unknown', span });
  else stuck(worker, { kind: 'used up', wanted: `${n}-${describeWhat(what, worker.terms)} group`, span });
  return -1;
}

function groupEnd(sites: readonly Site[], first: number, limit: number, what: What): number {
  const foot = sites[first]?.foot;
  let end = first;
  while (end < limit && sites[end]?.foot === foot && isIn(sites[end], what)) end += 1;
  return end;
}

/** Where just so many of a stitch come next, on one foot or side by side between chains; -1 with the trouble noted. */
function groupStart(worker: Worker, place: Extract<Place, { kind: 'of-group' }>): number {
  const first = findNext(worker, place.what, place.span);
  const { sites } = worker;
  if (sites === null || first < 0) return -1;
  const end = groupEnd(sites, first, reach(worker), place.what);
  if (end - first === place.n || runFrom(sites, first, reach(worker), place.what) === place.n) return first;
  stuck(worker, {
    kind: 'not there',
    wanted: `next ${place.n} ${describeWhat(place.what, worker.terms)} in one place`,
    found: describeWhat(place.what, worker.terms),
    nth: first + 1,
    span: place.span,
  });
  return -1;
}

/** How many of a stitch stand side by side from here on. */
function runFrom(sites: readonly Site[], first: number, limit: number, what: What): number {
  let end = first;
  while (end < limit && isIn(sites[end], what)) end += 1;
  return end - first;
}

function isIn(site: Site | undefined, what: What): boolean {
  return site !== undefined && isA(site, what);
}

/** One chain of the next space; the space is passed whole. */
export function siteOfSpace(worker: Worker, place: Extract<Place, { kind: 'of-space' }>): Site | null {
  const what: What = { kind: 'space', chains: place.chains, corner: false };
  const first = findNext(worker, what, place.span);
  const { sites } = worker;
  if (sites === null || first < 0) return null;
  const length = afterPlace(sites, first) - first;
  const chosen = place.nth === 'center' ? (length - 1) / 2 : place.nth - 1;
  const site = chosen < length ? sites[first + chosen] : undefined;
  if (site === undefined) {
    stuck(worker, { kind: 'which stitch', special: describeWhat(what, worker.terms), span: place.span });
    return null;
  }
  passPlace(worker, first);
  return { ...site, space: NONE };
}

/** The stitch made last in this row, for a picot that is closed on it. */
export function lastMade(worker: Worker, place: Extract<Place, { kind: 'last-made' }>): Site | null {
  const { builder } = worker;
  // `for the loop: ch 14, sc in the last sc you made`: nothing is worked yet, so it is the last of the row below.
  const from = worker.rowBegun ? worker.rowFirst : 0;
  for (let i = builder.kind.length - 1; i >= from; i -= 1) {
    const id = countedId(builder, i);
    if (id === null) continue;
    if (!isA(plainSite('stitch', i, id), place.what)) break;
    if (place.stem === true) return plainSite('stem', i, id);
    // As a chain: what closes on it is no stitch of its own.
    return plainSite('chain', i, 'ch');
  }
  stuck(worker, {
    kind: 'not there',
    wanted: `last ${describeWhat(place.what, worker.terms)} made`,
    found: 'nothing worked yet',
    nth: 1,
    span: place.span,
  });
  return null;
}
