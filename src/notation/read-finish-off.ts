/** `cut the yarn and pull through`, `finish off in the same way`, `end off`: the yarn is fastened off, told in other words. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, takeWords, wordAt } from './cursor.ts';
import type { Step } from './tree.ts';
import { WordSet } from './word-set.ts';

const YARN = new WordSet(['yarn', 'wool', 'thread', 'cotton', 'strand', 'raffia']);
const PULLS = new WordSet(['pull', 'draw', 'take', 'thread', 'pass']);

/** Null, with the cursor where it was, where more is done with the yarn than to close the last loop. */
export function readFinishOff(cursor: Cursor): Step | null {
  const from = cursor.at;
  const off = takeWords(cursor, 'finish', 'off') || takeWords(cursor, 'end', 'off');
  if (!off && !takeCutThrough(cursor)) {
    cursor.at = from;
    return null;
  }
  const span = spanSince(cursor, from);
  if (takeAny(cursor, 'in') !== null) takeWords(cursor, 'the', 'same', 'way');
  else takeWords(cursor, 'as', 'before');
  if (atBoundary(cursor)) return { kind: 'fasten off', yarn: null, span };
  cursor.at = from;
  return null;
}

/** `cut yarn, draw it through the last loop`. */
function takeCutThrough(cursor: Cursor): boolean {
  if (takeAny(cursor, 'cut', 'break') === null) return false;
  takeAny(cursor, 'the', 'your');
  if (takeOneOf(cursor, YARN) === null) return false;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  takeAny(cursor, 'and');
  if (takeOneOf(cursor, PULLS) === null) return false;
  takeAny(cursor, 'it', 'end', 'tail');
  if (wordAt(cursor) === 'the') cursor.at += takesEnd(wordAt(cursor, 1)) ? 2 : 0;
  if (takeAny(cursor, 'through') === null) return false;
  takeAny(cursor, 'the');
  takeAny(cursor, 'last', 'final', 'remaining');
  takeAny(cursor, 'loop', 'lp', 'st', 'stitch');
  return true;
}

function takesEnd(word: string): boolean {
  return word === 'end' || word === 'tail';
}
