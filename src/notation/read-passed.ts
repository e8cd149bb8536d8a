/** Stitches that were skipped and are gone back to: `skipped st`, `2 skipped sts`, `skipped st 2 rows below`. */

import type { Cursor } from './cursor.ts';
import { forgetSince, spanSince, takeAny, takeOneOf } from './cursor.ts';
import { readBelow, readOfRow } from './read-gap.ts';
import { readNumber } from './read-number.ts';
import { ANY_STITCH, isAmount, readWhat } from './read-what.ts';
import type { Place } from './tree.ts';
import { WordSet } from './word-set.ts';

export const PASSED_WORDS = new WordSet(['skipped', 'missed']);

/** `2 skipped sts`: those just skipped, one after another. */
export function readPassedSeveral(cursor: Cursor, from: number): Place | null {
  if (!isAmount(cursor)) return null;
  const start = cursor.at;
  const faults = cursor.faults.length;
  const n = readNumber(cursor);
  const what = takeOneOf(cursor, PASSED_WORDS) === null ? null : readWhat(cursor);
  if (n !== null && what !== null) return { kind: 'passed', what, n, span: spanSince(cursor, from) };
  forgetSince(cursor, faults);
  cursor.at = start;
  return null;
}

/** Behind the word "skipped": `st`, `3 sts`, `st 2 rows below`. */
export function readPassed(cursor: Cursor, from: number): Place {
  const n = isAmount(cursor) ? readNumber(cursor) : null;
  const what = readWhat(cursor) ?? ANY_STITCH;
  if (n !== null) return { kind: 'passed', what, n, span: spanSince(cursor, from) };
  const below = readBelow(cursor);
  return below === null
    ? { kind: 'passed', what, span: spanSince(cursor, from) }
    : { kind: 'below', n: null, ...below, pick: 'skipped', what, span: spanSince(cursor, from) };
}

/** `any of the skipped sts of Rnd 18`, where yarn is joined: the first of them will do. Null, the cursor where it was, for any others. */
export function readAnyPassed(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'the', 'these', 'those');
  const n = isAmount(cursor) ? readNumber(cursor) : null;
  const what = takeOneOf(cursor, PASSED_WORDS) === null ? null : readWhat(cursor);
  if (what === null) {
    cursor.at = start;
    return null;
  }
  const row = readOfRow(cursor);
  const stands = row === null ? {} : { ofRow: row.number };
  const of = n === null ? {} : { of: n };
  return { kind: 'passed', what, nth: 1, ...of, ...stands, span: spanSince(cursor, from) };
}
