/** How long rows are repeated where no measure is given: `for the length required`, `until the back is as long as the front`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, takeAny, takeOneOf, takeWords, textSince, wordAt } from './cursor.ts';
import { WordSet } from './word-set.ts';

/** The words for it, as they stand; null with the cursor where it was. */
export function readOpenLength(cursor: Cursor): string | null {
  const word = wordAt(cursor);
  if (word !== 'for' && word !== 'to' && word !== 'until' && word !== 'till' && word !== 'as') return null;
  const from = cursor.at;
  const open = word === 'until' || word === 'till' ? takeUntilLong(cursor) : takeForLength(cursor);
  if (open) return textSince(cursor, from);
  cursor.at = from;
  return null;
}

const WANTED = new WordSet(['required', 'desired', 'wanted', 'needed', 'wished', 'liked']);
/** `as long as you like`, `as long as the table wants`: whatever it is made for. */
const WISHES = new WordSet(['like', 'likes', 'wish', 'wishes', 'want', 'wants', 'need', 'needs', 'please']);
const LENGTHS = new WordSet(['length', 'height', 'size', 'depth', 'width']);

/** `for the length required`, `for required length`, `to the length wanted`, `as long as required`, `as often as needed`. */
function takeForLength(cursor: Cursor): boolean {
  const { text: word } = peek(cursor);
  cursor.at += 1;
  if (word === 'for' && takeAny(cursor, 'as') === null) return takeLength(cursor);
  if (word === 'to') return takeLength(cursor);
  const much = takeAny(cursor, 'long', 'often') !== null || takeWords(cursor, 'many', 'times');
  if (!much || takeAny(cursor, 'as') === null) return false;
  takeAny(cursor, 'is', 'you');
  return takeOneOf(cursor, WANTED) !== null || takeOneOf(cursor, WISHES) !== null;
}

function takeLength(cursor: Cursor): boolean {
  takeAny(cursor, 'the', 'your', 'any');
  const before = takeOneOf(cursor, WANTED) !== null;
  if (takeOneOf(cursor, LENGTHS) === null) return false;
  if (before || takeOneOf(cursor, WANTED) !== null) return true;
  // `for the length you need`.
  return takeAny(cursor, 'you', 'your') !== null && takeWish(cursor);
}

/** `need`, `would like`, `shelf needs` behind "you" or "your". */
function takeWish(cursor: Cursor): boolean {
  takeAny(cursor, 'would');
  if (takeOneOf(cursor, WISHES) !== null) return true;
  if (peek(cursor).kind === 'word' && WISHES.holds(peek(cursor, 1))) cursor.at += 2;
  return WISHES.holds(peek(cursor, -1));
}

/** What a piece is held against, or wanted for: one of these tells that no number is meant. */
const LONG = new WordSet([
  ...[
    'match',
    'matches',
    'long',
    'length',
    'size',
    'enough',
    'desired',
    'required',
    'reaches',
    'fits',
    'fit',
  ],
]);
/** What rows are made of: `until all sts are worked` is told of them, and no length. */
const OF_ROWS = new WordSet(['st', 'sts', 'stitches', 'rows', 'row', 'rnds', 'rounds', 'remain']);

/** `until back matches front`, `until the back is as long as the front`, with no number up to the end of the phrase. */
function takeUntilLong(cursor: Cursor): boolean {
  cursor.at += 1;
  let long = false;
  while (!atBoundary(cursor)) {
    const { kind, text } = peek(cursor);
    if (kind === 'open' && long && takeRemark(cursor)) continue;
    if (kind !== 'word' || OF_ROWS.has(text)) return false;
    if (LONG.has(text)) long = true;
    cursor.at += 1;
  }
  return long;
}

/** `(the one in the picture has 14 hearts)`: what another maker did, up to the bracket that closes. */
function takeRemark(cursor: Cursor): boolean {
  const from = cursor.at;
  while (peek(cursor).kind !== 'close' && peek(cursor).kind !== 'end') cursor.at += 1;
  if (peek(cursor).kind === 'close') {
    cursor.at += 1;
    return true;
  }
  cursor.at = from;
  return false;
}
