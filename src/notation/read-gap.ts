/** Gaps and rows below named as a place: `between next 2 sts`, `sp before next dc`, `2 rows below`. */

import type { Cursor } from './cursor.ts';
import { peek, spanSince, takeAny, takeOneOf, wordAt } from './cursor.ts';
import { readBetweenShapes } from './read-between-shapes.ts';
import { readChainName, readPlainChain } from './read-chain-name.ts';
import { isNumber, readNumber } from './read-number.ts';
import { readStop } from './read-stop.ts';
import { ANY_STITCH, isAmount, readWhat } from './read-what.ts';
import { unitOfPart } from './row-unit.ts';
import type { Place } from './tree.ts';
import { WordSet } from './word-set.ts';

/** `between next 2 sts`, `sp before next dc`, `sp between shells`; `all` behind "each". Null when none stands here. */
export function readGap(cursor: Cursor, from: number, all = false): Place | null {
  const start = cursor.at;
  const led = LEADS_TO_GAP.holds(peek(cursor)) ? 1 : 0;
  if (!GAP_WORDS.holds(peek(cursor, led))) return null;
  // Which of them is free, so the next is taken.
  takeAny(cursor, 'next', 'each', 'any');
  takeAny(cursor, 'sp', 'space', 'gap');
  if (takeAny(cursor, 'before') !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'next', 'first');
    const what = readWhat(cursor);
    if (what !== null) return { kind: 'gap', what, apart: null, span: spanSince(cursor, from) };
  } else if (takeAny(cursor, 'between', 'bet', 'btw') !== null) {
    takeAny(cursor, 'the');
    const two = { values: [2], span: spanSince(cursor, start) };
    const shape =
      SHAPES_LED.holds(peek(cursor)) || peek(cursor).kind === 'number' ? readBetweenShapes(cursor) : null;
    if (shape !== null)
      return { kind: 'gap', what: { kind: 'group' }, apart: two, shape, span: spanSince(cursor, from) };
    if (takeFirstAndSecond(cursor)) {
      const what = readWhat(cursor) ?? ANY_STITCH;
      return { kind: 'gap', what, apart: two, first: true, span: spanSince(cursor, from) };
    }
    const edge = readAtEdge(cursor, from) ?? readBetweenFirst(cursor, from);
    if (edge !== null) return edge;
    const each = takeAny(cursor, 'each') !== null || all;
    takeAny(cursor, 'next', 'any');
    const at = cursor.at;
    const n = isAmount(cursor) ? readNumber(cursor) : null;
    const what = readWhat(cursor);
    const apart = n ?? { values: [2], span: spanSince(cursor, at) };
    if (what !== null && each) {
      const stop = readStop(cursor) ?? { kind: 'end', word: 'across', span: spanSince(cursor, from) };
      return { kind: 'gap', what, apart, each: stop, span: spanSince(cursor, from) };
    }
    if (what !== null) return { kind: 'gap', what, apart, span: spanSince(cursor, from) };
  }
  cursor.at = start;
  return null;
}

/** `last V-st and tch`, `tch and first V-st` behind "between": the gap at an edge. */
function readAtEdge(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  if (takeAny(cursor, 'last') !== null) {
    const what = readWhat(cursor);
    if (what !== null && takeAny(cursor, 'and') !== null && takeTurningChain(cursor))
      return { kind: 'gap', what, apart: null, beforeChain: true, span: spanSince(cursor, from) };
  } else if (takeTurningChain(cursor) && takeAny(cursor, 'and') !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'first', 'next');
    const what = readWhat(cursor);
    if (what !== null) return { kind: 'gap', what, apart: null, span: spanSince(cursor, from) };
  }
  cursor.at = start;
  return null;
}

/** `first dc and the first group`, `ch 3 and the next 3 dc` behind "between": the gap before what is named last. */
function readBetweenFirst(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  const before = takeAny(cursor, 'first', 'edge', 'this') === null ? null : readWhat(cursor);
  if (before !== null && takeAny(cursor, 'and') !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'first', 'next');
    const what = readWhat(cursor);
    if (what !== null) return { kind: 'gap', what, apart: null, span: spanSince(cursor, from) };
  }
  cursor.at = start;
  return null;
}

function takeTurningChain(cursor: Cursor): boolean {
  takeAny(cursor, 'the');
  return readChainName(cursor) !== null || readPlainChain(cursor) !== null;
}

/** What may lead to petals and the like; their names are told behind it. */
const SHAPES_LED = new WordSet(
  `this that one last next any two petals shells fans scallops points leaves rays spikes clusters scales peaks stars`.split(
    ' ',
  ),
);
const LEADS_TO_GAP = new WordSet(['next', 'each', 'any']);
const GAP_WORDS = new WordSet(['sp', 'space', 'gap', 'before', 'between', 'bet', 'btw']);

function takeFirstAndSecond(cursor: Cursor): boolean {
  if (wordAt(cursor) !== 'first' || wordAt(cursor, 1) !== 'and') return false;
  const second = peek(cursor, 2);
  if (second.text !== '2nd' && second.text !== 'second') return false;
  cursor.at += 3;
  return true;
}

const UNIT_NAMES = new WordSet(['row', 'rows', 'rnd', 'rnds', 'round', 'rounds']);

/** `of Rnd 1`, `of the 1st round` behind a stitch; null when none stands here. */
export function readOfRow(cursor: Cursor): { unit: 'row' | 'round'; number: number } | null {
  if (wordAt(cursor) !== 'of') return null;
  const the = wordAt(cursor, 1) === 'the' ? 2 : 1;
  if (peek(cursor, the).kind === 'ordinal' && UNIT_NAMES.holds(peek(cursor, the + 1))) {
    const number = peek(cursor, the).value;
    cursor.at += the + 2;
    return { unit: wordAt(cursor, -1).startsWith('row') ? 'row' : 'round', number };
  }
  const short = peek(cursor, 2);
  if (wordAt(cursor, 1) === 'r' && short.kind === 'number' && short.glued) {
    cursor.at += 3;
    return { unit: unitOfPart(cursor), number: short.value };
  }
  if (!UNIT_NAMES.holds(peek(cursor, 1)) || peek(cursor, 2).kind !== 'number') return null;
  const unit = wordAt(cursor, 1).startsWith('row') ? 'row' : 'round';
  const number = peek(cursor, 2).value;
  cursor.at += 3;
  return { unit, number };
}

/** `2 rows below`, `1 rnd below`; null when none stands here. */
export function readBelow(cursor: Cursor): { rows: number; unit: 'row' | 'round' } | null {
  const start = cursor.at;
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  if (n === null) return null;
  const word = takeOneOf(cursor, UNIT_NAMES);
  if (word !== null && (takeAny(cursor, 'below') !== null || takeAny(cursor, 'down') !== null)) {
    return {
      rows: n.values[0] ?? 1,
      unit: word.startsWith('ro') && !word.startsWith('rou') ? 'row' : 'round',
    };
  }
  cursor.at = start;
  return null;
}
