/** Rows that form the pattern, and going on in it: `these 2 rows form the patt`, `cont in patt until work measures 30 cm`. */

import type { Cursor } from './cursor.ts';
import { peek, spanSince, takeAny, takeOneOf, textSince } from './cursor.ts';
import { isNumber, readNumber } from './read-number.ts';
import { readRowNumbers, readRowsOnceMore, readUntil } from './read-rows.ts';
import { UNITS, unitOfPart } from './row-unit.ts';
import type { NoteStep, RepeatRowsStep } from './tree.ts';
import { WordSet } from './word-set.ts';

/** `these 2 rows form the patt`: what "patt" means from here on; null with the cursor where it was. */
export function readPattern(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  takeAny(cursor, 'these', 'the', 'last');
  takeAny(cursor, 'last');
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  const named =
    n !== null && takeOneOf(cursor, UNITS) !== null && takeAny(cursor, 'form', 'set', 'make') !== null;
  takeAny(cursor, 'the');
  if (!named || takeAny(cursor, 'patt', 'pattern') === null) {
    cursor.at = from;
    return null;
  }
  cursor.patt.rows = n?.values[0] ?? null;
  return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
}

const FORM = new WordSet(['form', 'forms', 'set', 'sets', 'make', 'makes']);

/** `Rows 2 and 3 form the patt`, `The 2nd row sets the pattern`: the same of rows that are named, the last of them the one just done. */
export function readRowsForm(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  const numbers = takeNamedRows(cursor);
  const named = numbers.length > 0 && takeOneOf(cursor, FORM) !== null;
  takeAny(cursor, 'the');
  if (!named || takeAny(cursor, 'patt', 'pattern') === null) {
    cursor.at = from;
    return null;
  }
  const last = numbers.at(-1) ?? 0;
  const follow = numbers.every((row, i) => row === last - numbers.length + 1 + i);
  cursor.patt.rows = follow && last === cursor.reached ? numbers.length : null;
  return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
}

/** `Rows 2 and 3`, `the 2nd and 3rd rows`; none where none are named. */
function takeNamedRows(cursor: Cursor): readonly number[] {
  takeAny(cursor, 'the');
  if (takeOneOf(cursor, UNITS) !== null)
    return peek(cursor).kind === 'number' ? readRowNumbers(cursor).map(({ values }) => values[0] ?? 0) : [];
  const rows: number[] = [];
  while (peek(cursor).kind === 'ordinal') {
    rows.push(peek(cursor).value);
    cursor.at += 1;
    takeAny(cursor, 'and');
  }
  return takeOneOf(cursor, UNITS) === null ? [] : rows;
}

/** Rows that are named at the start of a sentence: what they form, or that they come once more. */
export function readNamedRows(cursor: Cursor): NoteStep | RepeatRowsStep | null {
  return readRowsForm(cursor) ?? readRowsOnceMore(cursor);
}

/** `cont in patt until work measures 30 cm`: the rows that form the pattern, again; null where it is not said which or how long. */
export function readInPattern(cursor: Cursor): RepeatRowsStep | null {
  const from = cursor.at;
  cursor.at += 1;
  const last = cursor.patt.rows;
  const worked = takeAny(cursor, 'in') !== null && takeAny(cursor, 'patt', 'pattern') !== null;
  const until = worked && last !== null ? readUntil(cursor) : null;
  if (last === null || until === null || until.kind === 'label') {
    cursor.at = from;
    return null;
  }
  return {
    kind: 'repeat rows',
    unit: unitOfPart(cursor),
    rows: [],
    last,
    until,
    span: spanSince(cursor, from),
  };
}
