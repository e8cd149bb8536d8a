/** Whether a stitch has been worked into before, which "first st" and "last st" do not say. */

import type { Place } from '../notation/tree.ts';
import { hasFlag } from './builder.ts';
import { FLAG, INTO, NONE } from './fabric.ts';
import type { Site } from './site.ts';
import type { Worker } from './worker.ts';

/** Keeps a place in mind that names a stitch the row in hand has worked into before this step, once for each place. */
export function noteUse(
  worker: Worker,
  site: Site,
  before: number,
  { kind, span }: Extract<Place, { kind: 'first' | 'last' }>,
): void {
  if (worker.again.some((noted) => noted.span === span) || !isUsed(worker, site, before)) return;
  worker.again = [...worker.again, { which: kind, span }];
}

/** A space may take any number, and the end of a row is no stitch's top. */
function isUsed(worker: Worker, site: Site, before: number): boolean {
  if (worker.into !== null || site.space !== NONE || site.kind !== 'stitch') return false;
  const { builder } = worker;
  const idle = FLAG.turningChain | FLAG.join | FLAG.travel;
  for (let i = worker.rowFirst; i < before; i += 1) {
    if (hasFlag(builder, i, idle) || builder.where[i] === INTO.rowEnd) continue;
    const end = builder.intoStart[i + 1] ?? builder.into.length;
    for (let at = builder.intoStart[i] ?? 0; at < end; at += 1)
      if (builder.into[at] === site.node) return true;
  }
  return false;
}
