/** What a row gains or loses, told after it: `inc 6 sts evenly around`, `dec 1 st at each end of row`, `dec 1 st at neck edge on next 8 rows`. */

import type { Cursor } from './cursor.ts';
import { spanSince, takeAny, takeOneOf, wordAt } from './cursor.ts';
import { readAtOneEdge } from './read-garment.ts';
import { isNumber, readNumber } from './read-number.ts';
import { readWhat } from './read-what.ts';
import type { RepeatRowsStep, ShapeStep } from './tree.ts';
import { WordSet } from './word-set.ts';

const SHAPE_WORDS = new WordSet(['inc', 'dec', 'increase', 'decrease', 'increasing', 'decreasing']);

/** Null with the cursor where it was when "inc" or "dec" is a stitch here. */
export function readShape(cursor: Cursor): ShapeStep | RepeatRowsStep | null {
  const from = cursor.at;
  const word = takeOneOf(cursor, SHAPE_WORDS);
  const n = word !== null && isNumber(cursor) ? readNumber(cursor) : null;
  if (word === null || n === null) {
    cursor.at = from;
    return null;
  }
  const does = word.startsWith('inc') ? 'inc' : 'dec';
  readWhat(cursor);
  if (takeAny(cursor, 'evenly') !== null) {
    takeAny(cursor, 'spaced');
    takeAny(cursor, 'around', 'across', 'round');
    takeAny(cursor, 'row', 'round', 'rnd');
    return { kind: 'shape', does, n, where: 'evenly', span: spanSince(cursor, from) };
  }
  const at = takeAny(cursor, 'at') !== null;
  const oneEdge = at ? readAtOneEdge(cursor, from, does, n) : null;
  if (oneEdge !== null) return oneEdge;
  if (at && takeAny(cursor, 'each', 'both') !== null) {
    const ends = takeAny(cursor, 'end', 'ends') !== null;
    if (ends && takeAny(cursor, 'of') !== null) {
      takeAny(cursor, 'the', 'this');
      if (wordAt(cursor) === 'row') cursor.at += 1;
    }
    if (ends) return { kind: 'shape', does, n, where: 'each end', span: spanSince(cursor, from) };
  }
  cursor.at = from;
  return null;
}
