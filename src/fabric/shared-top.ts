/** Pieces that go on from one another's top side by side, such as the shoulders of a back: what each leaves for the next. */

import type { Step } from '../notation/tree.ts';
import type { FabricRow } from './fabric.ts';
import type { Top } from './row-start.ts';
import { isOwed } from './site.ts';
import type { Worker } from './worker.ts';

export interface SharedTop {
  readonly top: Top;
  /** What of it parts that go on from it have been worked into. */
  readonly taken: Set<number>;
}

/** The top a part begins on: what is left of it where its first words go on from the part before, else all. */
export function topFor({ top, taken }: SharedTop, steps: readonly Step[]): Top {
  if (taken.size === 0 || !goesOn(steps)) return top;
  const places = top.sites.flatMap(({ node }, at) => (taken.has(node) ? [at] : []));
  const [first, last] = [places[0] ?? 0, places.at(-1) ?? -1];
  const sites = top.sites.filter((_, at) => at < first || at > last);
  return { ...top, sites, stitches: sites.filter(isOwed).length };
}

/** `Skip next 18 sts and join yarn`, `Join yarn in next st`: "next" is next to where the last piece stopped. */
function goesOn(steps: readonly Step[]): boolean {
  for (const step of steps) {
    if (step.kind === 'skip') return step.pick === 'next';
    if (step.kind === 'yarn' && step.place !== null) return step.place.kind === 'next';
    if (step.kind !== 'yarn' && step.kind !== 'note') return false;
  }
  return false;
}

/** Notes what the first row of a part was worked into, for the part beside it. */
export function noteTaken(from: SharedTop, { builder }: Worker, row: FabricRow | undefined): void {
  if (row === undefined) return;
  const nodes = new Set(from.top.sites.map(({ node }) => node));
  // A decrease goes into several.
  const { into, intoStart } = builder;
  const end = intoStart[row.end] ?? into.length;
  for (let at = intoStart[row.first] ?? end; at < end; at += 1) {
    const node = into[at];
    if (node !== undefined && nodes.has(node)) from.taken.add(node);
  }
}
