/** The place a stitch goes into: `in next 3 sts`, `in each ch across`, `in top of beg ch-3`, `in ring`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, takeWords, wordAt } from './cursor.ts';
import { takeMagicRing } from './magic-ring-words.ts';
import type { Num } from './num.ts';
import { readChainInBrackets, readChainName, readPlainChain } from './read-chain-name.ts';
import { takeToEndOfSide } from './read-foundation.ts';
import { readBelow, readGap, readOfRow } from './read-gap.ts';
import { isLeftNext, readLeft, readRemaining, readThoseLeft } from './read-left.ts';
import { readLoop } from './read-loop.ts';
import { chainSpace, readNamedPlace, readOfSpecialSpace } from './read-named-place.ts';
import { readNumber, readOrdinal } from './read-number.ts';
import { readOneOf } from './read-of.ts';
import { PASSED_WORDS, readAnyPassed, readPassed, readPassedSeveral } from './read-passed.ts';
import { takeOfWhole } from './read-piece-sides.ts';
import { readEndOfRow, readRowEdge } from './read-row-edge.ts';
import { readAsJoin, readLastMade, readStemOfMade, takeLastMade } from './read-same.ts';
import { readStop } from './read-stop.ts';
import { ANY_STITCH, isAmount, readSpaceOf, readWhat, takeBelow } from './read-what.ts';
import type { Loop, Place, Stop, What } from './tree.ts';
import { WordSet } from './word-set.ts';

export interface PlaceRead {
  readonly place: Place;
  /** `in back loop only of next st`. */
  readonly loop: Loop | null;
}

const INTO_WORDS = new WordSet(['in', 'into', 'over', 'to', 'on', 'between', 'at', 'under']);

/** True when a word that leads to a place stands here. */
export function leadsToPlace(cursor: Cursor): boolean {
  return INTO_WORDS.holds(peek(cursor));
}

/** Reads `in …`; null with the cursor where it was when no place can be read after it. */
export function readPlace(cursor: Cursor): PlaceRead | null {
  const from = cursor.at;
  if (wordAt(cursor) !== 'between' && takeOneOf(cursor, INTO_WORDS) === null) return null;
  let loop = readLoop(cursor);
  if (loop !== null) {
    takeAny(cursor, 'of', 'in');
    if (atEndOfLoopOnly(cursor)) {
      // "in BLO across": each stitch, in that loop.
      const stop = readStop(cursor);
      if (stop !== null)
        return { place: { kind: 'each', what: ANY_STITCH, stop, span: spanSince(cursor, from) }, loop };
    }
  }
  const place = readPlaceWords(cursor, from);
  if (place === null) {
    cursor.at = from;
    return null;
  }
  loop ??= takeAny(cursor, 'through', 'in', 'tbl') === null ? null : (readLoop(cursor) ?? null);
  return { place, loop };
}

function atEndOfLoopOnly(cursor: Cursor): boolean {
  const word = wordAt(cursor);
  return word === 'across' || word === 'around';
}

const SPACE_BETWEEN = new WordSet(['sp', 'space', 'gap', 'between']);

/** What the words of a place begin with that is not simply the name of something. */
const LEADS = new WordSet(
  `each ea every end edge all sp space gap before between bet btw nxt following foll rem remaining base st joining joined same
   first last any magic adjustable mr ring circle center centre middle top skipped missed`.split(/\s+/),
);

const EDGE_LEADS = new WordSet(['top', 'last', 'corner', 'foot']);

/** The words after "in"; `from` is where the place began, for its span. */
export function readPlaceWords(cursor: Cursor, from: number): Place | null {
  if (takeAny(cursor, 'the', 'a', 'its') === null && wordAt(cursor, 1) === 'same')
    takeAny(cursor, 'that', 'this');
  const start = cursor.at;
  const token = peek(cursor);
  const { word } = token;
  if (word === 'next') return readGap(cursor, from) ?? readBehindNext(cursor, from);
  const left = word === '' ? readThoseLeft(cursor, from) : null;
  if (left !== null) return left;
  // `in ch-2 sp`, `in 2nd ch from hook`: none of the words below.
  const edge = EDGE_LEADS.holds(token) ? readRowEdge(cursor, from) : null;
  if (edge !== null) return edge;
  if (!LEADS.holds(token)) return readNamedPlace(cursor, from, start);
  if (takeAny(cursor, 'each', 'ea', 'every') !== null) {
    takeAny(cursor, 'of');
    takeAny(cursor, 'the');
    if (takeAny(cursor, 'next', 'nxt') !== null) return readNext(cursor, from, true);
    const rest = readRemaining(cursor, from);
    if (rest !== null) return rest;
    const passed = readPassedSeveral(cursor, from);
    if (passed !== null) return passed;
    // `in each of 10 sc`, `in each of the 2 ch`: so many from here on.
    const ofThem = wordAt(cursor, wordAt(cursor, -1) === 'the' ? -2 : -1) === 'of';
    if (ofThem && peek(cursor).kind === 'number' && peek(cursor, 1).kind !== 'dash')
      return readNext(cursor, from, true);
    if (wordAt(cursor) === 'first' || wordAt(cursor) === 'last') return readPlaceWords(cursor, from);
    const gaps = SPACE_BETWEEN.holds(peek(cursor)) ? readGap(cursor, from, true) : null;
    if (gaps !== null) return gaps;
    const every = readEvery(cursor);
    takeAny(cursor, 'remaining', 'rem');
    // `sc in 2nd ch from hook and each across`.
    const what = readWhat(cursor) ?? (ENDS.holds(peek(cursor)) ? ANY_STITCH : null);
    if (what === null) return backTo(cursor, start);
    const within = what.kind === 'space' ? readSpaceOf(cursor) : null;
    if (what.kind === 'space' && within !== null) {
      const stop = readStop(cursor) ?? { kind: 'end', word: 'across', span: spanSince(cursor, from) };
      return { kind: 'each', what: { ...what, of: within.of }, stop, span: spanSince(cursor, from) };
    }
    const union = readUnion(cursor, what);
    if (union !== null)
      return { kind: 'each', what: union.what, stop: union.stop, span: spanSince(cursor, from) };
    if (every !== null) {
      const stop = readStop(cursor) ?? { kind: 'end', word: 'across', span: spanSince(cursor, from) };
      return { kind: 'each', what, stop, every, span: spanSince(cursor, from) };
    }
    if (what.kind === 'row-end' && takeAny(cursor, 'along', 'down', 'up') !== null) {
      takeAny(cursor, 'the');
      takeOneOf(cursor, WHICH_SIDE);
      takeAny(cursor, 'side', 'edge');
    }
    if (what.kind === 'row-end') takeToEndOfSide(cursor);
    const stop = readStop(cursor) ?? allOf(what, spanSince(cursor, from));
    return { kind: 'each', what, stop, span: spanSince(cursor, from) };
  }
  const rowEnd = word === 'end' || word === 'edge' ? readEndOfRow(cursor, from) : null;
  if (rowEnd !== null) return rowEnd;
  if (wordAt(cursor) === 'all') return readAll(cursor, from) ?? backTo(cursor, start);
  const gap = readGap(cursor, from);
  if (gap !== null) return gap;
  const ofSpecialSpace = cursor.lexicon.specials === null ? null : readOfSpecialSpace(cursor, from);
  if (ofSpecialSpace !== null) return ofSpecialSpace;
  if (takeAny(cursor, 'nxt', 'following', 'foll') !== null) return readNext(cursor, from, false);
  const rest = readRemaining(cursor, from);
  if (rest !== null) return rest;
  if (takeAny(cursor, 'base') !== null || takeStitchAtBase(cursor)) {
    // `at base of ch`, `in same st at base of 3 ch`: where the turning chain stands; `base of each foundation ch`: itself.
    if (takeAny(cursor, 'of') === null) return backTo(cursor, start);
    takeAny(cursor, 'the');
    if (wordAt(cursor) === 'each') return readPlaceWords(cursor, from);
    const chain =
      readChainName(cursor) !== null ||
      readPlainChain(cursor) !== null ||
      takeAny(cursor, 'ch', 'chain') !== null;
    return chain
      ? { kind: 'same', what: ANY_STITCH, asJoin: true, span: spanSince(cursor, from) }
      : backTo(cursor, start);
  }
  if (takeAny(cursor, 'joining', 'joined') !== null) {
    const what = readWhat(cursor);
    return what === null
      ? backTo(cursor, start)
      : { kind: 'same', what, asJoin: true, span: spanSince(cursor, from) };
  }
  if (takeAny(cursor, 'same') !== null) {
    const what = readWhat(cursor) ?? (takeAny(cursor, 'place') === null ? null : ANY_STITCH);
    if (what === null) return backTo(cursor, start);
    const asJoin = readAsJoin(cursor);
    if (!asJoin) takeLastMade(cursor);
    return { kind: 'same', what, asJoin, span: spanSince(cursor, from) };
  }
  // `first dc of any 5-dc group` as much as `first of 5 dc`.
  const ofOne = wordAt(cursor, 2) === 'of' && wordAt(cursor, 3) === 'any' ? 2 : 1;
  if (wordAt(cursor) === 'first' && wordAt(cursor, ofOne) === 'of') return readOneOf(cursor, from, start);
  const justMade = wordAt(cursor) === 'last' ? readLastMade(cursor, from) : readStemOfMade(cursor, from);
  if (justMade !== null) return justMade;
  const end = takeAny(cursor, 'first', 'last');
  if (end !== null) {
    const n = isAmount(cursor) ? readNumber(cursor) : null;
    const passed = n === null && takeAny(cursor, 'skipped', 'missed') !== null;
    if (passed) takeWaiting(cursor);
    const what = readWhat(cursor) ?? (passed ? null : readLastAlone(cursor, n));
    if (what === null) return backTo(cursor, start);
    // The first of the stitches just skipped.
    if (passed) {
      if (end !== 'first') return backTo(cursor, start);
      const row = readOfRow(cursor);
      const stands = row === null ? {} : { ofRow: row.number };
      return { kind: 'passed', what, nth: 1, ...stands, span: spanSince(cursor, from) };
    }
    const chain = end === 'last' && what.kind === 'space' ? readChainInBrackets(cursor) : null;
    if (chain !== null) return chainSpace(chain, spanSince(cursor, from));
    // `first 3 ch of first loop`: the next ones there are.
    if (end === 'first' && what.kind === 'ch' && takeOfSpace(cursor))
      return { kind: 'next', n, what, each: false, span: spanSince(cursor, from) };
    if (what.kind === 'row-end') takeOfSide(cursor);
    takeBelow(cursor);
    const ofRow = end === 'first' && wordAt(cursor, 3) !== 'foundation' ? readOfRow(cursor) : null;
    const span = spanSince(cursor, from);
    if (ofRow !== null) return { kind: 'first', n, what, ofRow, span };
    return { kind: end === 'first' ? 'first' : 'last', n, what, span };
  }
  if (takeAny(cursor, 'any') !== null) {
    takeAny(cursor, 'outer', 'outside');
    const left = wordAt(cursor) === 'of' ? readAnyPassed(cursor, from) : null;
    if (left !== null) return left;
    // `any edge`: the round begins somewhere along it.
    const what = readWhat(cursor) ?? (takeAny(cursor, 'edge', 'side') === null ? null : ANY_STITCH);
    if (what === null) return backTo(cursor, start);
    // `any dc of Round 7`: there it makes no odds which, so it is the first.
    const ofRow = what.kind === 'stitch' ? readOfRow(cursor) : null;
    if (ofRow === null) takeOfWhole(cursor);
    const span = spanSince(cursor, from);
    if (ofRow !== null) return { kind: 'next', n: null, what, each: false, here: true, ofRow, span };
    return { kind: 'any', what, span };
  }
  if (takeMagicRing(cursor)) return { kind: 'ring', magic: true, span: spanSince(cursor, from) };
  if (takeAny(cursor, 'ring', 'circle', 'center', 'centre') !== null) {
    if (!wordAt(cursor, -1).startsWith('cent') || takeWords(cursor, 'of', 'ring'))
      return { kind: 'ring', magic: false, span: spanSince(cursor, from) };
    cursor.at = start;
  }
  if (takeWords(cursor, 'top', 'right', 'corner') || takeWords(cursor, 'top', 'right-hand', 'corner')) {
    // Seen from the side that faces, the top begins at the right.
    const what = readWhat(cursor) ?? ANY_STITCH;
    return { kind: 'first', n: null, what, span: spanSince(cursor, from) };
  }
  if (takeAny(cursor, 'top') !== null) {
    takeAny(cursor, 'of');
    takeAny(cursor, 'the');
    const chain = readChainName(cursor) ?? readPlainChain(cursor);
    if (chain !== null) return { kind: 'of-chain', nth: null, ...chain, span: spanSince(cursor, from) };
    const made = readLastMade(cursor, from);
    if (made !== null) return made;
    takeAny(cursor, 'first');
    // "top of beg cl": the round's first stitch, named.
    const what = readWhat(cursor);
    return what === null
      ? backTo(cursor, start)
      : { kind: 'first', n: null, what, span: spanSince(cursor, from) };
  }
  const skipped = takeOneOf(cursor, PASSED_WORDS) === null ? null : readPassed(cursor, from);
  if (skipped !== null) return skipped;
  return readNamedPlace(cursor, from, start);
}

/** `2 sc in last (14)`, `in the last one`, `in last 10 (12)`: stitches, or a chain; null where more is said. */
function readLastAlone(cursor: Cursor, n: Num | null): What | null {
  const alone = n !== null || wordAt(cursor, -1) === 'last';
  return alone && (atBoundary(cursor) || peek(cursor).kind === 'open') ? ANY_STITCH : null;
}

/** `of first loop`, `of next ch-3 sp` behind chains; the cursor stays where neither stands. */
function takeOfSpace(cursor: Cursor): boolean {
  const start = cursor.at;
  const of = takeAny(cursor, 'of', 'in') !== null;
  takeAny(cursor, 'the');
  if (of && takeAny(cursor, 'first', 'next') !== null && readWhat(cursor)?.kind === 'space') return true;
  cursor.at = start;
  return false;
}

function readBehindNext(cursor: Cursor, from: number): Place | null {
  cursor.at += 1;
  return readNext(cursor, from, false);
}

/** `st at the base`, `same st at base`; the cursor stays where the base is not named. */
function takeStitchAtBase(cursor: Cursor): boolean {
  const start = cursor.at;
  takeAny(cursor, 'same', 'first');
  if (takeAny(cursor, 'st', 'stitch') !== null && takeAny(cursor, 'at') !== null) {
    takeAny(cursor, 'the');
    if (takeAny(cursor, 'base') !== null) return true;
  }
  cursor.at = start;
  return false;
}

/** `of one long side`, `on the left edge` behind a row's end: the side that is come to. */
function takeOfSide(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'of', 'on', 'at', 'along') === null) return;
  takeAny(cursor, 'the', 'one', 'a', 'either');
  takeAny(cursor, 'long', 'short', 'left', 'right');
  if (takeAny(cursor, 'side', 'edge') === null || !atBoundary(cursor)) cursor.at = start;
}

const WHICH_SIDE = new WordSet('other first second next long short straight left right one'.split(' '));
const ENDS = new WordSet(['across', 'around']);

/** How far "each" goes where it is not said: to the end, or along one side. */
function allOf(what: What, span: Place['span']): Stop {
  if (what.kind === 'space' && what.side === true)
    return { kind: 'before', what: { kind: 'space', chains: null, corner: true }, span };
  return { kind: 'end', word: 'across', span };
}

/** `all 6 sts`, `all sts around`. */
function readAll(cursor: Cursor, from: number): Place | null {
  takeAny(cursor, 'all');
  takeAny(cursor, 'of');
  takeAny(cursor, 'the');
  const n = isAmount(cursor) ? readNumber(cursor) : null;
  const what = readWhat(cursor);
  if (what === null) return null;
  const span = spanSince(cursor, from);
  if (n !== null) return { kind: 'next', n, what, each: true, span };
  const stop = readStop(cursor) ?? allOf(what, span);
  return { kind: 'each', what, stop, span: spanSince(cursor, from) };
}

/** `each dc and ch-1 sp across`, `each tr and in each 1-ch sp around`: whichever comes next; null for one sort only. */
function readUnion(cursor: Cursor, first: What): { readonly what: What; readonly stop: Stop } | null {
  if (wordAt(cursor) !== 'and') return null;
  const start = cursor.at;
  const all: What[] = [first];
  while (takeAny(cursor, 'and') !== null) {
    takeAny(cursor, 'in', 'into');
    takeAny(cursor, 'the');
    const each = takeAny(cursor, 'each', 'every') !== null;
    // `each of 2 ch`: the chains of a space, told by how many they are.
    const of = each && takeAny(cursor, 'of') !== null;
    if (of) takeAny(cursor, 'the');
    const chains = of ? peek(cursor).value : 0;
    if (chains > 0) cursor.at += 1;
    const more = readWhat(cursor);
    if (more === null) break;
    all.push(chains > 0 && more.kind === 'ch' ? { kind: 'ch', of: chains } : more);
  }
  const named = all.length > 1 && all.every(({ kind }) => UNITED.has(kind));
  const mixed = named || (all.length > 1 && all.some(({ kind }) => kind === 'space' || kind === 'ch'));
  const stop = mixed
    ? (readStop(cursor) ?? (named && atBoundary(cursor) ? toEnd(cursor, start) : null))
    : null;
  if (stop !== null) return { what: { kind: 'any-of', of: all }, stop };
  cursor.at = start;
  return null;
}

const UNITED: ReadonlySet<What['kind']> = new Set<What['kind']>(['stitch', 'special', 'space', 'ch']);

/** `instep` of `the 8 instep sts`: stitches that an earlier row left for it. */
function takeWaiting(cursor: Cursor): boolean {
  const next = wordAt(cursor, 1);
  return STITCH_WORDS.has(next) && takeOneOf(cursor, WAITING) !== null;
}

const STITCH_WORDS = new WordSet(['st', 'sts', 'stitch', 'stitches']);
const WAITING = new WordSet(
  'instep underarm heel neck gusset thumb armhole waiting held reserved resting'.split(' '),
);

function toEnd(cursor: Cursor, from: number): Stop {
  return { kind: 'end', word: 'across', span: spanSince(cursor, from) };
}

/** `next st`, `next 3 sts`, `next 2-ch sp`, `next st 2 rows below`; `each` for "each of next 3 sts". */
function readNext(cursor: Cursor, from: number, each: boolean): Place | null {
  const start = cursor.at;
  // UK `2-ch sp` begins with a number that is no count.
  const n = isAmount(cursor) ? readNumber(cursor) : null;
  if (takeAny(cursor, 'skipped', 'missed') !== null) {
    const skipped = readWhat(cursor) ?? ANY_STITCH;
    const rows = readBelow(cursor);
    // `next 9 skipped sts` come one after another behind the first of them.
    return rows === null
      ? { kind: 'passed', what: skipped, ...(n === null ? {} : { n }), span: spanSince(cursor, from) }
      : { kind: 'below', n, ...rows, pick: 'skipped', what: skipped, span: spanSince(cursor, from) };
  }
  // `next free st` beside a neck.
  const left = takeAny(cursor, 'free', 'unworked') !== null || (n !== null && takeWaiting(cursor));
  // "sc in next": one stitch.
  const bare = n === null && atBoundary(cursor) && wordAt(cursor, -1) === 'next';
  const what = readWhat(cursor) ?? (n === null && !bare ? null : ANY_STITCH);
  if (what === null) return backTo(cursor, start);
  if (left || isLeftNext(cursor)) return readLeft(cursor, from, { n, what, each });
  if (atBoundary(cursor)) return { kind: 'next', n, what, each, span: spanSince(cursor, from) };
  const below = readBelow(cursor);
  if (below !== null)
    return { kind: 'below', n, ...below, pick: 'next', what, span: spanSince(cursor, from) };
  if (each && n === null) {
    const stop = readStop(cursor);
    if (stop !== null) return { kind: 'each', what, stop, span: spanSince(cursor, from) };
  }
  const ofRow = what.kind === 'stitch' || what.kind === 'st' || what.kind === 'ch' ? readOfRow(cursor) : null;
  const next = { kind: 'next', n, what, each, span: spanSince(cursor, from) } as const;
  return ofRow === null ? next : { ...next, ofRow };
}

function backTo(cursor: Cursor, at: number): null {
  cursor.at = at;
  return null;
}

/** `other`, `second`, `third`, `4th` after "every". */
function readEvery(cursor: Cursor): number | null {
  if (takeAny(cursor, 'other') !== null) return 2;
  const every = wordAt(cursor, -1) === 'every' ? readOrdinal(cursor) : null;
  return every === null || every < 2 ? null : every;
}
