/** The words for a row and a round. */

import type { Cursor } from './cursor.ts';
import { peek } from './cursor.ts';
import type { Unit } from './line.ts';
import { WordMap, WordSet } from './word-set.ts';

const UNIT_WORDS = new WordMap<Unit>([
  ['row', 'row'],
  ['rows', 'row'],
  ['rnd', 'round'],
  ['rnds', 'round'],
  ['round', 'round'],
  ['rounds', 'round'],
]);

/** `Row`, `Rnds`; null when none stands `ahead` tokens on. */
export function unitAt(cursor: Cursor, ahead = 0): Unit | null {
  return UNIT_WORDS.of(peek(cursor, ahead)) ?? null;
}

export const UNITS = new WordSet(UNIT_WORDS.keys());
