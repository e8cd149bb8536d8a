/** Points that a round made on chains of its own, laid out to be gone round: up the chains' free loops, over the tip, down the stitches. */

import { firstTarget, kindId } from './builder.ts';
import { NONE } from './fabric.ts';
import type { Site } from './site.ts';
import { plainSite } from './site.ts';
import type { Worker } from './worker.ts';

/**
 * `working in free loops of ch` on a round of points: the chains of each come before the stitches on them. True where
 * the hook has come to such chains, laid out now or before; false where the row below has no points.
 */
export function alongPoints(worker: Worker): boolean {
  const { sites } = worker;
  if (sites === null) return false;
  if (!sites.some(({ kind }) => kind === 'underside')) {
    if (worker.next > 0) return false;
    const around = sitesRoundPoints(worker, sites);
    if (around === null) return false;
    worker.sites = around;
  }
  return worker.sites?.[worker.next]?.kind === 'underside' && rowOf(worker, worker.next) === worker.row - 1;
}

function rowOf({ builder, sites }: Worker, index: number): number {
  return builder.row[sites?.[index]?.node ?? -1] ?? NONE;
}

function sitesRoundPoints(worker: Worker, sites: readonly Site[]): Site[] | null {
  const { builder } = worker;
  const range = worker.rowRanges[worker.row - 1];
  if (range === undefined) return null;
  const onOwnChain = new Map<number, number>();
  for (let i = range.first; i < range.end; i += 1) {
    const target = firstTarget(builder, i);
    if (target >= range.first && kindId(builder, target) === 'ch' && kindId(builder, i) !== 'ch')
      onOwnChain.set(i, target);
  }
  if (onOwnChain.size === 0) return null;
  const worked = new Set(onOwnChain.values());
  const around: Site[] = [];
  const laid = new Set<number>();
  for (const site of sites) {
    // The chains of a point come before its stitches, those at its tip among them.
    if (site.kind === 'chain') continue;
    const target = onOwnChain.get(site.node);
    if (target !== undefined && !laid.has(target)) {
      let first = target;
      while (worked.has(first - 1)) first -= 1;
      let end = first;
      for (; kindId(builder, end) === 'ch'; end += 1) {
        laid.add(end);
        const below = worked.has(end);
        // Of several chains left at the tip one is the place.
        if (below || worked.has(end - 1)) around.push(plainSite(below ? 'underside' : 'chain', end, 'ch'));
      }
    }
    around.push(site);
  }
  return around;
}
