/** The corners that `sc in each st around, working 3 sc in each corner` meets on its way. */

import type { Place, WorkStep } from '../notation/tree.ts';
import { afterPlace, isA, isCornerSpace, passPlace, reach } from './find-site.ts';
import type { Site } from './site.ts';
import { limitOf } from './stop-limit.ts';
import type { Worker } from './worker.ts';

/** The corner that comes before anything else of an "each", where its words say what goes into corners; passed when found. */
export function cornerNext(
  worker: Worker,
  step: WorkStep,
  place: Extract<Place, { kind: 'each' }>,
): Site | null {
  const { sites } = worker;
  const what = step.corners?.what;
  if (what === undefined || sites === null) return null;
  const end = Math.min(reach(worker), limitOf(worker, place.stop));
  // Where no space is known to be at a corner, as round a border told side by side, any of them is.
  const marked = what.kind === 'space' && what.corner && sites.some(isCornerSpace);
  for (let i = worker.next; i < end; i = afterPlace(sites, i)) {
    const site = sites[i];
    if (site === undefined) return null;
    if (marked ? site.corner : isA(site, what)) {
      passPlace(worker, i);
      return site;
    }
    if (isA(site, place.what)) return null;
  }
  return null;
}
