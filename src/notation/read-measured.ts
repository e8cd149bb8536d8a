/** How high a piece is to be: `until piece measures 60"`, `until work measures 34 (35, 36) cm`, `to desired length`. */

import type { Cursor } from './cursor.ts';
import {
  atBoundary,
  forgetSince,
  peek,
  skipToBoundary,
  takeAny,
  takeOneOf,
  takeWords,
  wordAt,
} from './cursor.ts';
import { isNumber, readNumber } from './read-number.ts';
import { WordSet } from './word-set.ts';

/** `until piece measures 60"`, `until work measures 15 cm`, `to desired length`: the size says how many rows that is. */
export function takeMeasured(cursor: Cursor): boolean {
  const from = cursor.at;
  if (takeAny(cursor, 'to') !== null) {
    takeAny(cursor, 'the');
    if (
      takeAny(cursor, 'desired', 'required') !== null &&
      takeAny(cursor, 'length', 'height', 'size') !== null
    )
      return true;
  } else if (takeAny(cursor, 'until') !== null) {
    takeAny(cursor, 'the', 'your');
    // `until the stole measures 153 cm`: whatever the piece is called.
    const called = wordAt(cursor, 1) === 'measures' && !PIECES.holds(peek(cursor));
    if (called) cursor.at += 1;
    takeOneOf(cursor, PIECES);
    takeAny(cursor, 'is');
    if (takeWords(cursor, 'as', 'long', 'as')) {
      takeAny(cursor, 'you');
      if (takeAny(cursor, 'required', 'desired', 'wanted', 'like') !== null) return true;
      cursor.at = from;
      return false;
    }
    const measured = takeAny(cursor, 'measures', 'measure', 'about') !== null;
    takeAny(cursor, 'approximately', 'about', 'approx');
    if (measured && isNumber(cursor)) {
      takeOfSizes(cursor);
      skipToBoundary(cursor);
      // The stop of `6.5 in` and the mark of `60"` belong to the measure.
      if (peek(cursor).kind === 'stop' && peek(cursor, 1).kind === 'number' && peek(cursor, 1).glued) {
        cursor.at += 1;
        skipToBoundary(cursor);
      }
      return true;
    }
    const same = measured && takeWords(cursor, 'the', 'same', 'as');
    if (same || takeAny(cursor, 'matches', 'match') !== null || takeSameLength(cursor)) {
      skipToBoundary(cursor);
      return true;
    }
    if (measured) cursor.at = from;
  }
  cursor.at = from;
  return false;
}

/** `34 (35:36:37) cm`: brackets that hold the other sizes' lengths; any other are words behind the first. */
function takeOfSizes(cursor: Cursor): void {
  if (takeMixedLengths(cursor)) return;
  const from = cursor.at;
  const faults = cursor.faults.length;
  const n = readNumber(cursor);
  if (n !== null && n.values.length === cursor.context.sizes && cursor.faults.length === faults) return;
  cursor.at = from;
  forgetSince(cursor, faults);
}

/** `17 (17, 17 1/2, 17 1/2) in`: a length for each size, some with a fraction; the cursor stays where there are not as many. */
function takeMixedLengths(cursor: Cursor): boolean {
  const from = cursor.at;
  if (takeLength(cursor) && peek(cursor).kind === 'open') {
    cursor.at += 1;
    let sizes = 1;
    while (takeLength(cursor)) {
      sizes += 1;
      const { kind, text } = peek(cursor);
      if (kind === 'comma' || kind === 'colon' || kind === 'semicolon' || text === ':') cursor.at += 1;
      else break;
    }
    if (sizes === cursor.context.sizes && peek(cursor).kind === 'close') {
      cursor.at += 1;
      return true;
    }
  }
  cursor.at = from;
  return false;
}

/** `17`, `17 1/2`, `6.5`. */
function takeLength(cursor: Cursor): boolean {
  if (peek(cursor).kind !== 'number') return false;
  cursor.at += 1;
  const whole = peek(cursor).kind === 'number' ? 1 : 0;
  if (peek(cursor, whole).text === '/' && peek(cursor, whole + 1).kind === 'number') cursor.at += whole + 2;
  else if (peek(cursor).kind === 'stop' && peek(cursor, 1).kind === 'number' && peek(cursor, 1).glued)
    cursor.at += 2;
  return true;
}

/** `is the same length as the back`, `is as long as the back`. */
function takeSameLength(cursor: Cursor): boolean {
  const from = cursor.at;
  takeAny(cursor, 'the');
  if (takeWords(cursor, 'same', 'length', 'as') || takeWords(cursor, 'as', 'long', 'as')) return true;
  cursor.at = from;
  return false;
}

/** `, ending after a WS row`, `, ending with a right side row`: on which side the last row lies. */
export function takeEndingSide(cursor: Cursor): void {
  const from = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  if (takeAny(cursor, 'ending', 'end', 'finishing') !== null) {
    takeAny(cursor, 'with', 'on', 'after');
    takeAny(cursor, 'a', 'the');
    const short = takeAny(cursor, 'rs', 'ws') !== null;
    if (!short && takeAny(cursor, 'right', 'wrong') !== null) takeAny(cursor, 'side');
    const side = cursor.at > from && SIDES.holds(peek(cursor, -1));
    if (side && takeAny(cursor, 'row', 'rnd', 'round') !== null && atBoundary(cursor)) return;
  }
  cursor.at = from;
}

const SIDES = new WordSet(['rs', 'ws', 'side', 'right', 'wrong']);

const PIECES = new WordSet([
  'piece',
  'work',
  'it',
  'panel',
  'scarf',
  'blanket',
  'strip',
  'square',
  'length',
  'edging',
  'band',
  'armhole',
  'armholes',
  'neck',
  'front',
  'back',
  'sleeve',
  'side',
]);
