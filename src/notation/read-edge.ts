/** Working along the sides of a piece: `work 21 sc evenly along row ends`, `working along opposite side of foundation ch`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, takeWords, textSince, wordAt } from './cursor.ts';
import type { Edge } from './edge.ts';
import type { Num } from './num.ts';
import { FOUNDATION_WORDS, takeFarSide, takeOpening } from './read-foundation.ts';
import { readInBlocks } from './read-in-blocks.ts';
import { readLoop } from './read-loop.ts';
import { readMatching } from './read-matching.ts';
import { isNumber, readNumber } from './read-number.ts';
import { readRowsForm } from './read-pattern.ts';
import { readPlace } from './read-place.ts';
import { readMakesUp } from './read-remark.ts';
import { readTop } from './read-top.ts';
import { readStitchName } from './read-yarn.ts';
import { unitAt } from './row-unit.ts';
import type { AlongStep, EvenlyStep, LoopsStep, NoteStep, StitchName } from './tree.ts';
import { WordSet } from './word-set.ts';

/** `21 sc evenly along row ends` (the word "work" already read); null with the cursor where it was. */
export function readEvenly(cursor: Cursor, from: number): EvenlyStep | null {
  const start = cursor.at;
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  const stitch = n === null ? null : readStitchName(cursor);
  if (n !== null && stitch !== null && takeAny(cursor, 'evenly') !== null) {
    takeAny(cursor, 'spaced');
    const edge = readEdge(cursor) ?? takeBareEdge(cursor);
    // `(2 in each row end)` behind it is read with the stitch.
    const side = edge === 'row ends' ? readInBlocks(cursor, start) : null;
    if (side !== null)
      return { kind: 'evenly', stitch, n, edge: 'row ends', side, span: spanSince(cursor, from) };
    if (edge !== null && !(edge === 'row ends' && tellsEach(cursor)))
      return { kind: 'evenly', stitch, n, edge, span: spanSince(cursor, from) };
  }
  cursor.at = start;
  return null;
}

/** Whether it is said here how many go into each: `(2 in …`, `(2 sc in …`, `(2 sts per …`, `, working 1 in …`, `, one in …`. */
function tellsEach(cursor: Cursor): boolean {
  const { kind } = peek(cursor);
  if (kind === 'comma') {
    const at = EACH_BEGINS.holds(peek(cursor, 1)) ? 2 : 1;
    const told = peek(cursor, at).kind === 'number' || wordAt(cursor, at) === 'one';
    return told && (EACH_WORDS.holds(peek(cursor, at + 1)) || EACH_WORDS.holds(peek(cursor, at + 2)));
  }
  if (kind !== 'open' || (peek(cursor, 1).kind !== 'number' && wordAt(cursor, 1) !== 'one')) return false;
  return EACH_WORDS.holds(peek(cursor, 2)) || EACH_WORDS.holds(peek(cursor, 3));
}

export const EACH_BEGINS = new WordSet(['working', 'making', 'with', 'placing']);
export const EACH_WORDS = new WordSet(['in', 'into', 'per', 'for', 'on']);

/** `21 sc evenly around`, `16 sc along the row ends` behind the stitch's name. */
export function readEvenlyAfter(
  cursor: Cursor,
  from: number,
  stitch: StitchName,
  n: Num | null,
): EvenlyStep | null {
  const evenly = wordAt(cursor) === 'evenly';
  if (n === null || (!evenly && !ALONG.holds(peek(cursor)))) return null;
  const start = cursor.at;
  if (evenly) cursor.at += 1;
  takeAny(cursor, 'spaced');
  const edge = readEdge(cursor) ?? takeBareEdge(cursor);
  const side = evenly && edge === 'row ends' ? readInBlocks(cursor, start) : null;
  if (side !== null)
    return { kind: 'evenly', stitch, n, edge: 'row ends', side, span: spanSince(cursor, from) };
  // `16 sc along the row ends`: how they are spread goes without saying there.
  if (edge !== null && (evenly || ((edge === 'row ends' || edge === 'foundation') && atBoundary(cursor))))
    return { kind: 'evenly', stitch, n, edge, span: spanSince(cursor, from) };
  cursor.at = start;
  return null;
}

const ALONG = new WordSet(['along', 'up', 'down', 'across']);

/** `along edge`, `along short edge`, `along each edge to next corner`: of a stated number, one side. */
function takeBareEdge(cursor: Cursor): Edge | null {
  const start = cursor.at;
  if (takeAny(cursor, 'along', 'across', 'down', 'up') !== null) {
    // `25 sc across to the next corner`.
    const to = takeWords(cursor, 'to', 'next', 'corner') || takeWords(cursor, 'to', 'the', 'next', 'corner');
    if (to && atBoundary(cursor)) return 'row ends';
    takeAny(cursor, 'the', 'each', 'next', 'this');
    takeOneOf(cursor, WHICH_EDGE);
    if (takeAny(cursor, 'edge') !== null) {
      if (!takeWords(cursor, 'to', 'next', 'corner')) takeWords(cursor, 'to', 'the', 'next', 'corner');
      if (atBoundary(cursor)) return 'row ends';
    }
  }
  cursor.at = start;
  return null;
}

/** `working along row ends`, `working in back loops only`, `working evenly 21 sc along side`. */
export function readWorking(cursor: Cursor): AlongStep | EvenlyStep | LoopsStep | NoteStep | null {
  const from = cursor.at;
  cursor.at += 1;
  const matching = readMatching(cursor, from);
  if (matching !== null) return matching;
  const evenlyFirst = wordAt(cursor) === 'evenly';
  if (evenlyFirst) cursor.at += 1;
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  const stitch = n === null ? null : readStitchName(cursor);
  if (n !== null && stitch !== null && (evenlyFirst || wordAt(cursor) === 'evenly')) {
    takeAny(cursor, 'evenly');
    const along = readEdge(cursor);
    if (along !== null) return { kind: 'evenly', stitch, n, edge: along, span: spanSince(cursor, from) };
  }
  cursor.at = from + 1;
  const hand = takeAny(cursor, 'behind', 'around');
  if (hand !== null || takeWords(cursor, 'in', 'front', 'of') || takeAny(cursor, 'over') !== null) {
    // How the hand goes, not where: `working in front of dc just made`, `working over ch-2 sp`.
    while (!atBoundary(cursor) && wordAt(cursor, -1) !== 'made') cursor.at += 1;
    const note = { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) } as const;
    return hand === null ? note : { ...note, hand: hand === 'behind' ? 'behind' : 'around' };
  }
  if (takeAny(cursor, 'in', 'through') !== null) {
    const loop = readLoop(cursor);
    if (loop !== null) {
      takeAny(cursor, 'throughout');
      return { kind: 'loops', loop, span: spanSince(cursor, from) };
    }
    const free = readUnusedLoops(cursor, from);
    if (free !== null) return free;
  }
  cursor.at = from + 1;
  cursor.at = from;
  const last = readLastWorked(cursor);
  if (last !== null) return last;
  cursor.at = from + 1;
  if (takeWords(cursor, 'from', 'left', 'to', 'right')) {
    // The way a crab stitch goes in any case.
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  }
  takeAny(cursor, 'back');
  const edge = readEdge(cursor);
  if (edge !== null) return { kind: 'along', edge, span: spanSince(cursor, from) };
  const top = readTop(cursor);
  if (top !== null) return { kind: 'along', edge: 'last row', ...top, span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

/**
 * `working last dc in top of tch`, `with last dc in 3rd of 3 ch`, `last tr in top of 3 ch`; works nothing more: it says
 * what the last place is.
 */
export function readLastWorked(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  takeAny(cursor, 'working', 'with', 'placing');
  takeAny(cursor, 'the');
  const stitch = takeAny(cursor, 'last') === null ? null : readStitchName(cursor);
  if (stitch !== null && takeAny(cursor, 'being') !== null) takeAny(cursor, 'worked', 'made');
  if (stitch !== null) {
    const place = readPlace(cursor)?.place;
    // `ending with the last sl st in the joining st`.
    if (place?.kind === 'same' && place.asJoin && stitch.kind === 'stitch' && atBoundary(cursor))
      return {
        kind: 'note',
        text: textSince(cursor, from),
        endsOn: { join: stitch.id },
        span: spanSince(cursor, from),
      };
    if (place?.kind === 'of-chain' && place.space !== true)
      return {
        kind: 'note',
        text: textSince(cursor, from),
        endsOn: 'turning chain',
        span: spanSince(cursor, from),
      };
  }
  cursor.at = from;
  return null;
}

/** `the last slip stitch goes in the stitch where you joined`: said of what the row has come to, it works nothing more. */
export function readLastGoes(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  const worked = readLastWorked(cursor);
  if (worked !== null) return worked;
  const last = takeWords(cursor, 'the', 'last');
  const stitch = last ? readStitchName(cursor) : null;
  if (stitch !== null) takeOfEveryRow(cursor);
  const goes = takeAny(cursor, 'going') ?? takeAny(cursor, 'goes', 'is', 'will', 'should');
  if (goes !== 'goes' && goes !== 'going') takeAny(cursor, 'be', 'go');
  takeAny(cursor, 'worked', 'made');
  const placeAt = cursor.at;
  const chain = goes !== null && stitch !== null && readPlace(cursor)?.place.kind === 'of-chain';
  if (chain && atBoundary(cursor))
    return {
      kind: 'note',
      text: textSince(cursor, from),
      endsOn: 'turning chain',
      span: spanSince(cursor, from),
    };
  cursor.at = placeAt;
  if (goes !== null && stitch?.kind === 'stitch' && takeWhereJoined(cursor) && atBoundary(cursor))
    return {
      kind: 'note',
      text: textSince(cursor, from),
      endsOn: { join: stitch.id },
      span: spanSince(cursor, from),
    };
  cursor.at = from;
  return readMakesUp(cursor) ?? readRowsForm(cursor);
}

/** `of every row`, `of each row` behind "the last dc". */
function takeOfEveryRow(cursor: Cursor): void {
  const start = cursor.at;
  const each = takeAny(cursor, 'of', 'on', 'in') !== null && takeAny(cursor, 'every', 'each') !== null;
  if (!each || takeAny(cursor, 'row', 'rnd', 'round') === null) cursor.at = start;
}

/** `in the stitch where you joined`, `in same st as join`. */
function takeWhereJoined(cursor: Cursor): boolean {
  if (wordAt(cursor) === 'where') return takeWhereBegun(cursor);
  const place = readPlace(cursor)?.place;
  if (place?.kind === 'same') return place.asJoin;
  if (place?.kind !== 'next' || place.here !== true || place.what.kind !== 'st') return false;
  return takeWords(cursor, 'where', 'you', 'joined') || takeWords(cursor, 'of', 'the', 'join');
}

/** `where the round began`, `where you started`: the stitch that the yarn stands in. */
function takeWhereBegun(cursor: Cursor): boolean {
  cursor.at += 1;
  const the = takeAny(cursor, 'the', 'this') !== null;
  const who = the ? takeAny(cursor, 'round', 'rnd') : takeAny(cursor, 'you', 'it', 'we');
  return who !== null && takeAny(cursor, 'began', 'started', 'joined', 'begun') !== null;
}

/** `on the other side of the chain`, `along the other side of ch`: the way the next steps go. */
export function readFarEdge(cursor: Cursor): AlongStep | null {
  const from = cursor.at;
  takeOneOf(cursor, WAY_WORDS);
  takeAny(cursor, 'the');
  if (takeFarSide(cursor)) return { kind: 'along', edge: 'foundation', span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

/** `unused loops of Row 3`, `free lps of foundation ch`; null when neither stands here. */
export function readUnusedLoops(cursor: Cursor, from: number): AlongStep | null {
  const start = cursor.at;
  takeAny(cursor, 'the');
  const free = takeAny(cursor, 'unused', 'free', 'unworked') !== null;
  takeAny(cursor, 'front', 'back');
  if (free && takeAny(cursor, 'loops', 'lps', 'loop', 'lp') !== null) {
    const at = cursor.at;
    if (takeAny(cursor, 'on', 'along') !== null && readEdge(cursor) === 'foundation')
      return { kind: 'along', edge: 'foundation', span: spanSince(cursor, from) };
    cursor.at = at;
    if (takeAny(cursor, 'of') === null)
      return { kind: 'along', edge: 'unused loops', span: spanSince(cursor, from) };
    takeAny(cursor, 'the');
    const named = takeOneOf(cursor, FOUNDATION_NAMES);
    if (named !== null) {
      takeAny(cursor, 'ch', 'chain');
      if (named === 'ch' || named === 'chain')
        return { kind: 'along', edge: 'foundation', loops: true, span: spanSince(cursor, from) };
      return { kind: 'along', edge: 'foundation', span: spanSince(cursor, from) };
    }
    if (unitAt(cursor) !== null && peek(cursor, 1).kind === 'number') {
      const row = peek(cursor, 1).value;
      cursor.at += 2;
      return { kind: 'along', edge: 'unused loops', row, span: spanSince(cursor, from) };
    }
  }
  cursor.at = start;
  return null;
}

/** `along row ends`, `in row ends along side`, `along opposite side of foundation ch`. */
export function readEdge(cursor: Cursor): Edge | null {
  const from = cursor.at;
  if (takeAny(cursor, 'around', 'across') !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'row', 'round', 'rnd');
    if (atBoundary(cursor)) return 'all round';
  }
  cursor.at = from;
  takeOneOf(cursor, WAY_WORDS);
  takeAny(cursor, 'the', 'next', 'each');
  if (wordAt(cursor, 1) === 'row') takeOneOf(cursor, WHICH_EDGE);
  if (takeOpening(cursor)) return 'opening';
  const afterWay = cursor.at;
  if (takeAny(cursor, 'row', 'rows') !== null && takeAny(cursor, 'ends', 'end') !== null) {
    if (takeAny(cursor, 'along', 'of', 'across', 'on') !== null) {
      takeAny(cursor, 'the');
      takeOneOf(cursor, WHICH_SIDE);
      takeAny(cursor, 'side', 'edge');
    }
    return 'row ends';
  }
  const far = takeFarSide(cursor);
  if (far) return 'foundation';
  takeOneOf(cursor, WHICH_EDGE);
  if (takeWords(cursor, 'side', 'edge') || takeAny(cursor, 'side', 'sides') !== null) {
    // What a side ends at is said, not counted.
    if (!takeWords(cursor, 'to', 'next', 'corner')) takeWords(cursor, 'to', 'the', 'next', 'corner');
    return 'row ends';
  }
  cursor.at = afterWay;
  // What is worked first lies below.
  if (takeAny(cursor, 'bottom', 'lower') !== null && (takeAny(cursor, 'edge') !== null || atBoundary(cursor)))
    return 'foundation';
  cursor.at = afterWay;
  const named = takeOneOf(cursor, FOUNDATION_WORDS) !== null;
  if (named && takeAny(cursor, 'ch', 'chain', 'edge') !== null) return 'foundation';
  cursor.at = from;
  return null;
}

const FOUNDATION_NAMES = new WordSet([...FOUNDATION_WORDS, 'beg', 'ch', 'chain']);
const WAY_WORDS = new WordSet(['along', 'on', 'in', 'into', 'across', 'down', 'up', 'over', 'around']);
const WHICH_SIDE = new WordSet(['the', 'next', 'first', 'second', 'left', 'right', 'other']);
const WHICH_EDGE = new WordSet(
  'long longer short shorter left right second first other opposite last final remaining fourth third'.split(
    ' ',
  ),
);
