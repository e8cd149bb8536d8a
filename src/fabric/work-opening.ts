/** Round a hole that chains went over, such as a thumb's: the chains from below and the stitches skipped under them. */

import type { AlongStep } from '../notation/tree.ts';
import type { Span } from '../source/span.ts';
import { hasFlag, kindId } from './builder.ts';
import { FLAG } from './fabric.ts';
import type { Site } from './site.ts';
import { plainSite } from './site.ts';
import { skippedUnder } from './work-below.ts';
import type { Worker } from './worker.ts';
import { stuck, valueFor } from './worker.ts';

/** The chains come first, unless yarn is joined in the first of the stitches that were skipped. */
export function standRoundOpening(worker: Worker, from: AlongStep['from'] | null, span: Span): boolean {
  const { builder, rowRanges, pieceFirst } = worker;
  // The last row is the top of the piece: nothing has been worked on it yet.
  for (let i = rowRanges.length - 2; i >= pieceFirst; i -= 1) {
    const over = rowRanges[i + 1];
    const skipped = over === undefined ? [] : skippedUnder(worker, i);
    if (over === undefined || skipped.length === 0) continue;
    const chains: number[] = [];
    for (let node = over.first; node < over.end; node += 1)
      if (kindId(builder, node) === 'ch' && !hasFlag(builder, node, FLAG.turningChain)) chains.unshift(node);
    const [last, first] = [chains[0], chains.at(-1)];
    // Chains apart from each other go over several holes, and it is not said which is meant.
    if (last === undefined || first === undefined || last - first !== chains.length - 1) break;
    const below = chains.map((node) => plainSite('underside', node, 'ch'));
    const skippedFirst = from?.which === 'skipped';
    if (!hasSoMany(worker, from, skippedFirst ? skipped : below, span)) return false;
    worker.sites = skippedFirst ? [...skipped, ...below] : [...below, ...skipped];
    worker.passed = skipped.map((_, nth) => nth + (skippedFirst ? 0 : chains.length));
    worker.next = 0;
    worker.last = -1;
    worker.lastWasSpace = false;
    return true;
  }
  return stuck(worker, { kind: 'no edge', edge: 'opening', span });
}

/** `in first of the 10 skipped sts`, `in ch-2 at thumb opening`: whether there are as many as is said. */
function hasSoMany(
  worker: Worker,
  from: AlongStep['from'] | null,
  there: readonly Site[],
  span: Span,
): boolean {
  const said = from?.n == null ? there.length : valueFor(worker, from.n.values);
  if (from == null || said === there.length) return true;
  const what = from.which === 'skipped' ? 'skipped sts' : 'ch';
  const [wanted, found] = [`first of ${said} ${what}`, `hole with ${there.length} ${what}`];
  return stuck(worker, { kind: 'not there', wanted, found, nth: 1, span });
}

/** `3 hdc in the ch-1 sp` round an opening: over the chains that lie next, all of them together; null where none do. */
export function chainsOver(worker: Worker, chains: number | null): Site | null {
  const { sites, builder, next } = worker;
  const site = sites?.[next];
  if (site?.kind !== 'underside') return null;
  const space = builder.spaces.find(({ first, end }) => site.node >= first && site.node < end);
  const length = space === undefined ? 0 : space.end - space.first;
  const whole = sites?.slice(next, next + length).every(({ kind }) => kind === 'underside') === true;
  if (length === 0 || !whole || (chains !== null && chains !== length)) return null;
  worker.last = next;
  worker.next = next + length;
  return site;
}

/**
 * `1 sc in the corner` round an opening: between the stitches that were skipped and the chains over them, on the one
 * side or the other. The gap there has no stitch of its own, so it stands on the last one; null anywhere else.
 */
export function cornerOfOpening(worker: Worker): Site | null {
  const { sites, next, last } = worker;
  if (sites === null || last < 0 || next < 1) return null;
  const below = sites.filter(({ kind }) => kind === 'underside').length;
  if (below === 0 || below === sites.length) return null;
  const [before, after] = [sites[next - 1], sites[next]];
  const turns = after === undefined || (before?.kind === 'underside') !== (after.kind === 'underside');
  return turns && before !== undefined && last === next - 1 ? before : null;
}
