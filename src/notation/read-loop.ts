/** The loop of a stitch that the hook goes under, in words: `BLO`, `back loop only`, `front lps`, `both lps`. */

import type { Cursor } from './cursor.ts';
import { peek, takeAny, takeOneOf, wordAt } from './cursor.ts';
import type { Loop } from './tree.ts';
import { WordSet } from './word-set.ts';

const SHORT_LOOPS = new WordSet(['blo', 'flo', 'bl', 'fl', 'tbl', 'tfl']);

const LOOP_STARTS = new WordSet([...SHORT_LOOPS, 'both', 'the', '3rd', 'third', 'back', 'front']);

/** `BLO`, `back loop only`, `front lps`. */
export function readLoop(cursor: Cursor): Loop | null {
  if (!LOOP_STARTS.holds(peek(cursor))) return null;
  const from = cursor.at;
  if (takeAny(cursor, 'both') !== null && takeAny(cursor, 'loops', 'lps') !== null) return 'both';
  cursor.at = from;
  const short = takeOneOf(cursor, SHORT_LOOPS);
  if (short === 'tbl' || short === 'tfl') return short === 'tbl' ? 'back' : 'front';
  if (short !== null) return short.startsWith('b') ? 'back' : 'front';
  takeAny(cursor, 'the');
  const third = peek(cursor).text === '3rd' || peek(cursor).text === 'third';
  if (third && ['loop', 'lp'].includes(wordAt(cursor, 1))) {
    cursor.at += 2;
    takeAny(cursor, 'only');
    return 'third';
  }
  const side = takeAny(cursor, 'back', 'front');
  if (side !== null && takeAny(cursor, 'loop', 'loops', 'lp', 'lps') !== null) {
    takeAny(cursor, 'only');
    return side === 'back' ? 'back' : 'front';
  }
  cursor.at = from;
  return null;
}
