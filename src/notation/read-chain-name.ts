/** Chains named as a place: `beg ch-3`, `turning ch`, `tch`, `3-ch`, `first 3 ch`, `2 ch at beg of round`. */

import type { Cursor } from './cursor.ts';
import { peek, takeAny, takeOneOf, wordAt } from './cursor.ts';
import { takeTch } from './read-stop.ts';
import { WordSet } from './word-set.ts';

export interface ChainNamed {
  readonly chains: number | null;
  readonly where: 'beginning' | 'turning';
}

/** What makes a run of chains a space rather than a turning chain. */
const SPACE_AFTER_CHAIN = new WordSet('sp sps space lp loop corner arch arches point peak'.split(' '));

const WHICH_CHAIN = new WordSet(['beg', 'beginning', 'starting', 'turning', 'first']);

/** `beg ch-3`, `beginning ch`, `turning ch`, `tch`, `ch-3`. */
export function readChainName(cursor: Cursor): ChainNamed | null {
  const start = cursor.at;
  if (takeAny(cursor, 'tch') !== null || takeTch(cursor)) return { chains: null, where: 'turning' };
  const named = takeOneOf(cursor, WHICH_CHAIN);
  const where = named === 'turning' ? 'turning' : 'beginning';
  // `turning-ch`.
  if (named === 'turning' && peek(cursor).kind === 'dash' && peek(cursor, 1).glued) cursor.at += 1;
  if (takeAny(cursor, 'ch', 'chain', 'chs') !== null) {
    const length = chainLength(cursor);
    if (named !== null && named !== 'first') return { chains: length, where };
    // A bare `ch-3` is the turning chain only where no "sp" follows.
    if (length !== null && !isSpaceNext(cursor)) return { chains: length, where };
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
    (named !== null || !SPACE_AFTER_CHAIN.holds(peek(cursor, 3)))
  ) {
    const length = peek(cursor).value;
    if (SPACE_AFTER_CHAIN.holds(peek(cursor, 3)) && named === 'first') {
      cursor.at = start;
      return null;
    }
    cursor.at += 3;
    return { chains: length, where };
  }
  cursor.at = start;
  return null;
}

/** `sp`, `-sp` behind the chains. */
function isSpaceNext(cursor: Cursor): boolean {
  return SPACE_AFTER_CHAIN.holds(peek(cursor, peek(cursor).kind === 'dash' ? 1 : 0));
}

/** `sp` behind a chain that is named, `turning ch-2 sp`: the space beside it is meant. */
export function takeChainSpace(cursor: Cursor): boolean {
  if (!isSpaceNext(cursor)) return false;
  cursor.at += peek(cursor).kind === 'dash' ? 2 : 1;
  return true;
}

/** `(the turning chain)`, `(turning ch-2)` behind `last sp`: what it is; null when the brackets hold anything else. */
export function readChainInBrackets(cursor: Cursor): ChainNamed | null {
  const start = cursor.at;
  if (peek(cursor).kind !== 'open') return null;
  cursor.at += 1;
  takeAny(cursor, 'the', 'made');
  const chain = readChainName(cursor);
  if (chain?.where === 'turning') takeChainSpace(cursor);
  if (chain?.where === 'turning' && peek(cursor).kind === 'close') {
    cursor.at += 1;
    return chain;
  }
  cursor.at = start;
  return null;
}

/** `4 ch`, `3 missed ch`, `skipped chains`, `2 ch at beg of round` behind "3rd of", "top of": the chain at the start of the row below. */
export function readPlainChain(cursor: Cursor): ChainNamed | null {
  const start = cursor.at;
  const skipped = takeAny(cursor, 'skipped', 'missed') !== null;
  const n = peek(cursor).kind === 'number' ? peek(cursor).value : null;
  if (n !== null) cursor.at += 1;
  if (peek(cursor).kind === 'dash') cursor.at += 1;
  takeAny(cursor, 'skipped', 'missed');
  if ((n !== null || skipped) && takeAny(cursor, 'ch', 'chs', 'chain', 'chains') !== null) {
    takeAny(cursor, 'skipped', 'missed');
    takeAtBeginning(cursor);
    if (!SPACE_AFTER_CHAIN.holds(peek(cursor)) && peek(cursor).kind !== 'dash')
      return { chains: n, where: 'beginning' };
  }
  cursor.at = start;
  return null;
}

/** `at beg of round`. */
function takeAtBeginning(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'at') !== null) {
    takeAny(cursor, 'the');
    const said = takeAny(cursor, 'beg', 'beginning', 'start') !== null;
    takeAny(cursor, 'of');
    takeAny(cursor, 'the');
    takeAny(cursor, 'row', 'rnd', 'round');
    if (said) return;
  }
  cursor.at = start;
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
