/** Finished sizes without a gauge cannot be held to. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { type Publication, placeOf } from './publication.ts';

export function gaugeMissing({ pattern }: Publication): Diagnostic[] {
  if (pattern.gauge !== null) return [];
  const stated = pattern.sizes.findIndex(({ widthMm, heightMm }) => widthMm !== null || heightMm !== null);
  if (stated === -1) return [];
  const side = pattern.sizes[stated]?.widthMm === null ? 'height' : 'width';
  const span = placeOf(pattern, `sizes.${stated}.${side}`, `sizes.${stated}`);
  return [diagnose('gauge/missing', { file: pattern.source.file, span }, {})];
}
