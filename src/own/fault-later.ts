/**
 * What stands in for `diagnostics/catalogue.ts` in a page's script: a fault keeps its code and facts, and is worded when it
 * has to be told. `site/page-scripts.ts` puts it there.
 */

import type { Code, Facts, Where } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { SOFTER_CODES } from '../diagnostics/softer-codes.ts';

const softer: ReadonlySet<string> = new Set(SOFTER_CODES);

/** A fault not worded yet. */
export interface LaterFault<C extends Code = Code> extends Diagnostic {
  readonly code: C;
  readonly where: Where;
  readonly facts: Facts<C>;
}

export function diagnose<C extends Code>(code: C, where: Where, facts: Facts<C>): LaterFault<C> {
  return {
    code,
    severity: softer.has(code) ? 'warning' : 'error',
    message: '',
    why: '',
    try: '',
    file: where.file,
    span: where.span,
    labels: where.labels ?? [],
    sizes: where.sizes ?? [],
    where,
    facts,
  };
}
