/** `in the free loop of each of next 7 ch`, `into the underside of each ch`, `in each unused loop across`: chains from their other side. */

import type { Cursor } from './cursor.ts';
import { atBoundary, spanSince, takeAny, takeOneOf, wordAt } from './cursor.ts';
import type { Num } from './num.ts';
import { FOUNDATION_WORDS, takeFarSide } from './read-foundation.ts';
import { readPlaceWords } from './read-place.ts';
import { readStop } from './read-stop.ts';
import type { AlongStep, Loop, Place, Step, StitchName, WorkStep } from './tree.ts';
import { WordSet } from './word-set.ts';

const FREE = new WordSet([
  'free',
  'unused',
  'unworked',
  'remaining',
  'rem',
  'bottom',
  'other',
  'opposite',
  'underneath',
]);
const LOOPS = new WordSet(['loop', 'loops', 'lp', 'lps', 'side', 'edge']);
const UNDERSIDES = new WordSet(['underside', 'undersides', 'bottom', 'base']);
const CHAINS = new WordSet(['ch', 'chs', 'chain', 'chains']);

/** The edge and what goes into each of its chains; null, the cursor where it was, where no chain's other side is named. */
export function readInFreeLoops(
  cursor: Cursor,
  from: number,
  stitch: StitchName,
  times: Num | null,
): readonly Step[] | null {
  const start = cursor.at;
  takeAny(cursor, 'in', 'into', 'through');
  const eachLoop = takeAny(cursor, 'each', 'every') !== null;
  takeAny(cursor, 'the', 'a');
  const named = takeUnderside(cursor);
  const place = named ? readChains(cursor, start, eachLoop) : null;
  if (place === null) {
    cursor.at = start;
    return null;
  }
  const span = spanSince(cursor, from);
  const along: AlongStep = { kind: 'along', edge: 'foundation', loops: true, span };
  const loop: Loop = 'both';
  const worked: WorkStep = { kind: 'work', stitch, times, place, loop, skipped: null, span };
  return [along, worked];
}

/** `in the point`, `at the tip` of a pennant: the corner it ends in; null, the cursor where it was, for anything else. */
export function readPoint(cursor: Cursor): Place | null {
  const from = cursor.at;
  takeAny(cursor, 'in', 'into', 'at');
  takeAny(cursor, 'the');
  if (takeAny(cursor, 'bottom', 'lower') !== null || wordAt(cursor, -1) === 'the') {
    if (takeAny(cursor, 'point', 'tip') !== null && atBoundary(cursor))
      return {
        kind: 'next',
        n: null,
        what: { kind: 'corner' },
        each: false,
        here: true,
        span: spanSince(cursor, from),
      };
  }
  cursor.at = from;
  return null;
}

/** `free loop`, `unused front loops`, `underside`. */
function takeUnderside(cursor: Cursor): boolean {
  if (takeOneOf(cursor, FREE) !== null) {
    takeAny(cursor, 'front', 'back');
    return takeOneOf(cursor, LOOPS) !== null || wordAt(cursor, -1) === 'bottom';
  }
  return takeOneOf(cursor, UNDERSIDES) !== null;
}

/** `of each of next 7 ch`, `of each ch across`, `of the foundation ch`; of each loop it need not be said. */
function readChains(cursor: Cursor, from: number, eachLoop: boolean): Place | null {
  if (takeAny(cursor, 'of', 'on', 'along') === null) {
    if (!eachLoop) return null;
    const stop = readStop(cursor);
    if (stop === null && !atBoundary(cursor)) return null;
    return toEnd(cursor, from, stop);
  }
  takeAny(cursor, 'the');
  if (takeWholeChain(cursor)) return toEnd(cursor, from, readStop(cursor));
  const place = readPlaceWords(cursor, from);
  if (place === null || (place.kind !== 'next' && place.kind !== 'each') || place.what.kind !== 'ch')
    return null;
  takeOfFoundation(cursor);
  if (place.kind === 'next') return atBoundary(cursor) || wordAt(cursor) === 'and' ? place : null;
  return { ...place, stop: readStop(cursor) ?? place.stop, span: spanSince(cursor, from) };
}

function toEnd(cursor: Cursor, from: number, stop: ReturnType<typeof readStop>): Place {
  const span = spanSince(cursor, from);
  return { kind: 'each', what: { kind: 'ch' }, stop: stop ?? { kind: 'end', word: 'across', span }, span };
}

/** `foundation ch`, `starting chain`, `chain` alone: all of it. */
function takeWholeChain(cursor: Cursor): boolean {
  const start = cursor.at;
  takeOneOf(cursor, FOUNDATION_WORDS);
  if (takeOneOf(cursor, CHAINS) !== null) return true;
  cursor.at = start;
  return takeFarSide(cursor);
}

/** `of the foundation`, `along the starting ch` behind `each ch`. */
function takeOfFoundation(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'of', 'along', 'on') === null) return;
  takeAny(cursor, 'the');
  if (takeOneOf(cursor, FOUNDATION_WORDS) !== null) {
    takeOneOf(cursor, CHAINS);
    return;
  }
  cursor.at = start;
}
