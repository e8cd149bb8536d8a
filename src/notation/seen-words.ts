/**
 * One token for one word, with one string: reading compares words all day, and the same string is compared by its address
 * alone.
 *
 * A word of plain letters is known by its letters packed into two whole numbers, so that it is found again without being
 * taken out of the text. Any other word, `dc2tog`, `don't`, `3rd`, is looked up by what is written. Both tables have a
 * fixed size; when one is full, a word not yet met is made anew each time. Words that are kept are numbered from 1.
 */

import type { Token, TokenKind, Twins } from './token.ts';
import { makeToken, makeTwins } from './token.ts';

/** Letters that go into one whole number, five bits to a letter. */
export const HALF_LETTERS = 6;
/** Longer words are among the others. */
export const MOST_LETTERS = 2 * HALF_LETTERS;

/** Places in the table, a power of two; a quarter of them stays empty, so that what is looked for is near. */
const PLACES = 1 << 12;
const MOST_WORDS = PLACES - PLACES / 4;

const firsts = new Int32Array(PLACES);
const seconds = new Int32Array(PLACES);
/** The word at each place: behind something, and with nothing between. */
const apart: (Token | undefined)[] = new Array<Token | undefined>(PLACES).fill(undefined);
const together: (Token | undefined)[] = new Array<Token | undefined>(PLACES).fill(undefined);
let kept = 0;

/** The words that are not found by their letters, by what is written. */
const others = new Map<string, Twins>();
const MOST_OTHERS = PLACES - MOST_WORDS - 1;

/** No word has a number as high. */
export const MOST_IDS = PLACES;

/** The place of an ASCII letter of either case in the alphabet, from 1; outside of 1 to 26 for anything else. */
export function letterNumber(code: number): number {
  return (code | CASE_BIT) - BEFORE_FIRST;
}

const CASE_BIT = 0x20;
const BEFORE_FIRST = 96;
export const LETTER_BITS = 5;
export const LAST_LETTER = 26;

/** The word whose letters were packed, in lower case: the same token each time. */
export function seenWord(
  first: number,
  second: number,
  text: string,
  start: number,
  end: number,
  glued: boolean,
): Token {
  const length = end - start;
  if (length > MOST_LETTERS) return otherWord('word', text.slice(start, end).toLowerCase(), 0, length, glued);
  const words = glued ? together : apart;
  let place = placeOf(first, second);
  for (;;) {
    const met = words[place];
    if (met === undefined) break;
    if (firsts[place] === first && seconds[place] === second) return met;
    place = (place + 1) & (PLACES - 1);
  }
  const word = text.slice(start, end).toLowerCase();
  if (kept === MOST_WORDS) return makeToken('word', asName(word), 0, length, glued);
  kept += 1;
  firsts[place] = first;
  seconds[place] = second;
  const twins = makeTwins('word', asName(word), 0, kept + others.size);
  apart[place] = twins.apart;
  together[place] = twins.glued;
  return glued ? twins.glued : twins.apart;
}

/** A word that is not known by its letters alone: the same token each time as long as there is room for more. */
export function otherWord(
  kind: TokenKind,
  text: string,
  value: number,
  length: number,
  glued: boolean,
): Token {
  // There are letters that are two in lower case.
  const met = text.length === length ? others.get(text) : undefined;
  if (met !== undefined) return glued ? met.glued : met.apart;
  const name = asName(text);
  if (text.length !== length || others.size === MOST_OTHERS)
    return makeToken(kind, name, value, length, glued);
  const twins = makeTwins(kind, name, value, kept + others.size + 1);
  others.set(name, twins);
  return glued ? twins.glued : twins.apart;
}

/** Multiplied by an odd number, the upper bits depend on all letters. */
function placeOf(first: number, second: number): number {
  return Math.imul(first ^ Math.imul(second, SPREAD), SPREAD) >>> UPPER_BITS;
}

/** 2 to the 32nd over the golden ratio, made odd: multiples of it lie far from each other. */
const SPREAD = 0x9e3779b1;
const UPPER_BITS = 32 - 12;

/** The name of a property is kept once by the engine, as the words in this program's own text are. */
function asName(word: string): string {
  return Object.keys({ [word]: true })[0] ?? word;
}
