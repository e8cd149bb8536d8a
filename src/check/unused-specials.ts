/** A special stitch that is described but never worked leaves readers looking for it. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Publication } from './publication.ts';
import { usedNames } from './used-names.ts';

export function unusedSpecials({ pattern }: Publication): Diagnostic[] {
  const { specials, sure } = usedNames(pattern);
  if (!sure) return [];
  return (
    pattern.specials
      // What the trade fixes stands nowhere in the file.
      .filter(({ name, span }) => !specials.has(name) && span.end > span.start)
      .map(({ name, span }) => diagnose('special/unused', { file: pattern.source.file, span }, { name }))
  );
}
