/**
 * A round told of all sides and corners at once: `sc evenly around, 31 along each side and 3 in each corner`, and of a piece
 * in blocks `3 sc along the edge of each of the 12 blocks down each side and ch 2 at each corner`.
 */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, takeWords, textSince, wordAt } from './cursor.ts';
import type { BorderSide } from './edge.ts';
import type { Num } from './num.ts';
import { isNumber, readNumber } from './read-number.ts';
import { EDGE_WORDS } from './read-piece-sides.ts';
import { CHAIN_WORDS } from './read-what.ts';
import { readStitchName } from './read-yarn.ts';
import type { BracketStep, EvenlyStep, Step, StitchName } from './tree.ts';
import { WordSet } from './word-set.ts';

const LEADS = new WordSet(['in', 'into', 'along', 'down', 'across', 'on']);
const BLOCKS = new WordSet(['block', 'blocks', 'tile', 'tiles']);
const ALL = new WordSet(['each', 'every', 'all', 'both']);
const SIDES = new WordSet(['side', 'sides', 'edge', 'edges']);
const AT = new WordSet(['at', 'in', 'into', 'for', 'round', 'around']);
const CORNERS = new WordSet(['corner', 'corners']);
/** Of a square or an oblong, which is what blocks make. */
const FOUR = 4;

/** What stands behind a stitch's name, told of every side and corner at once; null with the cursor where it was for anything else. */
export function readBlocksRound(
  cursor: Cursor,
  from: number,
  stitch: StitchName,
  times: Num | null,
): BracketStep | null {
  const start = cursor.at;
  takeAny(cursor, 'evenly');
  if (takeOneOf(cursor, LEADS) === null) return null;
  takeAny(cursor, 'the');
  if (takeOneOf(cursor, EDGE_WORDS) !== null) takeAny(cursor, 'of');
  const blocks = takeAny(cursor, 'each', 'every') === null ? undefined : takeBlocks(cursor);
  const said = textSince(cursor, start);
  const side = takeAllSides(cursor);
  const each = times?.values[0] ?? 1;
  if (blocks !== undefined && side && typeof each === 'number') {
    const span = spanSince(cursor, from);
    const spread: BorderSide =
      blocks === null
        ? { each: 'block', said }
        : { each: 'counted', inBlock: each, said: `evenly along the side (${each} in each block)` };
    const values =
      blocks === null ? [each] : blocks.values.map((value) => (value === null ? null : value * each));
    const along = {
      kind: 'evenly',
      stitch,
      n: { values, span },
      edge: 'row ends',
      side: spread,
      span,
    } as const;
    takeAnd(cursor);
    const corner = readCorner(cursor, null);
    if (corner !== null && atBoundary(cursor)) return sidesOf(cursor, from, [along, corner], FOUR);
  }
  cursor.at = start;
  return null;
}

/** `of the 12 blocks`, `block` behind "each": how many there are said to be; undefined where no block is named. */
function takeBlocks(cursor: Cursor): Num | null | undefined {
  const of = takeAny(cursor, 'of') !== null;
  takeAny(cursor, 'the', 'these');
  const n = of && isNumber(cursor) ? readNumber(cursor) : null;
  return takeOneOf(cursor, BLOCKS) === null ? undefined : n;
}

/** `down each side`, `along all four sides`. */
function takeAllSides(cursor: Cursor): boolean {
  if (takeOneOf(cursor, LEADS) === null || takeOneOf(cursor, ALL) === null) return false;
  takeAny(cursor, 'of');
  takeAny(cursor, 'the');
  if (isNumber(cursor) && readNumber(cursor)?.values[0] !== FOUR) return false;
  return takeOneOf(cursor, SIDES) !== null && wordAt(cursor, -2) !== 'both';
}

/** What a side and its corner are worked in, so many times over. */
function sidesOf(cursor: Cursor, from: number, body: readonly Step[], times: number): BracketStep {
  const span = spanSince(cursor, from);
  const n: Num = { values: [times], span };
  return { kind: 'bracket', body, stop: { kind: 'times', n, more: false, span }, span };
}

/** `and`, `, with`, `, then` between sides and corners. */
function takeAnd(cursor: Cursor): void {
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  takeAny(cursor, 'and', 'with', 'plus');
  takeAny(cursor, 'working', 'making', 'putting', 'placing');
}

/**
 * `all the way round, 31 along each side and 3 in every corner` behind a stitch's name; a piece whose sides differ has
 * `60 along each long side, 40 along each short side`. Null, the cursor where it was, where not all of it is told.
 */
export function readToldSides(cursor: Cursor, from: number, stitch: StitchName): BracketStep | null {
  const start = cursor.at;
  takeAny(cursor, 'evenly');
  takeAny(cursor, 'all');
  takeWords(cursor, 'the', 'way');
  const round = takeAny(cursor, 'round', 'around') !== null;
  while (round && takeOneOf(cursor, ROUND_WHAT) !== null);
  const opened = round && (peek(cursor).kind === 'comma' || peek(cursor).kind === 'open');
  const bracketed = opened && peek(cursor).kind === 'open';
  if (opened) cursor.at += 1;
  if (round) takeAny(cursor, 'with', 'working', 'putting', 'placing');
  const sides: Step[] = [];
  const which = new Set<string>();
  let corner: Step | null = null;
  for (let n = 0; round && n < MOST_TOLD && peek(cursor).kind !== 'end'; n += 1) {
    const at = cursor.at;
    corner ??= readCorner(cursor, stitch);
    const side = cursor.at > at ? null : readCountedSide(cursor, stitch);
    if (side !== null) {
      sides.push(side.step);
      which.add(side.which);
    }
    if (cursor.at === at) break;
    const behind = cursor.at;
    if (sides.length > 0 && corner !== null && isDone(cursor, bracketed)) break;
    takeAnd(cursor);
    if (!isNumber(cursor) && !CHAIN_WORDS.holds(peek(cursor))) {
      cursor.at = behind;
      break;
    }
  }
  const all = which.size === sides.length && (sides.length === 2 ? !which.has('') : which.has(''));
  if (corner !== null && all && isDone(cursor, bracketed)) {
    if (bracketed) cursor.at += 1;
    return sidesOf(cursor, from, withCorners(sides, corner), FOUR / sides.length);
  }
  cursor.at = start;
  return null;
}

/** Sides and a corner for each, in the order they are told. */
function withCorners(sides: readonly Step[], corner: Step): readonly Step[] {
  const leads = sides.every(({ span }) => corner.span.start < span.start);
  return sides.flatMap((side) => (leads ? [corner, side] : [side, corner]));
}

/** Two lengths of side and a corner. */
const MOST_TOLD = 3;
const ROUND_WHAT = new WordSet(
  'the whole entire outer outside edge edges piece work cloth blanket square mat panel throw all four sides of'.split(
    ' ',
  ),
);

function isDone(cursor: Cursor, bracketed: boolean): boolean {
  return bracketed ? peek(cursor).kind === 'close' : atBoundary(cursor);
}

/** `31 sc along each side`, `60 down each long side`: the step, and which sides are meant where not all are; null where none stands here. */
function readCountedSide(
  cursor: Cursor,
  stitch: StitchName,
): { readonly step: EvenlyStep; readonly which: string } | null {
  const from = cursor.at;
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  const named = n === null ? null : readStitchName(cursor);
  if (n !== null && named === null) takeAny(cursor, 'sts', 'stitches');
  if (n !== null && takeOneOf(cursor, LEADS) !== null && takeOneOf(cursor, ALL) !== null) {
    takeAny(cursor, 'of');
    takeAny(cursor, 'the');
    const four = !isNumber(cursor) || readNumber(cursor)?.values[0] === FOUR;
    const which = takeAny(cursor, 'long', 'short', 'longer', 'shorter') ?? '';
    if (four && takeOneOf(cursor, SIDES) !== null) {
      const span = spanSince(cursor, from);
      return {
        step: { kind: 'evenly', stitch: named ?? stitch, n, edge: 'row ends', span },
        which: which.slice(0, 5),
      };
    }
  }
  cursor.at = from;
  return null;
}

/** `ch 2 at each corner`, `3 sc in each corner`, `3 in every corner` of a stitch named before; null where none is told. */
function readCorner(cursor: Cursor, before: StitchName | null): Step | null {
  const from = cursor.at;
  let chain = takeOneOf(cursor, CHAIN_WORDS) !== null;
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  if (n !== null) chain ||= takeOneOf(cursor, CHAIN_WORDS) !== null;
  const stitch = n === null || chain ? null : (readStitchName(cursor) ?? before);
  if (stitch !== null && stitch === before) takeAny(cursor, 'sts', 'stitches');
  const at = cursor.at;
  const led = n !== null && takeOneOf(cursor, AT) !== null;
  takeOneOf(cursor, ALL);
  takeAny(cursor, 'of');
  takeAny(cursor, 'the');
  if (n === null || !led || takeOneOf(cursor, CORNERS) === null || (stitch === null && !chain)) {
    cursor.at = from;
    return null;
  }
  const span = spanSince(cursor, from);
  if (chain || stitch === null) return { kind: 'chain', n, counts: null, span };
  const place = {
    kind: 'next',
    n: null,
    what: { kind: 'corner' },
    each: false,
    span: spanSince(cursor, at),
  } as const;
  return { kind: 'work', stitch, times: n, place, loop: 'both', skipped: null, span };
}
