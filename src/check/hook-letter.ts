/** A hook's millimetres against the letter written beside them. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { bears, hookSize, hooksNamed } from '../measure/hooks.ts';
import { printMm } from '../units.ts';
import { type Publication, placeOf } from './publication.ts';

/** Silent on a width that no list has: there is nothing to hold the letter against. */
export function hookLetter({ pattern }: Publication): Diagnostic[] {
  const { hookMm, hookUs } = pattern;
  if (hookMm === null || hookUs === null || hookSize(hookMm) === null || bears(hookMm, hookUs)) return [];
  const named = [...new Set(hooksNamed(hookUs).map(({ mm }) => printMm(mm)))];
  const facts = {
    mm: printMm(hookMm),
    us: /^\d/.test(hookUs) ? `US ${hookUs}` : hookUs,
    is: named.length === 0 ? null : named.join(' or '),
  };
  return [diagnose('hook/letter', { file: pattern.source.file, span: placeOf(pattern, 'hook') }, facts)];
}
