/** The words for a row and a round, and what a part is worked in where no word says it. */

import type { Cursor } from './cursor.ts';
import { peek, writtenAt } from './cursor.ts';
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

/** `Rnds` is `Rnd` for one of them; `ROW` stays as it is. */
export function asWritten(cursor: Cursor): string {
  const said = writtenAt(cursor, cursor.at);
  return ONE_ROW.get(said) ?? capital(said).replace(/s$/i, '');
}

/** What nearly every label begins with. */
const ONE_ROW: ReadonlyMap<string, string> = new Map(
  ['Row', 'Rnd', 'Round'].flatMap((word) => [
    [word, word],
    [`${word}s`, word],
  ]),
);

function capital(word: string): string {
  return word.slice(0, 1).toUpperCase() + word.slice(1);
}

/** What rows are that no word names, `R3`, `3.`: the whole text is looked through when that is first asked. */
export function unitOfPart({ part, mapped }: Cursor): Unit {
  part.unit ??= unitOf(mapped.text);
  return part.unit;
}

/** Down one side of the chain and up the other, closed where it began: a leaf, an oval. */
const GOES_ROUND_CHAIN =
  /\b(?:other|second|opposite) side of (?:the )?(?:foundation |starting |beg(?:inning)? )?ch(?:ain)?\b[^\n]*\b(?:sl st|slip stitch|ss) (?:in|into|to) (?:the )?first\b/i;

/** What a part is worked in, told by its words. */
function unitOf(text: string): Unit {
  if (/\b(?:rnds?|rounds?)\b/i.test(text)) return 'round';
  if (/\brows?\b/i.test(text)) return 'row';
  if (/\b(?:ring|circle|mr|around)\b/i.test(text) || GOES_ROUND_CHAIN.test(text)) return 'round';
  // What is turned is no round, though its yarn is joined.
  return /\bjoin\b/i.test(text) && !/\bturn\b/i.test(text) ? 'round' : 'row';
}
