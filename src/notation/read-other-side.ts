/** `Work the other long side in the same way`, `Repeat on the second side`: the rows of one side, once more. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, takeWords } from './cursor.ts';
import { unitOfPart } from './row-unit.ts';
import type { RepeatRowsStep } from './tree.ts';
import { WordSet } from './word-set.ts';

const ALONG = new WordSet(['along', 'on', 'for', 'to', 'down', 'up', 'across']);
const OTHER = new WordSet(['other', 'second', 'opposite', 'remaining']);
const LENGTHS = new WordSet(['long', 'short', 'left', 'right', 'side']);

/** Behind the verb that begins at `from`; null, the cursor where it was, for anything else or beside other work in the line. */
export function readOtherSide(cursor: Cursor, from: number, repeats: boolean): RepeatRowsStep | null {
  const start = cursor.at;
  takeOneOf(cursor, ALONG);
  takeAny(cursor, 'the');
  const other = takeOneOf(cursor, OTHER) !== null || takeOrdinal(cursor);
  // `side edge`, `long side`.
  const named = takeOneOf(cursor, LENGTHS);
  const edge = takeAny(cursor, 'side', 'edge') !== null || named === 'side';
  const alike = takeAlike(cursor) || repeats;
  if (other && edge && alike && atBoundary(cursor) && isAlone(cursor, from))
    return {
      kind: 'repeat rows',
      unit: unitOfPart(cursor),
      rows: [],
      last: 1,
      otherSide: true,
      until: { kind: 'times', n: { values: [1], span: spanSince(cursor, from) }, more: true },
      span: spanSince(cursor, from),
    };
  cursor.at = start;
  return null;
}

function takeOrdinal(cursor: Cursor): boolean {
  if (peek(cursor).kind !== 'ordinal' || peek(cursor).value !== 2) return false;
  cursor.at += 1;
  return true;
}

/** `in the same way`, `to match`, `to correspond`, `likewise`, `as the first`. */
function takeAlike(cursor: Cursor): boolean {
  if (takeAny(cursor, 'likewise') !== null || takeWords(cursor, 'to', 'match')) return true;
  if (takeWords(cursor, 'to', 'correspond')) return true;
  if (takeAny(cursor, 'as') !== null) {
    takeAny(cursor, 'the', 'for');
    takeAny(cursor, 'the');
    return takeAny(cursor, 'first', 'before') !== null;
  }
  takeAny(cursor, 'in');
  takeAny(cursor, 'the', 'exactly');
  return takeWords(cursor, 'same', 'way') || takeWords(cursor, 'same', 'manner');
}

/** Whether no row is begun before it in its line: a yarn may be cut. */
function isAlone({ tokens }: Cursor, from: number): boolean {
  for (let i = 0; i < from; i += 1) {
    const kind = tokens[i]?.kind;
    if (kind === 'number' || kind === 'ordinal' || kind === 'colon') return false;
  }
  return true;
}
