/** Numbers as patterns write them: `3`, `three`, `35 (44, 53)`, `61(67:73:79)`, and `-` where a size skips. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Cursor } from './cursor.ts';
import { peek, spanSince } from './cursor.ts';
import { lastOf } from './last-of.ts';
import type { Num } from './num.ts';
import { SMALL_WORDS, TENS_WORDS } from './number-words.ts';
import { WordMap } from './word-set.ts';

/** No count, repeat or row number may pass this; a fault says so. */
export const LARGEST_NUMBER = 100_000;

const TENS: ReadonlyMap<string, number> = new Map(TENS_WORDS.map((word, i) => [word, (i + 2) * 10]));

const WORDS = new WordMap<number>([...SMALL_WORDS.map((word, i): [string, number] => [word, i]), ...TENS]);

/** One to nine, as they stand behind a ten. */
const UNITS: ReadonlyMap<string, number> = new Map(SMALL_WORDS.slice(1, 10).map((word, i) => [word, i + 1]));

const ORDINALS = new WordMap<number>(
  ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth'].map((word, i) => [
    word,
    i + 1,
  ]),
);

/** `- (9)`: the first size skips. */
function isSkippingList(cursor: Cursor, ahead = 0): boolean {
  return (
    peek(cursor, ahead).kind === 'dash' &&
    peek(cursor, ahead + 1).kind === 'open' &&
    ['number', 'dash'].includes(peek(cursor, ahead + 2).kind)
  );
}

/** True when a number or `- (9)` stands `ahead` tokens on. */
export function isNumberOrSkip(cursor: Cursor, ahead = 0): boolean {
  return isNumber(cursor, ahead) || isSkippingList(cursor, ahead);
}

/** True when a number stands `ahead` tokens on. */
export function isNumber(cursor: Cursor, ahead = 0): boolean {
  const token = peek(cursor, ahead);
  return token.kind === 'number' || WORDS.of(token) !== undefined;
}

/** Reads a number with the sizes that may follow it in brackets, or null when none stands here. */
export function readNumber(cursor: Cursor): Num | null {
  const from = cursor.at;
  if (!isNumberOrSkip(cursor)) return null;
  // A list that something is put into has room for many more.
  const values = [isNumber(cursor) ? plainValue(cursor) : takeSkip(cursor)];
  const listLength = sizeListLength(cursor);
  if (listLength > 0) {
    const closeAt = cursor.at + listLength;
    cursor.at += 1;
    while (cursor.at < closeAt - 1) {
      const token = peek(cursor);
      if (token.kind === 'number') values.push(plainValue(cursor));
      else {
        if (token.kind === 'dash') values.push(null);
        cursor.at += 1;
      }
    }
    cursor.at = closeAt;
  }
  return forSizes(cursor, values, from);
}

function takeSkip(cursor: Cursor): null {
  cursor.at += 1;
  return null;
}

/** One value, or one for each size; any other number of them is a fault. */
function forSizes(cursor: Cursor, values: (number | null)[], from: number): Num {
  const span = spanSince(cursor, from);
  const { sizes } = cursor.context;
  const { scope } = cursor;
  if (scope !== null && values.length > 1 && values.length === scope.length) {
    // Under `Woman and Man only:` two numbers are those two sizes'.
    const each = Array.from({ length: sizes }, (_, size) => values[scope.indexOf(size)] ?? null);
    return { values: each, span };
  }
  if (values.length > 1 && values.length !== sizes) {
    cursor.faults.push(
      diagnose('size/list-length', { file: cursor.context.file, span }, { given: values.length, sizes }),
    );
    // Read on with the numbers there are, the last standing for what is missing, so that only this is reported.
    while (values.length < sizes) values.push(lastOf(values) ?? 0);
    values.length = Math.max(1, sizes);
  }
  return { values, span };
}

/** `2nd`, or `second` in words; null when neither stands here. */
export function readOrdinal(cursor: Cursor): number | null {
  const token = peek(cursor);
  const value = token.kind === 'ordinal' ? token.value : ORDINALS.of(token);
  if (value === undefined) return null;
  cursor.at += 1;
  return value;
}

/** `15th`, `15th (20th)`: an ordinal with the sizes that may follow it; null when none stands here. */
export function readOrdinals(cursor: Cursor): Num | null {
  const from = cursor.at;
  if (peek(cursor).kind !== 'ordinal') return null;
  const values = [peek(cursor).value];
  cursor.at += 1;
  if (peek(cursor).kind === 'open' && peek(cursor, 1).kind === 'ordinal') {
    while (peek(cursor, 1).kind === 'ordinal') {
      values.push(peek(cursor, 1).value);
      cursor.at += 2;
    }
    if (peek(cursor).kind === 'close') cursor.at += 1;
  }
  return forSizes(cursor, values, from);
}

/** A number that is not written as one, such as the one in "a shell". */
export function impliedNumber(value: number, cursor: Cursor, at: number): Num {
  const end = cursor.at;
  cursor.at = at;
  const span = spanSince(cursor, at);
  cursor.at = end;
  return { values: [value], span };
}

function plainValue(cursor: Cursor): number {
  const token = peek(cursor);
  cursor.at += 1;
  const value =
    token.kind === 'word' ? (WORDS.of(token) ?? 0) + unitsBehind(cursor, token.text) : token.value;
  if (value > LARGEST_NUMBER) {
    const span = spanSince(cursor, cursor.at - 1);
    cursor.faults.push(
      diagnose(
        'number/too-large',
        { file: cursor.context.file, span },
        { number: token.text, limit: LARGEST_NUMBER },
      ),
    );
    return LARGEST_NUMBER;
  }
  return value;
}

/** The four of `twenty-four`, past which the cursor moves; 0 where none stands here. */
function unitsBehind(cursor: Cursor, ten: string): number {
  if (!TENS.has(ten)) return 0;
  const dashed = peek(cursor).kind === 'dash' ? 1 : 0;
  const token = peek(cursor, dashed);
  const units = token.kind === 'word' ? (UNITS.get(token.text) ?? 0) : 0;
  if (units > 0) cursor.at += dashed + 1;
  return units;
}

/** How many tokens `(44, 53)` takes when that is what stands here, 0 when it is something else. */
function sizeListLength(cursor: Cursor): number {
  if (peek(cursor).kind !== 'open') return 0;
  let ahead = 1;
  let values = 0;
  for (;;) {
    const token = peek(cursor, ahead);
    if (token.kind !== 'number' && token.kind !== 'dash') return 0;
    values += 1;
    ahead += 1;
    const { kind } = peek(cursor, ahead);
    ahead += 1;
    if (kind === 'close') break;
    if (kind !== 'comma' && kind !== 'colon') return 0;
  }
  // With one size `(6)` is a stitch count or the like; a list of sizes has at least two numbers in all.
  return cursor.context.sizes === 1 && values === 1 ? 0 : ahead;
}
