/** `between this petal and the next`, `between the two shells`, `the sl st between the points`: beside what stands in one place. */

import type { Cursor } from './cursor.ts';
import { peek, takeAny, takeOneOf, wordAt } from './cursor.ts';
import { isSpecialNext } from './read-what.ts';
import { WordSet } from './word-set.ts';

const ONE = new WordSet('petal shell fan scallop point leaf ray spike scale peak star'.split(' '));
const SEVERAL: ReadonlyMap<string, string> = new Map([
  ...[...ONE].map((word) => [`${word}s`, word] as const),
  ['leaves', 'leaf'] as const,
]);

/** Behind "between": what the gap lies between, where the pattern describes no stitch of that name; null with the cursor where it was. */
export function readBetweenShapes(cursor: Cursor): string | null {
  const start = cursor.at;
  const shape = takeThisAndNext(cursor) ?? takeSeveral(cursor);
  if (shape === null) cursor.at = start;
  return shape;
}

/** `this petal and the next one`. */
function takeThisAndNext(cursor: Cursor): string | null {
  const start = cursor.at;
  if (takeAny(cursor, 'this', 'that', 'one', 'last') !== null && !isSpecialNext(cursor)) {
    const shape = takeOneOf(cursor, ONE);
    const joined = shape !== null && takeAny(cursor, 'and') !== null;
    takeAny(cursor, 'the');
    if (joined && takeAny(cursor, 'next', 'following', 'other') !== null) {
      if (wordAt(cursor) === shape || wordAt(cursor) === 'one') cursor.at += 1;
      return shape;
    }
  }
  cursor.at = start;
  return null;
}

/** `the petals`, `2 fans`, `next two shells`. */
function takeSeveral(cursor: Cursor): string | null {
  takeAny(cursor, 'the', 'any', 'next');
  takeAny(cursor, 'next');
  if (peek(cursor).value === 2 && peek(cursor).kind === 'number') cursor.at += 1;
  else takeAny(cursor, 'two');
  if (isSpecialNext(cursor)) return null;
  const shape = SEVERAL.get(wordAt(cursor)) ?? null;
  if (shape !== null) cursor.at += 1;
  return shape;
}

/** `between the points` behind a stitch that is named: it says only where that one stands. */
export function takeBetweenShapes(cursor: Cursor): void {
  if (wordAt(cursor) !== 'between') return;
  const start = cursor.at;
  cursor.at += 1;
  if (readBetweenShapes(cursor) === null) cursor.at = start;
}

/** `at tip of point`, `at the top of the leaf` behind a chain: the one that is left at its end. */
export function takeAtTip(cursor: Cursor): boolean {
  const start = cursor.at;
  if (takeAny(cursor, 'at') !== null) {
    takeAny(cursor, 'the');
    const tip = takeAny(cursor, 'tip', 'top', 'end', 'point') !== null;
    if (tip && takeAny(cursor, 'of') !== null) {
      takeAny(cursor, 'the', 'each', 'same', 'next');
      if (takeOneOf(cursor, ONE) !== null) return true;
    } else if (tip && wordAt(cursor, -1) === 'tip') return true;
  }
  cursor.at = start;
  return false;
}
