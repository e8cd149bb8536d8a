/** Buttonholes that the maker spaces herself: `making 5 buttonholes evenly along right front; for each buttonhole work 2 ch, miss 2 dc`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, textSince, wordAt } from './cursor.ts';
import { readMakerNote } from './read-note.ts';
import { isNumber, readNumber } from './read-number.ts';
import { leadsToPlace } from './read-place.ts';
import { CHAIN_WORDS } from './read-what.ts';
import { readStitchName } from './read-yarn.ts';
import type { NoteStep, Step } from './tree.ts';
import { WordSet } from './word-set.ts';

const HOLES = new WordSet(['buttonhole', 'buttonholes']);
const MAKES = new WordSet(['work', 'make', 'working', 'making']);
const SKIPS = new WordSet(['miss', 'skip', 'sk', 'skipping', 'missing']);

/** With what each of them is, where that is told behind it: where they go is not, so the row is not worked. Null for anything else. */
export function readButtonholes(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  cursor.at += 1;
  if (isNumber(cursor)) readNumber(cursor);
  if (takeOneOf(cursor, HOLES) === null) {
    cursor.at = from;
    return null;
  }
  while (!atBoundary(cursor) && peek(cursor).kind !== 'open') cursor.at += 1;
  takeEachHole(cursor);
  return { kind: 'note', text: textSince(cursor, from), unspread: true, span: spanSince(cursor, from) };
}

/** `making 5 buttonholes`, `making sure it lies flat`: a word to the maker; null where stitches are made somewhere, `making 3 sc in the corner`. */
export function readMaking(cursor: Cursor): Step | null {
  const from = cursor.at;
  cursor.at += 1;
  const stitch = isNumber(cursor) && readNumber(cursor) !== null ? readStitchName(cursor) : null;
  const works = stitch !== null && leadsToPlace(cursor);
  cursor.at = from;
  return works ? null : (readButtonholes(cursor) ?? readMakerNote(cursor));
}

/** `; for each buttonhole work 2 ch, miss 2 dc`, `(ch 2, skip 2 sts for each)`; the cursor stays where no such words follow. */
function takeEachHole(cursor: Cursor): void {
  const start = cursor.at;
  const { kind } = peek(cursor);
  if (kind === 'open') {
    cursor.at += 1;
    takeEach(cursor);
    const hole = takeHole(cursor);
    takeEach(cursor);
    if (hole && peek(cursor).kind === 'close') {
      cursor.at += 1;
      return;
    }
  } else if (kind === 'semicolon' || kind === 'comma' || kind === 'stop') {
    cursor.at += 1;
    if (takeEach(cursor) && takeHole(cursor) && atBoundary(cursor)) return;
  }
  cursor.at = start;
}

/** `for each buttonhole`, `for each`. */
function takeEach(cursor: Cursor): boolean {
  const start = cursor.at;
  if (takeAny(cursor, 'for') !== null && takeAny(cursor, 'each', 'every', 'a', 'the') !== null) {
    takeAny(cursor, 'one');
    takeOneOf(cursor, HOLES);
    if (peek(cursor).kind === 'comma' || peek(cursor).kind === 'colon') cursor.at += 1;
    return true;
  }
  cursor.at = start;
  return false;
}

/** `work 2 ch, miss 2 dc`, `ch 2, skip next 2 sts`, either way about. */
function takeHole(cursor: Cursor): boolean {
  takeOneOf(cursor, MAKES);
  let chain = false;
  let skip = false;
  for (let n = 0; n < 2; n += 1) {
    if (SKIPS.holds(peek(cursor))) {
      cursor.at += 1;
      takeAny(cursor, 'next', 'the');
      skip = isNumber(cursor) && readNumber(cursor) !== null;
      while (peek(cursor).kind === 'word' && wordAt(cursor) !== 'for') cursor.at += 1;
    } else if (CHAIN_WORDS.holds(peek(cursor)) || (isNumber(cursor) && CHAIN_WORDS.holds(peek(cursor, 1)))) {
      chain = true;
      cursor.at += 2;
    }
    if (n === 0 && (peek(cursor).kind === 'comma' || wordAt(cursor) === 'and')) cursor.at += 1;
    if (n === 0) takeAny(cursor, 'and', 'then');
  }
  return chain && skip;
}
