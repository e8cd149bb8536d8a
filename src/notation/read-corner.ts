/** The stitch in the middle of a corner: `center sc of each corner`, `2nd st of next 3-sc corner`. */

import type { Cursor } from './cursor.ts';
import { nameHere, peek, spanSince, takeAny, takeOneOf, wordAt } from './cursor.ts';
import { readStop } from './read-stop.ts';
import type { Place, What } from './tree.ts';

const PICKS = new Set(['each', 'every', 'all', 'next', 'last', 'first']);
const CORNERS = new Set(['corner', 'corners']);
const GROUPS = new Set(['group', 'groups', 'grp', 'grps']);

/**
 * What stands behind `center sc`, `2nd st` and `of`: which corner it is the middle of. Null where no corner is named, or
 * where the number is not that of its middle; the cursor is then anywhere.
 */
export function readOfCorner(
  cursor: Cursor,
  nth: number | 'center',
  what: What | null,
  from: number,
): Place | null {
  takeAny(cursor, 'the');
  const pick = takeOneOf(cursor, PICKS);
  takeAny(cursor, 'the', 'of');
  const size = takeSize(cursor) ?? 3;
  if (takeOneOf(cursor, CORNERS) === null || (nth !== 'center' && nth * 2 !== size + 1)) return null;
  if (takeOneOf(cursor, GROUPS) === null && wordAt(cursor) !== 'st' && nameHere(cursor) !== null) return null;
  const corner: What = what?.kind === 'stitch' ? { kind: 'corner', of: what.id } : { kind: 'corner' };
  const span = spanSince(cursor, from);
  // The first corner and the last are the next where they are come to.
  if (pick !== 'each' && pick !== 'every' && pick !== 'all')
    return { kind: 'next', n: null, what: corner, each: false, ...(pick === null ? HERE : {}), span };
  const stop = readStop(cursor) ?? { kind: 'end', word: 'across', span };
  return { kind: 'each', what: corner, stop, span: spanSince(cursor, from) };
}

const HERE = { here: true } as const;

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
