/** `hdc2tog beginning in same st` at the start of a row: its first leg goes where it would go in any case. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, textSince, wordAt } from './cursor.ts';
import type { NoteStep } from './tree.ts';

/** What stands behind "beginning" or "starting" and works nothing; null, with the cursor where it was, for anything else. */
export function readBeginning(cursor: Cursor): NoteStep | null {
  return readBegunIn(cursor) ?? readLongTail(cursor);
}

/** Null, with the cursor where it was, behind any other stitch, and where more than a chain of 1 stands before it. */
function readBegunIn(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  if (!isFirstTogether(cursor)) return null;
  cursor.at += 1;
  takeAny(cursor, 'in', 'at', 'with');
  takeAny(cursor, 'the');
  const same = takeAny(cursor, 'same', 'first') !== null;
  const place = takeAny(cursor, 'st', 'stitch', 'place') !== null;
  if (takeAny(cursor, 'as') !== null) takeAny(cursor, 'join', 'joining', 'joined');
  if (same && place && atBoundary(cursor))
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

/** `Ch 1, sc2tog` and `1 ch, dc2tog`: a chain of 1 counts as no stitch, so that nothing is in its way. */
function isFirstTogether(cursor: Cursor): boolean {
  if (!TOGETHER.test(wordAt(cursor, -1)) && wordAt(cursor, -1) !== 'dec') return false;
  const chained = peek(cursor, -2).kind === 'comma';
  const usual = wordAt(cursor, -4) === 'ch' && peek(cursor, -3).value === 1;
  const turned = wordAt(cursor, -3) === 'ch' && peek(cursor, -4).value === 1;
  const start = peek(cursor, -5).kind;
  return chained && (usual || turned) && start !== 'comma' && start !== 'mark' && start !== 'open';
}

const TOGETHER = /^[a-z]+2tog$/;

/** `Starting with a long tail, chain 17`: how much yarn hangs at the beginning. Null, the cursor where it was, for anything else. */
function readLongTail(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  cursor.at += 1;
  if (takeAny(cursor, 'with', 'leaving') !== null) {
    takeAny(cursor, 'a', 'an');
    takeAny(cursor, 'extra', 'very', 'nice');
    takeAny(cursor, 'long', 'good', 'generous');
    const tail = takeAny(cursor, 'tail', 'end') !== null;
    if (tail && takeAny(cursor, 'for', 'to') !== null)
      while (peek(cursor).kind === 'word' && !atBoundary(cursor)) cursor.at += 1;
    if (tail && atBoundary(cursor))
      return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  }
  cursor.at = from;
  return null;
}
