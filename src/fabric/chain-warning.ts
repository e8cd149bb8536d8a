/** A turning chain that the text leaves open in, the warning for it out. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { abbreviation } from '../notation/describe-what.ts';
import type { Step } from '../notation/tree.ts';
import type { ChainAssumed, Worker } from './worker.ts';

/** The warning for a turning chain that the text leaves open. */
export function chainWarning(assumed: ChainAssumed, worker: Worker, file: string): Diagnostic {
  const as = abbreviation(assumed.as, worker.terms);
  return diagnose(
    'chain/unstated',
    { file, span: assumed.span },
    {
      chains: assumed.chains,
      as: assumed.plusChains === 0 ? as : `${as} and ch ${assumed.plusChains}`,
      counts: assumed.counts,
      skipped: assumed.skipped,
    },
  );
}

/**
 * Whether the row after tells what the chain was taken for: one that works into its top takes it for a stitch, and one
 * that works into all of it for a loop, which no count has to do with.
 */
export function toldByNextRow(assumed: ChainAssumed, steps: readonly Step[]): boolean {
  return steps.some((step) => {
    if ('body' in step && toldByNextRow(assumed, step.body)) return true;
    const place = 'place' in step ? step.place : null;
    if (place?.kind === 'of-chain') return assumed.counts && place.space !== true;
    const whole = place?.kind === 'next' && place.what.kind === 'space' ? place.what.chains : null;
    return assumed.plusChains > 0 && whole === assumed.chains;
  });
}
