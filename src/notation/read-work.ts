/** A stitch and its places in, the steps that work it out: `3 dc in ring`, `sc in next 3 sts and in each st across`, `sc2tog`, `6 sc`. */

import { STITCHES } from '../stitches/table.ts';
import type { Cursor } from './cursor.ts';
import { atBoundary, forgetSince, nameHere, peek, spanSince, takeAny, wordAt } from './cursor.ts';
import { findName } from './lexicon.ts';
import type { Num } from './num.ts';
import { readNumberedChain } from './read-chain.ts';
import { readLoop } from './read-loop.ts';
import { isNumber, isNumberOrSkip, readNumber } from './read-number.ts';
import { leadsToPlace, readPlace } from './read-place.ts';
import { readPlaces, workStep } from './read-places.ts';
import { readTimes } from './read-stop.ts';
import { ANY_STITCH, CHAIN_WORDS, isAmount } from './read-what.ts';
import { readStitchName, readYarnBehind } from './read-yarn.ts';
import { called } from './token.ts';
import type { Loop, Place, Step, StitchName, WorkStep } from './tree.ts';

/** `3 dc in ring`, `sc in next 3 sts and in each st across`, `sc2tog`, `6 sc`, `sc 5`, `BLO sc in next st`. */
export function readWorkStep(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  const leadingLoop = readLoop(cursor);
  // `blo-sc`.
  if (leadingLoop !== null && peek(cursor).kind === 'dash') cursor.at += 1;
  takeAny(cursor, 'a', 'an');
  const named = nameHere(cursor) !== null;
  const shell = named ? null : readCountedShell(cursor, from);
  if (shell !== null) return shell;
  const joined = !named && peek(cursor, 1).glued && wordAt(cursor, 1).endsWith('tog');
  let times: Num | null = !named && !joined && isNumberOrSkip(cursor) ? readNumber(cursor) : null;
  if (times !== null && CHAIN_WORDS.holds(peek(cursor))) {
    cursor.at = from;
    const chain = readNumberedChain(cursor);
    return chain === null ? null : [chain];
  }
  const looped = readStitchWithLoop(cursor);
  const stitch = looped?.stitch ?? readStitchName(cursor);
  if (stitch === null) return null;
  if (peek(cursor).kind === 'open') takeWay(cursor);
  const told = leadingLoop ?? looped?.loop ?? null;
  // Most steps end behind the stitch, or have a place next: no other word need be looked for.
  if (atBoundary(cursor)) return [workStep(cursor, from, stitch, times, told ?? 'both', null)];
  const led = wordAt(cursor);
  if (times === null && (led === 'in' || led === 'into')) {
    const steps = readPlaces(cursor, from, stitch, times, told);
    return steps === null || atBoundary(cursor) ? steps : readBehindPlaces(cursor, from, steps);
  }
  const loop = told ?? readLoopBehind(cursor);
  const crossed = (wordAt(cursor) === 'x' || peek(cursor).text === '×') && isNumber(cursor, 1);
  if (times === null && crossed) cursor.at += 1;
  // `sc2tog - (1, 2) times`, `sc twice in next st`: so many of them.
  const often = times === null ? readTimes(cursor, cursor.at) : null;
  if (often?.kind === 'times' && !often.more) times = often.n;
  else if (often !== null) return null;
  if (times === null && isAmount(cursor)) times = readNumber(cursor);
  const yarn = times === null ? null : readYarnBehind(cursor);
  const steps = readPlaces(cursor, from, stitch, times, loop);
  if (steps === null) return null;
  const all = atBoundary(cursor) ? steps : readBehindPlaces(cursor, from, steps);
  return yarn === null ? all : [yarn, ...all];
}

/** `together`, `and 3 dc in each 2-ch sp`, `with B` behind the places a stitch goes into. */
function readBehindPlaces(cursor: Cursor, from: number, steps: readonly Step[]): readonly Step[] {
  const all = readAndEach(cursor, from, readTogether(cursor, from, steps));
  const yarn = readYarnBehind(cursor);
  return yarn === null ? all : [yarn, ...all];
}

/** `(dc worked from left to right)` behind crab stitch: how it goes in any case. */
function takeWay(cursor: Cursor): void {
  const start = cursor.at;
  while (peek(cursor).kind !== 'close' && peek(cursor).kind !== 'end') cursor.at += 1;
  const way = wordAt(cursor, -3) === 'left' && wordAt(cursor, -2) === 'to' && wordAt(cursor, -1) === 'right';
  if (way) cursor.at += 1;
  else cursor.at = start;
}

/** `3 into each corner sp` behind `1 dc into each dc`: as many of the same stitch. Null where it is no such thing. */
export function readSameStitch(cursor: Cursor, before: Step | undefined): WorkStep | null {
  const led = wordAt(cursor, 1);
  if ((led !== 'in' && led !== 'into') || before?.kind !== 'work' || before.place === null) return null;
  const from = cursor.at;
  const times = readNumber(cursor);
  const place = times === null ? null : (readPlace(cursor)?.place ?? null);
  if (times !== null && place !== null && 'what' in place && atBoundary(cursor))
    return workStep(cursor, from, before.stitch, times, before.loop, place);
  cursor.at = from;
  return null;
}

/** `scblo` is `sc` in the back loop only. */
function readStitchWithLoop(cursor: Cursor): { readonly stitch: StitchName; readonly loop: Loop } | null {
  const token = peek(cursor);
  if (token.kind !== 'word' || !token.text.endsWith('lo')) return null;
  const end = token.text.slice(-3);
  if (end !== 'blo' && end !== 'flo') return null;
  const found = findName(cursor.lexicon, [called(token, token.text.slice(0, -end.length))], 0);
  if (found === null) return null;
  const from = cursor.at;
  cursor.at += 1;
  return {
    stitch: { ...found.named, span: spanSince(cursor, from) },
    loop: end === 'blo' ? 'back' : 'front',
  };
}

/** `-blo`, `(blo)` behind a stitch; null with the cursor where it was. */
function readLoopBehind(cursor: Cursor): Loop | null {
  const start = cursor.at;
  const { kind } = peek(cursor);
  if (kind !== 'dash' && kind !== 'open') return null;
  cursor.at += 1;
  const loop = readLoop(cursor);
  if (loop !== null && (kind === 'dash' || peek(cursor).kind === 'close')) {
    if (kind === 'open') cursor.at += 1;
    return loop;
  }
  cursor.at = start;
  return null;
}

/** `5-dc shell in next st`: where the pattern has no shell of its own the number and the stitch say what it is. */
function readCountedShell(cursor: Cursor, from: number): readonly Step[] | null {
  const start = cursor.at;
  const n = peek(cursor).kind === 'number' && peek(cursor, 1).kind === 'dash' ? readNumber(cursor) : null;
  if (n !== null) {
    cursor.at += 1;
    const stitch = readStitchName(cursor);
    if (stitch?.kind === 'stitch' && takeAny(cursor, 'shell', 'fan') !== null && leadsToPlace(cursor))
      return readPlaces(cursor, from, stitch, n, null);
  }
  cursor.at = start;
  return null;
}

/** `sc last 2 sts together`: the decrease of so many. */
function readTogether(cursor: Cursor, from: number, steps: readonly Step[]): readonly Step[] {
  const [only, more] = steps;
  if (only?.kind !== 'work' || more !== undefined || only.times !== null) return steps;
  const { place, stitch } = only;
  const word = wordAt(cursor);
  const n = place !== null && 'n' in place && typeof place.n !== 'number' ? place.n?.values[0] : null;
  if (stitch.kind !== 'stitch' || typeof n !== 'number' || (word !== 'tog' && word !== 'together'))
    return steps;
  const row = STITCHES.find(
    ({ legOf, uses, family }) => legOf === stitch.id && uses === n && family === 'together',
  );
  if (row === undefined) return steps;
  cursor.at += 1;
  return [{ ...only, stitch: { ...stitch, id: row.id }, span: spanSince(cursor, from) }];
}

/** `1 dc in each dc and 3 dc in each 2-ch sp around`: whichever comes next, each with its own. */
function readAndEach(cursor: Cursor, from: number, steps: readonly Step[]): readonly Step[] {
  const [first, more] = steps;
  if (
    first?.kind !== 'work' ||
    more !== undefined ||
    first.place?.kind !== 'each' ||
    wordAt(cursor) !== 'and'
  )
    return steps;
  const start = cursor.at;
  const faults = cursor.faults.length;
  cursor.at += 1;
  const counted = isNumber(cursor);
  const [second] = (counted ? readWorkStep(cursor) : null) ?? [];
  const place = second?.kind === 'work' ? second.place : null;
  if (second?.kind !== 'work' || place?.kind !== 'each' || place.what.kind !== 'space') {
    cursor.at = start;
    forgetSince(cursor, faults);
    return steps;
  }
  const here: Place = { kind: 'same', what: ANY_STITCH, asJoin: false, span: place.span };
  const corners = { body: [{ ...second, place: here }], what: place.what };
  return [
    {
      ...first,
      place: {
        ...first.place,
        stop: place.stop,
        span: { start: first.place.span.start, end: place.span.end },
      },
      corners,
      span: spanSince(cursor, from),
    },
  ];
}
