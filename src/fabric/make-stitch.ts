/** Makes stitches at places: single ones, decreases with their legs, special stitches and brackets. */

import type { Step, StitchName } from '../notation/tree.ts';
import type { Span } from '../source/span.ts';
import { stitchById } from '../stitches/table.ts';
import { addFlag, addStitch, closeGroup, kindId, MOST_STITCHES, openGroup } from './builder.ts';
import type { Into } from './fabric.ts';
import { FLAG, INTO, LOOP, NONE } from './fabric.ts';
import { within } from './ledger.ts';
import type { Site } from './site.ts';
import { plainName } from './special-name.ts';
import type { Worker } from './worker.ts';
import { stuck } from './worker.ts';

/** Special stitches in special stitches beyond this come to no stitch that could be worked; each is two deep. */
const DEEPEST = 400;

/** Works a list of steps; handed in by the caller, so that this file need not know them. */
export type WorkSteps = (worker: Worker, steps: readonly Step[]) => boolean;

/** Makes one stitch into the places given: one for a plain stitch, one a leg for a decrease over several. */
export function makeStitch(
  worker: Worker,
  id: string,
  sites: readonly Site[],
  loop: number,
  span: Span,
  extraFlags = 0,
): boolean {
  if (worker.builder.kind.length >= MOST_STITCHES) return stuck(worker, { kind: 'too many', span });
  const first = sites[0];
  const travel = (extraFlags & (FLAG.travel | FLAG.join)) !== 0;
  const picot = id === 'sl-st' && first !== undefined && closesPicot(worker, first);
  const counted = !travel && !picot && (stitchById(id).counted || id === 'sl-st');
  addStitch(worker.builder, {
    id,
    countsAs: counted ? id : null,
    row: worker.row,
    yarn: worker.yarn,
    where: first === undefined ? INTO.nothing : entersPost(id) ? INTO.post : intoOf(first),
    loop,
    flags: extraFlags | (sites.some((site) => site.marked) && sites.length > 1 ? FLAG.marked : 0),
    group: worker.group,
    into: sites.flatMap((site) => nodesOf(worker, site)),
  });
  if (!travel) worker.rowBegun = true;
  return true;
}

/** Back to the start of the chains just made, or into the stitch they stand on: it holds them up and counts as none. */
function closesPicot({ builder, into, rowFirst }: Worker, { kind, node }: Site): boolean {
  if (node < rowFirst) return false;
  let start = builder.kind.length;
  while (start > rowFirst && kindId(builder, start - 1) === 'ch') start -= 1;
  const onChains = start < builder.kind.length && (node === start || node === start - 1);
  return onChains || (into !== null && kind === 'chain');
}

/** Works a stitch of the table or one of the pattern's own into one place; false where the pattern describes none of that name. */
export function makeNamed(worker: Worker, stitch: StitchName, site: Site, span: Span): boolean {
  if (stitch.kind === 'stitch') return makeStitch(worker, stitch.id, [site], 0, span);
  const special = worker.specials.get(stitch.name);
  return special !== undefined && makeInto(worker, special.steps, site, special.name, worker.workSteps);
}

/** Works a special stitch's steps, or a bracket's, into one place. */
export function makeInto(
  worker: Worker,
  steps: readonly Step[],
  site: Site,
  special: string | null,
  work: WorkSteps,
): boolean {
  const { group, into, inSpecial } = worker;
  if (worker.depth > DEEPEST) {
    const span = steps[0]?.span ?? { start: 0, end: 1 };
    return stuck(worker, { kind: 'too many', span });
  }
  // Inside a special stitch a bracket is part of it, not a thing of its own.
  const opens = special === null ? !inSpecial : !begunBy(worker, special);
  if (opens) worker.group = openGroup(worker.builder, special);
  const opened = worker.group;
  worker.into = site;
  worker.inSpecial = inSpecial || special !== null;
  const done = within(worker, () => work(worker, steps));
  if (opens) closeGroup(worker.builder, opened);
  worker.group = group;
  worker.into = into;
  worker.inSpecial = inSpecial;
  return done;
}

/** A beginning puff stitch that is `ch 2, puff st` is one puff stitch, which has the name that begins the round. */
function begunBy({ builder, group }: Worker, special: string): boolean {
  const outer = builder.groups[group]?.special ?? null;
  return outer !== null && outer !== special && plainName(outer) === special;
}

/** The middle stitch, or the space, of what was made from `first` on is a corner of the piece. */
export function markCorner(worker: Worker, first: number): void {
  const { builder } = worker;
  const made: number[] = [];
  const chains: number[] = [];
  for (let i = first; i < builder.kind.length; i += 1) {
    if ((builder.countsAs[i] ?? NONE) !== NONE) made.push(i);
    else chains.push(i);
  }
  if (chains.length > 0) {
    for (const chain of chains) addFlag(builder, chain, FLAG.corner);
    return;
  }
  const middle = made.length % 2 === 1 ? made[(made.length - 1) / 2] : undefined;
  if (middle !== undefined) addFlag(builder, middle, FLAG.corner);
}

function entersPost(id: string): boolean {
  const { enters } = stitchById(id);
  return enters === 'front post' || enters === 'back post';
}

export function intoOf(site: Site): Into {
  if (site.space !== NONE) return INTO.space;
  switch (site.kind) {
    case 'ring':
      return INTO.ring;
    case 'row end':
      return INTO.rowEnd;
    case 'underside':
      return INTO.underside;
    case 'gap':
      return INTO.between;
    case 'stem':
      return INTO.stem;
    default:
      return INTO.top;
  }
}

/** The stitches a place stands for: itself, or all the chains of its space or ring. */
export function nodesOf(worker: Worker, site: Site): readonly number[] {
  if (site.space === NONE) return site.kind === 'ring' ? ringNodes(worker, site) : [site.node];
  const space = worker.builder.spaces[site.space];
  if (space === undefined) return [site.node];
  return Array.from({ length: space.end - space.first }, (_, i) => space.first + i);
}

/** A chain ring's site names its first chain and, as its group, how many there are; a magic ring is one thing. */
function ringNodes(_worker: Worker, site: Site): readonly number[] {
  return Array.from({ length: Math.max(1, site.spaceChains) }, (_, i) => site.node + i);
}

export const LOOPS = { both: LOOP.both, front: LOOP.front, back: LOOP.back, third: LOOP.third } as const;
