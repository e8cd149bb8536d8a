/**
 * A side of a border whose length is not told in stitches: `1 tr in each dc along the edge, working 1 tr into each 2-ch sp
 * either side of every join` round squares sewn together, `3 sc along the edge of each block` of blocks from corner to corner.
 */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, textSince, wordAt } from './cursor.ts';
import type { Num } from './num.ts';
import { isNumber, readNumber } from './read-number.ts';
import { EDGE_WORDS } from './read-piece-sides.ts';
import { readBlocksRound } from './read-told-sides.ts';
import { readWhat } from './read-what.ts';
import { readStitchName } from './read-yarn.ts';
import type { BracketStep, EvenlyStep, NoteStep, Step, StitchName } from './tree.ts';
import { WordSet } from './word-set.ts';

const INTO = new WordSet(['in', 'into']);
const ALONG = new WordSet(['along', 'down', 'across']);
const BLOCK_WORDS = new WordSet(['block', 'tile', 'blocks', 'tiles']);
const JOIN_WORDS = new WordSet(['join', 'joins', 'seam', 'seams', 'joining', 'joinings']);

/** What stands behind a stitch's name; null with the cursor where it was when it is no such side. */
export function readBorderSide(
  cursor: Cursor,
  from: number,
  stitch: StitchName,
  times: Num | null,
): EvenlyStep | BracketStep | null {
  const square =
    readAlongSquares(cursor, from, stitch, times) ?? readBlocksRound(cursor, from, stitch, times);
  if (square !== null) return square;
  const each = wordAt(cursor, 1) === 'each' && INTO.holds(peek(cursor));
  if (!each && !ALONG.holds(peek(cursor)) && wordAt(cursor, 1) !== 'the') return null;
  const start = cursor.at;
  const block = takeBlockSide(cursor);
  const atJoin = each && !block ? readJoinedSide(cursor) : null;
  if (!block && atJoin === null) {
    cursor.at = start;
    return null;
  }
  const said = textSince(cursor, start);
  const span = spanSince(cursor, from);
  return {
    kind: 'evenly',
    stitch,
    n: times ?? { values: [1], span },
    edge: 'row ends',
    side: atJoin === null ? { each: 'block', said } : { each: 'stitch', said, atJoin },
    span,
  };
}

/** `20 sc evenly along each square to next corner`: of squares sewn together, so many on each. */
function readAlongSquares(
  cursor: Cursor,
  from: number,
  stitch: StitchName,
  times: Num | null,
): EvenlyStep | null {
  const start = cursor.at;
  takeAny(cursor, 'evenly');
  if (times !== null && takeOneOf(cursor, ALONG) !== null) {
    takeAny(cursor, 'the');
    if (takeOneOf(cursor, EDGE_WORDS) !== null) takeAny(cursor, 'of');
    if (takeAny(cursor, 'each', 'every') !== null && takeOneOf(cursor, SQUARE_WORDS) !== null) {
      takeEdge(cursor);
      takeToCorner(cursor);
      if (atBoundary(cursor)) {
        const side = { each: 'square', said: textSince(cursor, start) } as const;
        return { kind: 'evenly', stitch, n: times, edge: 'row ends', side, span: spanSince(cursor, from) };
      }
    }
  }
  cursor.at = start;
  return null;
}

const SQUARE_WORDS = new WordSet(['square', 'squares', 'motif', 'motifs', 'granny']);

/** `along the edge of each block`, `in the side of each block`, `in each block along the side`; `to the next corner`. */
function takeBlockSide(cursor: Cursor): boolean {
  const start = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'the', 'each');
  let block = false;
  if (takeOneOf(cursor, EDGE_WORDS) !== null)
    block =
      takeAny(cursor, 'of') !== null &&
      takeAny(cursor, 'each', 'every') !== null &&
      takeOneOf(cursor, BLOCK_WORDS) !== null;
  else block = takeOneOf(cursor, BLOCK_WORDS) !== null && (wordAt(cursor, -2) === 'each' || takeEdge(cursor));
  if (block) {
    takeEdge(cursor);
    takeToCorner(cursor);
    if (atBoundary(cursor)) return true;
  }
  cursor.at = start;
  return false;
}

/** `along the edge`, `along the side`. */
function takeEdge(cursor: Cursor): boolean {
  const start = cursor.at;
  if (takeOneOf(cursor, ALONG) !== null) {
    takeAny(cursor, 'the', 'each', 'this', 'next');
    takeAny(cursor, 'long', 'short');
    if (takeOneOf(cursor, EDGE_WORDS) !== null) return true;
  }
  cursor.at = start;
  return false;
}

function takeToCorner(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'to') !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'next');
    takeAny(cursor, 'outer');
    if (takeAny(cursor, 'corner', 'end') !== null) return;
  }
  cursor.at = start;
}

/**
 * `in each dc along the side, working 1 tr into each 2-ch sp either side of every join`, `in each sc and in each of the 2
 * ch-2 sps at every join to next corner`: nothing without the joins. How many stitches go into each of them.
 */
function readJoinedSide(cursor: Cursor): number | null {
  cursor.at += 2;
  if (readWhat(cursor) === null) return null;
  const edge = takeEdge(cursor);
  if (edge) takeToCorner(cursor);
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  const also = takeAny(cursor, 'and') !== null;
  // Of `in each dc and ch-1 sp around` no join is said.
  const adds = takeAny(cursor, 'working', 'with', 'plus', 'also') !== null;
  if (!edge && !adds && !(also && INTO.holds(peek(cursor)))) return null;
  let each = 1;
  if (isNumber(cursor)) {
    each = readNumber(cursor)?.values[0] ?? 1;
    takeAny(cursor, 'st', 'sts');
    if (!INTO.holds(peek(cursor)) && readStitchName(cursor) === null) return null;
  }
  if (takeOneOf(cursor, INTO) === null) return null;
  // On either side of a join lies a space of each of the two.
  let places = 1;
  let joined = false;
  for (; !atBoundary(cursor) && !joined; cursor.at += 1) {
    const word = wordAt(cursor);
    if (word === 'space' || word.startsWith('sp')) places = 2;
    if (word === 'either' || word === 'both' || word === 'two') places = 2;
    joined = JOIN_WORDS.has(word);
  }
  if (joined) takeToCorner(cursor);
  return joined && atBoundary(cursor) ? each * places : null;
}

const LAST = new WordSet(['last', 'remaining', 'rem', 'fourth', '4th', 'final', 'other']);
const SAME = new WordSet(['same', 'way', 'manner', 'match', 'correspond', 'likewise', 'before', 'set']);

/** `along the last side in the same way` behind "work". */
export function readSideAgain(cursor: Cursor, from: number): NoteStep | null {
  const start = cursor.at;
  takeOneOf(cursor, ALONG);
  takeAny(cursor, 'the');
  const last = takeOneOf(cursor, LAST) !== null || peek(cursor).kind === 'ordinal';
  if (last && peek(cursor).kind === 'ordinal') cursor.at += 1;
  if (last && takeOneOf(cursor, EDGE_WORDS) !== null) {
    takeAny(cursor, 'in', 'to', 'as');
    takeAny(cursor, 'the');
    if (takeOneOf(cursor, SAME) !== null) {
      takeOneOf(cursor, SAME);
      if (atBoundary(cursor))
        return {
          kind: 'note',
          text: textSince(cursor, from),
          sideAgain: true,
          span: spanSince(cursor, from),
        };
    }
  }
  cursor.at = start;
  return null;
}

/** The side of the repeat before it, once more with other words; null where there is none. */
export function lastSide(steps: readonly Step[], { text, span }: NoteStep): EvenlyStep | null {
  const repeat = steps.findLast((step) => step.kind === 'repeat' || step.kind === 'bracket');
  const side = repeat?.body.findLast((step) => step.kind === 'evenly');
  if (side === undefined) return null;
  return { ...side, side: { each: 'counted', ...side.side, said: text, again: true }, span };
}
