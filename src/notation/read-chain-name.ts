/** Chains named as a place: `beg ch-3`, `turning ch`, `tch`, `3-ch`, `first 3 ch`, `2 ch at beg of round`. */

import type { Cursor } from './cursor.ts';
import { peek, takeAny, takeOneOf, wordAt } from './cursor.ts';
import { takeTch } from './read-stop.ts';

/** What makes a run of chains a space rather than a turning chain. */
const SPACE_AFTER_CHAIN = new Set(['sp', 'sps', 'space', 'lp', 'loop', 'corner', 'arch', 'arches']);

const WHICH_CHAIN = new Set(['beg', 'beginning', 'starting', 'turning', 'first']);

/** `beg ch-3`, `beginning ch`, `turning ch`, `tch`, `ch-3`. */
export function readChainName(
  cursor: Cursor,
): { chains: number | null; where: 'beginning' | 'turning' } | null {
  const start = cursor.at;
  if (takeAny(cursor, 'tch') !== null || takeTch(cursor)) return { chains: null, where: 'turning' };
  const named = takeOneOf(cursor, WHICH_CHAIN);
  const where = named === 'turning' ? 'turning' : 'beginning';
  if (takeAny(cursor, 'ch', 'chain', 'chs') !== null) {
    const length = chainLength(cursor);
    if (named !== null && named !== 'first') return { chains: length, where };
    // A bare `ch-3` is the turning chain only where no "sp" follows.
    if (length !== null && !SPACE_AFTER_CHAIN.has(wordAt(cursor))) return { chains: length, where };
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
    (named !== null || !SPACE_AFTER_CHAIN.has(wordAt(cursor, 3)))
  ) {
    const length = peek(cursor).value;
    if (SPACE_AFTER_CHAIN.has(wordAt(cursor, 3)) && named === 'first') {
      cursor.at = start;
      return null;
    }
    cursor.at += 3;
    return { chains: length, where };
  }
  cursor.at = start;
  return null;
}

/** `2 ch at beg of round`: how many chains; null when that is not what stands here. */
export function readChainAtBeginning(cursor: Cursor): number | null {
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
