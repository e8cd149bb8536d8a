/** Every so many-th mistake of every pattern, tried. */

import type { Original } from './collections.ts';
import { seedPattern } from './seed/seed-pattern.ts';
import { type Tried, tryEdit } from './try-edit.ts';
import { workSignature } from './work-signature.ts';

/** `every` 1 tries them all; a larger number takes that one of each run of so many, beginning anywhere by name. */
export function runMistakes(
  originals: readonly Original[],
  every: number,
): { readonly tried: readonly Tried[]; readonly of: number } {
  const tried: Tried[] = [];
  let of = 0;
  for (const original of originals) {
    const before = workSignature(original.compiled);
    for (const edit of seedPattern(original)) {
      if (of % every === 0) tried.push(tryEdit(original, before, edit));
      of += 1;
    }
  }
  return { tried, of };
}

export function takenWords(tried: number, of: number): string {
  return tried === of
    ? `All ${of} places where a mistake can be made, one at a time.`
    : `${tried} of the ${of} places where a mistake can be made, one at a time.`;
}
