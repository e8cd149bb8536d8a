/** Instruction text in, words, numbers and marks out, each with its place in the text. */

import { HALF_LETTERS, LAST_LETTER, LETTER_BITS, letterNumber, otherWord, seenWord } from './seen-words.ts';
import type { Token, TokenKind, Tokens, Twins } from './token.ts';
import { END, makeToken, makeTwins } from './token.ts';

const ZERO = 48;
const FULL_STOP = 46;
const BLANK = 32;
const ASTERISK = 42;

const SINGLE: ReadonlyMap<string, TokenKind> = new Map<string, TokenKind>([
  ['(', 'open'],
  ['[', 'open'],
  ['{', 'open'],
  [')', 'close'],
  [']', 'close'],
  ['}', 'close'],
  [',', 'comma'],
  [';', 'semicolon'],
  ['.', 'stop'],
  ['!', 'stop'],
  [':', 'colon'],
  ['-', 'dash'],
  ['–', 'dash'],
  ['—', 'dash'],
  ['‑', 'dash'],
  ['−', 'dash'],
  ['†', 'mark'],
  ['‡', 'mark'],
  ['\n', 'newline'],
]);

const ASCII = 128;
/** What each mark of one plain character is, found without taking it out of the text. */
const PLAIN: readonly (Twins | undefined)[] = Array.from({ length: ASCII }, (_, code) => {
  const text = String.fromCharCode(code);
  const kind = SINGLE.get(text);
  return kind === undefined ? undefined : makeTwins(kind, text);
});

/** `*`, `**`, `***` by how many asterisks they have. */
const ASTERISKS: readonly Twins[] = ['', '*', '**', '***'].map((text) => makeTwins('mark', text));

/** The numbers that patterns are full of, by their value. */
const NUMBERS: readonly Twins[] = Array.from({ length: 1000 }, (_, value) =>
  makeTwins('number', String(value), value),
);

/**
 * Every character of the text, or of the stretch of it from `from` up to `until`, lies in one token or in the white
 * space between two. No token may lie across `until`. The last is an end. Never throws.
 */
export function tokenise(text: string, from = 0, until = text.length): Tokens {
  let count = 0;
  let at = from;
  let lastEnd = from;
  while (at < until) {
    const code = text.charCodeAt(at);
    if (isBlank(code)) {
      at += 1;
      continue;
    }
    const token = tokenAt(text, at, code, count > 0 && at === lastEnd);
    bench[count] = token;
    benchStarts[count] = at;
    count += 1;
    at += token.length;
    lastEnd = at;
  }
  bench[count] = END;
  benchStarts[count] = lastEnd;
  return { list: bench.slice(0, count + 1), starts: benchStarts.slice(0, count + 1) };
}

/** The number by which sets know a word; 0 for one that is not kept, since very many others are, and null for what is no single word. */
export function wordId(word: string): number | null {
  const { id, kind, length } = tokenAt(word, 0, codeAt(word, 0), false);
  return length === word.length && (id > 0 || kind === 'word') ? id : null;
}

/** Where tokens are laid down one by one: a list that has grown once need not grow again for each text. */
const bench: Token[] = [];
const benchStarts: number[] = [];

function tokenAt(text: string, start: number, code: number, glued: boolean): Token {
  if (isLetter(code)) return wordAt(text, start, glued);
  if (isDigit(code)) return numberAt(text, start, glued);
  const plain = code < ASCII ? PLAIN[code] : undefined;
  if (plain !== undefined) return glued ? plain.glued : plain.apart;
  let end = start + 1;
  if (code === ASTERISK) {
    while (codeAt(text, end) === code) end += 1;
    const mark = ASTERISKS[end - start];
    if (mark !== undefined) return glued ? mark.glued : mark.apart;
    return makeToken('mark', text.slice(start, end), 0, end - start, glued);
  }
  // A surrogate pair stays whole, so that a message can quote it.
  if (code >= 0xd800 && code <= 0xdbff) end = Math.min(end + 1, text.length);
  const character = text.slice(start, end);
  return makeToken(SINGLE.get(character) ?? 'other', character, 0, end - start, glued);
}

function numberAt(text: string, start: number, glued: boolean): Token {
  let end = start;
  let value = 0;
  for (let code = codeAt(text, end); isDigit(code); code = codeAt(text, end)) {
    value = value * 10 + (code - ZERO);
    end += 1;
  }
  const ordinal = isLetter(codeAt(text, end)) && isOrdinal(value, text, end);
  const plain = NUMBERS[value];
  // A nought before it is kept as it is written.
  if (!ordinal && plain !== undefined && plain.apart.length === end - start)
    return glued ? plain.glued : plain.apart;
  if (!ordinal) return makeToken('number', text.slice(start, end), value, end - start, glued);
  end += 2;
  return otherWord('ordinal', text.slice(start, end).toLowerCase(), value, end - start, glued);
}

function wordAt(text: string, start: number, glued: boolean): Token {
  let end = start;
  let first = 0;
  let second = 0;
  let code = codeAt(text, end);
  const half = start + HALF_LETTERS;
  for (
    let letter = letterNumber(code);
    letter > 0 && letter <= LAST_LETTER && end < half;
    letter = letterNumber(code)
  ) {
    first = (first << LETTER_BITS) | letter;
    end += 1;
    code = codeAt(text, end);
  }
  for (let letter = letterNumber(code); letter > 0 && letter <= LAST_LETTER; letter = letterNumber(code)) {
    second = (second << LETTER_BITS) | letter;
    end += 1;
    code = codeAt(text, end);
  }
  if (end > start && code === BLANK) return seenWord(first, second, text, start, end, glued);
  if (code === FULL_STOP && end === start + 1) {
    const spaced = endOfSpacedName(text, start);
    if (spaced > start) return spacedName(text, start, spaced, glued);
  }
  const whole = endOfWord(text, end);
  return whole === end
    ? seenWord(first, second, text, start, end, glued)
    : otherWord('word', text.slice(start, whole).toLowerCase(), 0, whole - start, glued);
}

/** Behind the plain letters of a word: `dc2tog`, `maker's`, one with accents. */
function endOfWord(text: string, from: number): number {
  let end = from;
  while (isLetter(codeAt(text, end)) || isApostropheInside(text, end)) end += 1;
  return endOfTogether(text, end);
}

/** The word `dc` of `d.c.` */
function spacedName(text: string, start: number, end: number, glued: boolean): Token {
  const name = text.slice(start, end).replaceAll('.', '').toLowerCase();
  const { text: word, id } = wordAt(name, 0, glued);
  return makeToken('word', word, 0, end - start, glued, id);
}

/** `1st`, `2nd`, `3rd`, `4th`; but `2 st` glued as `2st` means two stitches. */
function isOrdinal(value: number, text: string, at: number): boolean {
  const teen = value % 100 >= 11 && value % 100 <= 13;
  const right = teen ? 'th' : (['th', 'st', 'nd', 'rd'][value % 10] ?? 'th');
  return text.slice(at, at + 2).toLowerCase() === right && !isLetter(codeAt(text, at + 2));
}

/** `d.c.` is the word `dc`; the last stop is left where it ends the sentence too. */
function endOfSpacedName(text: string, at: number): number {
  if (isLetter(codeAt(text, at - 1))) return at;
  const found = /^[a-z](?:\.[a-z]{1,2}){1,2}(?=\.)(?!\.[a-z])/i.exec(text.slice(at, at + 12))?.[0];
  if (found === undefined) return at;
  const end = at + found.length + 1;
  return /^\s*(?:$|\n|\s[A-Z])/.test(text.slice(end, end + 4)) ? end - 1 : end;
}

/** `dc2tog` is one word; `ch3` is a word and a number. */
function endOfTogether(text: string, at: number): number {
  let end = at;
  while (isDigit(codeAt(text, end))) end += 1;
  if (end === at || text.slice(end, end + 3).toLowerCase() !== 'tog' || isLetter(codeAt(text, end + 3)))
    return at;
  return end + 3;
}

/** The character there, 0 behind the last: asked of one that is not there, the engine gives no whole number, and all goes slower. */
function codeAt(text: string, at: number): number {
  return at >= 0 && at < text.length ? text.charCodeAt(at) : 0;
}

/** White space within a line. */
export function isBlank(code: number): boolean {
  return code === 32 || code === 9 || code === 13 || code === 0xa0;
}

function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

function isLetter(code: number): boolean {
  return (
    (code >= 97 && code <= 122) ||
    (code >= 65 && code <= 90) ||
    (code >= 0xc0 && code <= 0x24f && code !== 0xd7 && code !== 0xf7)
  );
}

/** `maker's` is one word. */
function isApostropheInside(text: string, at: number): boolean {
  return isApostrophe(codeAt(text, at)) && isLetter(codeAt(text, at + 1));
}

function isApostrophe(code: number): boolean {
  return code === 39 || code === 0x2019;
}
