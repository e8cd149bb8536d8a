/** `(32 sc, 5 in gusset)`: how many of those counted lie in a part that only its maker can tell. */

import type { Cursor } from './cursor.ts';
import { peek, takeAny, textSince, wordAt } from './cursor.ts';
import type { Thing } from './line.ts';
import { ROW_WORDS } from './read-told-count.ts';

/** `in gusset`, `in each sleeve` behind a number: a part of what has been counted; null with the cursor where it was. */
export function readWithin(cursor: Cursor): Thing | null {
  const from = cursor.at;
  if (takeAny(cursor, 'in', 'on', 'for') === null) return null;
  takeAny(cursor, 'the', 'each');
  const { kind } = peek(cursor);
  const ends = peek(cursor, 1).kind;
  if (
    kind === 'word' &&
    !ROW_WORDS.has(wordAt(cursor)) &&
    !CORNERS.has(wordAt(cursor)) &&
    (ends === 'close' || ends === 'comma')
  ) {
    cursor.at += 1;
    return { kind: 'named', word: textSince(cursor, from) };
  }
  cursor.at = from;
  return null;
}

/** What a count can be held against. */
const CORNERS = new Set(['corner', 'side', 'edge', 'total', 'all']);
