/** Finished sizes without a gauge cannot be held to. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { type Publication, placeOf } from './publication.ts';

export function gaugeMissing({ pattern }: Publication): Diagnostic[] {
  // A pasted text may tell its gauge in words that were not read into figures, and are kept among the notes.
  if (pattern.gauge !== null || pattern.notes.some((note) => /\b(?:gauge|tension)\b/i.test(note))) return [];
  const stated = pattern.sizes.findIndex(({ widthMm, heightMm }) => widthMm !== null || heightMm !== null);
  if (stated === -1) return [];
  const side = pattern.sizes[stated]?.widthMm === null ? 'height' : 'width';
  const span = placeOf(pattern, `sizes.${stated}.${side}`, `sizes.${stated}`);
  return [diagnose('gauge/missing', { file: pattern.source.file, span }, {})];
}
