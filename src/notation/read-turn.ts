/** `turn`, `do not turn`, and what else is turned or not done: the work on its side, inside out, a brim up. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeWords, textSince, wordAt } from './cursor.ts';
import { readSideways } from './read-garment.ts';
import { readNotMade, takeFoldedUp } from './read-note.ts';
import { takeSideOut } from './read-seam.ts';
import type { Step } from './tree.ts';
import { WordSet } from './word-set.ts';

/** `so a row end edge is at the top, the one near the seam` behind "turn the piece": how it lies, to the end of the sentence. */
function takeSoThat(cursor: Cursor): boolean {
  const start = cursor.at;
  if (takeAny(cursor, 'so', 'until') === null) return false;
  let lies = false;
  for (let { kind } = peek(cursor); kind !== 'stop' && kind !== 'end'; { kind } = peek(cursor)) {
    const word = wordAt(cursor);
    lies ||= LIES.has(word);
    if (WORKED.has(word) || kind === 'mark' || kind === 'open') {
      cursor.at = start;
      return false;
    }
    cursor.at += 1;
  }
  if (!lies) cursor.at = start;
  return lies;
}

const LIES = new WordSet(['is', 'are', 'lies', 'faces', 'sits', 'runs', 'top', 'facing']);
/** Without these nothing is worked. */
const WORKED = new WordSet([
  'ch',
  'chain',
  'next',
  'each',
  'work',
  'join',
  'sk',
  'skip',
  'miss',
  'rep',
  'repeat',
  'into',
]);

/** `at the end`, `at end of row` behind "do not turn". */
function takeAtEnd(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'at') === null) return;
  takeAny(cursor, 'the');
  const end = takeAny(cursor, 'end') !== null;
  if (end && takeAny(cursor, 'of') !== null) {
    takeAny(cursor, 'the', 'this', 'last');
    takeAny(cursor, 'row', 'rnd', 'round');
  }
  if (!end || !atBoundary(cursor)) cursor.at = start;
}

export function readTurn(cursor: Cursor): Step | null {
  const from = cursor.at;
  if (takeAny(cursor, 'turn') !== null) {
    const span = spanSince(cursor, from);
    if (atBoundary(cursor)) return { kind: 'turn', what: 'turn', span };
    const sideways = readSideways(cursor, from);
    if (sideways !== null) return sideways;
    takeAny(cursor, 'your', 'the', 'it');
    takeAny(cursor, 'work', 'piece');
    if (takeSideOut(cursor) || takeFoldedUp(cursor) || takeSoThat(cursor))
      return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
    return { kind: 'turn', what: 'turn', span };
  }
  if (takeAny(cursor, "don't", 'don’t', 'dont') === null && !takeWords(cursor, 'do', 'not')) return null;
  if (takeAny(cursor, 'turn') !== null) {
    takeAtEnd(cursor);
    return { kind: 'turn', what: 'do not turn', span: spanSince(cursor, from) };
  }
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
