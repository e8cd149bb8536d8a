/** Words that name the stitch in the middle of a corner: `center sc of each corner`, `2nd st of next 3-sc corner`. */

import type { Cursor } from './cursor.ts';
import { nameHere, peek, takeAny, takeOneOf, wordAt } from './cursor.ts';
import { readOrdinal } from './read-number.ts';
import { readWhat } from './read-what.ts';
import type { What } from './tree.ts';
import { WordSet } from './word-set.ts';

const PICKS = new WordSet(['each', 'every', 'all', 'next', 'last', 'first', 'any']);
const OUTER = new WordSet(['outer', 'outside', 'top', 'bottom', 'lower', 'upper']);
const CORNERS = new WordSet(['corner', 'corners']);
const GROUPS = new WordSet(['group', 'groups', 'grp', 'grps']);
const MIDDLES = new WordSet(['center', 'centre', 'middle']);

/** Behind `center sc`, `2nd st` and `of`: which of the corners, '' where that is not said; null where none is named, or its middle has another number. */
export function takeOfCorner(cursor: Cursor, nth: number | 'center'): string | null {
  takeAny(cursor, 'the');
  const pick = takeOneOf(cursor, PICKS) ?? '';
  takeAny(cursor, 'the', 'of');
  takeOneOf(cursor, OUTER);
  const size = takeSize(cursor) ?? 3;
  if (takeOneOf(cursor, CORNERS) === null || (nth !== 'center' && nth * 2 !== size + 1)) return null;
  if (takeOneOf(cursor, GROUPS) === null && wordAt(cursor) !== 'st' && nameHere(cursor) !== null) return null;
  return pick;
}

export function cornerOf(what: What | null): What {
  return what?.kind === 'stitch' ? { kind: 'corner', of: what.id } : { kind: 'corner' };
}

/** `middle dc of next corner`, `2nd st of corner` behind "to"; null, the cursor where it was, for anything else. */
export function readMiddleOfCorner(cursor: Cursor): What | null {
  const start = cursor.at;
  const center = takeOneOf(cursor, MIDDLES) !== null;
  const nth = center ? 'center' : readOrdinal(cursor);
  const what = nth === null ? null : readWhat(cursor);
  const stitch = what?.kind === 'stitch' || what?.kind === 'st';
  if (nth !== null && stitch && takeAny(cursor, 'of', 'in', 'at') !== null) {
    if (takeOfCorner(cursor, nth) !== null) return cornerOf(what);
  }
  cursor.at = start;
  return null;
}

/** `3-sc`, `3 sc`, `3-st` before "corner": how many stand in it. */
function takeSize(cursor: Cursor): number | null {
  const { kind, value } = peek(cursor);
  if (kind !== 'number') return null;
  cursor.at += 1;
  if (peek(cursor).kind === 'dash') cursor.at += 1;
  const found = nameHere(cursor);
  if (found !== null) cursor.at += found.length;
  else takeAny(cursor, 'st', 'stitch');
  if (peek(cursor).kind === 'dash') cursor.at += 1;
  return value;
}
