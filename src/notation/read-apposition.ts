/** `sl st in next sc, which is the center sc of the corner`, `…, the middle one of the shell`: what the place just named is. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, textSince } from './cursor.ts';
import { readWhat } from './read-what.ts';
import type { NoteStep } from './tree.ts';
import { WordSet } from './word-set.ts';

const PICKS = new WordSet(['center', 'centre', 'middle', 'first', 'last', 'top', 'corner']);

/** Behind a comma; null, the cursor where it was, where anything more is said. */
export function readApposition(cursor: Cursor): NoteStep | null {
  if (peek(cursor, -1).kind !== 'comma') return null;
  const from = cursor.at;
  if (takeAny(cursor, 'which', 'that', 'this') !== null) takeAny(cursor, 'is', 'being');
  const the = takeAny(cursor, 'the') !== null;
  if (the && takeOneOf(cursor, PICKS) !== null) {
    const named = readWhat(cursor) !== null || takeAny(cursor, 'one', 'point') !== null;
    if (named && takeAny(cursor, 'of', 'at', 'in') !== null) {
      takeAny(cursor, 'the', 'each', 'that', 'this');
      if (!atBoundary(cursor)) cursor.at += 1;
    }
    if (named && atBoundary(cursor))
      return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  }
  cursor.at = from;
  return null;
}
