/** Changes listed against the day of the version that is published. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { type Publication, placeOf } from './publication.ts';

/** ISO dates are in order as text. */
export function lateChanges({ pattern }: Publication): Diagnostic[] {
  const { date, changes } = pattern;
  if (date === null) return [];
  return changes
    .filter((change) => change.date > date)
    .map((change) =>
      diagnose(
        'change/later',
        { file: pattern.source.file, span: placeOf(pattern, `changes.${change.index}.date`) },
        { change: change.date, version: date },
      ),
    );
}
