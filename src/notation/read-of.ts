/** One of several named as a place: `2nd ch from hook`, `3rd ch of beg ch-5`, `center dc of next shell`, `3rd of 5 tr`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, wordAt } from './cursor.ts';
import { readChainName, readPlainChain } from './read-chain-name.ts';
import { middleAlone, readOfCorner } from './read-corner.ts';
import { isNumber, readOrdinal } from './read-number.ts';
import { readPassedSeveral } from './read-passed.ts';
import { isSpecialNext, readWhat } from './read-what.ts';
import type { Place, What } from './tree.ts';
import { WordSet } from './word-set.ts';

/** Reads one of several; `start` is where the cursor goes back to when none stands here. */
export function readOneOf(cursor: Cursor, from: number, start: number): Place | null {
  const place = read(cursor, from);
  if (place === null) cursor.at = start;
  return place;
}

function read(cursor: Cursor, from: number): Place | null {
  const center = takeAny(cursor, 'center', 'centre', 'middle') !== null;
  const at = cursor.at;
  const nth = center ? null : readOrdinal(cursor);
  if (!center && nth === null) return null;
  const numberSpan = spanSince(cursor, at);
  if (nth !== null && takeAny(cursor, 'skipped', 'missed') !== null) {
    const what = readWhat(cursor);
    return what === null ? null : { kind: 'passed', what, nth, span: spanSince(cursor, from) };
  }
  const justMade = nth === null ? null : readJustMade(cursor, nth, from);
  if (justMade !== null) return justMade;
  const what = readWhat(cursor);
  if (what?.kind === 'ch' && nth !== null && takeFromHook(cursor))
    return { kind: 'from-hook', nth: { values: [nth], span: numberSpan }, span: spanSince(cursor, from) };
  // `sl st in 3rd ch`: of the chain that the round began with.
  if (what?.kind === 'ch' && nth !== null && atBoundary(cursor))
    return { kind: 'of-chain', nth, chains: null, where: 'beginning', span: spanSince(cursor, from) };
  if (center && what?.kind === 'stitch' && atBoundary(cursor)) return middleAlone(cursor, what, from);
  if (takeAny(cursor, 'of', 'in', 'at') === null) return null;
  if (what === null || what.kind === 'st' || what.kind === 'stitch') {
    const ahead = cursor.at;
    const corner = readOfCorner(cursor, nth ?? 'center', what, from);
    if (corner !== null) return corner;
    cursor.at = ahead;
  }
  if (wordAt(cursor, -1) !== 'of') return null;
  takeAny(cursor, 'the');
  const behindOf = cursor.at;
  const passed = nth !== null && isNumber(cursor) ? readPassedSeveral(cursor, from) : null;
  // Chains missed at the hook are a turning chain.
  if (passed?.kind === 'passed' && passed.n !== undefined && passed.what.kind !== 'ch' && nth !== null)
    return { kind: 'passed', what: passed.what, nth, of: passed.n, span: passed.span };
  cursor.at = behindOf;
  // `3rd st of ch-5`: a stitch of a chain is one of its chains.
  const chained = what === null || what.kind === 'ch' || (what.kind === 'st' && namesChain(cursor));
  const chain =
    chained && nth !== null
      ? ((what === null && !namesChain(cursor) ? null : readChainName(cursor)) ?? readPlainChain(cursor))
      : null;
  if (chain !== null && nth !== null)
    return { kind: 'of-chain', nth, ...chain, span: spanSince(cursor, from) };
  const pick = takeAny(cursor, 'next', 'last', 'first', 'any');
  const group = pick === 'last' || pick === 'first' ? null : readGroup(cursor, nth ?? 'center', what, from);
  if (pick === 'any' && group?.kind === 'of-group') return { ...group, any: true };
  if (group !== null) return group;
  if (what === null) return null;
  if (pick === 'any') return readOfAnyShape(cursor, nth ?? 'center', what, from);
  const shape = pick === 'last' || pick === 'first' ? null : takeShape(cursor);
  if (shape !== null)
    return { kind: 'of-group', nth: nth ?? 'center', n: 0, shape, what, span: spanSince(cursor, from) };
  const whole: What | null = readWhat(cursor);
  if (whole?.kind === 'space' && what.kind === 'ch' && pick !== 'last')
    return { kind: 'of-space', nth: nth ?? 'center', chains: whole.chains, span: spanSince(cursor, from) };
  if (whole?.kind !== 'special' || pick === 'first') return null;
  const one = {
    kind: 'of-special',
    nth: nth ?? 'center',
    what,
    special: whole.name,
    span: spanSince(cursor, from),
  } as const;
  return pick === 'last' ? { ...one, last: true } : one;
}

/** `petal` of `center dc of any petal`: the round begins there. */
function readOfAnyShape(cursor: Cursor, nth: number | 'center', what: What, from: number): Place | null {
  const shape = takeShape(cursor);
  if (shape === null) return null;
  return { kind: 'of-group', nth, n: 0, shape, what, any: true, span: spanSince(cursor, from) };
}

/** `petal`, `scallop`, where the pattern describes no stitch of that name. */
function takeShape(cursor: Cursor): string | null {
  return isSpecialNext(cursor) ? null : takeOneOf(cursor, IN_ONE_PLACE);
}

const IN_ONE_PLACE = new WordSet(['petal', 'scallop', 'fan', 'shell', 'group', 'point', 'leaf']);

/** `from hook`, `from the hook`, `from your hook`. */
function takeFromHook(cursor: Cursor): boolean {
  const start = cursor.at;
  if (takeAny(cursor, 'from') !== null) {
    takeAny(cursor, 'the', 'your');
    if (takeAny(cursor, 'hook') !== null) return true;
  }
  cursor.at = start;
  return false;
}

/** `3rd of 3-ch`, `3rd of first 3 ch`: without "ch" before "of" it is a chain that must be named. */
function namesChain(cursor: Cursor): boolean {
  const start = cursor.at;
  const named = readChainName(cursor) !== null;
  cursor.at = start;
  return named;
}

/** `first of these ch`, `first of these 3 ch`, `1st ch of ch just made`: of the chain that was made right before. */
function readJustMade(cursor: Cursor, nth: number, from: number): Place | null {
  const start = cursor.at;
  takeAny(cursor, 'ch', 'chain');
  if (takeAny(cursor, 'of') !== null && takeAny(cursor, 'these', 'those') !== null) {
    if (isNumber(cursor)) cursor.at += 1;
    const made = cursor.chained;
    if (takeAny(cursor, 'ch', 'chs', 'chain', 'chains') !== null && made !== null) {
      const values = made.values.map((value) => (value === null ? null : value - nth + 1));
      if (values.every((value) => value === null || value >= 1))
        return {
          kind: 'from-hook',
          nth: { values, span: spanSince(cursor, from) },
          span: spanSince(cursor, from),
        };
    }
  }
  cursor.at = start;
  return null;
}

/** `5 tr` of `3rd of 5 tr`, `3rd tr of next 5 tr`, `5-tr group`, `group of 5` behind the stitch. */
function readGroup(cursor: Cursor, nth: number | 'center', of: What | null, from: number): Place | null {
  const start = cursor.at;
  const whole = of?.kind === 'stitch' && wordAt(cursor).startsWith('g') ? readWhat(cursor) : null;
  if (whole?.kind === 'group' && whole.size !== undefined && of !== null)
    return { kind: 'of-group', nth, n: whole.size, what: of, span: spanSince(cursor, from) };
  cursor.at = start;
  const n = peek(cursor).kind === 'number' ? peek(cursor).value : 0;
  if (n < 2 || isSpecialNext(cursor)) return null;
  cursor.at += 1;
  const dashed = peek(cursor).kind === 'dash';
  if (dashed) cursor.at += 1;
  const what = readWhat(cursor);
  if (dashed) {
    if (peek(cursor).kind === 'dash') cursor.at += 1;
    if (takeAny(cursor, 'group', 'grp', 'gr') === null) {
      cursor.at = start;
      return null;
    }
  }
  const same =
    of === null || of.kind === 'st' || (what?.kind === 'stitch' && of.kind === 'stitch' && of.id === what.id);
  if (what?.kind === 'stitch' && same && (nth === 'center' || nth <= n) && wordAt(cursor) !== 'below')
    return { kind: 'of-group', nth, n, what, span: spanSince(cursor, from) };
  cursor.at = start;
  return null;
}
