/** The space that the turning chain of the row below leaves beside its first stitch: `in turning ch-2 sp`, `in tch sp`. */

import { abbreviation } from '../notation/describe-what.ts';
import type { NoteStep, Place, Step, What } from '../notation/tree.ts';
import type { Span } from '../source/span.ts';
import { hasFlag, kindId } from './builder.ts';
import { describeSite } from './describe-site.ts';
import { FLAG, NONE } from './fabric.ts';
import { countOwed, countSpaces, isA, passPlace } from './find-site.ts';
import type { Site } from './site.ts';
import { plainSite } from './site.ts';
import { chainsOver } from './work-opening.ts';
import type { Worker } from './worker.ts';
import { stuck } from './worker.ts';

/** It is the last place there is; null with the trouble noted when the row below has no such chain. */
export function turningSpace(worker: Worker, place: Extract<Place, { kind: 'of-chain' }>): Site | null {
  const over = chainsOver(worker, place.chains);
  if (over !== null) return over;
  const { sites } = worker;
  const wanted = place.chains === null ? 'turning ch sp' : `turning ch-${place.chains} sp`;
  const chain = turningChain(worker);
  if (sites === null || chain === null) {
    stuck(worker, { kind: 'used up', wanted, span: place.span });
    return null;
  }
  const at = behindChain(sites, chain);
  const beyond = at < 0 ? 0 : (sites[at]?.spaceChains ?? 0);
  const upright = chain.end - chain.first;
  if (place.chains !== null && ![upright, upright + beyond, beyond].includes(place.chains)) {
    const found = `ch-${upright + beyond} turning chain`;
    stuck(worker, { kind: 'not there', wanted, found, nth: sites.length, span: place.span });
    return null;
  }
  const counted = sites.findLastIndex(({ node, isChain }) => isChain && isIn(chain, node));
  const here = at >= 0 ? at : counted >= 0 ? counted : sites.length;
  const left = (worker.lastWasSpace ? countSpaces : countOwed)(sites, worker.next, here);
  if (left > 0 || worker.next > here) {
    const trouble =
      left > 0 ? ({ kind: 'passed over', count: left } as const) : ({ kind: 'used up' } as const);
    stuck(worker, { ...trouble, wanted, span: place.span });
    return null;
  }
  if (at >= 0) {
    passPlace(worker, at);
    return sites[at] ?? null;
  }
  worker.last = here;
  worker.next = Math.max(worker.next, here);
  // The chain itself may still be worked into, and need not be.
  if (counted >= 0) worker.lastWasSpace = true;
  return plainSite('gap', chain.end - 1, 'ch');
}

/** `5 ch loop` at the end of a row whose turning chain below is one of 5 that counts as no stitch; null for any other space. */
export function turningLoop(worker: Worker, what: What, span: Span): Site | null {
  const { sites } = worker;
  if (what.kind !== 'space' || what.chains === null || sites === null || worker.into !== null) return null;
  const { chains } = what;
  const chain = chains < LEAST_LOOP ? null : turningChain(worker);
  if (chain === null || chain.end - chain.first !== chains) return null;
  if (
    sites.some(
      ({ node, space, spaceChains }, i) =>
        isIn(chain, node) || (i >= worker.next && space !== NONE && spaceChains === chains),
    )
  )
    return null;
  return turningSpace(worker, { kind: 'of-chain', nth: null, chains, where: 'turning', space: true, span });
}

/**
 * `9 tr under the 5 ch` where the row below turned with those: the chain is a loop, whatever it counts as. Null where
 * another space is meant, with nothing noted.
 */
export function wholeTurningChain(worker: Worker, chains: number | null, span: Span): Site | null {
  const { sites, next } = worker;
  const chain = chains === null || sites === null ? null : turningChain(worker);
  if (chains === null || sites === null || chain === null) return null;
  const at = behindChain(sites, chain);
  const upright = chain.end - chain.first;
  if (upright < LEAST_UPRIGHT || upright + (at < 0 ? 0 : (sites[at]?.spaceChains ?? 0)) !== chains)
    return null;
  if (sites.slice(next).some(({ space, spaceChains }) => space !== NONE && spaceChains === chains))
    return null;
  return turningSpace(worker, { kind: 'of-chain', nth: null, chains, where: 'turning', space: true, span });
}

const LEAST_LOOP = 4;
/** Fewer chains only lift the hook. */
const LEAST_UPRIGHT = 3;

/** Whether the row has come to what is said of its last stitch. */
export function endsAsSaid(worker: Worker, endsOn: NonNullable<NoteStep['endsOn']>, span: Span): boolean {
  return endsOn === 'turning chain' ? endsOnChain(worker, span) : endsOnJoin(worker, endsOn.join, span);
}

/** The stitch of the join is the last that the round comes to where none is left. */
function endsOnJoin(worker: Worker, id: string, span: Span): boolean {
  const { sites, builder, next, last, round } = worker;
  const left = countOwed(sites ?? [], next, sites?.length ?? 0);
  const made = kindId(builder, builder.kind.length - 1);
  if (round && left === 0 && made === id) return true;
  const wanted = `last ${abbreviation(id, worker.terms)} in the st of the join`;
  const site = sites?.[left > 0 ? next : last];
  const found =
    left > 0 && site !== undefined ? describeSite(site, worker.terms) : abbreviation(made, worker.terms);
  return stuck(worker, { kind: 'not there', wanted, found, nth: (left > 0 ? next : last) + 1, span });
}

/** `working last dc in top of tch`: whether the row has come to the turning chain; the trouble is noted where it has not. */
function endsOnChain(worker: Worker, span: Span): boolean {
  const { sites, builder, last } = worker;
  const site = sites?.[last];
  if (site === undefined || site.kind !== 'stitch' || hasFlag(builder, site.node, FLAG.turningChain))
    return true;
  const found = describeSite(site, worker.terms);
  return stuck(worker, { kind: 'not there', wanted: 'top of the turning ch', found, nth: last + 1, span });
}

interface ChainRange {
  readonly first: number;
  readonly end: number;
}

function isIn({ first, end }: ChainRange, node: number): boolean {
  return node >= first && node < end;
}

/** The upright chains at the start of the row below, or those skipped at the end of its foundation; null where there are none. */
function turningChain({ builder, rowRanges, row }: Worker): ChainRange | null {
  const below = rowRanges[row - 1];
  if (below === undefined) return null;
  const first = run(below.first, below.end, 1, (node) => hasFlag(builder, node, FLAG.turningChain));
  if (first > below.first) return { first: below.first, end: first };
  const foundation = rowRanges[row - 2];
  const end = foundation?.end ?? 0;
  const skipped = run(end - 1, (foundation?.first ?? 0) - 1, -1, (node) =>
    hasFlag(builder, node, FLAG.turningChain),
  );
  return skipped < end - 1 ? { first: skipped + 1, end } : null;
}

/** The first index from `from` towards `to` of which it does not hold. */
function run(from: number, to: number, step: 1 | -1, holds: (index: number) => boolean): number {
  let at = from;
  while (at !== to && holds(at)) at += step;
  return at;
}

/** Where the chains stand that a turning chain has beyond the stitch it counts as; -1 where it has none. */
function behindChain(sites: readonly Site[], { end }: ChainRange): number {
  const space = sites.find(({ node, space }) => space !== NONE && node === end)?.space;
  return space === undefined ? -1 : sites.findIndex((site) => site.space === space);
}

/**
 * Where "each … across" ends: `dc in each dc across, dc in top of tch` leaves the turning chain for its own words, and
 * `V-st in each V-st across, V-st in last ch-sp` that space.
 */
export function limitOfEach(worker: Worker, step: Step, next: Step | undefined): number {
  const each = step.kind === 'work' && step.place?.kind === 'each' && step.place.stop.kind === 'end';
  const place = each && next?.kind === 'work' ? next.place : null;
  if (place?.kind === 'of-chain') return turningChainAt(worker);
  if (place?.kind !== 'last' || place.what.kind !== 'space' || place.n !== null) return worker.limit;
  const { what } = place;
  const sites = worker.sites ?? [];
  const last = sites.findLastIndex((site) => isA(site, what));
  const space = sites[last]?.space;
  return last < 0 ? worker.limit : sites.findIndex((site) => site.space === space);
}

/** Index of the counted turning chain at the end of the row below; past its end when there is none. */
function turningChainAt(worker: Worker): number {
  const { sites, builder } = worker;
  const last = (sites?.length ?? 0) - 1;
  const site = sites?.[last];
  const turning = site?.kind === 'stitch' && hasFlag(builder, site.node, FLAG.turningChain);
  return turning ? last : last + 1;
}
