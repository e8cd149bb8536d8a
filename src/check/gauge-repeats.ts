/** A gauge counted in pattern repeats: how many stitches one is has to be known, and to be what the instructions say. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { firstMultiple } from '../pattern/pattern-repeat.ts';
import { type Publication, placeOf } from './publication.ts';

export function gaugeRepeats({ pattern }: Publication): Diagnostic[] {
  const { gauge, places, source } = pattern;
  const where = { file: source.file, span: placeOf(pattern, 'gauge.repeats', 'gauge') };
  if (gauge === null) return places.has('gauge.repeats') ? [diagnose('gauge/repeat-unknown', where, {})] : [];
  const multiple = firstMultiple(pattern);
  if (gauge.repeats === undefined || multiple === null) return [];
  const made = gauge.repeats * multiple.of;
  // Repeats are counted in halves and quarters too, and stitches to the whole.
  if (Math.abs(made - gauge.stitches) < 1) return [];
  const facts = { repeats: gauge.repeats, each: multiple.of, made, stated: gauge.stitches };
  return [diagnose('gauge/repeat', where, facts)];
}
