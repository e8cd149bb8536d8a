/**
 * Edges whose places are not worked here: `97 dc evenly along the hem` of a towel, `8 sc down the left front neck` of
 * pieces sewn together, `sc in next 13 sc of square, sc in seam`. How many go along them is the maker's own number.
 */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, textSince, wordAt } from './cursor.ts';
import type { Num } from './num.ts';
import type { EvenlyStep, StitchName, WorkStep } from './tree.ts';
import { WordSet } from './word-set.ts';

function wordSet(text: string): WordSet {
  return new WordSet(text.trim().split(/\s+/));
}

/** Things that are no crochet, and what only pieces put together have. */
const NAMES_ELSEWHERE = wordSet(`
  towel hem hems hemline fabric handkerchief hankie hanky pillowslip pillowcase sheet napkin linen ribbon tape felt
  armhole armholes neck neckline underarm underarms shoulder shoulders seam seams`);
const PIECES = wordSet('square squares motif motifs hexagon hexagons pennant pennants triangle triangles');
/** What may stand beside such a name, and is none by itself. */
const WORDS_BESIDE = wordSet(`
  left right hand front back top bottom lower upper outer inner first second other short long one whole
  entire edge edges side sides end ends curve tea the of any`);
/** What a piece has that is no edge by itself: the back of it is where yarn is joined. */
const PLACES_OF_PIECES = wordSet('heel toe cuff brim crown sole');
/** A point on an edge, where yarn is joined. */
const POINTS = wordSet('corner end center centre beginning start middle');
const ENDS = wordSet('lower bottom upper top');
const OWN_EDGES = wordSet('edge edges side sides');

/** What leads to an edge behind a stitch's name. */
export const WAYS_ELSEWHERE = new WordSet('along across around round down up evenly'.split(' '));
const WAYS = wordSet('along across around round down up over on onto in into');
/** Longer than any name of an edge: `the right-hand end of one short side of the tea towel`. */
const LONGEST = 12;

/** `evenly along the hem`, `down the left front neck` behind `97 dc`; null with the cursor where it was. */
export function readElsewhere(
  cursor: Cursor,
  from: number,
  stitch: StitchName,
  n: Num | null,
): EvenlyStep | null {
  const start = cursor.at;
  if (takeAny(cursor, 'evenly') !== null) takeAny(cursor, 'spaced');
  if (n !== null && takeOneOf(cursor, WAYS) !== null && takeName(cursor, NAMES_ELSEWHERE)) {
    const said = textSince(cursor, start);
    return elsewhere(cursor, from, stitch, n, said);
  }
  cursor.at = start;
  return null;
}

/** So many stitches along an edge that is not worked here, as the words `said` call it. */
function elsewhere(cursor: Cursor, from: number, stitch: StitchName, n: Num, said: string): EvenlyStep {
  const span = spanSince(cursor, from);
  return { kind: 'evenly', stitch, n, edge: 'elsewhere', side: { each: 'counted', said }, span };
}

/** `in seam`, `into the next shoulder seam` behind `sc`; null with the cursor where it was. */
export function readInSeam(
  cursor: Cursor,
  from: number,
  stitch: StitchName,
  times: Num | null,
): EvenlyStep | null {
  const start = cursor.at;
  takeAny(cursor, 'in', 'into');
  takeAny(cursor, 'next');
  if (takeName(cursor, NAMES_ELSEWHERE)) {
    const one = { values: [1], span: spanSince(cursor, from) };
    return elsewhere(cursor, from, stitch, times ?? one, textSince(cursor, start));
  }
  cursor.at = start;
  return null;
}

/** `into foundation ch at base of first shell`: far below, where a scallop is held down. `from` is where the stitch stands. */
export function readAnchored(
  cursor: Cursor,
  from: number,
  placeAt: number,
  step: WorkStep,
): EvenlyStep | null {
  const start = cursor.at;
  if (takeAny(cursor, 'at') === null) return null;
  takeAny(cursor, 'the');
  if (takeAny(cursor, 'base', 'foot') !== null && takeAny(cursor, 'of') !== null) {
    while (!atBoundary(cursor)) cursor.at += 1;
    const said = textSince(cursor, placeAt);
    const span = spanSince(cursor, from);
    const n = step.times ?? { values: [1], span };
    return {
      kind: 'evenly',
      stitch: step.stitch,
      n,
      edge: 'elsewhere',
      side: { each: 'counted', said },
      span,
    };
  }
  cursor.at = start;
  return null;
}

/** `of square`, `of the back neck` behind `sc in next 13 sc`: so many of another piece. Null for the stitches of this one. */
export function readOfElsewhere(cursor: Cursor, from: number, step: WorkStep): EvenlyStep | null {
  const { place, stitch, times } = step;
  const one = times === null || times.values.every((n) => n === 1);
  if (!one || place?.kind !== 'next' || place.n === null) return null;
  const start = cursor.at;
  if (
    takeAny(cursor, 'of', 'along', 'across') !== null &&
    (takeName(cursor, PIECES) || takeName(cursor, NAMES_ELSEWHERE))
  ) {
    const side = { each: 'counted', said: textSince(cursor, start), of: place.what } as const;
    return { kind: 'evenly', stitch, n: place.n, edge: 'elsewhere', side, span: spanSince(cursor, from) };
  }
  cursor.at = start;
  return null;
}

/** `at the underarm`, `to front corner of neck edge`, `of any square along the top edge`: where on an edge yarn is joined. */
export function takePointOfEdge(cursor: Cursor): boolean {
  const start = cursor.at;
  const led = takeAny(cursor, 'at', 'to', 'in', 'of') ?? takeAny(cursor, 'along', 'on');
  if (led !== null) {
    let point = false;
    let edge = false;
    let elsewhere = false;
    for (let n = 0; n < LONGEST && isNamePart(cursor); n += 1, cursor.at += 1) {
      const token = peek(cursor);
      point ||= POINTS.holds(token);
      edge ||= OWN_EDGES.holds(token);
      // `at lower edge of right front`.
      point ||= ENDS.holds(token);
      elsewhere ||= NAMES_ELSEWHERE.holds(token) || PIECES.holds(token) || PLACES_OF_PIECES.holds(token);
    }
    if (
      (elsewhere || (point && edge)) &&
      (atBoundary(cursor) || wordAt(cursor) === 'and' || wordAt(cursor) === 'with')
    )
      return true;
  }
  cursor.at = start;
  return false;
}

function isNamePart(cursor: Cursor): boolean {
  const token = peek(cursor);
  return (
    isBeside(cursor) ||
    NAMES_ELSEWHERE.holds(token) ||
    POINTS.holds(token) ||
    PIECES.holds(token) ||
    PLACES_OF_PIECES.holds(token) ||
    token.word === 'along' ||
    token.word === 'a'
  );
}

/** A word that may stand beside a name; the dash of `right-hand`, `tea-towel`. */
function isBeside(cursor: Cursor): boolean {
  if (peek(cursor).kind === 'dash') return wordAt(cursor, 1) === 'hand' || wordAt(cursor, 1) === 'towel';
  return WORDS_BESIDE.holds(peek(cursor));
}

/** `the left front neck`, `hem of the towel`, `armhole to next corner`, to the end of the step. */
function takeName(cursor: Cursor, names: WordSet): boolean {
  const start = cursor.at;
  let named = false;
  for (let n = 0; n < LONGEST; n += 1, cursor.at += 1) {
    if (names.holds(peek(cursor))) named = true;
    else if (!isBeside(cursor)) break;
  }
  if (named && wordAt(cursor) === 'to') takeToItsEnd(cursor);
  if (named && atBoundary(cursor)) return true;
  cursor.at = start;
  return false;
}

/** `to next corner`, `to the underarm`, `to end`: what an edge ends at is said, not counted. */
function takeToItsEnd(cursor: Cursor): void {
  cursor.at += 1;
  takeAny(cursor, 'the', 'next');
  takeAny(cursor, 'next', 'other', 'shoulder', 'side');
  if (takeAny(cursor, 'corner', 'end', 'underarm', 'seam') === null) cursor.at -= 1;
}
