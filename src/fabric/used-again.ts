/** Whether a stitch has been worked into before, which "first st" and "last st" do not say. */

import { hasFlag } from './builder.ts';
import { FLAG, NONE } from './fabric.ts';
import type { Site } from './site.ts';
import type { Worker } from './worker.ts';

/** Whether the row in hand has worked into a stitch before this step; a space may take any number. */
export function isUsed(worker: Worker, site: Site, before: number): boolean {
  if (worker.into !== null || site.space !== NONE || site.kind !== 'stitch') return false;
  const { builder } = worker;
  for (let i = worker.rowFirst; i < before; i += 1) {
    const idle = FLAG.turningChain | FLAG.join | FLAG.travel;
    if (hasFlag(builder, i, idle)) continue;
    const end = builder.intoStart[i + 1] ?? builder.into.length;
    for (let at = builder.intoStart[i] ?? 0; at < end; at += 1)
      if (builder.into[at] === site.node) return true;
  }
  return false;
}
