/** A place in the middle of a corner: `in center sc of each corner`, `in 2nd st of next 3-sc corner`, `in middle dc`. */

import { cornerOf, takeOfCorner } from './corner-words.ts';
import type { Cursor } from './cursor.ts';
import { spanSince } from './cursor.ts';
import { takeOfWhole } from './read-piece-sides.ts';
import { readStop } from './read-stop.ts';
import type { Place, What } from './tree.ts';

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
  const pick = takeOfCorner(cursor, nth);
  if (pick === null) return null;
  const span = spanSince(cursor, from);
  if (pick === 'any') {
    takeOfWhole(cursor);
    return { kind: 'any', what: cornerOf(what), span: spanSince(cursor, from) };
  }
  // The first corner and the last are the next where they are come to.
  if (pick !== 'each' && pick !== 'every' && pick !== 'all')
    return { kind: 'next', n: null, what: cornerOf(what), each: false, ...(pick === '' ? HERE : {}), span };
  const stop = readStop(cursor) ?? { kind: 'end', word: 'across', span };
  return { kind: 'each', what: cornerOf(what), stop, span: spanSince(cursor, from) };
}

/** `middle dc` by itself: the corner that is come to. */
export function middleAlone(cursor: Cursor, what: What, from: number): Place {
  return {
    kind: 'next',
    n: null,
    what: cornerOf(what),
    each: false,
    here: true,
    span: spanSince(cursor, from),
  };
}

const HERE = { here: true } as const;
