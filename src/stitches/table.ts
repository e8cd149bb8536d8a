/** The whole stitch table, and the ways into it: by id, and by a word of either dialect. */

import { BASIC } from './basic.ts';
import { CHAIN } from './chain.ts';
import { EXTENDED } from './extended.ts';
import { FANCY } from './fancy.ts';
import { FOUNDATION } from './foundation.ts';
import { GATHERED } from './gathered.ts';
import { LINKED } from './linked.ts';
import { POST } from './post.ts';
import { STANDING } from './standing.ts';
import { START } from './start.ts';
import type { StitchRow, StitchTerms, Terms } from './stitch-row.ts';
import { TOGETHER } from './together.ts';

const FAMILIES: readonly (readonly StitchRow[])[] = [
  CHAIN,
  BASIC,
  EXTENDED,
  TOGETHER,
  START,
  FOUNDATION,
  POST,
  GATHERED,
  LINKED,
  STANDING,
  FANCY,
];

export const STITCHES: readonly StitchRow[] = FAMILIES.flat();

export interface StitchName {
  /** Lower case, as a pattern may write it. */
  readonly words: string;
  readonly row: StitchRow;
}

const BY_ID: ReadonlyMap<string, StitchRow> = new Map(STITCHES.map((row) => [row.id, row]));
const NAMES: Readonly<Record<Terms, readonly StitchName[]>> = { US: namesIn('US'), UK: namesIn('UK') };
const BY_WORDS: Readonly<Record<Terms, ReadonlyMap<string, StitchRow>>> = {
  US: wordsIn('US'),
  UK: wordsIn('UK'),
};

/** The row of an id that the program itself wrote; an unknown id is a fault of ours. */
export function stitchById(id: string): StitchRow {
  const row = BY_ID.get(id);
  if (row === undefined) throw new Error(`No stitch ${id} in the table.`);
  return row;
}

/**
 * The stitch that words mean in a dialect: abbreviation, full name, plural or another spelling, with or without
 * spaces, hyphens and stops. Words that name their own dialect, `tr (UK)`, are read in that.
 */
export function findStitch(words: string, terms: Terms): StitchRow | null {
  // Most words are lower case and need no tidying; this is asked once for every word of a pattern.
  const asWritten = BY_WORDS[terms].get(words);
  if (asWritten !== undefined) return asWritten;
  const key = squashed(words);
  if (!key.endsWith(')')) return BY_WORDS[terms].get(key) ?? null;
  const own = /^(.+)\((us|uk)\)$/.exec(key);
  if (own === null) return null;
  return BY_WORDS[own[2] === 'us' ? 'US' : 'UK'].get(own[1] ?? '') ?? null;
}

/** Every spelling that a dialect reads, singular, in the order of the table: for longest match and near words. */
export function stitchNames(terms: Terms): readonly StitchName[] {
  return NAMES[terms];
}

export function termsOf(row: StitchRow, terms: Terms): StitchTerms {
  return terms === 'US' ? row.us : row.uk;
}

function namesIn(terms: Terms): StitchName[] {
  return STITCHES.flatMap((row) => {
    const { abbr, name, alsoRead } = termsOf(row, terms);
    const spellings = new Set([abbr, name, ...alsoRead].map((words) => words.toLowerCase()));
    return [...spellings].map((words) => ({ words, row }));
  });
}

function wordsIn(terms: Terms): Map<string, StitchRow> {
  const byWords = new Map<string, StitchRow>();
  for (const { words, row } of NAMES[terms]) {
    const plural = words.endsWith('stitch') ? `${words}es` : `${words}s`;
    byWords.set(squashed(words), row);
    byWords.set(squashed(plural), row);
  }
  return byWords;
}

function squashed(words: string): string {
  return words.toLowerCase().replace(/[\s.‐‑–−-]+/g, '');
}
