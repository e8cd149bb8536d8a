/** The trade's abbreviations that name no stitch (`sp`, `rnd`, `RS`), with their form and meaning in each dialect. */

import table from '../../shared/abbreviations.json' with { type: 'json' };
import type { Terms } from './stitch-row.ts';

export interface AbbreviationTerms {
  /** As printed: `sk` in US terms, `miss` in UK terms. */
  readonly abbr: string;
  readonly meaning: string;
}

export interface Abbreviation {
  readonly id: string;
  readonly us: AbbreviationTerms;
  readonly uk: AbbreviationTerms;
  /** A published source's kind, or where it is remembered from. */
  readonly source: string;
}

const GENERAL = table.abbreviations.filter((row) => row.kind === 'general');

/** In the order of the trade's list. */
export const ABBREVIATIONS: readonly Abbreviation[] = GENERAL.map(({ id, us, uk, source }) => ({
  id,
  us: { abbr: us.abbr, meaning: us.meaning },
  uk: { abbr: uk.abbr, meaning: uk.meaning },
  source,
}));

const BY_ID: ReadonlyMap<string, Abbreviation> = new Map(ABBREVIATIONS.map((row) => [row.id, row]));
const BY_WORDS: Readonly<Record<Terms, ReadonlyMap<string, Abbreviation>>> = {
  US: wordsIn('us'),
  UK: wordsIn('uk'),
};

/** The row of an id that the program itself wrote; an unknown id is a fault of ours. */
export function abbreviationById(id: string): Abbreviation {
  const row = BY_ID.get(id);
  if (row === undefined) throw new Error(`No abbreviation ${id} in the list.`);
  return row;
}

/** The abbreviation that a word is in a dialect, also in the plural and in any case: `sts`, `Rnds`, `ws`. */
export function findAbbreviation(words: string, terms: Terms): Abbreviation | null {
  return BY_WORDS[terms].get(words.toLowerCase()) ?? null;
}

export function abbreviationTerms(row: Abbreviation, terms: Terms): AbbreviationTerms {
  return terms === 'US' ? row.us : row.uk;
}

function wordsIn(dialect: 'us' | 'uk'): Map<string, Abbreviation> {
  const byWords = new Map<string, Abbreviation>();
  for (const row of GENERAL) {
    const { abbr, also } = row[dialect];
    const found = BY_ID.get(row.id);
    for (const form of [abbr, ...also]) {
      if (found === undefined) continue;
      byWords.set(form.toLowerCase(), found);
      if (!byWords.has(`${form.toLowerCase()}s`)) byWords.set(`${form.toLowerCase()}s`, found);
    }
  }
  return byWords;
}
