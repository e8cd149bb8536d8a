/** The corners that `sc in each st around, working 3 sc in each corner` meets on its way. */

import type { CornerWork, Place, What, WorkStep } from '../notation/tree.ts';
import { afterPlace, isA, isCornerSpace, passPlace, reach } from './find-site.ts';
import type { Site } from './site.ts';
import { limitOf } from './stop-limit.ts';
import type { Worker } from './worker.ts';

/** The corner that comes before anything else of an "each", where its words say what goes into corners, and what that is; passed when found. */
export function cornerNext(
  worker: Worker,
  step: WorkStep,
  place: Extract<Place, { kind: 'each' }>,
): { readonly site: Site; readonly work: CornerWork } | null {
  const { sites } = worker;
  if (step.corners === undefined || sites === null) return null;
  const end = Math.min(reach(worker), limitOf(worker, place.stop));
  for (let i = worker.next; i < end; i = afterPlace(sites, i)) {
    const site = sites[i];
    if (site === undefined) return null;
    for (let work: CornerWork | undefined = step.corners; work !== undefined; work = work.also) {
      if (!isMet(sites, site, work.what)) continue;
      passPlace(worker, i);
      return { site, work };
    }
    if (isA(site, place.what)) return null;
  }
  return null;
}

/** Where no space is known to be at a corner, as round a border told side by side, any of them is. */
function isMet(sites: readonly Site[], site: Site, what: What): boolean {
  return what.kind === 'space' && what.corner && sites.some(isCornerSpace) ? site.corner : isA(site, what);
}
