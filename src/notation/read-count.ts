/**
 * Stated counts at the end of a row: `(37 sts)`, `(24 dc, 4 ch-2 sps)`, `[24]`, `— 24 sts`, `(37 (49, 61) sts)`,
 * `(4 groups of 3 dc)`, `You should have 24 stitches in total`.
 */

import type { Cursor } from './cursor.ts';
import { peek, spanSince, takeAny, takeOneOf, textSince, wordAt } from './cursor.ts';
import { lastOf } from './last-of.ts';
import { isThing, type StatedCount, type StatedEntry, type Thing } from './line.ts';
import type { Num } from './num.ts';
import { takeBrokenDown } from './read-broken-down.ts';
import { readCountedChain } from './read-chain.ts';
import { isNumber, isNumberOrSkip, readNumber } from './read-number.ts';
import { readSidesOf, takeBetween } from './read-piece-sides.ts';
import { readSizeList } from './read-size-list.ts';
import { leadsToRows, readNamedThing, readThing, skipNoun } from './read-thing.ts';
import {
  LEADS_TO_ROW,
  ROW_WORDS,
  TELLERS,
  takeAfterRow,
  takeEnding,
  takeFurtherRow,
  takeHalved,
  takeRowsBeside,
  takeTalk,
  takeTold,
} from './read-told-count.ts';
import { CHAIN_WORDS, readWhat } from './read-what.ts';
import { joinHalves, readWithin, takeChainsBeing } from './read-within.ts';
import { wasReported } from './reported-words.ts';
import type { TokenKind } from './token.ts';
import type { What } from './tree.ts';
import { WordSet } from './word-set.ts';

/**
 * Reads a stated count if one stands here and nothing but the end of the row follows, or what ends one (`(20 sc), turn`);
 * else null, cursor unmoved.
 * Once something is worked (`worked`) a number in a sentence of its own is one too: `… across. 24 sts`.
 */
export function readStatedCount(
  cursor: Cursor,
  worked: boolean,
  joined = false,
  toEnd = false,
): StatedCount | null {
  if (!mayBeCount(cursor, worked)) return null;
  const opened = peek(cursor).kind === 'open';
  const returned = opened ? wordsBack(cursor) : 0;
  const from = cursor.at;
  const after = opened ? null : takeAfterRow(cursor);
  const ofRow = after?.row ?? null;
  const told = !opened && (after?.whole === true || takeTold(cursor));
  if (ofRow !== null && !told) return back(cursor, from);
  const colon = !told && worked && peek(cursor).kind === 'colon';
  const dashed = peek(cursor).kind === 'dash';
  const equals = peek(cursor).text === '=';
  const marked = opened || colon || dashed || equals;
  const led = told || marked;
  const before = peek(cursor, -1).kind;
  // After the join of a round nothing is worked, so a number there counts.
  const closes = before === 'stop' || (joined && (before === 'semicolon' || before === 'comma'));
  if (!led && !(worked && closes)) return null;
  if (marked && !told) cursor.at += 1 + returned;
  // `turn -- 24 sc`.
  if (marked && peek(cursor).kind === 'dash' && peek(cursor, -1).kind === 'dash' && peek(cursor).glued)
    cursor.at += 1;
  const inner = cursor.at;
  const entries = readEntries(cursor, opened);
  if (entries === null) return back(cursor, from);
  // `Ch 21, (25, 29)`: several bare numbers are sizes gone astray, no count.
  if (entries.length > 1 && entries.every(({ what }) => what === null)) return back(cursor, from);
  const text = textSince(cursor, inner);
  if (told && !takeHalved(cursor, entries)) return back(cursor, from);
  skipCounting(cursor, opened ? IN_BRACKETS : COUNTING_ENDS);
  const own = { entries, text, ofRow: ofRow ?? 0, span: spanSince(cursor, from) };
  const further = ofRow !== null && takeFurtherRow(cursor) ? readStatedCount(cursor, worked) : null;
  if (further !== null) return { ...further, also: [own, ...(further.also ?? [])] };
  if (told) takeTalk(cursor);
  if (opened) {
    if (peek(cursor).kind === 'stop') cursor.at += 1;
    if (peek(cursor).kind !== 'close') return back(cursor, from);
    cursor.at += 1;
    const rows = takeRowsBeside(cursor);
    if (rows !== null) entries.push(rows);
  }
  // `– 40 sc –`.
  if (dashed && peek(cursor).kind === 'dash') cursor.at += 1;
  const span = spanSince(cursor, from);
  const [only, more] = entries;
  const ofRows = opened && only?.what?.kind === 'rows' && more === undefined && peek(cursor).kind !== 'end';
  // `You will have 36 groups along each side. [432 tr]`.
  const again = told && peek(cursor).kind === 'stop' && peek(cursor, 1).kind === 'open';
  if (again) cursor.at += 1;
  if (ofRows || again) {
    const count = readStatedCount(cursor, worked, joined, toEnd);
    if (count !== null)
      return {
        ...count,
        entries: [...entries, ...count.entries],
        text: `${text}, ${count.text}`,
        span: { start: span.start, end: count.span.end },
      };
  }
  const end = cursor.at;
  while (peek(cursor).kind === 'stop' || peek(cursor).kind === 'newline') cursor.at += 1;
  if (peek(cursor).kind !== 'end') {
    // `You have 12 stitches. The last slip stitch goes …`: a sentence of its own, whatever comes behind it.
    // `2 sc in each row end along side. 120 sc. Fasten off.`: of what was worked to its end nothing is left for more.
    const alone =
      peek(cursor, -1).kind === 'stop' &&
      (told || equals || (closes && (entries.some(isNoStep) || (toEnd && endsRow(cursor)))));
    if (!alone && (!led || !(worked && endsRow(cursor)))) return back(cursor, from);
    cursor.at = end;
  }
  return ofRow === null ? { entries, text, span } : { entries, text, ofRow, span };
}

/** Asked before each step of a row: what no count begins with is turned away first. */
export function mayBeCount(cursor: Cursor, worked: boolean): boolean {
  const token = peek(cursor);
  const { kind } = token;
  if (kind === 'word') return TELLERS.holds(token) || (worked && isNumber(cursor));
  if (kind === 'mark') return false;
  if (kind !== 'open') return true;
  const inner = 1 + wordsBack(cursor);
  return peek(cursor, inner).kind === 'dash' || isNumber(cursor, inner);
}

/** The words before the number of `(back to 15 sc)`. */
function wordsBack(cursor: Cursor): number {
  return wordAt(cursor, 1) === 'back' && wordAt(cursor, 2) === 'to' ? 2 : 0;
}

/** `ending with 35 blocks`, `until 1 block remains` behind rows that are repeated: what the last of them makes. */
export function readEndingCount(cursor: Cursor): StatedCount | null {
  const from = cursor.at;
  const goesOn = UNTIL.holds(peek(cursor));
  if (!takeEnding(cursor)) return back(cursor, from);
  const inner = cursor.at;
  const entries = isNumberOrSkip(cursor) ? readEntries(cursor, false) : null;
  takeAny(cursor, 'left', 'remain', 'remains');
  const { kind } = peek(cursor);
  if (entries === null || (kind !== 'stop' && kind !== 'end')) return back(cursor, from);
  const count = { entries, text: textSince(cursor, inner), span: spanSince(cursor, inner) };
  return goesOn ? { ...count, until: true } : count;
}

const UNTIL = new WordSet(['until', 'till', 'til']);

/** What cannot be an instruction by itself, as `6 sc` can. */
function isNoStep({ what }: StatedEntry): boolean {
  return what?.kind === 'st' || isThing(what);
}

/** `(20 tr, including 3-ch)`, `(20 dc, counting ch-3 as 1 dc)`: what is among them is said, not counted again. */
function skipCounting(cursor: Cursor, ends: ReadonlySet<TokenKind>): void {
  const from = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  if (takeAny(cursor, 'including', 'counting', 'incl') === null && !takeChainsBeing(cursor)) {
    cursor.at = from;
    return;
  }
  cursor.counting = readCountedChain(cursor);
  while (!ends.has(peek(cursor).kind)) cursor.at += 1;
}

const IN_BRACKETS = new Set<TokenKind>(['close', 'open', 'end']);
const COUNTING_ENDS = new Set<TokenKind>([...IN_BRACKETS, 'stop']);

/** After a count only what ends a row may follow: `(20 sc), turn`, `— 20 sc. Turn.` */
function endsRow(cursor: Cursor): boolean {
  const { kind } = peek(cursor);
  const ahead = kind === 'comma' || kind === 'semicolon' ? 1 : 0;
  const word = wordAt(cursor, ahead);
  if (word === 'do') return wordAt(cursor, ahead + 1) === 'not';
  if (word === 'fo') return true;
  if (word === 'cut') return wordAt(cursor, ahead + 1) === 'yarn' || wordAt(cursor, ahead + 2) === 'yarn';
  // `Work on these sts only.`
  if (word === 'work') return wordAt(cursor, ahead + 2) === 'these';
  if (word === 'fasten' || word === 'break') return wordAt(cursor, ahead + 1) === 'off';
  return word === 'turn' || word === 'join';
}

/** What may be said of what is counted. */
const SAID_OF_A_COUNT = new WordSet([
  'made',
  'total',
  'rem',
  'remain',
  'remaining',
  'worked',
  'altogether',
  'overall',
  'now',
]);

/** Signs that join one count to the next: `11 sc + 10 ch-1 sps`, `12 dc & 4 sps`. */
const JOINING_SIGNS = new Set(['+', '&']);

function readEntries(cursor: Cursor, opened: boolean): StatedEntry[] | null {
  const entries: StatedEntry[] = [];
  for (;;) {
    const from = cursor.at;
    const n = readCounted(cursor, opened);
    if (n === null) return null;
    // `4 x 2-ch sps`.
    if (wordAt(cursor) === 'x' || peek(cursor).text === '×') cursor.at += 1;
    const what = readCountedWhat(cursor, opened, entries);
    const shapes = entries.length === 0 && isThing(what) && what.kind === 'shape';
    const whole = shapes ? readOfSize(cursor, n) : null;
    if (whole !== null) return [{ n, what, span: spanSince(cursor, from) }, whole];
    const over = peek(cursor).kind === 'close';
    if (!over) takeSaid(cursor);
    const sides = over ? null : readSidesOf(cursor);
    const side = !over && sides === null && readPerSide(cursor);
    if (side) takeSaid(cursor);
    const ends = !over && sides === null && !side && readAtEnds(cursor);
    const span = spanSince(cursor, from);
    // `116 V-sts, 58 on each side of the center sp`: its half, said once more.
    const halved =
      (side && what === null && entries.length === 1 && isHalf(n, entries[0]?.n)) ||
      (what?.kind === 'named' && joinHalves(entries, what, ends ? twice(n) : n));
    if (halved) takeOfCentre(cursor);
    else if (sides !== null) entries.push({ n, what, sides, span });
    else entries.push(side ? { n, what, perSide: true, span } : { n: ends ? twice(n) : n, what, span });
    const { kind, text } = peek(cursor);
    if (kind !== 'close' && entries.length === 1 && !side && takeBrokenDown(cursor, n)) return entries;
    const joins = kind === 'other' && JOINING_SIGNS.has(text);
    if (joins) cursor.at += 1;
    const more =
      joins ||
      kind === 'comma' ||
      kind === 'semicolon' ||
      kind === 'colon' ||
      (kind === 'dash' && isNumber(cursor, 1)) ||
      (!LEADS_TO_ROW.holds(peek(cursor, 1)) && takeAny(cursor, 'and', 'plus') !== null);
    if (!more) return entries;
    // `20 tr, including 3-ch`, `20 sc, turn`: the comma ends the count.
    const next = wordAt(cursor, 1) === 'and' || wordAt(cursor, 1) === 'plus' ? 2 : 1;
    if (kind !== 'word' && !joins && !isNumberOrSkip(cursor, next) && !ONE.holds(peek(cursor, next)))
      return entries;
    if (!joins && kind !== 'word') cursor.at += 1;
    takeAny(cursor, 'and', 'plus');
  }
}

function isHalf(n: Num, whole: Num | undefined): boolean {
  return n.values.every((value, i) => value === null || 2 * value === whole?.values[i]);
}

/** `of the center sp`, `of the middle` behind "each side". */
function takeOfCentre(cursor: Cursor): void {
  const start = cursor.at;
  const of = takeAny(cursor, 'of') !== null;
  takeAny(cursor, 'the');
  if (!of || takeOneOf(cursor, MIDDLES) === null) cursor.at = start;
  else readWhat(cursor);
}

/** `of 11 stitches each)` behind all the petals of a round: so many stitches in all; the cursor stays where it is not so. */
function readOfSize(cursor: Cursor, n: Num): StatedEntry | null {
  const from = cursor.at;
  const size = takeAny(cursor, 'of') === null ? 0 : peek(cursor).value;
  if (size > 0) cursor.at += 1;
  const counted = size > 0 && takeAny(cursor, 'sts', 'stitches') !== null;
  takeAny(cursor, 'each');
  if (!counted || peek(cursor).kind !== 'close') {
    cursor.at = from;
    return null;
  }
  const values = n.values.map((value) => (value === null ? null : value * size));
  const span = spanSince(cursor, from);
  return { n: { values, span }, what: { kind: 'st' }, span };
}

/** A number or one for each size, which in a count of its own may stand without brackets: `(20/24/28 sc)`. */
function readCounted(cursor: Cursor, opened: boolean): Num | null {
  const list = opened || peek(cursor, 1).text === '/' ? readSizeList(cursor) : null;
  if (list !== null) return list;
  if (ONE.holds(peek(cursor))) {
    // `and the ch-2 sp at center`, `a half shell at each end`.
    const at = cursor.at;
    cursor.at += 1;
    return isNumber(cursor) ? readNumber(cursor) : { values: [1], span: spanSince(cursor, at) };
  }
  return isNumberOrSkip(cursor) ? readNumber(cursor) : null;
}

/** What is counted. A word that nothing here knows is left to the maker's eye where it stands beside others. */
function readCountedWhat(
  cursor: Cursor,
  opened: boolean,
  before: readonly StatedEntry[],
): What | Thing | null {
  // "1 center ch-2 sp": where it lies is said, not counted.
  if (takeAny(cursor, 'center', 'centre', 'middle') !== null && peek(cursor).kind === 'close') return null;
  takeOneOf(cursor, LOOKS);
  const what = readThing(cursor) ?? readWhat(cursor);
  if (what?.kind === 'space') {
    skipNoun(cursor);
    return takeOfChains(cursor, what);
  }
  const handle = what?.kind === 'ch' ? readChainsNamed(cursor) : null;
  if (handle !== null) return handle;
  if (what !== null || !opened) return what;
  const within = before.length > 0 && lastOf(before)?.what !== null ? readWithin(cursor) : null;
  if (within !== null) return within;
  if (wasReported(cursor)) {
    cursor.at += 1;
    return { kind: 'named', word: wordAt(cursor, -1) };
  }
  if (!before.some(isKnown) && !(before.length === 0 && leadsToRows(cursor))) return what;
  return readNamedThing(cursor);
}

/** How what is counted looks. */
const LOOKS = new WordSet('big little small large long short tiny whole lovely neat'.split(' '));

/** `40 handles` behind "chain": what so many chains are for; null with the cursor where it was. */
function readChainsNamed(cursor: Cursor): What | null {
  const { kind, value } = peek(cursor);
  if (kind !== 'number' || peek(cursor, 1).kind !== 'word') return null;
  const from = cursor.at;
  cursor.at += 1;
  skipNoun(cursor);
  if (cursor.at > from + 1) return { kind: 'space', chains: value, corner: false };
  cursor.at = from;
  return null;
}

/** `of 6 ch`, `of 6-ch` behind loops that are counted: how long they are. */
function takeOfChains(cursor: Cursor, what: Extract<What, { kind: 'space' }>): What {
  if (what.chains !== null || wordAt(cursor) !== 'of' || peek(cursor, 1).kind !== 'number') return what;
  const dashed = peek(cursor, 2).kind === 'dash' ? 1 : 0;
  if (!CHAIN_WORDS.holds(peek(cursor, 2 + dashed))) return what;
  const chains = peek(cursor, 1).value;
  cursor.at += 3 + dashed;
  return { ...what, chains };
}

function isKnown({ what }: StatedEntry): boolean {
  return what !== null && what.kind !== 'named';
}

/** `made`, `in total`, `at the end of this row`. */
function takeSaid(cursor: Cursor): void {
  const from = cursor.at;
  takeOneOf(cursor, SAID_OF_A_COUNT);
  // `(8 tiles each)` behind several rows.
  if (wordAt(cursor) === 'each' && peek(cursor, 1).kind === 'close') cursor.at += 1;
  if (takeAny(cursor, 'in', 'on', 'at', 'around') === null && takeAny(cursor, 'after') === null) return;
  if (takeAny(cursor, 'total', 'all') !== null) return;
  takeAny(cursor, 'the');
  takeAny(cursor, 'end', 'completion');
  takeAny(cursor, 'of');
  takeAny(cursor, 'the', 'this', 'your', 'each');
  if (peek(cursor).kind === 'ordinal') cursor.at += 1;
  if (takeOneOf(cursor, ROW_WORDS) === null) cursor.at = from;
  else if (isNumber(cursor)) cursor.at += 1;
}

/** `each side`, `on each side`, `along each side`. */
function readPerSide(cursor: Cursor): boolean {
  const from = cursor.at;
  takeAny(cursor, 'on', 'along', 'per');
  takeAny(cursor, 'each');
  if (takeAny(cursor, 'side', 'edge') !== null) {
    takeBetween(cursor);
    return true;
  }
  cursor.at = from;
  return false;
}

/** `each end`, `at each end`: so many at one end and as many at the other. Where on the row it is, is passed: `at the point`. */
function readAtEnds(cursor: Cursor): boolean {
  const from = cursor.at;
  const at = takeAny(cursor, 'at', 'on', 'in') !== null;
  if (takeAny(cursor, 'each', 'either') !== null && takeAny(cursor, 'end', 'ends') !== null) return true;
  if (at) takeAny(cursor, 'the');
  if (at && takeOneOf(cursor, MIDDLES) !== null) return false;
  cursor.at = from;
  return false;
}

const MIDDLES = new WordSet(['center', 'centre', 'middle', 'point', 'tip', 'spine']);
/** Words that stand for one. */
const ONE = new WordSet(['the', 'a', 'an']);

function twice(n: Num): Num {
  return { ...n, values: n.values.map((value) => (value === null ? null : 2 * value)) };
}

function back(cursor: Cursor, at: number): null {
  cursor.at = at;
  return null;
}
