/** A turning chain that the text leaves open in, the warning for it out. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { abbreviation } from '../notation/describe-what.ts';
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
