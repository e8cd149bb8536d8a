/** A round along all sides of a piece in blocks: `3 sc along the edge of each of the 12 blocks down each side and ch 2 at each corner`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, textSince, wordAt } from './cursor.ts';
import type { BorderSide } from './edge.ts';
import type { Num } from './num.ts';
import { isNumber, readNumber } from './read-number.ts';
import { EDGE_WORDS } from './read-piece-sides.ts';
import { CHAIN_WORDS } from './read-what.ts';
import { readStitchName } from './read-yarn.ts';
import type { BracketStep, Step, StitchName } from './tree.ts';

const LEADS = new Set(['in', 'into', 'along', 'down', 'across', 'on']);
const BLOCKS = new Set(['block', 'blocks', 'tile', 'tiles']);
const ALL = new Set(['each', 'every', 'all', 'both']);
const SIDES = new Set(['side', 'sides', 'edge', 'edges']);
const AT = new Set(['at', 'in', 'into', 'for', 'round', 'around']);
const CORNERS = new Set(['corner', 'corners']);
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
    const corner = readCorner(cursor);
    if (corner !== null && atBoundary(cursor)) {
      const whole = spanSince(cursor, from);
      const n: Num = { values: [FOUR], span: whole };
      return {
        kind: 'bracket',
        body: [along, corner],
        stop: { kind: 'times', n, more: false, span: whole },
        span: whole,
      };
    }
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

/** `and ch 2 at each corner`, `, 3 sc in each corner`: what each corner has; null where none is told. */
function readCorner(cursor: Cursor): Step | null {
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  takeAny(cursor, 'and', 'with', 'plus');
  takeAny(cursor, 'working', 'making');
  const from = cursor.at;
  let chain = takeOneOf(cursor, CHAIN_WORDS) !== null;
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  if (n === null) return null;
  chain ||= takeOneOf(cursor, CHAIN_WORDS) !== null;
  const stitch = chain ? null : readStitchName(cursor);
  const at = cursor.at;
  const led = takeOneOf(cursor, AT) !== null;
  takeOneOf(cursor, ALL);
  takeAny(cursor, 'the');
  if (!led || takeOneOf(cursor, CORNERS) === null) return null;
  const span = spanSince(cursor, from);
  if (chain) return { kind: 'chain', n, counts: null, span };
  if (stitch === null) return null;
  const place = {
    kind: 'next',
    n: null,
    what: { kind: 'corner' },
    each: false,
    here: true,
    span: spanSince(cursor, at),
  } as const;
  return { kind: 'work', stitch, times: n, place, loop: 'both', skipped: null, span };
}
