/** The places behind a stitch in, the steps that work it there out: `in next 3 sts and in each st across`, `around the post of next dc`. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Counts } from './chain-counts.ts';
import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeWords, wordAt } from './cursor.ts';
import type { Num } from './num.ts';
import { readBorderSide } from './read-border-side.ts';
import { readCounts } from './read-chain.ts';
import { readSoManyEach } from './read-each-row.ts';
import { readEvenlyAfter } from './read-edge.ts';
import {
  readAnchored,
  readElsewhere,
  readInSeam,
  readOfElsewhere,
  WAYS_ELSEWHERE,
} from './read-elsewhere.ts';
import { namesChain, takeOfFoundation } from './read-foundation.ts';
import { readInFreeLoops, readPoint } from './read-free-loops.ts';
import { readLoop } from './read-loop.ts';
import { skipStep } from './read-note.ts';
import { leadsToPlace, readPlace, readPlaceWords } from './read-place.ts';
import { readSeam } from './read-seam.ts';
import { readStop } from './read-stop.ts';
import { isOverRow } from './read-surface.ts';
import { readToldSides } from './read-told-sides.ts';
import { readAlongUnderside } from './read-underside.ts';
import { readUnspread } from './read-unspread.ts';
import { ANY_STITCH, readWhat, wasFoundationChain } from './read-what.ts';
import { takeRing } from './read-yarn.ts';
import { reportUnknownWord, reportUnread } from './report-unread.ts';
import type { Loop, Place, Step, StitchName, WorkStep } from './tree.ts';
import { WordSet } from './word-set.ts';

/** Whether a side of a border may stand here, asked before each place: `in each block`, `along the edge`. */
function mayBeSide(cursor: Cursor, led: string, into: boolean): boolean {
  if (!into)
    return (
      led === 'along' ||
      led === 'down' ||
      (led === 'evenly' && wordAt(cursor, 1) === 'along' && wordAt(cursor, 2) === 'each')
    );
  const next = wordAt(cursor, 1);
  return next === 'each' || next === 'the';
}

const UNDER = new WordSet(['along', 'across', 'on']);
const UNSPREAD = new WordSet(['evenly', 'around', 'round']);
const TOLD_ROUND = new WordSet(['evenly', 'around', 'round', 'all']);

/** The places after a stitch: none, one, or several joined by "and". */
export function readPlaces(
  cursor: Cursor,
  from: number,
  stitch: StitchName,
  times: Num | null,
  leading: Loop | null,
): readonly Step[] | null {
  const led = wordAt(cursor);
  const into = led === 'in' || led === 'into';
  const side = mayBeSide(cursor, led, into) ? readBorderSide(cursor, from, stitch, times) : null;
  if (side !== null) return [side];
  if (into) return readPlacesIn(cursor, from, stitch, times, leading);
  const steps: WorkStep[] = [];
  takeAny(cursor, 'loosely', 'firmly', 'tightly');
  if (isOverRow(cursor, stitch)) return [workStep(cursor, from, stitch, times, leading ?? 'both', null)];
  let loop: Loop = leading ?? readLoop(cursor) ?? 'both';
  // `sc to last 2 sts`, `sc to end`; but `sl st to first sc` joins.
  const slips = stitch.kind === 'stitch' && stitch.id === 'sl-st';
  const upTo = wordAt(cursor) === 'to' && !slips && ['last', 'end', 'within'].includes(wordAt(cursor, 1));
  const bare = upTo ? 'across' : wordAt(cursor);
  // `ch 6, sl st to form ring`.
  if (slips && takeRing(cursor))
    return [{ kind: 'join', stitch, place: null, ring: true, span: spanSince(cursor, from) }];
  const told = times === null && TOLD_ROUND.has(led) ? readToldSides(cursor, from, stitch) : null;
  if (told !== null) return [told];
  const open = times === null && UNSPREAD.has(led) ? readUnspread(cursor, from, stitch) : null;
  if (open !== null) return [open];
  const each =
    times !== null && wordAt(cursor) === 'evenly' ? readSoManyEach(cursor, from, stitch, times) : null;
  if (each !== null) return [each];
  const under = times !== null && UNDER.has(led) ? readAlongUnderside(cursor, from, stitch, times) : null;
  if (under !== null) return [under];
  const elsewhere = WAYS_ELSEWHERE.has(led) ? readElsewhere(cursor, from, stitch, times) : null;
  if (elsewhere !== null) return [elsewhere];
  const evenly = readEvenlyAfter(cursor, from, stitch, times);
  if (evenly !== null) return [evenly];
  const seam = times === null && wordAt(cursor) === 'through' ? readSeam(cursor, from) : null;
  if (seam !== null) return [seam];
  if ((bare === 'around' || (bare === 'round' && stemFollows(cursor))) && !endsRow(cursor)) {
    // `FPdc around next dc`, `FPdc around the post of next dc`.
    const placeFrom = cursor.at;
    cursor.at += 1;
    takeAny(cursor, 'the');
    if (takeAny(cursor, 'post', 'posts', 'stem', 'stems') !== null) takeAny(cursor, 'of');
    takeAny(cursor, 'the');
    const place = readPlaceWords(cursor, placeFrom);
    if (place === null) return reportNoPlace(cursor);
    steps.push(workStep(cursor, from, stitch, times, loop, place));
  } else if (
    bare === 'across' ||
    bare === 'around' ||
    bare === 'each' ||
    bare === 'next' ||
    bare === 'last'
  ) {
    const placeFrom = cursor.at;
    const named = bare === 'each' || bare === 'next' || bare === 'last';
    const stop = named ? null : readStop(cursor);
    const place: Place | null = named
      ? readPlaceWords(cursor, placeFrom)
      : stop === null
        ? null
        : { kind: 'each', what: ANY_STITCH, stop, span: spanSince(cursor, placeFrom) };
    steps.push(workStep(cursor, from, stitch, times, loop, place));
  } else if (leadsToPlace(cursor) && wordAt(cursor, 1) !== 'join') {
    const read = readPlace(cursor);
    if (read === null) return reportNoPlace(cursor);
    loop = read.loop ?? readLoop(cursor) ?? loop;
    steps.push(workStep(cursor, from, stitch, times, loop, read.place));
  } else if (bare === 'all' && takeAllInto(cursor)) {
    const read = readPlace(cursor);
    if (read === null) return reportNoPlace(cursor);
    return [{ ...workStep(cursor, from, stitch, times, loop, read.place), shares: true }];
  } else if (takeAny(cursor, 'around') !== null) return null;
  else steps.push(workStep(cursor, from, stitch, times, loop, null));
  return readMorePlaces(cursor, from, stitch, times, loop, steps);
}

/** The same behind "in" or "into", which nothing but a place follows. */
function readPlacesIn(
  cursor: Cursor,
  from: number,
  stitch: StitchName,
  times: Num | null,
  leading: Loop | null,
): readonly Step[] | null {
  if (wordAt(cursor, 1) === 'join') return [workStep(cursor, from, stitch, times, leading ?? 'both', null)];
  const placeAt = cursor.at;
  const read = readPlace(cursor);
  if (read === null) {
    const free = readInFreeLoops(cursor, from, stitch, times);
    if (free !== null) return free;
    const point = readPoint(cursor);
    if (point !== null) return [workStep(cursor, from, stitch, times, leading ?? 'both', point)];
    const seam = readInSeam(cursor, from, stitch, times);
    return seam === null ? reportNoPlace(cursor) : [seam];
  }
  const loop = read.loop ?? (atBoundary(cursor) ? null : readLoop(cursor)) ?? leading ?? 'both';
  const worked = workStep(cursor, from, stitch, times, loop, read.place);
  const slips = stitch.kind === 'stitch' && stitch.id === 'sl-st';
  if (atBoundary(cursor) && !(slips && isListed(cursor)) && !wasFoundationChain(cursor)) return [worked];
  const elsewhere =
    wordAt(cursor) === 'at' && wasFoundationChain(cursor)
      ? readAnchored(cursor, from, placeAt, worked)
      : readOfElsewhere(cursor, from, worked);
  return elsewhere !== null ? [elsewhere] : readMorePlaces(cursor, from, stitch, times, loop, [worked]);
}

/** What may stand behind the first place: more places, what chain is meant, or that the round is closed there. */
function readMorePlaces(
  cursor: Cursor,
  from: number,
  stitch: StitchName,
  times: Num | null,
  loop: Loop,
  steps: WorkStep[],
): readonly Step[] | null {
  const slips = stitch.kind === 'stitch' && stitch.id === 'sl-st';
  while ((wordAt(cursor) === 'and' && continuesPlaces(cursor)) || (slips && isListed(cursor))) {
    const start = cursor.at;
    cursor.at += 1;
    const placeFrom = cursor.at;
    const place = leadsToPlace(cursor)
      ? (readPlace(cursor)?.place ?? null)
      : readPlaceWords(cursor, placeFrom);
    if (place === null) return reportNoPlace(cursor);
    steps.push(workStep(cursor, start + 1, stitch, times, loop, place));
  }
  const [only] = steps;
  const named = only?.place !== null && wasFoundationChain(cursor);
  if (
    only !== undefined &&
    steps.length === 1 &&
    namesChain(only.place) &&
    (named || takeOfFoundation(cursor))
  ) {
    const stop = only.place?.kind === 'each' ? readStop(cursor) : null;
    const place =
      only.place?.kind === 'each' && stop !== null
        ? { ...only.place, stop, span: { start: only.place.span.start, end: stop.span.end } }
        : only.place;
    const span = spanSince(cursor, from);
    return [
      { kind: 'along', edge: 'foundation', ...(named ? { named } : {}), span },
      { ...only, place, span },
    ];
  }
  const first = steps[0];
  if (first !== undefined && steps.length === 1 && closesRound(first.place) && takeLastSpace(cursor))
    return [{ kind: 'join', stitch, place: first.place, ring: false, span: spanSince(cursor, from) }];
  if (first !== undefined && stitch.kind === 'stitch' && stitch.id === 'sl-st') {
    const ring = takeRing(cursor);
    const join =
      ring || takeWords(cursor, 'to', 'join') || takeWords(cursor, 'to', 'first', 'st', 'to', 'join');
    if (join) return [{ kind: 'join', stitch, place: first.place, ring, span: spanSince(cursor, from) }];
  }
  return steps;
}

/** `, in next dc` of `sl st in next hdc, in next dc and in ch-3 sp`. */
function isListed(cursor: Cursor): boolean {
  if (peek(cursor).kind !== 'comma' || wordAt(cursor, 2) !== 'next') return false;
  return wordAt(cursor, 1) === 'in' || wordAt(cursor, 1) === 'into';
}

export function workStep(
  cursor: Cursor,
  from: number,
  stitch: StitchName,
  times: Num | null,
  loop: Loop,
  place: Place | null,
): WorkStep {
  const skipped = place?.kind === 'from-hook' ? readSkippedCounts(cursor) : null;
  return { kind: 'work', stitch, times, place, loop, skipped, span: spanSince(cursor, from) };
}

/** `round the stem of next dc`. */
function stemFollows(cursor: Cursor): boolean {
  const word = wordAt(cursor, wordAt(cursor, 1) === 'the' ? 2 : 1);
  return ROUND_WHAT.has(word);
}

/** What a hook goes round; `tr round` alone goes to the end of the round. */
const ROUND_WHAT = new WordSet([
  ...['stem', 'stems', 'post', 'posts'],
  ...['next', 'each', 'same', 'first', 'last'],
]);

/** `all`, `all worked` before `into next st`: what stands before goes there too. */
function takeAllInto(cursor: Cursor): boolean {
  const start = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'worked');
  if (leadsToPlace(cursor)) return true;
  cursor.at = start;
  return false;
}

function closesRound(place: Place | null): boolean {
  return place?.kind === 'first' || place?.kind === 'of-chain';
}

/** `to make the last lp`, `to form last ch-5 sp`: the stitch before it joins the round. */
function takeLastSpace(cursor: Cursor): boolean {
  const start = cursor.at;
  const makes = takeAny(cursor, 'to') !== null && takeAny(cursor, 'make', 'form', 'complete') !== null;
  takeAny(cursor, 'the');
  const last = makes && takeAny(cursor, 'last', 'final') !== null;
  if (last && readWhat(cursor)?.kind === 'space' && atBoundary(cursor)) return true;
  cursor.at = start;
  return false;
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
  // `FPtr around 2 skipped sts`, `around 2nd skipped st`.
  if (next.kind !== 'word') return !SKIPPED.holds(peek(cursor, 2));
  // `FPtr around dc 2 rows below`.
  if (wordAt(cursor, 3).startsWith('r') && wordAt(cursor, 4) === 'below') return false;
  return !AROUND_WHAT.has(next.text);
}

/** What a post stitch goes around, behind the word "around". */
const SKIPPED = new WordSet(['skipped', 'missed']);
const AROUND_WHAT = new WordSet([
  'next',
  'the',
  'post',
  'posts',
  'stem',
  'stems',
  'each',
  'same',
  'first',
  'second',
  'last',
  'skipped',
  'missed',
]);

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

const KNOWN_PLACE_WORDS = new WordSet([
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
