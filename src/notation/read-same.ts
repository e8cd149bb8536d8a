/** Which stitch is meant by one worked before: `same st as joining`, `same st as last sc made`, `top of last sc made`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeWords, wordAt } from './cursor.ts';
import { isNumber } from './read-number.ts';
import { readWhat } from './read-what.ts';
import type { Place, What } from './tree.ts';

/** `as joining`, `as ss`, `as first dc`: where the round begins. */
export function readAsJoin(cursor: Cursor): boolean {
  if (atBoundary(cursor)) return false;
  const start = cursor.at;
  // `the same stitch you joined in`, `same st where you joined`.
  const where = takeAny(cursor, 'where', 'that') !== null;
  if ((where || wordAt(cursor) === 'you') && takeAny(cursor, 'you', 'we') !== null) {
    if (takeAny(cursor, 'joined', 'started', 'slip-stitched') !== null) {
      takeAny(cursor, 'in', 'into', 'to');
      return true;
    }
  }
  cursor.at = start;
  if (takeAny(cursor, 'as') !== null) {
    takeAny(cursor, 'the', 'last');
    if (takeAny(cursor, 'joining', 'join', 'ss') !== null) {
      if (takeAny(cursor, 'ss') === null) takeWords(cursor, 'sl', 'st');
      takeOfRoundBelow(cursor);
      return true;
    }
    if (takeWords(cursor, 'sl', 'st') || takeWords(cursor, 'slip', 'stitch')) {
      takeOfRoundBelow(cursor);
      return true;
    }
    if (takeAny(cursor, 'first') !== null) {
      if (isNumber(cursor)) cursor.at += 1;
      const first = readWhat(cursor)?.kind;
      if (first === 'stitch' || first === 'st') {
        takeAny(cursor, 'made');
        return true;
      }
    }
  }
  cursor.at = start;
  return false;
}

/** `of round 1`, `at the end of the last rnd` behind the stitch that joined: the round below, which is the one just done. */
function takeOfRoundBelow(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'at') !== null) takeWords(cursor, 'the', 'end');
  if (takeAny(cursor, 'of', 'in', 'from') !== null) {
    takeAny(cursor, 'the');
    const before = takeAny(cursor, 'last', 'previous', 'prev') !== null;
    const round = takeAny(cursor, 'rnd', 'round') !== null;
    const numbered = !before && peek(cursor).kind === 'number' && peek(cursor).value === cursor.reached;
    if (round && numbered) cursor.at += 1;
    if (round && (before || numbered)) return;
  }
  cursor.at = start;
}

/** `as last sc made`, which "same st" says by itself. */
export function takeLastMade(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'as') !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'last');
    if (readWhat(cursor)?.kind === 'stitch' && atLastMade(cursor)) return;
  }
  cursor.at = start;
}

function atLastMade(cursor: Cursor): boolean {
  return (
    takeAny(cursor, 'made', 'worked') !== null || takeWords(cursor, 'just', 'made') || atBoundary(cursor)
  );
}

/**
 * `lp just made`, `ch-5 lp you just made` behind the space, `around the post of the dc just made` behind the stitch that
 * closed it; null with the cursor where it was.
 */
export function readSpaceJustMade(cursor: Cursor, from: number, what: What): Place | null {
  const start = cursor.at;
  takeAny(cursor, 'you', 'that');
  takeAny(cursor, 'was', 'is', "you've");
  const just = takeAny(cursor, 'just') !== null && takeAny(cursor, 'made', 'formed', 'worked') !== null;
  if (what.kind === 'space' && just) return { kind: 'just-made', what, span: spanSince(cursor, from) };
  if (what.kind === 'stitch' && just && OVER.has(cursor.tokens[from]?.text ?? ''))
    return { kind: 'just-made', what: SPACE, closedBy: what.id, span: spanSince(cursor, from) };
  // `3 ch, ss in dc just made`: a picot is closed there.
  if (what.kind === 'stitch' && just) return { kind: 'last-made', what, span: spanSince(cursor, from) };
  cursor.at = start;
  return null;
}

const SPACE: What = { kind: 'space', chains: null, corner: false };
const OVER = new Set(['around', 'round', 'over']);

/** `last sc made`, `sc just made` after "top of". */
export function readLastMade(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  takeAny(cursor, 'last');
  const what = readWhat(cursor);
  takeAny(cursor, 'you', "you've", 'you’ve');
  const made =
    takeAny(cursor, 'made', 'worked') !== null ||
    takeWords(cursor, 'just', 'made') ||
    takeWords(cursor, 'just', 'worked');
  if (what !== null && (what.kind === 'stitch' || what.kind === 'st') && made)
    return { kind: 'last-made', what, span: spanSince(cursor, from) };
  cursor.at = start;
  return null;
}

/** `middle of post of tr just made`, `center of tr just made`: half way up its stem. Null, the cursor where it was, for anything else. */
export function readStemOfMade(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  if (takeAny(cursor, 'middle', 'center', 'centre') !== null && takeAny(cursor, 'of') !== null) {
    takeAny(cursor, 'the');
    if (takeAny(cursor, 'post', 'stem') !== null) takeAny(cursor, 'of');
    takeAny(cursor, 'the');
    const made = readLastMade(cursor, from);
    if (made?.kind === 'last-made') return { ...made, stem: true };
  }
  cursor.at = start;
  return null;
}
