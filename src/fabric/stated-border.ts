/**
 * A round told side by side, `*51 dc evenly along the side, 3 dc into the corner; rep from * 3 more times`, in; the places
 * it goes into, out. Whatever it borders, pieces sewn together or two layers at once, its words say how many there are.
 */

import type { EvenlyStep, Step } from '../notation/tree.ts';
import { NONE } from './fabric.ts';
import { passPlace } from './find-site.ts';
import { makeInto, makeStitch } from './make-stitch.ts';
import { howMany } from './place-sites.ts';
import type { Site } from './site.ts';
import { plainSite } from './site.ts';
import type { Worker } from './worker.ts';
import { valueFor } from './worker.ts';

/** Sides and corners of a closed piece: fewer are an edge of something else. */
const FEWEST_SIDES = 3;
/** More than any border has: a slip of the pen in a number is not laid out. */
const MOST_PLACES = 20_000;

/** Null for a round that is told in any other way. */
export function statedBorder(worker: Worker, steps: readonly Step[]): Site[] | null {
  const [sides, more] = steps.filter(({ kind }) => !BESIDE.has(kind));
  if (more !== undefined || (sides?.kind !== 'repeat' && sides?.kind !== 'bracket')) return null;
  if (sides.stop.kind !== 'times' || (sides.kind === 'repeat' && sides.lastPassEnds !== null)) return null;
  const { body, stop } = sides;
  const passes = howMany(worker, stop.n) + (stop.more ? 1 : 0);
  if (passes < FEWEST_SIDES || !body.some(isSide) || !body.some(isCorner)) return null;
  if (!body.every((step) => isSide(step) || isCorner(step))) return null;
  const places = body.reduce((n, step) => n + placesOf(worker, step), 0);
  if (places * passes > MOST_PLACES) return null;
  const pass = body.flatMap((step) => sitesOf(worker, step));
  return Array.from({ length: passes }, () => pass).flat();
}

const BESIDE: ReadonlySet<Step['kind']> = new Set(['yarn', 'note', 'chain', 'join', 'turn', 'fasten off']);

function isSide(step: Step): step is EvenlyStep {
  return step.kind === 'evenly' && step.edge === 'row ends';
}

function isCorner(step: Step): boolean {
  if (step.kind !== 'work' && step.kind !== 'group') return false;
  return step.place?.kind === 'next' && step.place.what.kind === 'corner';
}

function placesOf(worker: Worker, step: Step): number {
  return step.kind === 'evenly' ? (valueFor(worker, step.n.values) ?? 0) : 1;
}

function sitesOf(worker: Worker, step: Step): Site[] {
  const place = plainSite('unknown', NONE, '');
  if (step.kind !== 'evenly') return [{ ...place, corner: true }];
  return Array.from({ length: placesOf(worker, step) }, () => place);
}

/** One stitch in each of the places of a side; null where the places are those of a real edge. */
export function workStatedSide(worker: Worker, step: EvenlyStep): boolean | null {
  if (worker.sites?.[worker.next]?.kind !== 'unknown') return null;
  // Joined at a corner, with the side worked before it: the corner comes last.
  if (worker.sites[0]?.corner === true && worker.next === 0) worker.sites.push(...worker.sites.splice(0, 1));
  const n = valueFor(worker, step.n.values) ?? 0;
  for (let i = 0; i < n; i += 1) {
    const site = worker.sites[worker.next];
    if (site === undefined) return null;
    const { stitch } = step;
    const special = stitch.kind === 'special' ? worker.specials.get(stitch.name) : undefined;
    const made =
      stitch.kind === 'stitch'
        ? makeStitch(worker, stitch.id, [site], 0, step.span)
        : special !== undefined && makeInto(worker, special.steps, site, special.name, worker.workSteps);
    if (!made) return false;
    passPlace(worker, worker.next);
  }
  return true;
}
