/** Joins that close a round or a ring, and slip stitches that move the yarn to where the next round starts. */

import { describeWhat } from '../notation/describe-what.ts';
import type { JoinStep, Place, Step, What, WorkStep } from '../notation/tree.ts';
import type { Span } from '../source/span.ts';
import { stitchById } from '../stitches/table.ts';
import { addStitch, hasFlag, kindId } from './builder.ts';
import { describeSite } from './describe-site.ts';
import { FLAG, INTO, NONE } from './fabric.ts';
import { afterPlace, countOwed, findLast, findNext, isA, standAt } from './find-site.ts';
import { standInGap } from './gap-site.ts';
import { makeStitch } from './make-stitch.ts';
import { carryMarks } from './note-marker.ts';
import { howMany } from './place-sites.ts';
import type { Site } from './site.ts';
import { plainSite, sitesOfRow } from './site.ts';
import { closeRing } from './work-chain.ts';
import type { Worker } from './worker.ts';
import { stuck } from './worker.ts';

/** `join with sl st in first sc`: closes the round and stands at its first stitch. */
export function workJoin(worker: Worker, step: JoinStep): boolean {
  const { sites } = worker;
  if (sites === null) return stuck(worker, { kind: 'no foundation', span: step.span });
  const chainOnly = !worker.rowBegun && sites.every((site) => site.kind === 'chain' && site.space === NONE);
  if (step.ring || chainOnly) {
    if (!chainOnly)
      return stuck(worker, { kind: 'no chain', wanted: 'a chain to close into a ring', span: step.span });
    closeRing(worker);
    return true;
  }
  const top = topSites(worker);
  const index = joinIndex(worker, top, step.place, step.span);
  if (index === null) return false;
  worker.below = { sites, next: worker.next, lastWasSpace: worker.lastWasSpace };
  worker.top = top;
  const target = index < 0 ? -index - 1 : (top[index]?.node ?? NONE);
  const id = step.stitch.kind === 'stitch' ? step.stitch.id : 'sl-st';
  addStitch(worker.builder, {
    id,
    countsAs: null,
    row: worker.row,
    yarn: worker.yarn,
    where: INTO.top,
    loop: 0,
    flags: FLAG.join,
    group: NONE,
    into: [target],
  });
  worker.joined = true;
  if (id === 'sl-st' || stitchById(id).heightChains < 2) standAt(worker, top, Math.max(0, index));
  else standInLastSpace(worker);
  worker.travelled = false;
  return true;
}

/** `ch 2, join with dc in first sc`: the join is part of the last space, and the next round begins over it. */
function standInLastSpace(worker: Worker): void {
  const { builder, row } = worker;
  // Without the join the space was counted shorter.
  while (builder.spaces[builder.spaces.length - 1]?.row === row) builder.spaces.pop();
  const top = topSites(worker);
  worker.top = top;
  const last = top[top.length - 1]?.space ?? NONE;
  standAt(
    worker,
    top,
    top.findIndex(({ space }) => space === last),
  );
}

/** The places along the top of the row in hand, a counted foundation chain first. */
export function topSites(worker: Worker): Site[] {
  carryMarks(worker);
  const top = sitesOfRow(worker.builder, worker.rowFirst, worker.builder.kind.length);
  if (worker.countedStart >= 0) {
    const id = worker.builder.stitchIds[worker.builder.countsAs[worker.countedStart] ?? 0] ?? '';
    top.unshift({ ...plainSite('stitch', worker.countedStart, id), isChain: true }, ...startSpace(worker));
  } else if (worker.skippedSpace > 0)
    top.unshift(...spaceOver(worker, worker.rowFirst - worker.skippedSpace, worker.rowFirst));
  return top;
}

/** The space between a counted foundation chain and the first stitch: `dc in 8th ch from hook`. */
function startSpace(worker: Worker): Site[] {
  const { builder, countedStart, rowFirst } = worker;
  const first = countedStart + 1;
  // Chains behind the counted one, made before the row, that were not skipped at its foot.
  let end = first;
  while (end < rowFirst && kindId(builder, end) === 'ch' && hasFlag(builder, end, FLAG.turningChain))
    end += 1;
  return end === first ? [] : spaceOver(worker, first, end);
}

/** A space over chains made before the row. */
function spaceOver({ builder, row }: Worker, first: number, end: number): Site[] {
  builder.spaces.push({ row, first, end, corner: false });
  const space = builder.spaces.length - 1;
  return Array.from({ length: end - first }, (_, i) => ({
    ...plainSite('chain', first + i, 'ch'),
    space,
    spaceChains: end - first,
  }));
}

/**
 * Which of the row's places a join goes into. A turning chain that does not count is no place to work into, but may
 * be joined to: that gives minus its index less 1. Null with the trouble noted when what is named is not there.
 */
function joinIndex(worker: Worker, top: readonly Site[], place: Place | null, span: Span): number | null {
  if (place === null || place.kind === 'same') return 0;
  if (place.kind === 'of-chain') {
    const first = top.findIndex(
      (site) => site.kind === 'stitch' && hasFlag(worker.builder, site.node, FLAG.turningChain),
    );
    if (first >= 0) return first;
    const chain = lastTurningChain(worker);
    if (chain < 0) {
      stuck(worker, { kind: 'no chain', wanted: 'a beg ch', span });
      return null;
    }
    return -chain - 1;
  }
  if (!('what' in place)) return 0;
  const { what } = place;
  const index = top.findIndex((site) =>
    what.kind === 'space' || what.kind === 'ch' ? site.space !== NONE : site.space === NONE,
  );
  const site = top[index];
  if (site === undefined) {
    stuck(worker, {
      kind: 'not there',
      join: true,
      wanted: `first ${describeWhat(what, worker.terms)}`,
      found: 'nothing',
      nth: 1,
      span,
    });
    return null;
  }
  // Round the edge of a flat piece the round has begun at a corner, whatever stands there.
  if (isA(site, what) || (what.kind === 'corner' && worker.edging)) return index;
  stuck(worker, {
    kind: 'not there',
    join: true,
    wanted: `first ${describeWhat(what, worker.terms)}`,
    found: describeSite(site, worker.terms),
    nth: 1,
    span,
  });
  return null;
}

function lastTurningChain(worker: Worker): number {
  let chain = -1;
  for (let i = worker.rowFirst; i < worker.builder.kind.length; i += 1) {
    if (hasFlag(worker.builder, i, FLAG.turningChain)) chain = i;
    // Slip stitches may come before it, nothing else.
    else if (chain >= 0 || !hasFlag(worker.builder, i, FLAG.travel)) break;
  }
  return chain;
}

/** Slip stitches along the top: the round starts where the last of them stands. */
export function workTravel(worker: Worker, step: WorkStep): boolean {
  const { place } = step;
  if (place === null || !('what' in place))
    return stuck(worker, { kind: 'used up', wanted: 'st', span: step.span });
  const n = place.kind === 'next' || place.kind === 'first' ? howMany(worker, place.n) : 1;
  for (let i = 0; i < n; i += 1) {
    const { sites } = worker;
    if (sites === null) return stuck(worker, { kind: 'no foundation', span: step.span });
    if (place.kind === 'gap') {
      const gap = standInGap(worker, place);
      if (gap === null || !makeStitch(worker, 'sl-st', [gap], 0, step.span, FLAG.travel)) return false;
      worker.travelled = true;
      continue;
    }
    if (!worker.round) {
      const index =
        place.kind === 'last' && place.what.kind !== 'space'
          ? findLast(worker, place.what, howMany(worker, place.n) - i, place.span)
          : findNext(worker, place.what, place.span);
      const site = sites[index];
      if (leavesOut(worker, sites, worker.next, index, place)) return false;
      if (site === undefined || !makeStitch(worker, 'sl-st', [site], 0, step.span, FLAG.travel)) return false;
      worker.last = index;
      worker.next = afterPlace(sites, index);
      worker.travelled = true;
      continue;
    }
    const walked = worker.travelled;
    worker.next = place.kind === 'first' ? 0 : afterPlace(sites, 0);
    worker.travelled = false;
    const index = findNext(worker, place.what, place.span);
    const site = sites[index];
    worker.travelled = walked;
    if (leavesOut(worker, sites, worker.next, index, place)) return false;
    worker.travelled = false;
    if (site === undefined || !makeStitch(worker, 'sl-st', [site], 0, step.span, FLAG.travel)) return false;
    if (place.what.kind === 'ch' && site.space !== NONE) return walkSpace(worker, sites, index, n - i, step);
    standAt(worker, sites, index);
    worker.travelled = true;
  }
  return true;
}

/** `sl st in next 2 ch`: along the chains of one space, where the round then begins. The first is made. */
function walkSpace(
  worker: Worker,
  sites: readonly Site[],
  index: number,
  n: number,
  { place, span }: WorkStep,
): boolean {
  for (let i = index + 1; i < index + n; i += 1) {
    const site = sites[i];
    if (site === undefined || site.space !== sites[index]?.space) {
      const found = site === undefined ? 'nothing' : describeSite(site, worker.terms);
      return stuck(worker, {
        kind: 'not there',
        wanted: 'next ch',
        found,
        nth: i + 1,
        span: place?.span ?? span,
      });
    }
    if (!makeStitch(worker, 'sl-st', [site], 0, span, FLAG.travel)) return false;
  }
  standAt(worker, sites, index);
  worker.travelled = true;
  return true;
}

/** Slip stitches that go from stitch to stitch up to a space leave none out on the way. */
function leavesOut(
  worker: Worker,
  sites: readonly Site[],
  from: number,
  to: number,
  place: Extract<Place, { what: What }>,
): boolean {
  const walked = worker.travelled && sites[from - 1]?.space === NONE;
  const count = walked && place.what.kind === 'space' ? countOwed(sites, from, to) : 0;
  const wanted = `next ${describeWhat(place.what, worker.terms)}`;
  if (count > 0) stuck(worker, { kind: 'passed over', count, wanted, span: place.span });
  return count > 0;
}

/** A slip stitch into the place of a block or shell, before the chain that rises from it, is no stitch of the row. */
export function fastensOn(worker: Worker, step: WorkStep, next: Step | undefined): boolean | null {
  const slips = step.stitch.kind === 'stitch' && step.stitch.id === 'sl-st' && step.place === null;
  if (!slips || worker.into === null || next?.kind !== 'chain') return null;
  const made = makeStitch(worker, 'sl-st', [worker.into], 0, step.span, FLAG.travel);
  // The chain that follows rises from it and is no turning chain of the row.
  worker.rowBegun = true;
  return made;
}
