/** `At the end of Row 56 do not turn`: when something is done, said before it. */

import type { Cursor } from './cursor.ts';
import { peek, spanSince, takeAny, takeWords, textSince, wordAt } from './cursor.ts';
import { unitAt } from './row-unit.ts';
import type { NoteStep } from './tree.ts';

/**
 * What is said of the row in hand leaves to be read what is done there. Of one row out of several, which may not be
 * the one in hand, the turn belongs to the note as well. Null where anything else is done.
 */
export function readAtEnd(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'the');
  const end = takeWords(cursor, 'end', 'of');
  takeAny(cursor, 'the', 'this', 'each', 'every');
  takeAny(cursor, 'last', 'final');
  const unit = end ? unitAt(cursor) : null;
  if (unit === null) return back(cursor, from);
  cursor.at += 1;
  const numbered = peek(cursor).kind === 'number';
  if (numbered) cursor.at += 1;
  const said = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  const turns = takeWords(cursor, 'do', 'not', 'turn') || takeAny(cursor, 'turn') !== null;
  const offs = wordAt(cursor) === 'fasten' || wordAt(cursor) === 'fo' || wordAt(cursor) === 'break';
  if (!turns && !offs) return back(cursor, from);
  if (!(turns && numbered)) cursor.at = said;
  return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
}

function back(cursor: Cursor, at: number): null {
  cursor.at = at;
  return null;
}
