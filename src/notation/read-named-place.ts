/** Places that are named outright. */

import type { Cursor } from './cursor.ts';
import { peek, spanSince, wordAt } from './cursor.ts';
import type { ChainNamed } from './read-chain-name.ts';
import { readChainName, readPlainChain, takeChainSpace } from './read-chain-name.ts';
import { readBelow } from './read-gap.ts';
import { readOneOf } from './read-of.ts';
import { readPassedSeveral } from './read-passed.ts';
import { readSpaceJustMade } from './read-same.ts';
import { readStop } from './read-stop.ts';
import { readSpaceOf, readWhat } from './read-what.ts';
import type { Place, What } from './tree.ts';

/** A place that its words name: `3rd dc of next shell`, `2nd ch from hook`, `ch-2 sp`, `skipped st`; null with the cursor at `start`. */
export function readNamedPlace(cursor: Cursor, from: number, start: number): Place | null {
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
  const passed = readPassedSeveral(cursor, from);
  if (passed !== null) return passed;
  const what = readWhat(cursor);
  if (what === null) return backTo(cursor, start);
  const made = what.kind === 'space' || what.kind === 'stitch' ? readSpaceJustMade(cursor, from, what) : null;
  if (made !== null) return made;
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

/** `ch-2 sp of next shell`, `ch-3 sp of last block`. */
export function readOfSpecialSpace(cursor: Cursor, from: number): Place | null {
  const start = cursor.at;
  const what = readWhat(cursor);
  const within = what?.kind === 'space' ? readSpaceOf(cursor) : null;
  if (what?.kind !== 'space' || within === null) return backTo(cursor, start);
  const inside: What = { ...what, of: within.of };
  const span = spanSince(cursor, from);
  if (within.pick === 'first') return { kind: 'first', n: null, what: inside, span };
  if (within.pick === 'last') return { kind: 'last', n: null, what: inside, span };
  if (within.pick === 'same') return { kind: 'same', what: inside, asJoin: false, span };
  if (within.pick === 'each') {
    const stop = readStop(cursor) ?? { kind: 'end', word: 'across', span };
    return { kind: 'each', what: inside, stop, span: spanSince(cursor, from) };
  }
  return { kind: 'next', n: null, what: inside, each: false, span };
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
