/** What pieces of clothing are told by: an edge worked along sideways, stitches between markers, a neck that loses one each row. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, takeWords, textSince, wordAt } from './cursor.ts';
import type { LeaveStep } from './end-steps.ts';
import type { Num } from './num.ts';
import { isNumber, readNumber } from './read-number.ts';
import { readWhat } from './read-what.ts';
import { unitAt } from './row-unit.ts';
import type { AlongStep, NoteStep, RepeatRowsStep } from './tree.ts';
import { WordSet } from './word-set.ts';

/** `turn the welt on its side and work along the long edge thus`: the next stitches go into the ends of its rows. Null for any other turn. */
export function readSideways(cursor: Cursor, from: number): AlongStep | NoteStep | null {
  const start = cursor.at;
  takeAny(cursor, 'but', 'and');
  takeAny(cursor, 'turn');
  takeAny(cursor, 'the', 'your');
  takeOneOf(cursor, TURNED);
  const turned =
    takeWords(cursor, 'on', 'its', 'side') || takeAny(cursor, 'sideways') !== null || takeQuarter(cursor);
  // `Turn the ribbing sideways.`: the row behind it says that it goes along.
  if (turned && (peek(cursor).kind === 'stop' || peek(cursor).kind === 'end'))
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  // `turn to work along the side of the cuff`.
  const to = !turned && takeAny(cursor, 'to') !== null;
  if (turned || to) {
    if (peek(cursor).kind === 'comma') cursor.at += 1;
    takeAny(cursor, 'and', 'to');
    const works = takeAny(cursor, 'work', 'working') !== null;
    if (works && takeOneOf(cursor, WAYS) !== null) {
      takeAny(cursor, 'the', 'one');
      takeAny(cursor, 'long', 'row');
      const edge = takeAny(cursor, 'edge', 'side', 'ends') !== null;
      takeAny(cursor, 'thus');
      takeWords(cursor, 'as', 'follows');
      if (edge && takeAny(cursor, 'of') !== null) {
        takeAny(cursor, 'the', 'your');
        takeOneOf(cursor, TURNED);
      }
      if (edge && to && (peek(cursor).kind === 'stop' || peek(cursor).kind === 'end'))
        return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
      if (peek(cursor).kind === 'colon') cursor.at += 1;
      if (edge) return { kind: 'along', edge: 'row ends', span: spanSince(cursor, from) };
    }
  }
  cursor.at = start;
  return null;
}

const WAYS = new WordSet(['along', 'across', 'up', 'down', 'into']);
const TURNED = new WordSet(['welt', 'work', 'piece', 'rib', 'ribbing', 'band', 'strip', 'brim', 'cuff']);

/** `90 degrees`. */
function takeQuarter(cursor: Cursor): boolean {
  if (peek(cursor).value !== 90 || wordAt(cursor, 1) !== 'degrees') return false;
  cursor.at += 2;
  return true;
}

/** `the centre 27 (29) sts form the back neck`, `the 26 sts between the markers are the back neck`: stitches of the last row by their name. */
export function readPartOfRow(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  takeAny(cursor, 'the');
  takeOneOf(cursor, WHICH_STITCHES);
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  if (n !== null && readWhat(cursor)?.kind === 'st') {
    if (takeAny(cursor, 'between') !== null) {
      takeAny(cursor, 'the', 'these');
      takeAny(cursor, 'markers');
    }
    const named = takeAny(cursor, 'form', 'are', 'make', 'become') !== null;
    takeAny(cursor, 'the');
    takeAny(cursor, 'back', 'front', 'left', 'right');
    if (takeAny(cursor, 'of') !== null) takeAny(cursor, 'the');
    if (
      named &&
      takeOneOf(cursor, PARTS_OF_ROW) !== null &&
      (atBoundary(cursor) || peek(cursor).kind === 'open')
    )
      return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  }
  cursor.at = from;
  return null;
}

/** `stop there` within a row: the rest of the row below is left. */
export function readStopThere(cursor: Cursor): LeaveStep | null {
  const from = cursor.at;
  cursor.at += 1;
  if (takeAny(cursor, 'there', 'here') !== null && atBoundary(cursor))
    return { kind: 'leave', span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

const WHICH_STITCHES = new WordSet([
  'centre',
  'center',
  'middle',
  'remaining',
  'rem',
  'other',
  'last',
  'first',
]);
const PARTS_OF_ROW = new WordSet(['neck', 'shoulder', 'shoulders', 'armhole', 'neckline', 'opening']);

/** `with 4.00 mm hook`, `using a 5 mm hook`: which hook; null where no hook is named. */
export function readWithHook(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'a', 'an', 'the');
  for (let words = 0; words < LONGEST_HOOK; words += 1) {
    if (takeAny(cursor, 'hook') !== null)
      return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
    const { kind } = peek(cursor);
    if (kind !== 'number' && kind !== 'stop' && !HOOK_WORDS.holds(peek(cursor))) break;
    cursor.at += 1;
  }
  cursor.at = from;
  return null;
}

const LONGEST_HOOK = 6;
const HOOK_WORDS = new WordSet(['mm', 'size', 'smaller', 'larger', 'crochet', 'steel', 'no']);

/** `neck edge on each of the next 8 (7:8:7) rows`, `side edge on next 6 rows` behind "dec 1 st at": null for any other. */
export function readAtOneEdge(
  cursor: Cursor,
  from: number,
  does: 'inc' | 'dec',
  n: Num,
): RepeatRowsStep | null {
  const start = cursor.at;
  takeAny(cursor, 'the');
  const edge = takeOneOf(cursor, EDGES);
  const named = takeAny(cursor, 'edge', 'edges') !== null;
  takeAny(cursor, 'only');
  if (edge !== null && named && takeAny(cursor, 'on', 'in', 'of', 'over') !== null) {
    if (takeAny(cursor, 'each', 'every') !== null) takeAny(cursor, 'of');
    takeAny(cursor, 'the');
    const next = takeAny(cursor, 'next', 'foll', 'following') !== null;
    const rows = next ? readNumber(cursor) : null;
    const unit = rows === null ? null : unitAt(cursor);
    if (rows !== null && unit !== null) {
      cursor.at += 1;
      return {
        kind: 'repeat rows',
        unit,
        rows: [],
        last: 1,
        even: true,
        atEdge: { does, n, edge },
        until: { kind: 'times', n: rows, more: false },
        span: spanSince(cursor, from),
      };
    }
  }
  cursor.at = start;
  return null;
}

const EDGES = new WordSet(['neck', 'armhole', 'front', 'side', 'inside', 'inner', 'outer', 'shaped', 'same']);
