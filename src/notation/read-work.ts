/** A stitch and its places in, the steps that work it out: `3 dc in ring`, `sc in next 3 sts and in each st across`, `sc2tog`, `6 sc`. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeWords, wordAt } from './cursor.ts';
import { findName } from './lexicon.ts';
import { readCounts, readNumberedChain } from './read-chain.ts';
import { readEvenlyAfter } from './read-edge.ts';
import { readLoop } from './read-loop.ts';
import { skipStep } from './read-note.ts';
import { isNumber, readNumber } from './read-number.ts';
import { leadsToPlace, readPlace, readPlaceWords } from './read-place.ts';
import { readStop } from './read-stop.ts';
import { ANY_STITCH, isAmount } from './read-what.ts';
import { readStitchName, takeRing } from './read-yarn.ts';
import { reportUnknownWord, reportUnread } from './report-unread.ts';
import type { Counts, Loop, Num, Place, Step, StitchName, WorkStep } from './tree.ts';

/** `3 dc in ring`, `sc in next 3 sts and in each st across`, `sc2tog`, `6 sc`, `sc 5`, `BLO sc in next st`. */
export function readWorkStep(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  const leadingLoop = readLoop(cursor);
  takeAny(cursor, 'a', 'an');
  const named = findName(cursor.lexicon, cursor.tokens, cursor.at) !== null;
  let times: Num | null = !named && isNumber(cursor) ? readNumber(cursor) : null;
  if (times !== null && ['ch', 'chs', 'chain', 'chains'].includes(wordAt(cursor))) {
    cursor.at = from;
    const chain = readNumberedChain(cursor);
    return chain === null ? null : [chain];
  }
  const stitch = readStitchName(cursor);
  if (stitch === null) return null;
  const crossed = (wordAt(cursor) === 'x' || peek(cursor).text === '×') && isNumber(cursor, 1);
  if (times === null && crossed) cursor.at += 1;
  if (times === null && isAmount(cursor)) times = readNumber(cursor);
  return readPlaces(cursor, from, stitch, times, leadingLoop);
}

/** The places after a stitch: none, one, or several joined by "and". */
function readPlaces(
  cursor: Cursor,
  from: number,
  stitch: StitchName,
  times: Num | null,
  leading: Loop | null,
): readonly Step[] | null {
  const steps: WorkStep[] = [];
  takeAny(cursor, 'loosely', 'firmly', 'tightly');
  let loop: Loop = leading ?? readLoop(cursor) ?? 'both';
  const add = (place: Place | null, start: number): void => {
    const skipped = place?.kind === 'from-hook' ? readSkippedCounts(cursor) : null;
    steps.push({ kind: 'work', stitch, times, place, loop, skipped, span: spanSince(cursor, start) });
  };
  const bare = wordAt(cursor);
  const evenly = readEvenlyAfter(cursor, from, stitch, times);
  if (evenly !== null) return [evenly];
  if (bare === 'around' && !endsRow(cursor)) {
    // `FPdc around next dc`, `FPdc around the post of next dc`.
    const placeFrom = cursor.at;
    cursor.at += 1;
    takeAny(cursor, 'the');
    if (takeAny(cursor, 'post', 'posts') !== null) takeAny(cursor, 'of');
    const place = readPlaceWords(cursor, placeFrom);
    if (place === null) return reportNoPlace(cursor);
    add(place, from);
  } else if (bare === 'across' || bare === 'around' || bare === 'each' || bare === 'next') {
    const placeFrom = cursor.at;
    const stop = bare === 'each' || bare === 'next' ? null : readStop(cursor);
    const place: Place | null =
      bare === 'each' || bare === 'next'
        ? readPlaceWords(cursor, placeFrom)
        : stop === null
          ? null
          : { kind: 'each', what: ANY_STITCH, stop, span: spanSince(cursor, placeFrom) };
    add(place, from);
  } else if (leadsToPlace(cursor)) {
    const read = readPlace(cursor);
    if (read === null) return reportNoPlace(cursor);
    loop = read.loop ?? loop;
    add(read.place, from);
  } else if (takeAny(cursor, 'around') !== null) return null;
  else add(null, from);
  while (wordAt(cursor) === 'and' && continuesPlaces(cursor)) {
    const start = cursor.at;
    cursor.at += 1;
    const placeFrom = cursor.at;
    const place = leadsToPlace(cursor)
      ? (readPlace(cursor)?.place ?? null)
      : readPlaceWords(cursor, placeFrom);
    if (place === null) return reportNoPlace(cursor);
    add(place, start + 1);
  }
  const first = steps[0];
  if (first !== undefined && stitch.kind === 'stitch' && stitch.id === 'sl-st') {
    const ring = takeRing(cursor);
    const join =
      ring || takeWords(cursor, 'to', 'join') || takeWords(cursor, 'to', 'first', 'st', 'to', 'join');
    if (join) return [{ kind: 'join', stitch, place: first.place, ring, span: spanSince(cursor, from) }];
  }
  return steps;
}

/** "and in each st across", "and each ch across", but not "and ch 2". */
function continuesPlaces(cursor: Cursor): boolean {
  const next = wordAt(cursor, 1);
  return next === 'in' || next === 'each' || next === 'into' || (next === 'next' && placeFollows(cursor));
}

/** "and next ch-1 sp" goes on with the stitch; "and next 2 dc …" of another step does not occur. */
function placeFollows(cursor: Cursor): boolean {
  const from = cursor.at;
  cursor.at += 1;
  const place = readPlaceWords(cursor, cursor.at);
  cursor.at = from;
  return place !== null;
}

/** "around" that goes to the end of the round rather than around a post. */
function endsRow(cursor: Cursor): boolean {
  const next = peek(cursor, 1);
  if (next.kind !== 'word') return true;
  return !['next', 'the', 'post', 'posts', 'each', 'same', 'first', 'last'].includes(next.text);
}

/** `(skipped 3 ch count as dc)` after a first stitch in the nth chain from the hook. */
function readSkippedCounts(cursor: Cursor): Counts | null {
  return peek(cursor).kind === 'open' ? readCounts(cursor) : null;
}

function reportNoPlace(cursor: Cursor): null {
  const start = cursor.at;
  const word = peek(cursor).text;
  cursor.at += 1;
  const next = peek(cursor);
  if (atBoundary(cursor)) {
    cursor.faults.push(
      diagnose('phrase/no-place', { file: cursor.context.file, span: spanSince(cursor, start) }, { word }),
    );
    return null;
  }
  skipStep(cursor);
  if (next.kind === 'word' && !KNOWN_PLACE_WORDS.has(next.text)) {
    cursor.at = start + 1;
    reportUnknownWord(cursor);
    skipStep(cursor);
    return null;
  }
  reportUnread(cursor, start, 'a place such as "next st" or "each st across"');
  return null;
}

const KNOWN_PLACE_WORDS = new Set([
  'next',
  'each',
  'same',
  'first',
  'last',
  'top',
  'ring',
  'any',
  'the',
  'skipped',
  'corner',
  'center',
  'centre',
]);

