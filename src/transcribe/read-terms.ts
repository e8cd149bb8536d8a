/** A pasted text's lines in, whether it is written in US or UK terms and what tells it out. */

import { fileSpan, type MappedText } from '../source/mapped-text.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import type { TranscribedTerms } from './transcript.ts';

const US = /\b(?:u\.?s\.?a?|american|us\/canadian|north american)\b\.?/i;
const UK = /\b(?:u\.?k|british|english|uk\/au|australian)\b\.?/i;
const OF_TERMS = /\b(?:terms?|terminology|abbreviations?|crochet terms|notation)\b/i;

/** `Written in US terms.`, `UK terminology`, `(US terms)`; null for a line that states nothing. */
export function statedTerms(text: string): { value: Terms; start: number; end: number } | null {
  if (!OF_TERMS.test(text)) return null;
  const [us, uk] = [US.exec(text), UK.exec(text)];
  // Where both are named the one said first is the one written in: "US terms (UK in brackets)".
  const first = us === null ? uk : uk === null || us.index < uk.index ? us : uk;
  if (first === null) return null;
  // "not UK terms" says the other.
  const denied = /\bnot\s+(?:in\s+)?$/i.test(text.slice(0, first.index));
  const value = (first === us) !== denied ? 'US' : 'UK';
  return { value, start: first.index, end: first.index + first[0].length };
}

/** What follows a heading such as `Terms:`. */
export function namedTerms(text: string): Terms | null {
  if (US.test(text) && !UK.test(text)) return 'US';
  return UK.test(text) && !US.test(text) ? 'UK' : null;
}

/** The line is nothing but the statement. */
export function onlyStatesTerms(text: string): boolean {
  return text.split(' ').length <= 10 && statedTerms(text) !== null && !/[.!?]\s+\p{Lu}/u.test(text);
}

type Sign = readonly [Terms, RegExp];

/** Words that only one of the two uses. */
const WORDS: readonly Sign[] = [
  ['US', /\b\d*(?:sc|hdc)(?:\d+tog)?\b|\bsingle crochets?\b|\bhalf double\b/i],
  [
    'UK',
    /\b\d*htr(?:\d+tog)?\b|\bhalf treble\b|\byrh\b|\bmiss(?= (?:\d|next|one|the|first|two|three|a|last|each|over))/i,
  ],
];

/** What the first chains stand for, and how high the row after them is: a row of US dc begins with 3 chains. */
const HEIGHTS: readonly Sign[] = [
  ['US', /\b(?:ch|chain)\s*3\s*[([]\s*counts? as (?:a |an |1 |one |first |1st )*dc\b/i],
  ['UK', /\b(?:3\s*ch|(?:ch|chain)\s*3)\s*[([]\s*counts? as (?:a |an |1 |one |first |1st )*tr\b/i],
  ['US', /\b(?:ch|chain)\s*4\s*[([]\s*counts? as (?:a |an |1 |one |first |1st )*tr\b/i],
  ['UK', /\bdc in(?:to)? (?:the )?(?:2nd|second) ch\b/i],
  ['US', /\bdc in(?:to)? (?:the )?(?:3rd|third|4th|fourth) ch\b/i],
  ['UK', /\btr in(?:to)? (?:the )?(?:3rd|third|4th|fourth) ch\b/i],
  ['US', /\btr in(?:to)? (?:the )?(?:5th|fifth) ch\b/i],
  ['UK', /(?:^|[:.,–-]\s*)(?:ch\s*1|1\s*ch)\b[^,.;]{0,30}, (?:\d+ ?)?dc\b/i],
  ['US', /(?:^|[:.,–-]\s*)(?:ch\s*3|3\s*ch)\b[^,.;]{0,30}, (?:\d+ ?)?dc\b/i],
  ['UK', /(?:^|[:.,–-]\s*)(?:ch\s*3|3\s*ch)\b[^,.;]{0,30}, (?:\d+ ?)?tr\b/i],
  ['US', /(?:^|[:.,–-]\s*)(?:ch\s*4|4\s*ch)\b[^,.;]{0,30}, (?:\d+ ?)?tr\b/i],
];

/** Spelling and lesser words: they tell where nothing else does. */
const LEANINGS: readonly Sign[] = [
  ['US', /\bsk(?:ip)?\b|\bcolor\b|\bcenter\b|\bgray\b/i],
  ['UK', /\bcolour\b|\bcentre\b|\bgrey\b|\bwork straight\b/i],
];

/** Stitches whose names differ between the two. */
const NAMED_APART = /\b\d*(?:dc|tr|dtr|trtr|edc|etr)(?:\d+tog)?\b|\bdouble crochet\b|\btreble\b/i;

export interface TermsRead {
  readonly terms: TranscribedTerms;
  /** The word of the other terms, where the text has words of both. */
  readonly against: { readonly text: MappedText; readonly start: number; readonly end: number } | null;
}

/** `work` is what instructs: rows, special stitches, abbreviations; `tension` a heading of that name. */
export function readTerms(
  stated: TranscribedTerms | null,
  work: readonly MappedText[],
  tension: MappedText | null,
): TermsRead {
  const us = firstOf(
    WORDS.filter(([terms]) => terms === 'US'),
    work,
  );
  const uk = firstOf(
    WORDS.filter(([terms]) => terms === 'UK'),
    work,
  );
  if (stated !== null) {
    const other = stated.value === 'US' ? uk : us;
    const own = stated.value === 'US' ? us : uk;
    return { terms: stated, against: other !== null && own === null ? other : null };
  }
  if (us !== null) return { terms: told('US', 'words', us), against: uk };
  if (uk !== null) return { terms: told('UK', 'words', uk), against: null };
  if (tension !== null)
    return {
      terms: told('UK', 'words', { text: tension, start: 0, end: tension.text.length }),
      against: null,
    };
  for (const [signs, by] of [
    [HEIGHTS, 'heights'],
    [LEANINGS, 'words'],
  ] as const) {
    const found = signs
      .map((sign) => ({ terms: sign[0], found: firstOf([sign], work) }))
      .filter((sign) => sign.found !== null);
    const only = new Set(found.map((sign) => sign.terms)).size === 1 ? found[0] : undefined;
    if (only !== undefined && only.found !== null)
      return { terms: told(only.terms, by, only.found), against: null };
  }
  const open = work.some(({ text }) => NAMED_APART.test(text));
  return { terms: { value: 'US', told: open ? 'not told' : 'words', by: null, span: null }, against: null };
}

interface Found {
  readonly text: MappedText;
  readonly start: number;
  readonly end: number;
}

function told(value: Terms, by: 'words' | 'heights', { text, start, end }: Found): TranscribedTerms {
  const words = text.text.slice(start, end).replace(/^[:.,–-]\s*/, '');
  return { value, told: by, by: words, span: fileSpan(text, end - words.length, end) };
}

function firstOf(signs: readonly Sign[], texts: readonly MappedText[]): Found | null {
  for (const text of texts) {
    for (const [, sign] of signs) {
      const found = sign.exec(text.text);
      if (found !== null) return { text, start: found.index, end: found.index + found[0].length };
    }
  }
  return null;
}
