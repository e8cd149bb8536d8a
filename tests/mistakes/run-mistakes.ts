/** Mistakes of every pattern, tried one at a time: all of them, or every so many-th. */

import type { Lot, Original } from './collections.ts';
import { seedPattern } from './seed/seed-pattern.ts';
import { type Tried, tryEdit } from './try-edit.ts';
import { workSignature } from './work-signature.ts';

export type Sample = Readonly<Record<Lot, number>>;

export const ALL: Sample = { 'held-out': 1, others: 1 };
/** So many that the everyday test stays short. */
export const EVERYDAY: Sample = { 'held-out': 4, others: 17 };

export interface Run {
  readonly tried: readonly Tried[];
  /** Places where a mistake can be made, tried or not. */
  readonly places: Readonly<Record<Lot, number>>;
}

export function runMistakes(originals: readonly Original[], every: Sample): Run {
  const tried: Tried[] = [];
  const places = { 'held-out': 0, others: 0 };
  for (const original of originals) {
    const before = workSignature(original.compiled);
    for (const edit of seedPattern(original)) {
      if (places[original.lot] % every[original.lot] === 0) tried.push(tryEdit(original, before, edit));
      places[original.lot] += 1;
    }
  }
  return { tried, places };
}
