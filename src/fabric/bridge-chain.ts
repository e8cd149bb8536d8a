/** A chain that goes over stitches passed at the very start of a round, as over a thumb: it is none that rises. */

import type { Step } from '../notation/tree.ts';
import { stitchById } from '../stitches/table.ts';
import type { Top } from './row-start.ts';

/** `Ch 9, sk next 9 sts, sc in next 27 sts`: over what is skipped, where it cannot be the round's turning chain. */
export function beginsWithBridge(steps: readonly Step[], below: Top['closing'] | undefined): boolean {
  const [chain, skip, over] = steps.filter(({ kind }) => kind !== 'note' && kind !== 'yarn');
  if (chain?.kind !== 'chain' || chain.counts !== null || 'of' in chain.n || skip?.kind !== 'skip')
    return false;
  if (over?.kind !== 'work' || over.stitch.kind !== 'stitch') return false;
  // In a spiral nothing rises. In a joined round only a stitch as low as a single crochet is sure to need no such chain.
  if (below === 'spiral') return true;
  const height = stitchById(over.stitch.id).heightChains;
  const several = skip.n?.values.every((n) => n !== null && n > 1) === true;
  return several && height <= 1 && chain.n.values.every((n) => n !== null && n > height + 1);
}
