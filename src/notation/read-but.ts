/** What repeated rows do otherwise: `but in every following 3rd row work the last dc into the 9th dc of the scallop before`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, textSince, wordAt } from './cursor.ts';
import { skipStep } from './read-note.ts';
import { readTurn } from './read-turn.ts';
import { readStitchName } from './read-yarn.ts';
import { unitAt } from './row-unit.ts';
import type { Step } from './tree.ts';
import { WordSet } from './word-set.ts';

const TURNS = new WordSet(['do', "don't", 'don’t', 'turn']);

/**
 * `but do not turn`, `but without turning`; where one stitch of theirs goes instead, which changes nothing of how many there are: kept as written. Null for
 * anything else that would be otherwise.
 */
export function readButLater(cursor: Cursor): Step | null {
  const from = cursor.at;
  cursor.at += 1;
  const turn = TURNS.holds(peek(cursor)) ? readTurn(cursor) : null;
  if (turn?.kind === 'turn' && atBoundary(cursor)) return { ...turn, span: spanSince(cursor, from) };
  if (takeAny(cursor, 'without', 'omit', 'omitting') !== null) {
    takeAny(cursor, 'the');
    if (takeAny(cursor, 'turning', 'turn') !== null && atBoundary(cursor))
      return { kind: 'turn', what: 'do not turn', span: spanSince(cursor, from) };
  }
  cursor.at = from + 1;
  takeAny(cursor, 'in', 'on');
  const which = takeAny(cursor, 'every', 'each', 'all') !== null;
  takeAny(cursor, 'following', 'subsequent', 'later', 'next');
  if (peek(cursor).kind === 'ordinal') cursor.at += 1;
  const rows = which && unitAt(cursor) !== null;
  if (rows) cursor.at += 1;
  takeAny(cursor, 'work', 'working');
  takeAny(cursor, 'the');
  const one = rows && takeAny(cursor, 'last', 'first') !== null && readStitchName(cursor) !== null;
  if (one && (wordAt(cursor) === 'into' || wordAt(cursor) === 'in')) {
    skipStep(cursor);
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  }
  cursor.at = from;
  return null;
}
