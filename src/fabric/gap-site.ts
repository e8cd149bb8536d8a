/** The gap between two stitches that "between next 2 sts" or "in sp before next dc" names. */

import type { Place } from '../notation/tree.ts';
import { describeWhat } from './describe.ts';
import { countOwed, findNext } from './find-site.ts';
import type { Site } from './site.ts';
import { isOwed, plainSite } from './site.ts';
import type { Worker } from './worker.ts';
import { stuck } from './worker.ts';

/**
 * The gap before a stitch, named by that stitch. Working into it passes what lies before and leaves the stitch behind
 * it to be passed or worked next.
 */
export function gapSite(worker: Worker, place: Extract<Place, { kind: 'gap' }>): Site | null {
  const first = findNext(worker, place.what, place.span);
  const { sites } = worker;
  if (first < 0 || sites === null) return null;
  const size = place.what.kind === 'group' ? place.what.size : undefined;
  const after =
    place.apart === null
      ? first
      : size === undefined
        ? behind(sites, first, place)
        : betweenSized(sites, first, place, size);
  const site = sites[after];
  if (site === undefined) {
    stuck(worker, { kind: 'used up', wanted: describeWhat(place.what, worker.terms), span: place.span });
    return null;
  }
  worker.next = after;
  worker.last = after;
  worker.lastWasSpace = true;
  return plainSite('gap', site.node, site.id);
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

/** The gap between two groups of just so many stitches each: others lie at the edge. */
function betweenSized(
  sites: readonly Site[],
  from: number,
  place: Extract<Place, { kind: 'gap' }>,
  size: number,
): number {
  for (let at = from; at < sites.length; ) {
    const after = behind(sites, at, place);
    if (countOwed(sites, at, after) === size && countOwed(sites, after, behind(sites, after, place)) === size)
      return after;
    at = after;
  }
  return sites.length;
}
