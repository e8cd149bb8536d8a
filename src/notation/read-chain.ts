/** Chains and what they count as: `ch 3 (counts as dc)`, `ch a multiple of 6 plus 2`, `3 ch`. */

import type { Counts } from './chain-counts.ts';
import type { Cursor } from './cursor.ts';
import {
  atBoundary,
  nameHere,
  peek,
  spanSince,
  takeAny,
  takeOneOf,
  takeWords,
  textSince,
  wordAt,
} from './cursor.ts';
import type { Multiple, Num } from './num.ts';
import { isNumber, readNumber } from './read-number.ts';
import type { ChainStep, NoteStep } from './tree.ts';
import { WordSet } from './word-set.ts';

const CHAIN_WORDS = new WordSet(['ch', 'chs', 'chain', 'chains']);
const MULTIPLE_WORDS = new WordSet(['sts', 'st', 'ch', 'chs', 'chains', 'more']);
const ONE_WORDS = new WordSet(['a', 'an', 'one', 'first', 'the']);
const FIRST_WORDS = new WordSet(['skipped', 'missed', 'first', 'beg', 'beginning']);
const SUBJECT_WORDS = new WordSet([...FIRST_WORDS, 'the', 'these']);
const COUNTED_WORDS = new WordSet(['skipped', 'missed', ...CHAIN_WORDS]);

/** `ch 3`, `chain 3`, `ch a multiple of 6 plus 2`; null when the word is there but no number follows. */
export function readChain(cursor: Cursor): ChainStep | null {
  const from = cursor.at;
  takeOneOf(cursor, CHAIN_WORDS);
  if (peek(cursor).kind === 'dash' && peek(cursor, 1).kind === 'number') cursor.at += 1;
  const n = readMultiple(cursor) ?? readNumber(cursor);
  if (n === null) {
    cursor.at = from;
    return null;
  }
  return withCounts(cursor, from, n);
}

/** `Chain 3 counts as a double crochet throughout.` in a sentence of its own: a rule, and no chain to work; null for any other. */
export function readChainRule(cursor: Cursor): NoteStep | null {
  if (peek(cursor, -1).kind !== 'stop' || !RULE_VERBS.holds(peek(cursor, 2))) return null;
  const from = cursor.at;
  cursor.at += 2;
  const counts = readCounts(cursor);
  const { kind } = peek(cursor);
  if (counts?.throughout === true && (kind === 'stop' || kind === 'end'))
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

const RULE_VERBS = new WordSet(['counts', 'count', 'stands', 'does']);

/** `3 ch`: the number first. */
export function readNumberedChain(cursor: Cursor): ChainStep | null {
  const from = cursor.at;
  const n = readNumber(cursor);
  if (n === null || takeOneOf(cursor, CHAIN_WORDS) === null) {
    cursor.at = from;
    return null;
  }
  return withCounts(cursor, from, n);
}

function withCounts(cursor: Cursor, from: number, n: Num | Multiple): ChainStep {
  const span = spanSince(cursor, from);
  cursor.chained = 'of' in n ? null : n;
  // `4 ch. (for 1 tr. and 1 ch.)` of an old book.
  const stopped = peek(cursor).kind === 'stop' && peek(cursor, 1).kind === 'open';
  if (stopped && SAYS_FOR.holds(peek(cursor, 2))) cursor.at += 1;
  // `chain 3, that counts as a double crochet`.
  const behind =
    peek(cursor).kind === 'comma' && THAT.holds(peek(cursor, 1)) && RULE_VERBS.holds(peek(cursor, 2));
  if (behind) cursor.at += 2;
  const counts = readCounts(cursor) ?? readForLoop(cursor);
  if (behind && counts === null) cursor.at -= 2;
  return { kind: 'chain', n, counts, span: counts === null ? span : spanSince(cursor, from) };
}

const THAT = new WordSet(['that', 'which', 'this']);
const SAYS_FOR = new WordSet(['for', 'to', 'counts', 'count', 'counting', 'standing']);

/** `8 ch for the scallop`: a loop, which counts as no stitch. */
function readForLoop(cursor: Cursor): Counts | null {
  if (wordAt(cursor) !== 'for') return null;
  const from = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'the', 'a', 'next');
  if (takeOneOf(cursor, LOOPED) !== null && atBoundary(cursor))
    return { as: null, plusChains: 0, loop: true, throughout: false, span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

const LOOPED = new WordSet(['scallop', 'fan', 'loop', 'shell', 'point', 'arch']);

/** `a multiple of 6 sts plus 2`, `a multiple of 4`. */
function readMultiple(cursor: Cursor): Multiple | null {
  const from = cursor.at;
  takeAny(cursor, 'a', 'any');
  if (!takeWords(cursor, 'multiple', 'of')) {
    cursor.at = from;
    return null;
  }
  const of = readNumber(cursor)?.values[0] ?? null;
  if (of === null || of < 1) {
    cursor.at = from;
    return null;
  }
  takeOneOf(cursor, MULTIPLE_WORDS);
  let plus = 0;
  if (takeAny(cursor, 'plus', 'and') !== null || takePlusSign(cursor))
    plus = readNumber(cursor)?.values[0] ?? 0;
  takeOneOf(cursor, MULTIPLE_WORDS);
  return { of, plus, span: spanSince(cursor, from) };
}

function takePlusSign(cursor: Cursor): boolean {
  if (peek(cursor).text !== '+') return false;
  cursor.at += 1;
  return true;
}

/**
 * `(counts as dc)`, `(counts as first dc and ch 2)`, `(does not count as a st)`, `(skipped 3 ch count as dc)`,
 * with or without brackets; null when none stands here.
 */
export function readCounts(cursor: Cursor): Counts | null {
  const from = cursor.at;
  // Asked behind each chain, and nearly always a comma stands there.
  if (atBoundary(cursor)) return null;
  const opened = peek(cursor).kind === 'open';
  if (opened) cursor.at += 1;
  const inner = cursor.at;
  const subject = SUBJECT_WORDS.holds(peek(cursor));
  const counted = isNumber(cursor) && COUNTED_WORDS.holds(peek(cursor, 1));
  if (subject || counted) {
    takeAny(cursor, 'the', 'these');
    skipSubject(cursor);
  }
  const negative =
    takeWords(cursor, 'does', 'not') ||
    takeWords(cursor, 'do', 'not') ||
    takeWords(cursor, 'is', 'not') ||
    takeAny(cursor, 'not', "isn't", 'isn’t') !== null ||
    takeAny(cursor, "doesn't", 'doesn’t', "don't", 'don’t') !== null;
  // `(the 3 ch passed over stand for a dc)`, `(to stand for 1 tr)`, `(standing for 1 tr)`.
  if (!negative && wordAt(cursor, 1) === 'stand') takeAny(cursor, 'to');
  const stands =
    !negative &&
    (takeWords(cursor, 'stand', 'for') ||
      takeWords(cursor, 'stands', 'for') ||
      takeWords(cursor, 'standing', 'for') ||
      (opened && (takeShortly(cursor, cursor.at > inner) || takeThisIs(cursor))));
  // `(to count as 1 dc)`.
  if (!negative && wordAt(cursor, 1) === 'count') takeAny(cursor, 'to');
  if (!stands && takeAny(cursor, 'counts', 'count', 'counted', 'counting') === null) {
    if (!(negative && takeAny(cursor, 'a', 'an') !== null && takeAny(cursor, 'st', 'stitch') !== null)) {
      cursor.at = from;
      return null;
    }
  }
  // A number after "skipped" must have belonged to the chains: without "as" this was something else.
  let as: string | null = null;
  let plusChains = 0;
  if (stands || takeAny(cursor, 'as') !== null) {
    takeAny(cursor, 'your', 'our');
    if (takeOneOf(cursor, ONE_WORDS) === null) takeOrdinalFirst(cursor);
    const length = peek(cursor, 1).kind === 'dash';
    if (isNumber(cursor) && !length && nameHere(cursor) === null) readNumber(cursor);
    const found = nameHere(cursor);
    if (found !== null && found.named.kind === 'stitch' && found.named.id !== 'ch') {
      as = found.named.id;
      cursor.at += found.length;
    } else if (takeAny(cursor, 'st', 'stitch', 'sts') !== null) as = ANY_COUNT;
    // `(counts as ch-2 sp)`: it stands for no stitch, and there is a space.
    else if (!negative) plusChains = readSpaceCounted(cursor);
    plusChains += readFurther(cursor);
  }
  if (negative) as = null;
  let throughout = readThroughout(cursor);
  const onlyHere = !throughout && takeThisTime(cursor);
  if (opened) {
    if (peek(cursor).kind !== 'close') {
      cursor.at = from;
      return null;
    }
    cursor.at += 1;
    if (takeAny(cursor, 'throughout') !== null) throughout = true;
  } else if (inner === cursor.at) {
    cursor.at = from;
    return null;
  }
  const span = spanSince(cursor, from);
  return onlyHere ? { as, plusChains, throughout, onlyHere, span } : { as, plusChains, throughout, span };
}

/** `(this is your first treble, now and on every row)`. */
function takeThisIs(cursor: Cursor): boolean {
  if (takeAny(cursor, 'this', 'it', 'which', 'that') === null) return false;
  return takeAny(cursor, 'is', 'makes', 'becomes') !== null;
}

function takeOrdinalFirst(cursor: Cursor): void {
  if (peek(cursor).kind === 'ordinal' && peek(cursor).value === 1) cursor.at += 1;
}

/** `ch-2 sp`, `2-ch sp` after "counts as": how many chains, 0 where none stands here. */
function readSpaceCounted(cursor: Cursor): number {
  const from = cursor.at;
  const chained = takeOneOf(cursor, CHAIN_WORDS) !== null;
  if (peek(cursor).kind === 'dash') cursor.at += 1;
  const n = isNumber(cursor) ? (readNumber(cursor)?.values[0] ?? 0) : 0;
  if (peek(cursor).kind === 'dash') cursor.at += 1;
  const behind = !chained && takeOneOf(cursor, CHAIN_WORDS) !== null;
  takeSpaceWord(cursor);
  if (n > 0 && (chained || behind)) return n;
  cursor.at = from;
  return 0;
}

/** `sp`, `-sp` behind chains that are counted. */
function takeSpaceWord(cursor: Cursor): void {
  const dashed = peek(cursor).kind === 'dash' ? 1 : 0;
  if (SPACE_WORDS.holds(peek(cursor, dashed))) cursor.at += dashed + 1;
}

const SPACE_WORDS = new WordSet(['sp', 'sps', 'space', 'lp', 'loop']);

/** `the 3 missed ch as 1 tr`, `ch-3 as 1 dc`, `the first 3 chain` behind "counting"; null with the cursor where it was. */
export function readCountedChain(cursor: Cursor): Counts | null {
  const from = cursor.at;
  takeAny(cursor, 'the', 'your');
  skipSubject(cursor);
  if (peek(cursor).kind === 'dash') cursor.at += 1;
  takeOneOf(cursor, CHAIN_WORDS);
  // Counted among the stitches it is one of them, whichever they are. Which chain is meant has to be said: a row may have others.
  if (atBoundary(cursor) && namesFirstChain(cursor, from))
    return { as: ANY_COUNT, plusChains: 0, throughout: false, span: spanSince(cursor, from) };
  const found = takeAny(cursor, 'as') !== null && takeOne(cursor) ? nameHere(cursor) : null;
  if (found?.named.kind !== 'stitch' || found.named.id === 'ch') {
    cursor.at = from;
    return null;
  }
  cursor.at += found.length;
  return { as: found.named.id, plusChains: 0, throughout: true, span: spanSince(cursor, from) };
}

/** `first 3 chain`, `missed 3 ch`. */
function namesFirstChain({ tokens, at }: Cursor, from: number): boolean {
  const words = tokens.slice(from, at);
  const first = words.some(({ text }) => FIRST_WORDS.has(text));
  const chain = words.some(({ text }) => CHAIN_WORDS.has(text));
  return first && chain && words.some(({ kind }) => kind === 'number');
}

/** `a`, `1`, `one` before what something counts as, or nothing. */
function takeOne(cursor: Cursor): boolean {
  if (takeOneOf(cursor, ONE_WORDS) === null && peek(cursor).value === 1) cursor.at += 1;
  return true;
}

/** "counts as a st" without saying which: the row's own stitch of that height. */
export const ANY_COUNT = 'st';

function skipSubject(cursor: Cursor): void {
  takeOneOf(cursor, FIRST_WORDS);
  if (isNumber(cursor)) readNumber(cursor);
  takeAny(cursor, 'skipped', 'missed', 'sk');
  takeOneOf(cursor, CHAIN_WORDS);
  // `skipped ch-2`.
  if (peek(cursor).kind === 'dash' && isNumber(cursor, 1)) cursor.at += 1;
  if (isNumber(cursor)) readNumber(cursor);
  takeWords(cursor, 'passed', 'over');
}

/** `(skipped 3 ch = first dc)`, `4 ch (for 1 tr and 1 ch)`: what the chains stand for, in short. */
function takeShortly(cursor: Cursor, named: boolean): boolean {
  if (named ? peek(cursor).text !== '=' : wordAt(cursor) !== 'for') return false;
  cursor.at += 1;
  return true;
}

/** `and ch 2`, `, 2 ch and 2 skipped ch`: how many chains beyond the stitch make a space. */
function readFurther(cursor: Cursor): number {
  let chains = 0;
  for (;;) {
    const start = cursor.at;
    const joined = takeAny(cursor, 'plus', 'and') !== null || takePlusSign(cursor) || takeComma(cursor);
    takeAny(cursor, 'a', 'and', 'the');
    // `1 ch-1 sp`: one of them.
    if (joined && peek(cursor).value === 1 && namesLength(cursor)) cursor.at += 1;
    if (joined && takeAny(cursor, 'ch', 'chain') !== null) {
      if (peek(cursor).kind === 'dash') cursor.at += 1;
      chains += readNumber(cursor)?.values[0] ?? 0;
      takeSpaceWord(cursor);
      continue;
    }
    const n = joined && isNumber(cursor) ? (readNumber(cursor)?.values[0] ?? 0) : 0;
    const skipped = takeAny(cursor, 'skipped', 'missed') !== null;
    if (peek(cursor).kind === 'dash') cursor.at += 1;
    if (n > 0 && takeOneOf(cursor, CHAIN_WORDS) !== null) {
      takeSpaceWord(cursor);
      // Chains skipped at the foot of it stand for nothing.
      if (!skipped) chains += n;
      continue;
    }
    cursor.at = start;
    return chains;
  }
}

/** `ch-1` behind a number. */
function namesLength(cursor: Cursor): boolean {
  return wordAt(cursor, 1) === 'ch' && peek(cursor, 2).kind === 'dash' && peek(cursor, 3).kind === 'number';
}

function takeComma(cursor: Cursor): boolean {
  if (peek(cursor).kind !== 'comma') return false;
  cursor.at += 1;
  return true;
}

function readThroughout(cursor: Cursor): boolean {
  const from = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  takeAny(cursor, 'here');
  takeAny(cursor, 'now');
  takeAny(cursor, 'and');
  if (takeAlways(cursor)) return true;
  if (
    takeAny(cursor, 'throughout') !== null ||
    takeWords(cursor, 'all', 'through') ||
    takeWords(cursor, 'all', 'the', 'way', 'through')
  ) {
    // `throughout this cloth`.
    while (peek(cursor).kind === 'word') cursor.at += 1;
    return true;
  }
  if (takeAllRows(cursor)) return true;
  if (wordAt(cursor, -1) === 'here') return false;
  cursor.at = from;
  return false;
}

/** `this time`, `on this row only`: no rule for the rows behind it. */
function takeThisTime(cursor: Cursor): boolean {
  const word = wordAt(cursor);
  if (word !== 'this' && wordAt(cursor, 1) !== 'this') return false;
  const from = cursor.at;
  takeAny(cursor, 'on', 'in', 'for');
  if (takeAny(cursor, 'this') !== null) {
    if (takeAny(cursor, 'time') !== null || takeOneOf(cursor, ROW_WORDS) !== null) {
      takeAny(cursor, 'only');
      return true;
    }
  }
  cursor.at = from;
  return false;
}

/** `always`, `every time`, `from now on`, `from here on`. */
function takeAlways(cursor: Cursor): boolean {
  if (takeAny(cursor, 'always') !== null) return true;
  if (takeWords(cursor, 'every', 'time') || takeWords(cursor, 'each', 'time')) return true;
  if (takeWords(cursor, 'every', 'other', 'time')) return true;
  return takeWords(cursor, 'from', 'now', 'on') || takeWords(cursor, 'from', 'here', 'on');
}

/** `in all rounds`, `on every following row`. */
function takeAllRows(cursor: Cursor): boolean {
  const from = cursor.at;
  takeAny(cursor, 'in', 'on', 'for');
  if (takeAny(cursor, 'all', 'every', 'each') !== null) {
    takeAny(cursor, 'following', 'other', 'subsequent', 'future');
    if (takeOneOf(cursor, ROW_WORDS) !== null) return true;
  }
  cursor.at = from;
  return false;
}

const ROW_WORDS = new WordSet(['row', 'rows', 'rnd', 'rnds', 'round', 'rounds']);
