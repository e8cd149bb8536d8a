/** Balls listed for another number of sizes than there are would be bought for the wrong ones. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { type Publication, placeOf } from './publication.ts';

export function ballsPerSize({ pattern }: Publication): Diagnostic[] {
  const sizes = pattern.sizes.length;
  return pattern.yarns.flatMap(({ letter, balls }) => {
    if (balls === null || balls.length === 1 || balls.length === sizes) return [];
    const span = placeOf(pattern, `yarn.${letter}.balls`, `yarn.${letter}`);
    return [
      diagnose('size/list-length', { file: pattern.source.file, span }, { given: balls.length, sizes }),
    ];
  });
}
