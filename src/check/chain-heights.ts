/** `Ch 5 (counts as dc)`: a chain that stands for a stitch and is not of its height. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { ChainStep, Step } from '../notation/tree.ts';
import { stitchById, termsOf } from '../stitches/table.ts';
import type { Publication } from './publication.ts';

export function chainHeights({ pattern }: Publication): Diagnostic[] {
  const { file } = pattern.source;
  return pattern.parts.flatMap(({ instructions }) =>
    instructions.lines.flatMap(({ steps }) =>
      chainsIn(steps).flatMap((chain) => {
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
    ),
  );
}

function chainsIn(steps: readonly Step[]): ChainStep[] {
  return steps.flatMap((step) =>
    step.kind === 'chain' ? [step] : 'body' in step ? chainsIn(step.body) : [],
  );
}
