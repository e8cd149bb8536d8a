/** A row and the one on it in, the turning chain that the second calls a loop out: `5 ch, shell into …` and `9 tr into 5 ch loop`. */

import type { ChainStep, Place, Step } from '../notation/tree.ts';

/** Null where the row begins with no chain longer than any that stands for a stitch alone, or the next names no loop of it. */
export function loopNamedNext(steps: readonly Step[], next: readonly Step[]): ChainStep | null {
  const chain = steps.find(({ kind }) => kind !== 'note' && kind !== 'yarn' && kind !== 'turn');
  if (chain?.kind !== 'chain' || chain.counts !== null || 'of' in chain.n) return null;
  const [chains, another] = chain.n.values;
  if (chains == null || another !== undefined || chains < FEWEST) return null;
  // One of several of that length may be any.
  const others = steps.some((step) => step !== chain && step.kind === 'chain' && isOf(step, chains));
  return !others && next.some((step) => namesLoop(step, chains)) ? chain : null;
}

const FEWEST = 4;

function isOf({ n }: ChainStep, chains: number): boolean {
  return !('of' in n) && n.values.includes(chains);
}

function namesLoop(step: Step, chains: number): boolean {
  if (step.kind !== 'work' && step.kind !== 'group') return false;
  const place: Place | null = step.place;
  return place?.kind === 'next' && place.what.kind === 'space' && place.what.chains === chains;
}
