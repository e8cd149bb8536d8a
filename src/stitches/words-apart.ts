/** A dialect in, the words that only the other one uses out, each with what this one says: in US terms `htr` is `hdc`. */

import type { Terms } from './stitch-row.ts';
import { findStitch, STITCHES, termsOf } from './table.ts';

export interface ForeignWord {
  /** As the other dialect writes it. */
  readonly words: string;
  /** In this dialect. */
  readonly own: string;
}

/** The words and their own in the pattern's terms, by lower-case words, and the expression that finds them. */
export interface ForeignWords {
  readonly find: RegExp;
  readonly own: ReadonlyMap<string, string>;
}

/** What is said of stitches: "do not miss the last corner" and "skip it if you like" are plain English. */
const NOT_FORBIDDEN = "(?<!\\b(?:not|never|can[’']t|don[’']t)\\s+)";
const BEFORE_A_PLACE =
  '(?=\\s+(?:\\d|next\\b|one\\b|(?:the\\s+)?(?:first|last|next)\\b|each\\b|(?:two|three)\\b))';

/**
 * Words other than stitches that only one of the two uses (common practice). "Tension" is how tightly one works in both,
 * and the swatch only in UK terms; `yo`, `skip` in full
 * and spelling tell nothing, for both are met in patterns of either kind.
 */
const OTHER_WORDS: Readonly<Record<Terms, readonly (readonly [form: string, own: string])[]>> = {
  US: [
    [`${NOT_FORBIDDEN}miss${BEFORE_A_PLACE}`, 'skip'],
    ['yrh', 'yo'],
    ['yarn round hook', 'yarn over'],
    ['tension (?:square|swatch|sample)', 'gauge swatch'],
    ['work straight', 'work even'],
    ['half treble', 'half double crochet'],
  ],
  UK: [
    ['sk', 'miss'],
    ['gauge', 'tension'],
    ['work even', 'work straight'],
    ['half double', 'half treble'],
  ],
};

/** What a name must hold to be of the other terms beyond doubt: `dc bobble` is a stitch in both, though not the same. */
const BEYOND_DOUBT: Readonly<Record<Terms, RegExp>> = {
  US: /htr|half treble/,
  UK: /sc|hdc|single crochet|half double/,
};

/** Of stitches and of all else, for sentences to a maker. */
export const FOREIGN_WORDS: Readonly<Record<Terms, ForeignWords>> = {
  US: foreignWords('US', true),
  UK: foreignWords('UK', true),
};

/** Of all but stitches, for rows: a stitch of the other terms is no stitch there at all, and told as that. */
export const FOREIGN_ROW_WORDS: Readonly<Record<Terms, ForeignWords>> = {
  US: foreignWords('US', false),
  UK: foreignWords('UK', false),
};

/** What this dialect says for a word found; the word is matched without regard to capitals and spaces. */
export function ownWord(found: string, { own }: ForeignWords): string | null {
  const words = found.toLowerCase().replace(/\s+/g, ' ');
  return own.get(words) ?? null;
}

function foreignWords(terms: Terms, stitches: boolean): ForeignWords {
  const own = new Map<string, string>();
  const forms: string[] = [];
  for (const { words, own: here } of stitches ? stitchesApart(terms) : []) {
    own.set(words, here);
    forms.push(words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/ /g, '\\s+'));
  }
  for (const [form, here] of OTHER_WORDS[terms]) {
    forms.push(form.replace(/ /g, '\\s+'));
    const plain = form.replace(NOT_FORBIDDEN, '').replace(BEFORE_A_PLACE, '');
    for (const words of spellings(plain)) own.set(words, here);
  }
  // Longest first; a digit before and a plural s after may be glued: `3htr`, `half trebles`.
  forms.sort((a, b) => b.length - a.length);
  return { find: new RegExp(`(?<![a-z-])(?:${forms.join('|')})(?=s?(?![a-z-]))`, 'gi'), own };
}

/** `tension (?:square|swatch)` is two words to look up. */
function spellings(form: string): string[] {
  const [, before = '', choices, after = ''] = /^(.*)\(\?:(.*)\)(.*)$/.exec(form) ?? [];
  return choices === undefined ? [form] : choices.split('|').map((choice) => `${before}${choice}${after}`);
}

/** Names of stitches, short and full, that this dialect does not read as a stitch at all. */
function stitchesApart(terms: Terms): ForeignWord[] {
  const other: Terms = terms === 'US' ? 'UK' : 'US';
  const found = new Map<string, string>();
  for (const row of STITCHES) {
    const [theirs, own] = [termsOf(row, other), termsOf(row, terms)];
    for (const [words, here] of [
      [theirs.abbr, own.abbr],
      [theirs.name, own.name],
    ] as const) {
      const key = words.toLowerCase();
      if (BEYOND_DOUBT[terms].test(key) && findStitch(words, terms) === null && !found.has(key))
        found.set(key, here);
    }
  }
  return [...found].map(([words, here]) => ({ words, own: here }));
}
