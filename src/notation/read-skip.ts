/** Stitches that are skipped: `sk next 2 ch`, `skip 1`, `miss next st`, `sk first st`, `skip next 8 sc for thumb`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, nameHere, peek, spanSince, takeAny, takeOneOf, textSince, wordAt } from './cursor.ts';
import { readCounts } from './read-chain.ts';
import { skipStep } from './read-note.ts';
import { isNumber, readNumber } from './read-number.ts';
import { ANY_STITCH, isAmount, readWhat, takeBelow } from './read-what.ts';
import type { NoteStep, SkipStep } from './tree.ts';
import { WordSet } from './word-set.ts';

/** `sk next 2 ch`, `skip 1`, `miss next st`, `sk first st`, `sk next sc and next dc`. */
export function readSkip(cursor: Cursor): SkipStep | NoteStep | readonly SkipStep[] | null {
  const from = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'the', 'those', 'these');
  const said = takeAny(cursor, 'next', 'first', 'nxt', 'last');
  const pick = said === 'first' || said === 'last' ? said : 'next';
  // `the center 19 sts` between two shoulders come next where one of them is done.
  const middle = said === null && takeAny(cursor, 'center', 'centre', 'middle', 'following') !== null;
  const n = isAmount(cursor) ? readNumber(cursor) : null;
  const left = takeOneOf(cursor, LEFT) !== null;
  const what = readWhat(cursor);
  if ((what === null || middle) && n === null) {
    cursor.at = from;
    return null;
  }
  takePurpose(cursor);
  takeOnRound(cursor);
  const fan = pick === 'last' && n === null ? takeOfFan(cursor) : null;
  const stands = ofRow(cursor, left);
  // `of the last full row`: the one that both sides of a neck stand on.
  if (wordAt(cursor) === 'of') takeBelow(cursor);
  if (wordAt(cursor) === 'of' && takeOfPiece(cursor)) takePurpose(cursor);
  if (takeAny(cursor, 'behind') !== null) {
    // The stitch behind a long or a post stitch is the one that it was worked for: it is used up already.
    skipStep(cursor);
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  }
  // `skip first 3 ch (counts as dc)`: what stands for the row's first stitch, as its own chain would.
  if (pick === 'first' && what?.kind === 'ch' && peek(cursor).kind === 'open')
    cursor.counting = readCounts(cursor) ?? cursor.counting;
  const skip: SkipStep = {
    kind: 'skip',
    n,
    what: what ?? ANY_STITCH,
    pick: fan === null ? pick : 'next',
    ...(fan === null ? {} : { restOf: fan }),
    ...stands,
    span: spanSince(cursor, from),
  };
  return wordAt(cursor) === 'and' ? [skip, ...readSkippedToo(cursor)] : skip;
}

/** `and next dc` behind `sk next sc`: skipped as well, where nothing is said to be worked into it. */
function readSkippedToo(cursor: Cursor): SkipStep[] {
  const also: SkipStep[] = [];
  for (;;) {
    const from = cursor.at;
    takeAny(cursor, 'and');
    const start = cursor.at;
    takeAny(cursor, 'the');
    const next = takeAny(cursor, 'next', 'nxt') !== null;
    const n = next && isAmount(cursor) ? readNumber(cursor) : null;
    // `sk next sc and dc`: behind a bare name nothing says that it is worked.
    const what = next || nameHere(cursor) !== null ? readWhat(cursor) : null;
    if (what === null || !(atBoundary(cursor) || wordAt(cursor) === 'and')) {
      cursor.at = from;
      return also;
    }
    also.push({ kind: 'skip', n, what, pick: 'next', span: spanSince(cursor, start) });
  }
}

/** `skip 1 stitch on the ring`, behind chains worked along on their own: it is the round below again. */
function takeOnRound(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'on', 'of') === null) return;
  takeAny(cursor, 'the');
  const round = takeAny(cursor, 'ring', 'circle', 'round', 'rnd') !== null;
  if (!round || !atBoundary(cursor)) cursor.at = start;
}

/** `of Row 42 (45, 48)` behind stitches that are skipped, `left unworked on Row 9` too: which row they stand in. */
function ofRow(cursor: Cursor, left: boolean): Pick<SkipStep, 'ofRow'> {
  const start = cursor.at;
  if (!left && takeAny(cursor, 'left') !== null) takeAny(cursor, 'unworked', 'free');
  const led = takeAny(cursor, 'of', 'on', 'in', 'from') !== null && takeOneOf(cursor, ROWS) !== null;
  const n = led && isNumber(cursor) ? readNumber(cursor) : null;
  if (n !== null) takePurpose(cursor);
  if (n !== null && (atBoundary(cursor) || wordAt(cursor) === 'and')) return { ofRow: n };
  cursor.at = start;
  return {};
}

const LEFT = new WordSet(['unworked', 'free', 'remaining', 'rem']);
const ROWS = new WordSet(['row', 'rnd', 'round']);

/** `for thumb`, `for back neck`: what the stitches that are skipped will be. */
function takePurpose(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'for') === null) return;
  while (peek(cursor).kind === 'word' && wordAt(cursor) !== 'and' && nameHere(cursor) === null)
    cursor.at += 1;
  if (!atBoundary(cursor) && wordAt(cursor) !== 'and') cursor.at = start;
}

/** `of body`, `of the back`: the piece that the row below is of. */
function takeOfPiece(cursor: Cursor): boolean {
  const start = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'the');
  if (takeOneOf(cursor, PIECES) !== null) return true;
  cursor.at = start;
  return false;
}

const PIECES = new WordSet(['body', 'back', 'front', 'yoke', 'piece', 'work', 'bodice', 'main']);

/** `the last tr of the fan`: the one that is left of it comes next. */
function takeOfFan(cursor: Cursor): string | null {
  const start = cursor.at;
  if (takeAny(cursor, 'of') !== null) {
    takeAny(cursor, 'the', 'this', 'each');
    const shape = takeOneOf(cursor, FANS);
    if (shape !== null) return shape;
  }
  cursor.at = start;
  return null;
}

const FANS = new WordSet(['fan', 'scallop', 'petal', 'group']);
