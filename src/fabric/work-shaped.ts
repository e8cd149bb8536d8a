/** A row of one stitch in each that gains or loses some on the way, worked: `sc around, inc 6 sts evenly`. */

import type { Shaping, WorkStep } from '../notation/tree.ts';
import { STITCHES } from '../stitches/table.ts';
import { isA, passPlace, reach } from './find-site.ts';
import { makeStitch } from './make-stitch.ts';
import type { Site } from './site.ts';
import { spread } from './spread.ts';
import { limitOf } from './stop-limit.ts';
import type { Worker } from './worker.ts';
import { stuck, valueFor } from './worker.ts';

/**
 * Where they lie is left to the maker by "evenly": they are spread so that no two gaps differ by more than one. Two
 * are worked together for each that is lost, two or more into one place for each that is gained.
 */
export function workShaped(worker: Worker, step: WorkStep, shaping: Shaping, loop: number): boolean {
  const { sites } = worker;
  const { place, stitch } = step;
  if (sites === null || place?.kind !== 'each' || stitch.kind !== 'stitch')
    return stuck(worker, { kind: 'used up', wanted: 'st', span: step.span });
  const along = placesOf(worker, sites, place);
  const n = valueFor(worker, shaping.n.values) ?? 0;
  const dec = shaping.does === 'dec';
  const counts = dec ? losses(shaping, n, along.length) : gains(shaping, n, along.length);
  const together = STITCHES.find(
    ({ legOf, uses, family }) => legOf === stitch.id && uses === 2 && family === 'together',
  );
  if (counts === null || (dec && together === undefined))
    return stuck(worker, { kind: 'used up', wanted: 'st', span: step.span });
  let at = 0;
  for (const count of counts) {
    const legs = dec ? count : 1;
    const into = along.slice(at, at + legs);
    at += legs;
    const places = into.map((index) => sites[index]).filter((site): site is Site => site !== undefined);
    const id = legs === 2 && together !== undefined ? together.id : stitch.id;
    for (let made = 0; made < (dec ? 1 : count); made += 1)
      if (!makeStitch(worker, id, places, loop, step.span)) return false;
    for (const index of into) passPlace(worker, index);
  }
  return true;
}

/** The places that "each" comes to. */
function placesOf(
  worker: Worker,
  sites: readonly Site[],
  { what, stop }: Extract<NonNullable<WorkStep['place']>, { kind: 'each' }>,
): readonly number[] {
  const end = Math.min(reach(worker), limitOf(worker, stop));
  const along: number[] = [];
  for (let i = worker.next; i < end; i += 1) {
    const site = sites[i];
    if (site !== undefined && isA(site, what)) along.push(i);
  }
  return along;
}

/** How many go into each place. */
function gains({ where }: Shaping, n: number, places: number): readonly number[] | null {
  if (where === 'evenly') return places === 0 || n > places ? null : spread(places + n, places);
  if (places < 2) return null;
  return Array.from({ length: places }, (_, i) => (isShaped(where, i, places, 1) ? 1 + n : 1));
}

/** How many places each stitch takes: two together for each that is lost. */
function losses({ where }: Shaping, n: number, places: number): readonly number[] | null {
  const lost = where === 'each end' ? 2 * n : n;
  const made = places - lost;
  if (made < lost || made < 1) return null;
  if (where === 'evenly') return spread(places, made);
  return Array.from({ length: made }, (_, i) => (isShaped(where, i, made, n) ? 2 : 1));
}

/** Whether the ith of so many is one of the n at an end that is shaped. */
function isShaped(where: Shaping['where'], i: number, of: number, n: number): boolean {
  return (where !== 'end' && i < n) || (where !== 'start' && i >= of - n);
}
