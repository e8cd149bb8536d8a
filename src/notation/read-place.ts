/** The place a stitch goes into: `in next 3 sts`, `in each ch across`, `in top of beg ch-3`, `in ring`. */

import type { Cursor } from './cursor.ts';
import { peek, spanSince, takeAny, takeWords, wordAt } from './cursor.ts';
import { isNumber, readNumber, readOrdinal } from './read-number.ts';
import { readStop } from './read-stop.ts';
import { ANY_STITCH, readSpaceOf, readWhat } from './read-what.ts';
import type { Loop, Place, Stop, What } from './tree.ts';

export interface PlaceRead {
  readonly place: Place;
  /** `in back loop only of next st`. */
  readonly loop: Loop | null;
}

const INTO_WORDS = ['in', 'into', 'over', 'to', 'on', 'between'];

/** True when a word that leads to a place stands here. */
export function leadsToPlace(cursor: Cursor): boolean {
  return INTO_WORDS.includes(wordAt(cursor));
}

/** Reads `in …`; null with the cursor where it was when no place can be read after it. */
export function readPlace(cursor: Cursor): PlaceRead | null {
  const from = cursor.at;
  if (wordAt(cursor) !== 'between' && takeAny(cursor, ...INTO_WORDS) === null) return null;
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

/** `BLO`, `back loop only`, `front lps`. */
export function readLoop(cursor: Cursor): Loop | null {
  const from = cursor.at;
  const short = takeAny(cursor, 'blo', 'flo', 'bl', 'fl');
  if (short !== null) return short.startsWith('b') ? 'back' : 'front';
  takeAny(cursor, 'the');
  const side = takeAny(cursor, 'back', 'front');
  if (side !== null && takeAny(cursor, 'loop', 'loops', 'lp', 'lps') !== null) {
    takeAny(cursor, 'only');
    return side === 'back' ? 'back' : 'front';
  }
  cursor.at = from;
  return null;
}

function atEndOfLoopOnly(cursor: Cursor): boolean {
  const word = wordAt(cursor);
  return word === 'across' || word === 'around';
}

/** The words after "in"; `from` is where the place began, for its span. */
export function readPlaceWords(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  takeAny(cursor, 'the', 'a');
  const span = (): ReturnType<typeof spanSince> => spanSince(cursor, from);
  if (takeAny(cursor, 'each', 'ea', 'every') !== null) {
    takeAny(cursor, 'of');
    takeAny(cursor, 'the');
    if (takeAny(cursor, 'next', 'nxt') !== null) return readNext(cursor, from, true);
    if (wordAt(cursor) === 'first' || wordAt(cursor) === 'last') return readPlaceWords(cursor, from);
    const other = takeAny(cursor, 'other', 'second', '2nd') !== null;
    takeAny(cursor, 'remaining', 'rem');
    const what = readWhat(cursor);
    if (what === null) return backTo(cursor, start);
    const within = what.kind === 'space' ? readSpaceOf(cursor) : null;
    if (what.kind === 'space' && within !== null) {
      const stop = readStop(cursor) ?? { kind: 'end', word: 'across', span: span() };
      return { kind: 'each', what: { ...what, of: within.of }, stop, span: span() };
    }
    const union = readUnion(cursor, what);
    if (union !== null) return { kind: 'each', what: union.what, stop: union.stop, span: span() };
    if (other) {
      const stop = readStop(cursor) ?? { kind: 'end', word: 'across', span: span() };
      return { kind: 'each', what, stop, every: 2, span: span() };
    }
    if (what.kind === 'row-end' && takeAny(cursor, 'along', 'down', 'up') !== null) {
      takeAny(cursor, 'the');
      takeAny(cursor, 'side', 'edge');
    }
    const stop = readStop(cursor);
    if (stop !== null) return { kind: 'each', what, stop, span: span() };
    return { kind: 'each', what, stop: { kind: 'end', word: 'across', span: span() }, span: span() };
  }
  const gap = readGap(cursor, from);
  if (gap !== null) return gap;
  const ofSpecialSpace = readOfSpecialSpace(cursor, from);
  if (ofSpecialSpace !== null) return ofSpecialSpace;
  if (takeAny(cursor, 'next', 'nxt', 'following', 'foll') !== null) return readNext(cursor, from, false);
  if (takeAny(cursor, 'joining', 'joined') !== null) {
    const what = readWhat(cursor);
    return what === null ? backTo(cursor, start) : { kind: 'same', what, asJoin: true, span: span() };
  }
  if (takeAny(cursor, 'same') !== null) {
    const what = readWhat(cursor) ?? (takeAny(cursor, 'place') === null ? null : ANY_STITCH);
    if (what === null) return backTo(cursor, start);
    const asJoin =
      takeWords(cursor, 'as', 'joining') ||
      takeWords(cursor, 'as', 'join') ||
      takeWords(cursor, 'as', 'sl', 'st');
    return { kind: 'same', what, asJoin, span: span() };
  }
  const end = takeAny(cursor, 'first', 'last');
  if (end !== null) {
    const n = isNumber(cursor) && peek(cursor, 1).kind !== 'dash' ? readNumber(cursor) : null;
    const what = readWhat(cursor);
    if (what === null) return backTo(cursor, start);
    return { kind: end === 'first' ? 'first' : 'last', n, what, span: span() };
  }
  if (takeAny(cursor, 'any') !== null) {
    const what = readWhat(cursor);
    return what === null ? backTo(cursor, start) : { kind: 'any', what, span: span() };
  }
  if (
    takeWords(cursor, 'magic', 'ring') ||
    takeWords(cursor, 'magic', 'circle') ||
    takeWords(cursor, 'adjustable', 'ring') ||
    takeAny(cursor, 'mr') !== null
  )
    return { kind: 'ring', magic: true, span: span() };
  if (takeAny(cursor, 'ring', 'circle', 'center', 'centre') !== null) {
    if (wordAt(cursor, -1).startsWith('cent') && !takeWords(cursor, 'of', 'ring')) {
      cursor.at = start;
      return readOfSpecial(cursor, from, start);
    }
    return { kind: 'ring', magic: false, span: span() };
  }
  if (takeWords(cursor, 'top', 'right', 'corner') || takeWords(cursor, 'top', 'right-hand', 'corner')) {
    // Seen from the side that faces, the top begins at the right.
    const what = readWhat(cursor) ?? ANY_STITCH;
    return { kind: 'first', n: null, what, span: span() };
  }
  if (takeAny(cursor, 'top') !== null) {
    takeAny(cursor, 'of');
    takeAny(cursor, 'the');
    const chain = readChainName(cursor);
    if (chain !== null) return { kind: 'of-chain', nth: null, ...chain, span: span() };
    const far = readChainAtBeginning(cursor);
    if (far !== null) return { kind: 'of-chain', nth: null, chains: far, where: 'beginning', span: span() };
    takeAny(cursor, 'first');
    // "top of beg cl": the round's first stitch, named.
    const what = readWhat(cursor);
    return what === null ? backTo(cursor, start) : { kind: 'first', n: null, what, span: span() };
  }
  if (takeAny(cursor, 'skipped') !== null) {
    const what = readWhat(cursor) ?? ANY_STITCH;
    const below = readBelow(cursor);
    return below === null
      ? { kind: 'passed', what, span: span() }
      : { kind: 'below', n: null, ...below, pick: 'skipped', what, span: span() };
  }
  const ofSpecial = readOfSpecial(cursor, from, start);
  if (ofSpecial !== null) return ofSpecial;
  const chain = readChainName(cursor);
  if (chain !== null) return { kind: 'of-chain', nth: null, ...chain, span: span() };
  const what = readWhat(cursor);
  if (what === null) return backTo(cursor, start);
  // "in corner sp", "in ch-2 sp": the next one there is.
  return { kind: 'next', n: null, what, each: false, here: true, span: span() };
}

/** `each dc and ch-1 sp across`, `each tr and in each 1-ch sp around`: whichever comes next; null for one sort only. */
function readUnion(cursor: Cursor, first: What): { readonly what: What; readonly stop: Stop } | null {
  const start = cursor.at;
  const all: What[] = [first];
  while (takeAny(cursor, 'and') !== null) {
    takeAny(cursor, 'in');
    takeAny(cursor, 'each');
    const more = readWhat(cursor);
    if (more === null) break;
    all.push(more);
  }
  const mixed = all.length > 1 && all.some(({ kind }) => kind === 'space' || kind === 'ch');
  const stop = mixed ? readStop(cursor) : null;
  if (stop !== null) return { what: { kind: 'any-of', of: all }, stop };
  cursor.at = start;
  return null;
}

/** `ch-2 sp of next shell`, `ch-3 sp of last block`. */
function readOfSpecialSpace(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  const what = readWhat(cursor);
  const within = what?.kind === 'space' ? readSpaceOf(cursor) : null;
  if (what?.kind !== 'space' || within === null) return backTo(cursor, start);
  const inside: What = { ...what, of: within.of };
  const span = spanSince(cursor, from);
  if (within.pick === 'last') return { kind: 'last', n: null, what: inside, span };
  if (within.pick === 'same') return { kind: 'same', what: inside, asJoin: false, span };
  if (within.pick === 'each') {
    const stop = readStop(cursor) ?? { kind: 'end', word: 'across', span };
    return { kind: 'each', what: inside, stop, span: spanSince(cursor, from) };
  }
  return { kind: 'next', n: null, what: inside, each: false, span };
}

/** `between next 2 sts`, `sp before next dc`, `sp between shells`; null when none stands here. */
function readGap(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  takeAny(cursor, 'next');
  takeAny(cursor, 'sp', 'space', 'gap');
  if (takeAny(cursor, 'before') !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'next');
    const what = readWhat(cursor);
    if (what !== null) return { kind: 'gap', what, apart: null, span: spanSince(cursor, from) };
  } else if (takeAny(cursor, 'between', 'bet', 'btw') !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'next');
    const at = cursor.at;
    const n = isNumber(cursor) && peek(cursor, 1).kind !== 'dash' ? readNumber(cursor) : null;
    const what = readWhat(cursor);
    const apart = n ?? { values: [2], span: spanSince(cursor, at) };
    if (what !== null) return { kind: 'gap', what, apart, span: spanSince(cursor, from) };
  }
  return backTo(cursor, start);
}

/** `next st`, `next 3 sts`, `next 2-ch sp`, `next st 2 rows below`; `each` for "each of next 3 sts". */
function readNext(cursor: Cursor, from: number, each: boolean): Place | null {
  const start = cursor.at;
  // UK `2-ch sp` begins with a number that is no count.
  const n = isNumber(cursor) && peek(cursor, 1).kind !== 'dash' ? readNumber(cursor) : null;
  if (takeAny(cursor, 'skipped') !== null) {
    const skipped = readWhat(cursor) ?? ANY_STITCH;
    const rows = readBelow(cursor);
    return rows === null
      ? backTo(cursor, start)
      : { kind: 'below', n, ...rows, pick: 'skipped', what: skipped, span: spanSince(cursor, from) };
  }
  const what = readWhat(cursor) ?? (n === null ? null : ANY_STITCH);
  if (what === null) return backTo(cursor, start);
  const below = readBelow(cursor);
  if (below !== null)
    return { kind: 'below', n, ...below, pick: 'next', what, span: spanSince(cursor, from) };
  if (each && n === null) {
    const stop = readStop(cursor);
    if (stop !== null) return { kind: 'each', what, stop, span: spanSince(cursor, from) };
  }
  return { kind: 'next', n, what, each, span: spanSince(cursor, from) };
}

/** `2nd ch from hook`, `3rd ch of beg ch-5`, `3rd dc of next shell`, `center dc of shell`. */
function readOfSpecial(cursor: Cursor, from: number, start: number): Place | null {
  const center = takeAny(cursor, 'center', 'centre', 'middle') !== null;
  const at = cursor.at;
  const nth = center ? null : readOrdinal(cursor);
  if (!center && nth === null) return null;
  const numberSpan = spanSince(cursor, at);
  const what = readWhat(cursor);
  if (what === null) return backTo(cursor, start);
  if (what.kind === 'ch' && nth !== null && takeWords(cursor, 'from', 'hook')) {
    return { kind: 'from-hook', nth: { values: [nth], span: numberSpan }, span: spanSince(cursor, from) };
  }
  if (takeAny(cursor, 'of') === null) return backTo(cursor, start);
  takeAny(cursor, 'the');
  const chain = what.kind === 'ch' && nth !== null ? readChainName(cursor) : null;
  if (chain !== null) return { kind: 'of-chain', nth, ...chain, span: spanSince(cursor, from) };
  takeAny(cursor, 'next');
  const whole: What | null = readWhat(cursor);
  if (whole === null || whole.kind !== 'special') return backTo(cursor, start);
  return {
    kind: 'of-special',
    nth: nth ?? 'center',
    what,
    special: whole.name,
    span: spanSince(cursor, from),
  };
}

/** What makes a run of chains a space rather than a turning chain. */
const SPACE_AFTER_CHAIN = ['sp', 'sps', 'space', 'lp', 'loop', 'corner', 'arch'];

/** `beg ch-3`, `beginning ch`, `turning ch`, `tch`, `ch-3`. */
function readChainName(cursor: Cursor): { chains: number | null; where: 'beginning' | 'turning' } | null {
  const start = cursor.at;
  if (takeAny(cursor, 'tch') !== null || takeWords(cursor, 't-ch')) return { chains: null, where: 'turning' };
  const named = takeAny(cursor, 'beg', 'beginning', 'starting', 'turning', 'first');
  const where = named === 'turning' ? 'turning' : 'beginning';
  if (takeAny(cursor, 'ch', 'chain', 'chs') !== null) {
    const length = chainLength(cursor);
    if (named !== null && named !== 'first') return { chains: length, where };
    // A bare `ch-3` is the turning chain only where no "sp" follows.
    if (length !== null && !SPACE_AFTER_CHAIN.includes(wordAt(cursor))) return { chains: length, where };
  } else if (
    peek(cursor).kind === 'number' &&
    peek(cursor, 1).kind !== 'dash' &&
    wordAt(cursor, 1) === 'ch' &&
    named !== null
  ) {
    const length = peek(cursor).value;
    cursor.at += 2;
    return { chains: length, where };
  } else if (
    peek(cursor).kind === 'number' &&
    peek(cursor, 1).kind === 'dash' &&
    wordAt(cursor, 2) === 'ch' &&
    (named !== null || !SPACE_AFTER_CHAIN.includes(wordAt(cursor, 3)))
  ) {
    const length = peek(cursor).value;
    cursor.at += 3;
    return { chains: length, where };
  }
  cursor.at = start;
  return null;
}

/** `2 ch at beg of round`: how many chains; null when that is not what stands here. */
function readChainAtBeginning(cursor: Cursor): number | null {
  const start = cursor.at;
  const n = peek(cursor).kind === 'number' ? peek(cursor).value : null;
  if (n !== null) cursor.at += 1;
  if (peek(cursor).kind === 'dash') cursor.at += 1;
  if (n !== null && takeAny(cursor, 'ch', 'chain') !== null) {
    if (takeAny(cursor, 'at') !== null) {
      takeAny(cursor, 'the');
      takeAny(cursor, 'beg', 'beginning', 'start');
      takeAny(cursor, 'of');
      takeAny(cursor, 'row', 'rnd', 'round');
    }
    return n;
  }
  cursor.at = start;
  return null;
}

function chainLength(cursor: Cursor): number | null {
  if (peek(cursor).kind === 'dash' && peek(cursor, 1).kind === 'number') {
    const { value } = peek(cursor, 1);
    cursor.at += 2;
    return value;
  }
  if (peek(cursor).kind === 'number') {
    const { value } = peek(cursor);
    cursor.at += 1;
    return value;
  }
  return null;
}

/** `2 rows below`, `1 rnd below`; null when none stands here. */
function readBelow(cursor: Cursor): { rows: number; unit: 'row' | 'round' } | null {
  const start = cursor.at;
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  const word = takeAny(cursor, 'row', 'rows', 'rnd', 'rnds', 'round', 'rounds');
  if (n !== null && word !== null && takeAny(cursor, 'below') !== null) {
    return {
      rows: n.values[0] ?? 1,
      unit: word.startsWith('ro') && !word.startsWith('rou') ? 'row' : 'round',
    };
  }
  cursor.at = start;
  return null;
}

function backTo(cursor: Cursor, at: number): null {
  cursor.at = at;
  return null;
}
