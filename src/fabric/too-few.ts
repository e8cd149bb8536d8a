/** Words that name the last so many stitches in, whether as many are left out. */

import { describeCounted } from '../notation/describe-counted.ts';
import type { Place, Stop, What } from '../notation/tree.ts';
import type { Span } from '../source/span.ts';
import { countOwed, reach } from './find-site.ts';
import { limitOf } from './stop-limit.ts';
import type { Worker } from './worker.ts';
import { stuck, valueFor } from './worker.ts';

/** `sc in each st to last 3 sts`: false, with the trouble noted, where fewer are left. */
export function leavesEnough(worker: Worker, stop: Stop): boolean {
  if (stop.kind !== 'leaving' || limitOf(worker, stop) >= 0) return true;
  return enough(worker, valueFor(worker, stop.n.values) ?? 0, stop.what, true, stop.span);
}

/** `dc in last 4 sts`. */
export function hasLast(worker: Worker, n: number, place: Extract<Place, { kind: 'last' }>): boolean {
  return enough(worker, n, place.what, false, place.span);
}

function enough(worker: Worker, n: number, what: What, goesOn: boolean, span: Span): boolean {
  const { sites } = worker;
  if (sites === null || (what.kind !== 'st' && what.kind !== 'stitch')) return true;
  const left = countOwed(sites, worker.next, reach(worker));
  if (left >= n) return true;
  return stuck(worker, {
    kind: 'too few',
    n,
    left,
    what: describeCounted(what, n, worker.terms),
    goesOn,
    span,
  });
}
