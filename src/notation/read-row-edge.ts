/** Where a fan is fastened down at the side of a lace: `the top of the last tr of the row before last`, `the corner at the foot of this loop`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, takeWords, textSince, wordAt } from './cursor.ts';
import { readOrdinal } from './read-number.ts';
import { readStop, SIDEWAYS_PIECES } from './read-stop.ts';
import { readWhat } from './read-what.ts';
import type { Place, What } from './tree.ts';
import { WordSet } from './word-set.ts';

const SHAPES = new WordSet(['loop', 'scallop', 'fan', 'chain', 'ch']);
const ENDS = new WordSet(['end', 'beginning', 'edge', 'side']);

/** The edge of a row below the one that is worked on; null with the cursor where it was. */
export function readRowEdge(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  const left = readLeftOver(cursor, from);
  if (left !== null) return left;
  const back = takeFootOfLoop(cursor) ? 2 : rowsBack(cursor);
  if (back !== null && back >= 2)
    return { kind: 'row-edge', back, said: textSince(cursor, start), span: spanSince(cursor, from) };
  cursor.at = start;
  return null;
}

/** `last dc of the fan, which was left unworked`: the row before passed it on the way. */
function readLeftOver(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  const what = takeAny(cursor, 'last') === null ? null : readWhat(cursor);
  if (what?.kind === 'stitch' && takeAny(cursor, 'of') !== null) {
    takeAny(cursor, 'the');
    const shape = takeOneOf(cursor, SHAPES) !== null;
    if (peek(cursor).kind === 'comma') cursor.at += 1;
    const told = takeWords(cursor, 'which', 'was') || takeAny(cursor, 'that') !== null;
    if (told && wordAt(cursor, -1) === 'that') takeAny(cursor, 'was');
    const free = takeAny(cursor, 'left') !== null;
    takeAny(cursor, 'unworked', 'free');
    if (shape && told && free && atBoundary(cursor))
      return { kind: 'left-over', what, said: textSince(cursor, start), span: spanSince(cursor, from) };
  }
  cursor.at = start;
  return null;
}

/** `corner at the foot of this loop`: where its chain rises from. */
function takeFootOfLoop(cursor: Cursor): boolean {
  const start = cursor.at;
  takeAny(cursor, 'corner', 'st', 'stitch');
  takeAny(cursor, 'at');
  takeAny(cursor, 'the');
  if (takeAny(cursor, 'foot', 'base') !== null && takeAny(cursor, 'of') !== null) {
    takeAny(cursor, 'this', 'the', 'that');
    if (takeOneOf(cursor, SHAPES) !== null) return true;
  }
  cursor.at = start;
  return false;
}

/** How many rows below the row in hand the one lies whose last stitch is named. */
function rowsBack(cursor: Cursor): number | null {
  if (takeAny(cursor, 'top') !== null) {
    takeAny(cursor, 'of');
    takeAny(cursor, 'the');
  }
  const last = takeAny(cursor, 'last') !== null;
  if (readWhat(cursor) === null) return null;
  const atEnd = takeAny(cursor, 'at') !== null;
  if (atEnd) {
    takeAny(cursor, 'the');
    if (takeOneOf(cursor, ENDS) === null) return null;
  }
  if (takeAny(cursor, 'of') === null || !(atEnd || last)) return null;
  takeAny(cursor, 'the');
  const nth = wordAt(cursor) === 'last' ? null : readOrdinal(cursor);
  if (takeAny(cursor, 'last') !== null) return takeWords(cursor, 'row', 'but', 'one') ? 2 : null;
  if (takeAny(cursor, 'row') === null) return null;
  if (nth !== null) return cursor.reached + 1 - nth;
  if (takeWords(cursor, 'before', 'last') || takeWords(cursor, 'last', 'but', 'one')) return 2;
  if (peek(cursor).kind !== 'number') return null;
  cursor.at += 1;
  return cursor.reached + 1 - peek(cursor, -1).value;
}

/** `end of each row`, `end of first row`, `edge of every row`; null with the cursor where it was. */
export function readEndOfRow(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  takeAny(cursor, 'end', 'edge');
  const of = takeAny(cursor, 'of') !== null;
  takeAny(cursor, 'the');
  const every = of && takeAny(cursor, 'every') !== null;
  const which = every ? 'each' : of ? takeAny(cursor, 'each', 'next', 'first', 'last') : null;
  if (which === null || takeAny(cursor, 'row') === null) {
    cursor.at = start;
    return null;
  }
  takeOfPiece(cursor);
  takeDownSide(cursor);
  const what: What = { kind: 'row-end' };
  const span = spanSince(cursor, from);
  if (which === 'each')
    return { kind: 'each', what, stop: readStop(cursor) ?? { kind: 'end', word: 'across', span }, span };
  if (which === 'next') return { kind: 'next', n: null, what, each: false, span };
  return { kind: which === 'first' ? 'first' : 'last', n: null, what, span };
}

/** `down the side`, `up the other side`: which of the two, in the order they come. */
function takeDownSide(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'down', 'up', 'along') === null) return;
  takeAny(cursor, 'the', 'this', 'one');
  takeOneOf(cursor, WHICH_SIDE);
  if (takeAny(cursor, 'side', 'edge') === null || !atBoundary(cursor)) cursor.at = start;
}

const WHICH_SIDE = new WordSet(['other', 'first', 'second', 'left', 'right', 'next', 'long', 'short']);

/** `of the brim` behind a row's end: the piece in hand is the only one with rows to go along. */
function takeOfPiece(cursor: Cursor): void {
  const start = cursor.at;
  const named = takeWords(cursor, 'of', 'the') && takeOneOf(cursor, SIDEWAYS_PIECES) !== null;
  if (!named || !(atBoundary(cursor) || WHOLE.holds(peek(cursor)))) cursor.at = start;
}

const WHOLE = new WordSet(['across', 'around']);
