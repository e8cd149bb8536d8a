/** All the way round a piece, told by its sides: `round the four sides`, `across the end and along both sides`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, takeWords, textSince, wordAt } from './cursor.ts';
import { EDGE_WORDS } from './read-piece-sides.ts';
import type { NoteStep } from './tree.ts';
import { WordSet } from './word-set.ts';

const EVERY = new WordSet(['all', 'four', 'both', 'the']);
const SIDES = new WordSet(['sides', 'edges', 'ends']);
const ROUND = new WordSet(['round', 'around', 'along', 'across']);
const PIECES = new WordSet(['piece', 'work', 'runner', 'mat', 'cloth', 'panel', 'square', 'blanket', 'edge']);

/** `the four sides`, `all sides`, `the end and along both sides` behind `round` or `across`; false with the cursor where it was. */
export function takeAllSides(cursor: Cursor): boolean {
  const start = cursor.at;
  if (takeSides(cursor)) {
    const also = cursor.at;
    takeAny(cursor, 'and');
    takeOneOf(cursor, ROUND);
    if (!takeSides(cursor)) cursor.at = also;
    if (atBoundary(cursor)) return true;
  }
  cursor.at = start;
  return false;
}

function takeSides(cursor: Cursor): boolean {
  const start = cursor.at;
  for (let n = 0; n < 4; n += 1) {
    if (takeAny(cursor, 'of') === null && takeOneOf(cursor, EVERY) === null && !takeFour(cursor)) break;
  }
  if (cursor.at > start && (takeOneOf(cursor, SIDES) !== null || takeAny(cursor, 'end') !== null))
    return true;
  cursor.at = start;
  return false;
}

function takeFour(cursor: Cursor): boolean {
  if (peek(cursor).kind !== 'number' || peek(cursor).value !== 4) return false;
  cursor.at += 1;
  return true;
}

/** `along the side` before `to the next corner`: which way that lies. */
export function takeAlongSide(cursor: Cursor): void {
  const start = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'the', 'this', 'each', 'next');
  takeAny(cursor, 'long', 'short', 'first');
  if (takeOneOf(cursor, EDGE_WORDS) === null || wordAt(cursor) !== 'to') cursor.at = start;
}

/** `continue thus round all four sides`: what has been told of a corner and a side holds for the others. */
export function readOnRound(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'working');
  if (takeAny(cursor, 'thus', 'so', 'likewise') === null && !takeWords(cursor, 'like', 'this')) {
    if (takeAny(cursor, 'in') !== null) {
      takeAny(cursor, 'this', 'the');
      takeAny(cursor, 'same');
      takeAny(cursor, 'way', 'manner');
    }
  }
  takeAny(cursor, 'all');
  if (takeAny(cursor, 'round', 'around', 'along') !== null) {
    takeAllSides(cursor);
    if (!atBoundary(cursor)) {
      takeAny(cursor, 'the');
      takeOneOf(cursor, PIECES);
    }
    if (atBoundary(cursor) && wordAt(cursor, -1) !== 'along')
      return { kind: 'note', text: textSince(cursor, from), sideAgain: 'all', span: spanSince(cursor, from) };
  }
  cursor.at = from;
  return null;
}
