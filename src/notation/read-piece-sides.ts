/** Words for the sides of a piece, and for the piece itself: `along each short side`, `of the blanket`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, takeAny, takeOneOf, wordAt } from './cursor.ts';
import type { StatedEntry } from './line.ts';
import { WordSet } from './word-set.ts';

export const EDGE_WORDS = new WordSet(['side', 'sides', 'edge', 'edges']);

const LENGTHS: ReadonlyMap<string, 'short' | 'long'> = new Map([
  ['short', 'short'],
  ['shorter', 'short'],
  ['long', 'long'],
  ['longer', 'long'],
]);

/** `along each short side`, `on the long edges` behind a number in a count; null with the cursor where it was. */
export function readSidesOf(cursor: Cursor): NonNullable<StatedEntry['sides']> | null {
  const start = cursor.at;
  if (takeAny(cursor, 'on', 'along', 'per', 'for') !== null || wordAt(cursor) === 'each') {
    takeAny(cursor, 'each', 'the', 'both');
    const length = LENGTHS.get(wordAt(cursor));
    if (length !== undefined) {
      cursor.at += 1;
      if (takeOneOf(cursor, EDGE_WORDS) !== null) return length;
    }
  }
  cursor.at = start;
  return null;
}

const PIECES = new WordSet(
  `blanket afghan throw cushion pillow square motif piece work shawl cover panel coverlet bedspread cloth mat playmat rug scarf wrap bag runner placemat tablecloth quilt`.split(
    ' ',
  ),
);

/** `of the blanket` behind `any corner 2-ch sp`: whose it is goes without saying. */
export function takeOfWhole(cursor: Cursor): void {
  if (wordAt(cursor) !== 'of') return;
  const start = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'the', 'your', 'joined');
  if (takeOneOf(cursor, PIECES) === null) cursor.at = start;
}

/** `along the bottom edge`, `at inner edge` behind a step that has its place already: it says where the hand is by then. */
export function takeAlongEdge(cursor: Cursor): void {
  if (wordAt(cursor) !== 'along' && wordAt(cursor) !== 'at') {
    // `sc in each st across top`, `across the top edge`.
    if (ACROSS.holds(peek(cursor, -1)) && ENDS_ACROSS.holds(peek(cursor, wordAt(cursor) === 'the' ? 1 : 0)))
      takeTop(cursor);
    return;
  }
  const start = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'the', 'this');
  const middle = takeAny(cursor, 'centre', 'center') !== null;
  takeOneOf(cursor, WHICH_EDGE);
  const edge = takeAny(cursor, 'edge', 'side') !== null || middle;
  if (!edge || !atBoundary(cursor)) cursor.at = start;
}

function takeTop(cursor: Cursor): void {
  const start = cursor.at;
  takeAny(cursor, 'the');
  takeOneOf(cursor, ENDS_ACROSS);
  takeOneOf(cursor, EDGE_WORDS);
  if (!atBoundary(cursor)) cursor.at = start;
}

const ACROSS = new WordSet(['across', 'along']);
const ENDS_ACROSS = new WordSet(['top', 'bottom', 'upper', 'lower', 'edge', 'row']);
const WHICH_EDGE = new WordSet(
  'bottom lower top upper foundation inner neck armhole front back long short next last'.split(' '),
);

/** `between the corner sps`, `between corners`: what a side is, said once more. */
export function takeBetween(cursor: Cursor): void {
  const from = cursor.at;
  if (takeAny(cursor, 'between') === null) return;
  takeAny(cursor, 'the');
  const what = takeAny(cursor, 'corner', 'corners') === null ? null : wordAt(cursor, -1);
  if (what === 'corner' && takeOneOf(cursor, CORNER_WORDS) === null) cursor.at = from;
  if (what === null) cursor.at = from;
}

const CORNER_WORDS = new WordSet(['sp', 'sps', 'spaces', 'sts', 'stitches']);
