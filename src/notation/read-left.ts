/** Stitches that an earlier row left: `11 unworked tr`, `the 6 sts we left`, `next 8 sts left unworked for the neck`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, forgetSince, nameHere, peek, spanSince, takeAny, wordAt } from './cursor.ts';
import type { Num } from './num.ts';
import { readNumber } from './read-number.ts';
import { isAmount, readWhat } from './read-what.ts';
import type { Place, What } from './tree.ts';

interface Said {
  readonly n: Num | null;
  readonly what: What;
  readonly each: boolean;
}

/** Whether words that say it stand here. */
export function isLeftNext(cursor: Cursor): boolean {
  const word = wordAt(cursor);
  return word === 'left' || ((word === 'we' || word === 'you') && wordAt(cursor, 1) === 'left');
}

/** Behind their number and name. */
export function readLeft(cursor: Cursor, from: number, { n, what, each }: Said): Place {
  takeLeft(cursor);
  return { kind: 'next', n, what, each, left: true, span: spanSince(cursor, from) };
}

/** `6 sts we left`, `11 unworked tr` behind "the"; null with the cursor where it was, for any others. */
export function readThoseLeft(cursor: Cursor, from: number): Place | null {
  if (wordAt(cursor, -1) !== 'the' || peek(cursor).kind !== 'number' || !isAmount(cursor)) return null;
  const start = cursor.at;
  const faults = cursor.faults.length;
  const n = readNumber(cursor);
  const before = takeAny(cursor, 'free', 'unworked', 'remaining') !== null;
  const what = n === null ? null : readWhat(cursor);
  if (what !== null && (takeLeft(cursor) || before))
    return { kind: 'next', n, what, each: true, left: true, span: spanSince(cursor, from) };
  forgetSince(cursor, faults);
  cursor.at = start;
  return null;
}

/** `rem 9 dc`, `remaining 6 sts`: the last that there are. */
export function readRemaining(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  if (takeAny(cursor, 'rem', 'remaining') === null) return null;
  const n = isAmount(cursor) ? readNumber(cursor) : null;
  const what = readWhat(cursor);
  // `dec twice, sc in remaining sts`: each that there is.
  const ends = atBoundary(cursor) || peek(cursor).kind === 'open';
  const all = n === null && ends && (what?.kind === 'st' || what?.kind === 'stitch');
  if (what !== null && all) {
    const span = spanSince(cursor, from);
    return { kind: 'each', what, stop: { kind: 'end', word: 'across', span }, span };
  }
  if (n === null || what === null) {
    cursor.at = start;
    return null;
  }
  return { kind: 'last', n, what, span: spanSince(cursor, from) };
}

/** `we left`, `left unworked for the neck`, `that were left free at the front`; the cursor stays where none stands. */
function takeLeft(cursor: Cursor): boolean {
  const start = cursor.at;
  takeAny(cursor, 'that', 'which');
  takeAny(cursor, 'we', 'you', 'were');
  if (takeAny(cursor, 'left') !== null) {
    takeAny(cursor, 'unworked', 'free', 'over', 'behind');
    // `for the neck`, `at the front`.
    if (takeAny(cursor, 'for', 'at') !== null)
      while (peek(cursor).kind === 'word' && wordAt(cursor) !== 'and' && nameHere(cursor) === null)
        cursor.at += 1;
    if (atBoundary(cursor)) return true;
  }
  cursor.at = start;
  return false;
}
