/** What a step may begin with before what is worked: `make a magic ring`, `start 6 sc in …`, `in BLO, …`, `3x (…)`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, wordAt } from './cursor.ts';
import { readOnlyBody } from './read-group.ts';
import { readLoop } from './read-loop.ts';
import { readNumber } from './read-number.ts';
import { readStop } from './read-stop.ts';
import { ANY_STITCH } from './read-what.ts';
import { readWorkStep } from './read-work.ts';
import { readStitchName } from './read-yarn.ts';
import { readYarnLetter } from './read-yarn-name.ts';
import type { Step } from './tree.ts';

/** `3x (sc, 2 sc in next st)`: the number before what is repeated. */
export function readTimesFirst(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  const crossed = wordAt(cursor, 1) === 'x' || peek(cursor, 1).text === '×';
  if (peek(cursor).kind !== 'number' || !crossed || peek(cursor, 2).kind !== 'open') return null;
  const n = readNumber(cursor);
  cursor.at += 1;
  const body = n === null ? null : readOnlyBody(cursor);
  if (n === null || body === null) {
    cursor.at = from;
    return null;
  }
  const stop = { kind: 'times', n, more: false, span: n.span } as const;
  return [{ kind: 'bracket', body, stop, span: spanSince(cursor, from) }];
}

/** `a magic ring`, `an adjustable ring` after "make", with nothing worked into it yet. */
export function readRing(cursor: Cursor, from: number): Step | null {
  const start = cursor.at;
  takeAny(cursor, 'a', 'an');
  const named = takeAny(cursor, 'magic', 'adjustable') !== null;
  if (named && takeAny(cursor, 'ring', 'circle', 'loop') !== null && atBoundary(cursor))
    return { kind: 'ring', span: spanSince(cursor, from) };
  cursor.at = start;
  return null;
}

/** `1 round of dc around edge`, `a round of sc`: one in each stitch. */
export function readRoundOf(cursor: Cursor, from: number): Step | null {
  const start = cursor.at;
  const one = peek(cursor).value === 1 || ['a', 'one'].includes(wordAt(cursor));
  if (one && ['round', 'rnd', 'row'].includes(wordAt(cursor, 1)) && wordAt(cursor, 2) === 'of') {
    const across = wordAt(cursor, 1) === 'row';
    cursor.at += 3;
    const stitch = readStitchName(cursor);
    const stop = readStop(cursor) ?? {
      kind: 'end',
      word: across ? 'across' : 'around',
      span: spanSince(cursor, from),
    };
    if (stitch !== null && stop.kind === 'end') {
      const span = spanSince(cursor, from);
      const place = { kind: 'each', what: ANY_STITCH, stop, span } as const;
      return { kind: 'work', stitch, times: null, place, loop: 'both', skipped: null, span };
    }
  }
  cursor.at = start;
  return null;
}

/** `start 6 sc in a magic loop`, `begin with 6 sc in ring`. */
export function readStart(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'with');
  const worked = readWorkStep(cursor);
  if (worked === null) cursor.at = from;
  return worked;
}

/** `in BLO, sc in each st`, `in A 1 dc in next 10 sts`: how or with what the next steps are worked. */
export function readLeadingIn(cursor: Cursor): Step | null {
  const from = cursor.at;
  cursor.at += 1;
  const loop = readLoop(cursor);
  if (loop !== null && wordAt(cursor) !== 'of') return { kind: 'loops', loop, span: spanSince(cursor, from) };
  const yarn = loop === null ? readYarnLetter(cursor) : null;
  if (yarn !== null)
    return { kind: 'yarn', action: 'with', yarn, stitch: null, place: null, span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}
