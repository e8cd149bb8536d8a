/** `(3 sc in each block)` behind the stitches of a side: how many that is to a block of a piece from corner to corner. */

import type { Cursor } from './cursor.ts';
import { peek, takeAny, takeOneOf, textSince, wordAt } from './cursor.ts';
import type { BorderSide } from './edge.ts';
import { readStitchName } from './read-yarn.ts';
import { WordSet } from './word-set.ts';

const BLOCKS = new WordSet(['block', 'blocks', 'tile', 'tiles']);
const INTO = new WordSet(['in', 'into', 'per', 'for', 'to', 'along', 'on']);

/** `from` is where the number of all of them stands; null with the cursor where it was where no such bracket follows. */
export function readInBlocks(cursor: Cursor, from: number): BorderSide | null {
  if (peek(cursor).kind !== 'open' || peek(cursor, 1).kind !== 'number') return null;
  const start = cursor.at;
  const { value } = peek(cursor, 1);
  cursor.at += 2;
  if (readStitchName(cursor) === null) takeAny(cursor, 'st', 'sts', 'stitches');
  const led = takeOneOf(cursor, INTO) !== null;
  takeAny(cursor, 'the', 'side', 'edge', 'end');
  takeAny(cursor, 'of');
  takeAny(cursor, 'each', 'every', 'a', 'the');
  if (led && takeOneOf(cursor, BLOCKS) !== null && peek(cursor).kind === 'close') {
    cursor.at += 1;
    return { each: 'counted', inBlock: value, said: behindName(cursor, from) };
  }
  cursor.at = start;
  return null;
}

/** What stands behind the number and the stitch's name. */
function behindName(cursor: Cursor, from: number): string {
  let at = from;
  while (at < cursor.at && wordAt(cursor, at - cursor.at) !== 'evenly') at += 1;
  return textSince(cursor, at);
}
