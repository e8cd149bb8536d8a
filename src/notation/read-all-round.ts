/** What a border is worked in, told before the stitches themselves are. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeWords, textSince, wordAt } from './cursor.ts';
import { takeAllSides } from './read-all-sides.ts';
import { readStitchName } from './read-yarn.ts';
import type { NoteStep } from './tree.ts';

/** `in a spiral without joining`, `in continuous rounds`, `back and forth in rows` behind "work": the way of all that follows. */
export function readWayOfWork(cursor: Cursor, from: number): NoteStep | null {
  const start = cursor.at;
  let way = false;
  while (peek(cursor).kind === 'word' && WAY_WORDS.has(wordAt(cursor))) {
    way ||= WAYS.has(wordAt(cursor));
    cursor.at += 1;
  }
  if (way && atBoundary(cursor))
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  cursor.at = start;
  return null;
}

const WAYS = new Set(['spiral', 'spirals', 'rows', 'rounds', 'rnds']);
const WAY_WORDS = new Set([
  ...WAYS,
  ...'in a the continuous without joining turning or and not closing back forth flat throughout as round around of on'.split(
    ' ',
  ),
]);

/** `work in dc all round, thus:` before the stitches themselves are told; behind "work", which begins at `from`. */
export function readAllRound(cursor: Cursor, from: number): NoteStep | null {
  const start = cursor.at;
  if (takeAny(cursor, 'in') !== null && readStitchName(cursor)?.kind === 'stitch') {
    takeAny(cursor, 'all');
    if (takeAny(cursor, 'round', 'around') !== null) {
      takeAllSides(cursor);
      if (peek(cursor).kind === 'comma') cursor.at += 1;
      const led = takeAny(cursor, 'thus') !== null || takeWords(cursor, 'as', 'follows');
      if (led && (peek(cursor).kind === 'colon' || peek(cursor).kind === 'comma')) {
        const said = { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) } as const;
        cursor.at += 1;
        return said;
      }
    }
  }
  cursor.at = start;
  return null;
}
