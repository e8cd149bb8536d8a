/** A special stitch that begins a row, its first stitch the turning chain: `ch 4, dc in first st` where a V-st is (dc, ch 1, dc). */

import type { What } from '../notation/tree.ts';
import { countedId, kindId } from './builder.ts';
import { NONE } from './fabric.ts';
import { afterPlace, isA, reach } from './find-site.ts';
import type { Site } from './site.ts';
import { plainName } from './special-name.ts';
import type { Worker } from './worker.ts';

/**
 * Where the next place is such a one, met last on the way back, the index of its middle; -1 where it is not. Its turning
 * chain may still be worked into by itself.
 */
export function begunSpecial(worker: Worker, name: string): number {
  const { sites, next } = worker;
  const first = sites?.[next];
  if (sites === null || first === undefined || first.special !== null || first.kind !== 'stitch') return -1;
  const whole = makeUp(worker, name);
  if (whole === null || whole.length % 2 === 0) return -1;
  let at = next;
  let middle = -1;
  let last: Site | undefined;
  for (const [i, part] of whole.entries()) {
    last = sites[at];
    if (last === undefined || last.special !== null || nameOf(last) !== part) return -1;
    if (i === (whole.length - 1) / 2) middle = at;
    at = afterPlace(sites, at);
  }
  // The chain itself may be kept for words of its own, `V-st in top of tch`.
  return last?.isChain === true && middle < reach(worker) ? middle : -1;
}

function nameOf({ space, spaceChains, id }: Site): string {
  return space === NONE ? id : `ch-${spaceChains}`;
}

/** The stitches and spaces of one that was worked by its name; null where none was. */
function makeUp({ builder }: Worker, name: string): readonly string[] | null {
  const group = builder.groups.find(
    ({ special }) => special !== null && (special === name || plainName(special) === name),
  );
  if (group === undefined) return null;
  const parts: string[] = [];
  let chains = 0;
  for (let i = group.first; i < group.end; i += 1) {
    const id = countedId(builder, i);
    if (id === null && kindId(builder, i) === 'ch') chains += 1;
    if (id === null) continue;
    if (chains > 0) parts.push(`ch-${chains}`);
    chains = 0;
    parts.push(id);
  }
  return parts;
}

/** Whether of a special stitch there is one left and no more: `5 tr in the last V-st` then goes into its middle, as into any. */
export function isOnlyOne({ sites, next, last }: Worker, what: What): boolean {
  if (what.kind !== 'special' || sites === null) return false;
  const behind = sites[last]?.group ?? NONE;
  const groups = new Set<number>();
  for (const site of sites.slice(next)) if (site.group !== behind && isA(site, what)) groups.add(site.group);
  // A gap before it leaves its first stitch to be passed.
  if (behind !== NONE && sites[next]?.group === behind && next === last) groups.add(behind);
  return groups.size === 1 && !groups.has(NONE);
}
