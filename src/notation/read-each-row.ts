/** So many stitches in each row end of an edge: `evenly along the side edge, 2 sc in each row`, `82 sc evenly around the edge (2 in the end of each row)`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, takeWords } from './cursor.ts';
import type { StatedCount } from './line.ts';
import type { Num } from './num.ts';
import { EACH_BEGINS, EACH_WORDS, readEdge } from './read-edge.ts';
import { isNumber, readNumber } from './read-number.ts';
import { readStitchName } from './read-yarn.ts';
import type { StitchName, WorkStep } from './tree.ts';
import { WordSet } from './word-set.ts';

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
 * `evenly around the edge (2 in the end of each row)`, `evenly around the cuff, one in each row end` behind `82 sc`: so
 * many in each row end, and all of them together are what the row is to have. Null where it is not said how many in each.
 */
export function readSoManyEach(cursor: Cursor, from: number, stitch: StitchName, n: Num): WorkStep | null {
  const start = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'spaced');
  const edge = readEdge(cursor) === 'row ends' || takeAnyEdge(cursor);
  const open = cursor.at;
  const { kind } = peek(cursor);
  const opened = edge && (kind === 'open' || kind === 'comma');
  if (opened) cursor.at += 1;
  if (kind === 'comma') takeOneOf(cursor, EACH_BEGINS);
  const at = cursor.at;
  const one = opened && takeAny(cursor, 'one') !== null;
  const times = opened && !one && isNumber(cursor) ? readNumber(cursor) : null;
  const told = one || times !== null;
  const named = told ? readStitchName(cursor) : null;
  if (named === null) takeAny(cursor, 'sts', 'st', 'stitches', 'stitch');
  const same =
    named === null || (named.kind === 'stitch' && stitch.kind === 'stitch' && named.id === stitch.id);
  if (told && same && takeOneOf(cursor, EACH_WORDS) !== null && takeRowEnd(cursor, kind === 'open')) {
    const work = intoEach(cursor, from, at, stitch, times);
    if (kind === 'open') cursor.at += 1;
    const span = spanSince(cursor, open);
    const what = stitch.kind === 'stitch' ? ({ kind: 'stitch', id: stitch.id } as const) : null;
    if (what !== null) cursor.spreadOver = { entries: [{ n, what, span }], text: '', span };
    return what === null ? back(cursor, start) : work;
  }
  return back(cursor, start);
}

/** Both the count at the row's end and the number that is spread are the row's: where they differ, each is held against it. */
export function withSpread(counted: StatedCount | null, spread: StatedCount): StatedCount {
  const said = spread.entries[0]?.n.values.join();
  if (counted === null) return spread;
  if (counted.entries.some(({ n }) => n.values.join() === said)) return counted;
  return { ...counted, entries: [...counted.entries, ...spread.entries] };
}

/** `around the edge`, `along edge`, `around the cuff`: any that is left. */
function takeAnyEdge(cursor: Cursor): boolean {
  if (takeAny(cursor, 'around', 'along', 'across', 'up') === null) return false;
  takeAny(cursor, 'the', 'this', 'each', 'one');
  return takeOneOf(cursor, EDGES) !== null;
}

const EDGES = new WordSet('edge edges cuff cuffs band brim ribbing rib'.split(' '));

/** `the end of each row`, `each row end`, `each row`, `row`, up to the closing bracket or the end of the phrase. */
function takeRowEnd(cursor: Cursor, bracketed: boolean): boolean {
  takeAny(cursor, 'the');
  if (takeAny(cursor, 'end', 'side') !== null) takeAny(cursor, 'of');
  takeAny(cursor, 'each', 'every');
  takeAny(cursor, 'of');
  takeAny(cursor, 'the');
  const row = takeAny(cursor, 'row', 'rows') !== null;
  if (peek(cursor).kind === 'dash') cursor.at += 1;
  takeAny(cursor, 'end', 'ends');
  return row && (bracketed ? peek(cursor).kind === 'close' : atBoundary(cursor));
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
