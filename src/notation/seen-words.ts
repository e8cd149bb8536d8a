/**
 * One token for one word, with one string: reading compares words all day, and the same string is compared by its address
 * alone.
 *
 * A word of plain letters is known by its letters packed into two whole numbers, so that it is found again without being
 * taken out of the text. The table has a fixed size; when it is full, a word not yet met is made anew each time.
 */

import type { Token } from './token.ts';
import { makeToken, makeTwins } from './token.ts';

/** Letters that go into one whole number, five bits to a letter. */
export const HALF_LETTERS = 6;
/** Longer words are not kept. */
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
  if (length > MOST_LETTERS) return makeToken('word', text.slice(start, end).toLowerCase(), 0, length, glued);
  const words = glued ? together : apart;
  let place = placeOf(first, second);
  for (;;) {
    const met = words[place];
    if (met === undefined) break;
    if (firsts[place] === first && seconds[place] === second) return met;
    place = (place + 1) & (PLACES - 1);
  }
  const word = text.slice(start, end).toLowerCase();
  if (kept === MOST_WORDS) return makeToken('word', word, 0, length, glued);
  kept += 1;
  firsts[place] = first;
  seconds[place] = second;
  const twins = makeTwins('word', asName(word));
  apart[place] = twins.apart;
  together[place] = twins.glued;
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
