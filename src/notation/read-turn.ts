/** `turn`, `do not turn`, and what else is turned or not done: the work on its side, inside out, a brim up. */

import type { Cursor } from './cursor.ts';
import { atBoundary, spanSince, takeAny, takeWords, textSince } from './cursor.ts';
import { readSideways } from './read-garment.ts';
import { readNotMade, takeFoldedUp } from './read-note.ts';
import { takeSideOut } from './read-seam.ts';
import type { Step } from './tree.ts';

export function readTurn(cursor: Cursor): Step | null {
  const from = cursor.at;
  if (takeAny(cursor, 'turn') !== null) {
    const span = spanSince(cursor, from);
    if (atBoundary(cursor)) return { kind: 'turn', what: 'turn', span };
    const sideways = readSideways(cursor, from);
    if (sideways !== null) return sideways;
    takeAny(cursor, 'your', 'the', 'it');
    takeAny(cursor, 'work', 'piece');
    if (takeSideOut(cursor) || takeFoldedUp(cursor))
      return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
    return { kind: 'turn', what: 'turn', span };
  }
  if (takeAny(cursor, "don't", 'don’t') === null && !takeWords(cursor, 'do', 'not')) return null;
  if (takeAny(cursor, 'turn') !== null)
    return { kind: 'turn', what: 'do not turn', span: spanSince(cursor, from) };
  if (takeWords(cursor, 'fasten', 'off') || takeWords(cursor, 'cut', 'yarn'))
    return (
      readSideways(cursor, from) ?? {
        kind: 'note',
        text: textSince(cursor, from),
        span: spanSince(cursor, from),
      }
    );
  if (takeAny(cursor, 'join') !== null)
    return { kind: 'turn', what: 'do not join', span: spanSince(cursor, from) };
  return readNotMade(cursor, from);
}
