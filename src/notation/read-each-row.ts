/** So many stitches in each row end of an edge: `evenly along the side edge, 2 sc in each row`, `82 sc evenly around the edge (2 in the end of each row)`. */

import type { Cursor } from './cursor.ts';
import { peek, spanSince, takeAny, takeOneOf, takeWords } from './cursor.ts';
import type { Num } from './num.ts';
import { EACH_WORDS, readEdge } from './read-edge.ts';
import { isNumber, readNumber } from './read-number.ts';
import { readStitchName } from './read-yarn.ts';
import type { StitchName, WorkStep } from './tree.ts';

/** `1 row of sc evenly along the side edge, 2 sc in each row` behind the stitch; null where it is not said how many in each. */
export function readInEachRow(cursor: Cursor, from: number, stitch: StitchName): WorkStep | null {
  const start = cursor.at;
  if (
    takeAny(cursor, 'evenly') !== null &&
    readEdge(cursor) === 'row ends' &&
    peek(cursor).kind === 'comma'
  ) {
    cursor.at += 1;
    takeAny(cursor, 'working', 'with');
    const times = isNumber(cursor) ? readNumber(cursor) : null;
    const again = times === null ? null : readStitchName(cursor);
    const at = cursor.at;
    const each = takeWords(cursor, 'in', 'each', 'row') || takeWords(cursor, 'into', 'each', 'row');
    takeAny(cursor, 'end');
    if (each && again?.kind === 'stitch' && stitch.kind === 'stitch' && again.id === stitch.id) {
      return intoEach(cursor, from, at, stitch, times);
    }
  }
  cursor.at = start;
  return null;
}

/**
 * `evenly around the edge (2 in the end of each row)` behind `82 sc`: so many in each row end, and all of them together
 * are what the row is to have. Null where it is not said how many in each.
 */
export function readSoManyEach(cursor: Cursor, from: number, stitch: StitchName, n: Num): WorkStep | null {
  const start = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'spaced');
  const edge = readEdge(cursor) === 'row ends' || takeAnyEdge(cursor);
  const open = cursor.at;
  const opened = edge && peek(cursor).kind === 'open';
  if (opened) cursor.at += 1;
  const at = cursor.at;
  const times = opened && isNumber(cursor) ? readNumber(cursor) : null;
  const named = times === null ? null : readStitchName(cursor);
  if (named === null) takeAny(cursor, 'sts', 'st', 'stitches', 'stitch');
  const same =
    named === null || (named.kind === 'stitch' && stitch.kind === 'stitch' && named.id === stitch.id);
  if (times !== null && same && takeOneOf(cursor, EACH_WORDS) !== null && takeRowEnd(cursor)) {
    const work = intoEach(cursor, from, at, stitch, times);
    cursor.at += 1;
    const span = spanSince(cursor, open);
    const what = stitch.kind === 'stitch' ? ({ kind: 'stitch', id: stitch.id } as const) : null;
    if (what !== null) cursor.spreadOver = { entries: [{ n, what, span }], text: '', span };
    return what === null ? back(cursor, start) : work;
  }
  return back(cursor, start);
}

/** `around the edge`, `along edge`: any that is left. */
function takeAnyEdge(cursor: Cursor): boolean {
  if (takeAny(cursor, 'around', 'along', 'across', 'up') === null) return false;
  takeAny(cursor, 'the', 'this', 'each', 'one');
  return takeAny(cursor, 'edge', 'edges') !== null;
}

/** `the end of each row`, `each row end`, `each row`, `row`, up to the closing bracket. */
function takeRowEnd(cursor: Cursor): boolean {
  takeAny(cursor, 'the');
  if (takeAny(cursor, 'end', 'side') !== null) takeAny(cursor, 'of');
  takeAny(cursor, 'each', 'every');
  const row = takeAny(cursor, 'row') !== null;
  takeAny(cursor, 'end');
  return row && peek(cursor).kind === 'close';
}

function intoEach(cursor: Cursor, from: number, at: number, stitch: StitchName, times: Num | null): WorkStep {
  const span = spanSince(cursor, at);
  const stop = { kind: 'end', word: 'across', span } as const;
  const place = { kind: 'each', what: { kind: 'row-end' }, stop, span } as const;
  return { kind: 'work', stitch, times, place, loop: 'both', skipped: null, span: spanSince(cursor, from) };
}

function back(cursor: Cursor, at: number): null {
  cursor.at = at;
  return null;
}
