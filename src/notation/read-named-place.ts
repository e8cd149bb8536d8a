/** Places that are named outright. */

import type { Cursor } from './cursor.ts';
import { nameHere, peek, spanSince, takeAny, takeOneOf, wordAt } from './cursor.ts';
import { takeAtTip, takeBetweenShapes } from './read-between-shapes.ts';
import type { ChainNamed } from './read-chain-name.ts';
import { readChainName, readPlainChain, takeChainSpace } from './read-chain-name.ts';
import { readBelow } from './read-gap.ts';
import { readOneOf } from './read-of.ts';
import { readPassedSeveral } from './read-passed.ts';
import { readSpaceJustMade } from './read-same.ts';
import { readStop } from './read-stop.ts';
import { CHAIN_WORDS, readSpaceOf, readWhat } from './read-what.ts';
import type { Place, What } from './tree.ts';
import { WordSet } from './word-set.ts';

/** A place that its words name: `3rd dc of next shell`, `2nd ch from hook`, `ch-2 sp`, `skipped st`; null with the cursor at `start`. */
export function readNamedPlace(cursor: Cursor, from: number, start: number): Place | null {
  if (wordAt(cursor) === 'tip') return readTip(cursor, from);
  const ofSpecialSpace = cursor.lexicon.specials === null ? null : readOfSpecialSpace(cursor, from);
  if (ofSpecialSpace !== null) return ofSpecialSpace;
  const ofSpecial = readOneOf(cursor, from, start);
  if (ofSpecial !== null) return ofSpecial;
  // `under 5 ch`: the loop they make.
  const under =
    wordAt(cursor, -1) === 'under' || wordAt(cursor, -2) === 'under' ? readPlainChain(cursor) : null;
  if (under !== null && under.chains !== null) {
    const what: What = { kind: 'space', chains: under.chains, corner: false };
    return { kind: 'next', n: null, what, each: false, here: true, span: spanSince(cursor, from) };
  }
  const chain = readChainName(cursor);
  if (chain !== null && takeChainSpace(cursor)) return chainSpace(chain, spanSince(cursor, from));
  if (chain !== null) return { kind: 'of-chain', nth: null, ...chain, span: spanSince(cursor, from) };
  const alone = readAlone(cursor, from);
  if (alone !== null) return alone;
  const passed = readPassedSeveral(cursor, from);
  if (passed !== null) return passed;
  const what = readWhat(cursor);
  if (what === null) return backTo(cursor, start);
  const made = what.kind === 'space' || what.kind === 'stitch' ? readSpaceJustMade(cursor, from, what) : null;
  if (made !== null) return made;
  const loop = what.kind === 'space' && what.chains === null ? takeOfChains(cursor) : null;
  if (loop !== null && what.kind === 'space') {
    const of: What = { ...what, chains: loop };
    return { kind: 'next', n: null, what: of, each: false, here: true, span: spanSince(cursor, from) };
  }
  if (what.kind === 'ch' && wordAt(cursor) === 'at') takeAtTip(cursor);
  else if (what.kind === 'stitch' && wordAt(cursor) === 'between') takeBetweenShapes(cursor);
  const below = what.kind === 'stitch' && skipFollows(cursor) ? readBelow(cursor) : null;
  if (below !== null)
    return {
      kind: 'below',
      n: null,
      ...below,
      pick: 'next',
      what,
      uncovered: true,
      span: spanSince(cursor, from),
    };
  // "in corner sp", "in ch-2 sp": the next one there is.
  return { kind: 'next', n: null, what, each: false, here: true, span: spanSince(cursor, from) };
}

/** `of 8 ch` behind a loop: how long it is; null, the cursor where it was, where that is not said. */
function takeOfChains(cursor: Cursor): number | null {
  const { kind, value } = peek(cursor, 1);
  if (wordAt(cursor) !== 'of' || kind !== 'number' || !CHAIN_WORDS.holds(peek(cursor, 2))) return null;
  cursor.at += 3;
  return value;
}

/** `tip of point`, `tip of next leaf`: the chain at its end; null with the cursor where it was. */
function readTip(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  cursor.at += 1;
  const of = takeAny(cursor, 'of') !== null;
  // `tip of first cluster`: the first stitch of the round.
  if (of && wordAt(cursor) === 'first' && GATHERED.holds(peek(cursor, 1))) {
    cursor.at += 2;
    return { kind: 'first', n: null, what: { kind: 'st' }, span: spanSince(cursor, from) };
  }
  takeAny(cursor, 'the', 'each', 'next', 'same');
  if (!of || takeOneOf(cursor, POINTED) === null) return backTo(cursor, start);
  const span = spanSince(cursor, from);
  return { kind: 'next', n: null, what: { kind: 'ch' }, each: false, here: true, span };
}

const GATHERED = new WordSet(['cluster', 'cl', 'popcorn', 'bobble', 'puff', 'petal', 'st', 'stitch']);
const POINTED = new WordSet(['point', 'leaf', 'petal', 'ray', 'spike', 'chain', 'ch']);

/** `ch-2 sp of next shell`, `ch-3 sp of last block`. */
export function readOfSpecialSpace(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  const what = readChainsOf(cursor) ?? readWhat(cursor);
  const within = what?.kind === 'space' ? readSpaceOf(cursor) : null;
  if (what?.kind !== 'space' || within === null) return backTo(cursor, start);
  const { kind, chains, corner } = what;
  const inside: What =
    what.side === true
      ? { kind, chains, corner, side: true, of: within.of }
      : { kind, chains, corner, of: within.of };
  const span = spanSince(cursor, from);
  if (within.pick === 'first') return { kind: 'first', n: null, what: inside, span };
  if (within.pick === 'last') return { kind: 'last', n: null, what: inside, span };
  if (within.pick === 'same') return { kind: 'same', what: inside, asJoin: false, span };
  if (within.pick === 'each') {
    const stop = readStop(cursor) ?? { kind: 'end', word: 'across', span };
    return { kind: 'each', what: inside, stop, span: spanSince(cursor, from) };
  }
  if (within.n !== undefined) return { kind: 'next', n: within.n, what: inside, each: true, span };
  return { kind: 'next', n: null, what: inside, each: false, span };
}

/** `2 ch` of `the 2 ch of the shell`: the space they make; null, the cursor where it was, where it is not said of what. */
function readChainsOf(cursor: Cursor): What | null {
  if (peek(cursor).kind !== 'number' || !CHAIN_WORDS.holds(peek(cursor, 1)) || wordAt(cursor, 2) !== 'of')
    return null;
  const chains = peek(cursor).value;
  cursor.at += 2;
  return { kind: 'space', chains, corner: false };
}

/** `single tr` behind "on the": one that stands by itself; null where another word is meant, as in `single crochet`. */
function readAlone(cursor: Cursor, from: number): Place | null {
  if (wordAt(cursor) !== 'single' || nameHere(cursor) !== null) return null;
  const start = cursor.at;
  cursor.at += 1;
  const what = readWhat(cursor);
  if (what?.kind !== 'stitch') return backTo(cursor, start);
  return {
    kind: 'next',
    n: null,
    what: { ...what, alone: true },
    each: false,
    span: spanSince(cursor, from),
  };
}

/** Whether `2 rows below, sk next st` stands here. */
function skipFollows(cursor: Cursor): boolean {
  const start = cursor.at;
  const below = readBelow(cursor) !== null && peek(cursor).kind === 'comma';
  const follows = below && ['sk', 'skip', 'miss'].includes(wordAt(cursor, 1)) && wordAt(cursor, 2) === 'next';
  cursor.at = start;
  return follows;
}

export function chainSpace(chain: ChainNamed, span: Place['span']): Place {
  return { kind: 'of-chain', nth: null, ...chain, space: true, span };
}

function backTo(cursor: Cursor, at: number): null {
  cursor.at = at;
  return null;
}
