/** What a step may begin with before what is worked: `make a magic ring`, `start 6 sc in …`, `in BLO, …`, `3x (…)`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, forgetSince, peek, spanSince, takeAny, takeOneOf, textSince, wordAt } from './cursor.ts';
import type { Num } from './num.ts';
import { readCounts } from './read-chain.ts';
import { readInEachRow } from './read-each-row.ts';
import { readOnlyBody } from './read-group.ts';
import { readRingList, readUpTo } from './read-into-ring.ts';
import { readLoop } from './read-loop.ts';
import { isNumber, readNumber } from './read-number.ts';
import { readPlace } from './read-place.ts';
import { readStop } from './read-stop.ts';
import { readUnspread } from './read-unspread.ts';
import { ANY_STITCH } from './read-what.ts';
import { readWorkStep } from './read-work.ts';
import { readStitchName } from './read-yarn.ts';
import { readYarnLetter } from './read-yarn-name.ts';
import type { Place, Step, WorkStep } from './tree.ts';
import { WordSet } from './word-set.ts';

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
  const whole = named ? takeAny(cursor, 'ring', 'circle', 'loop') !== null : takeAny(cursor, 'mr') !== null;
  const goesOn =
    (peek(cursor).kind === 'open' && wordAt(cursor, 1) === 'or') ||
    peek(cursor).kind === 'colon' ||
    wordAt(cursor) === 'work' ||
    wordAt(cursor) === 'and';
  if (whole && (atBoundary(cursor) || goesOn)) return { kind: 'ring', span: spanSince(cursor, from) };
  cursor.at = start;
  return null;
}

/** `Magic ring with 8 sc in it`: what goes into it in the same breath; null where the ring stands alone. */
export function readRingWith(cursor: Cursor): Step | null {
  const from = cursor.at;
  cursor.at += 1;
  const ring = takeAny(cursor, 'ring', 'circle', 'loop') !== null && takeAny(cursor, 'with') !== null;
  const times = ring && isNumber(cursor) ? readNumber(cursor) : null;
  const stitch = times === null ? null : readStitchName(cursor);
  if (stitch !== null && takeAny(cursor, 'in', 'into', 'inside') !== null) {
    takeAny(cursor, 'the');
    if (takeAny(cursor, 'it', 'ring') !== null) {
      const span = spanSince(cursor, from);
      const place = { kind: 'ring', magic: true, span } as const;
      return { kind: 'work', stitch, times, place, loop: 'both', skipped: null, span };
    }
  }
  cursor.at = from;
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
    const inRows = stitch === null ? null : readInEachRow(cursor, from, stitch);
    if (inRows !== null) return inRows;
    const open = stitch !== null && wordAt(cursor) === 'evenly' ? readUnspread(cursor, from, stitch) : null;
    if (open !== null) return open;
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

/** `start 6 sc in a magic loop`, `begin with 6 sc in ring`, `starting in 2nd ch from hook, sc in each ch`. */
export function readStart(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  cursor.at += 1;
  if (takeWhereBegun(cursor))
    return [{ kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) }];
  const place = readPlace(cursor)?.place ?? null;
  // `starting in same st as joining`: where the yarn stands in any case.
  if (place?.kind === 'same' && place.asJoin && atBoundary(cursor))
    return [{ kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) }];
  if (place !== null)
    return place.kind === 'from-hook' ? readFromHook(cursor, from, place) : back(cursor, from);
  const ring = takeAny(cursor, 'with') === null ? null : readRing(cursor, from);
  if (ring !== null) return [ring];
  const worked = readWorkStep(cursor);
  if (worked === null) cursor.at = from;
  return worked;
}

/** `at center`, `from the top of the crown`, `at lower edge`: where on the piece the work begins, before any of it is made. */
function takeWhereBegun(cursor: Cursor): boolean {
  const start = cursor.at;
  if (takeAny(cursor, 'at', 'from') !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'lower', 'upper', 'bottom', 'top');
    if (takeOneOf(cursor, PIECE_PLACES) !== null || PIECE_PLACES.holds(peek(cursor, -1))) {
      if (takeAny(cursor, 'of') !== null) {
        takeAny(cursor, 'the', 'a');
        if (peek(cursor).kind === 'word') cursor.at += 1;
      }
      if (atBoundary(cursor)) return true;
    }
  }
  cursor.at = start;
  return false;
}

const PIECE_PLACES = new WordSet(
  'center centre middle edge hem top bottom crown toe cuff neck tip base brim side'.split(' '),
);

/** What follows `starting in 2nd ch from hook,`: its first stitch goes there, and so on from there. */
function readFromHook(
  cursor: Cursor,
  from: number,
  place: Extract<Place, { kind: 'from-hook' }>,
): readonly Step[] | null {
  const skipped = peek(cursor).kind === 'open' ? readCounts(cursor) : null;
  if (peek(cursor).kind === 'comma' || peek(cursor).kind === 'colon') cursor.at += 1;
  // `beginning in 2nd ch from hook, *sl st in next ch, …`: the one chain before it is passed.
  if (peek(cursor).kind === 'mark' && skipped === null && place.nth.values.every((nth) => nth === 2)) {
    const n = { values: [1], span: place.nth.span };
    return [{ kind: 'skip', n, what: { kind: 'ch' }, pick: 'first', span: spanSince(cursor, from) }];
  }
  takeAny(cursor, 'work');
  const [first, ...more] = readWorkStep(cursor) ?? [];
  if (first?.kind !== 'work') return back(cursor, from);
  const rest = withoutFirst(first);
  if (rest === null) return back(cursor, from);
  return [{ ...first, times: rest.times === null ? first.times : null, place, skipped }, rest, ...more];
}

/** What is left of `sc in each ch`, `sc in next 11 ch` and `sc 11` when one is worked; null when one cannot be told apart. */
function withoutFirst(step: WorkStep): WorkStep | null {
  const { place, times } = step;
  if (place?.kind === 'each') return step;
  if (place?.kind === 'next' && place.n !== null)
    return { ...step, place: { ...place, n: oneLess(place.n) } };
  return place === null && times !== null ? { ...step, times: oneLess(times) } : null;
}

function oneLess(n: Num): Num {
  return { ...n, values: n.values.map((value) => (value === null || value === 0 ? value : value - 1)) };
}

function back(cursor: Cursor, at: number): null {
  cursor.at = at;
  return null;
}

/** `work 6 sc` behind "in a magic ring": into the ring, though it is not said again. */
function readIntoRing(cursor: Cursor, from: number): Step | null {
  const start = cursor.at;
  const { kind } = peek(cursor);
  if (kind === 'comma' || kind === 'colon') cursor.at += 1;
  takeAny(cursor, 'work', 'make');
  const faults = cursor.faults.length;
  const [only, more] = (isNumber(cursor) ? readWorkStep(cursor) : null) ?? [];
  if (only?.kind === 'work' && only.place === null && more === undefined) {
    const span = spanSince(cursor, from);
    return { ...only, place: { kind: 'ring', magic: true, span }, span };
  }
  forgetSince(cursor, faults);
  cursor.at = start;
  return null;
}

/** `in BLO, sc in each st`, `in A 1 dc in next 10 sts`: how or with what the next steps are worked. */
export function readLeadingIn(cursor: Cursor): Step | readonly Step[] | null {
  const from = cursor.at;
  cursor.at += 1;
  const list = readRingList(cursor, from);
  if (list !== null) return list;
  // `in a magic ring, ch 3, 2 dc in ring`.
  const ring = readRing(cursor, from);
  if (ring !== null) return readIntoRing(cursor, from) ?? ring;
  const loop = readLoop(cursor);
  if (loop !== null && wordAt(cursor) !== 'of') return { kind: 'loops', loop, span: spanSince(cursor, from) };
  const yarn = loop === null ? readYarnLetter(cursor) : null;
  if (yarn !== null)
    return { kind: 'yarn', action: 'with', yarn, stitch: null, place: null, span: spanSince(cursor, from) };
  cursor.at = from;
  return loop === null ? readAllInto(cursor, from) : null;
}

/** `in each loop work 1 sc, 5 dc, 1 sc`: all of it goes into that place, up to a semicolon or the end of the sentence. */
function readAllInto(cursor: Cursor, from: number): Step | null {
  const place = readPlace(cursor)?.place ?? null;
  if (peek(cursor).kind === 'comma' || peek(cursor).kind === 'colon') cursor.at += 1;
  if (place === null || takeAny(cursor, 'work', 'make') === null) return back(cursor, from);
  if (peek(cursor).kind === 'open') {
    const body = readOnlyBody(cursor);
    const whole = atBoundary(cursor) && body?.every(isLaidDown) === true;
    return whole && body !== null
      ? { kind: 'group', body, place, span: spanSince(cursor, from) }
      : back(cursor, from);
  }
  const steps = readUpTo(cursor, endOfList(cursor));
  const body = steps?.map(closedPicot) ?? [];
  if (body.length === 0 || !body.every(isLaidDown)) return back(cursor, from);
  return { kind: 'group', body, place, span: spanSince(cursor, from) };
}

/** `ch 3, sl st in last sc` among what goes into one place: the last that was made. */
function closedPicot(step: Step, at: number, steps: readonly Step[]): Step {
  if (step.kind !== 'work' || step.place?.kind !== 'last' || step.place.n !== null) return step;
  const slips = step.stitch.kind === 'stitch' && step.stitch.id === 'sl-st';
  if (!slips || steps[at - 1]?.kind !== 'chain') return step;
  const { what, span } = step.place;
  return { ...step, place: { kind: 'last-made', what, span } };
}

/** A step with a place of its own is not worked into the place that was said before. */
function isLaidDown(step: Step): boolean {
  if (step.kind === 'note') return /\bmade\)$/.test(step.text);
  const place = step.kind === 'work' ? step.place : null;
  return step.kind === 'chain' || (step.kind === 'work' && (place === null || place.kind === 'last-made'));
}

/** Where what is worked into one place ends: at a semicolon, a full stop, or a comma before what ends a round. */
function endOfList({ at, tokens }: Cursor): number {
  for (let i = at; i < tokens.length; i += 1) {
    const { kind } = tokens[i] ?? { kind: 'end' };
    // `(picot made)`.
    if (kind === 'open' && tokens[i + 2]?.text === 'made' && tokens[i + 3]?.kind === 'close') {
      i += 3;
      continue;
    }
    if (kind === 'comma' && CLOSING.has(tokens[i + 1]?.text ?? '')) return i;
    if (kind !== 'comma' && kind !== 'word' && kind !== 'number' && kind !== 'dash') return i;
  }
  return tokens.length;
}

const CLOSING = new Set(['join', 'turn', 'fasten', 'rep', 'repeat']);
