/**
 * `sc evenly around, working 3 sc in each corner`, `dc evenly up right front`: as many as lie flat, which is the maker's own
 * number. Nothing can be counted of it, so it is told and not worked.
 */

import type { Cursor } from './cursor.ts';
import { atBoundary, nameHere, peek, spanSince, takeAny, takeOneOf, textSince, wordAt } from './cursor.ts';
import type { Num } from './num.ts';
import { readNumber } from './read-number.ts';
import type { EvenlyStep, NoteStep, StitchName } from './tree.ts';
import { WordSet } from './word-set.ts';

const WAYS = new WordSet(['around', 'round', 'along', 'across', 'up', 'down', 'over']);
const EDGE_NAMES = new WordSet(
  `the all a of and its entire whole outer outside inner raw open each every both one other first second long short left right
   front fronts back neck neckline sleeve sleeves armhole armholes hem cuff brim opening edge edges side sides end ends row rows
   top bottom lower upper blanket afghan throw square piece work shawl scarf body border hood collar bag cushion pillow panel
   to from next corner corners center centre way hole base`.split(/\s+/),
);
const LED = new WordSet(['around', 'round']);
const WHOLE = new WordSet(['entire', 'whole', 'outer', 'outside']);
const WITH = new WordSet(['with', 'working', 'placing', 'making', 'putting', 'adding']);

/** Behind the stitch's name; null, the cursor where it was, where a number is told, or no edge is named. */
export function readUnspread(cursor: Cursor, from: number, stitch: StitchName): NoteStep | EvenlyStep | null {
  const start = cursor.at;
  const evenly = takeAny(cursor, 'evenly') !== null;
  if (evenly) takeAny(cursor, 'spaced');
  const led = wordAt(cursor);
  const way = takeOneOf(cursor, WAYS) !== null;
  // `sc around the entire edge`; `sc around` alone goes into each stitch.
  const entire = LED.has(led) && (WHOLE.holds(peek(cursor)) || WHOLE.holds(peek(cursor, 1)));
  if (way && (evenly || entire)) {
    const at = cursor.at;
    while (takeOneOf(cursor, EDGE_NAMES) !== null);
    // `sc evenly across` a row is not said to leave its number open.
    const named = cursor.at > at || LED.has(led);
    takeCorners(cursor);
    const lengths = takeExample(cursor);
    // In a repeat, with the corners told beside it, the two lengths are those of the sides as they come.
    if (named && lengths !== null && cursor.depth > 0 && atBoundary(cursor)) {
      const said = textSince(cursor, start);
      const span = spanSince(cursor, from);
      const n = { values: [1], span };
      return { kind: 'evenly', stitch, n, edge: 'row ends', side: { each: 'stitch', said, lengths }, span };
    }
    // `, 2 dc in each row`: so many are told after all.
    const told =
      peek(cursor).kind === 'comma' &&
      peek(cursor, 1).kind === 'number' &&
      wordAt(cursor, 3) === 'in' &&
      wordAt(cursor, 4) === 'each';
    if (named && !told && (atBoundary(cursor) || peek(cursor).kind === 'open' || wordAt(cursor) === 'and'))
      return { kind: 'note', text: textSince(cursor, from), unspread: true, span: spanSince(cursor, from) };
  }
  cursor.at = start;
  return null;
}

/** `with 3 sc in each corner`, `, placing 3 sc in the corners`: what turns them is told with it. */
function takeCorners(cursor: Cursor): void {
  const start = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  if (takeOneOf(cursor, WITH) !== null && peek(cursor).kind === 'number') {
    cursor.at += 1;
    const found = nameHere(cursor);
    cursor.at += found?.length ?? 0;
    takeAny(cursor, 'sts', 'stitches');
    if (takeAny(cursor, 'in', 'into', 'at') !== null) {
      takeAny(cursor, 'each', 'the', 'every', 'all');
      takeAny(cursor, 'of');
      takeAny(cursor, 'the');
      if (takeAny(cursor, 'corner', 'corners') !== null) {
        takeAny(cursor, 'st', 'sp', 'stitch');
        return;
      }
    }
  }
  cursor.at = start;
}

/** `(81 along a short side, 105 along a long side)`: how many it was for whoever wrote it; the two lengths, or null where they are told otherwise. */
function takeExample(cursor: Cursor): readonly [Num, Num] | null {
  if (peek(cursor).kind !== 'open' || peek(cursor, 1).kind !== 'number') return null;
  const start = cursor.at;
  cursor.at += 1;
  const lengths: Num[] = [];
  const which = new Set<string>();
  while (peek(cursor).kind === 'number' && lengths.length < 2) {
    const n = readNumber(cursor);
    if (n !== null) lengths.push(n);
    let word = '';
    while (peek(cursor).kind === 'word' && wordAt(cursor) !== 'and') {
      if (LENGTHS.holds(peek(cursor))) word = wordAt(cursor);
      cursor.at += 1;
    }
    which.add(word);
    if (peek(cursor).kind === 'comma' || peek(cursor).kind === 'semicolon') cursor.at += 1;
    takeAny(cursor, 'and');
  }
  const [first, second] = lengths;
  if (peek(cursor).kind === 'close' && which.size === 2 && !which.has('') && first && second) {
    cursor.at += 1;
    return [first, second];
  }
  cursor.at = start;
  let sides = false;
  for (let ahead = 1; ; ahead += 1) {
    const { kind } = peek(cursor, ahead);
    const word = wordAt(cursor, ahead);
    sides ||= word === 'side' || word === 'sides' || word === 'edge';
    if (kind === 'close') {
      if (sides) cursor.at += ahead + 1;
      return null;
    }
    if (kind !== 'word' && kind !== 'number' && kind !== 'comma') return null;
  }
}

const LENGTHS = new WordSet(['short', 'long', 'shorter', 'longer']);
