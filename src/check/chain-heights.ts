/** `Ch 5 (counts as dc)`: a chain that stands for a stitch, or beside one, and is not of its height. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { ChainStep, Step } from '../notation/tree.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { stitchById, termsOf } from '../stitches/table.ts';
import type { Publication } from './publication.ts';

export function chainHeights({ pattern }: Publication): Diagnostic[] {
  const { file } = pattern.source;
  return pattern.parts.flatMap(({ instructions }) =>
    instructions.lines.flatMap(({ steps }) => [
      ...towering(steps, file, pattern.terms),
      ...chainsIn(steps).flatMap((chain) => {
        if (!('values' in chain.n)) return [];
        const where = { file, span: chain.span };
        if (chain.n.values.includes(0)) return [diagnose('chain/none', where, {})];
        const as = chain.counts?.as ?? null;
        const usual = as === null || as === 'st' ? null : stitchById(as).turningChain;
        const [made = null] = chain.n.values;
        if (usual === null || as === null || made === null) return [];
        const upright = made - (chain.counts?.plusChains ?? 0);
        // One fewer is a habit of many makers, for a neater edge (common practice).
        if (upright === usual.chains || upright === usual.chains - 1) return [];
        const facts = {
          chains: upright,
          usual: usual.chains,
          stitch: termsOf(stitchById(as), pattern.terms).abbr,
        };
        return [diagnose('chain/height', where, facts)];
      }),
    ]),
  );
}

/** Of a chain that only lifts the hook, so much more than the stitch takes is no habit. */
const MUCH_HIGHER = 2;

/** `Ch 3, sc in each st across`: the row begins with a chain that counts as nothing and stands above its stitches. */
function towering(steps: readonly Step[], file: string, terms: Terms): Diagnostic[] {
  const [chain, next] = steps.filter(({ kind }) => kind !== 'note' && kind !== 'yarn' && kind !== 'turn');
  if (chain?.kind !== 'chain' || !('values' in chain.n) || chain.counts?.as != null) return [];
  if (next?.kind !== 'work' || next.stitch.kind !== 'stitch') return [];
  const { place } = next;
  const intoStitch =
    place === null || ('what' in place && (place.what.kind === 'st' || place.what.kind === 'stitch'));
  // A chain before the next stitch may be a loop to work into; before each of them it is not.
  const lifts = (chain.counts !== null && chain.counts.loop !== true) || place?.kind === 'each';
  const usual = stitchById(next.stitch.id).turningChain;
  const [made = null] = chain.n.values;
  if (usual === null || made === null || !intoStitch || !lifts || made - usual.chains < MUCH_HIGHER)
    return [];
  // Where nothing is said and such a chain may count, it is asked for elsewhere.
  if (chain.counts === null && usual.counts !== 'no') return [];
  const stitch = termsOf(stitchById(next.stitch.id), terms).abbr;
  return [
    diagnose('chain/too-tall', { file, span: chain.span }, { chains: made, usual: usual.chains, stitch }),
  ];
}

function chainsIn(steps: readonly Step[]): ChainStep[] {
  return steps.flatMap((step) =>
    step.kind === 'chain' ? [step] : 'body' in step ? chainsIn(step.body) : [],
  );
}
