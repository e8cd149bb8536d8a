/** One step of a row: a stitch and its place, a chain, a skip, a group, a repeat, a join, a turn, a yarn change. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Cursor } from './cursor.ts';
import {
  atBoundary,
  forgetSince,
  nameHere,
  peek,
  spanAt,
  spanSince,
  take,
  takeAny,
  takeWords,
  textSince,
  wordAt,
} from './cursor.ts';
import { lastOf } from './last-of.ts';
import {
  readAllRound,
  readAllTheWay,
  readForTheLoop,
  readFromHereOn,
  readToldOfWork,
} from './read-all-round.ts';
import { readApposition } from './read-apposition.ts';
import { readAtEnd } from './read-at-end.ts';
import { readBeginning } from './read-begun-in.ts';
import { readSideAgain } from './read-border-side.ts';
import { readButLater } from './read-but.ts';
import { readButtonholes, readMaking } from './read-buttonholes.ts';
import { readChain, readChainRule } from './read-chain.ts';
import { readColourOrder } from './read-colour-order.ts';
import { readContinue, readDoRows, readKeepOn } from './read-continue.ts';
import { readEvenly, readFarEdge, readLastGoes, readLastWorked, readWorking } from './read-edge.ts';
import { readFinishOff } from './read-finish-off.ts';
import { readFringe } from './read-fringe.ts';
import { readPartOfRow, readStopThere, readWithHook } from './read-garment.ts';
import { readBetweenMarks, readOpened, readStar } from './read-group.ts';
import { readGrowing } from './read-growing.ts';
import { comparesHere, readGrowth, readGrowthHere } from './read-growth.ts';
import { readHeldBack } from './read-held-back.ts';
import { readJoin } from './read-join.ts';
import { readPassAlong, readPutting, readWhichIs } from './read-lace.ts';
import {
  MAKER_WORDS,
  readFacing,
  readFromSide,
  readHolding,
  readLeave,
  readMakerNote,
  readManner,
  readSentence,
  readTail,
  skipStep,
} from './read-note.ts';
import { isNumber } from './read-number.ts';
import { readOtherSide } from './read-other-side.ts';
import { readNamedRows, readPattern } from './read-pattern.ts';
import { takeAlongEdge } from './read-piece-sides.ts';
import { readPlace } from './read-place.ts';
import { readPutIn } from './read-put-in.ts';
import { readMakeSure, readRemark, readSoThat } from './read-remark.ts';
import { readMeasured, readMoreRows, readRepeatRows, readWorkEven } from './read-rows.ts';
import { readShape } from './read-shape.ts';
import { readShapedRows } from './read-shaped-rows.ts';
import { readSkip } from './read-skip.ts';
import { isOtherGround } from './read-square.ts';
import {
  readLeadingIn,
  readRing,
  readRingWith,
  readRoundOf,
  readStart,
  readTimesFirst,
} from './read-start.ts';
import { readStop } from './read-stop.ts';
import { isAlongTop, takeJoinedToItself } from './read-surface.ts';
import { readTurn } from './read-turn.ts';
import { readWorkStep } from './read-work.ts';
import { readChange, readFastenOff, readWithYarn, readYarnAhead, readYarnAlone } from './read-yarn.ts';
import { reportUnknownWord, reportUnread } from './report-unread.ts';
import { UNITS } from './row-unit.ts';
import type { Place, RepeatRowsStep, Step } from './tree.ts';
import { WordMap, WordSet } from './word-set.ts';

type Reader = (cursor: Cursor) => Step | readonly Step[] | null;

/** What a step that begins with a word is read by; a stitch's name is tried where no word here fits. */
const READERS = new WordMap<Reader>([
  ...entries(['ch', 'chs', 'chain'], (cursor) => readChainRule(cursor) ?? readChain(cursor)),
  ...entries(['sk', 'skip', 'miss'], readSkip),
  ...entries(['turn', "don't", 'don’t', 'dont'], readTurn),
  ...entries(['do'], (cursor) => readTurn(cursor) ?? readDoRows(cursor)),
  ...entries(['join', 'joining', 'rejoin', 'attach'], readJoin),
  ...entries(['in', 'into'], readLeadingIn),
  ...entries(['start', 'begin'], readStart),
  ...entries(['starting', 'beginning'], (cursor) => readBeginning(cursor) ?? readStart(cursor)),
  ...entries(['with', 'using'], readWith),
  ...entries(['change', 'changing', 'switch', 'drop', 'pick'], readChange),
  ...entries(['fasten', 'fo'], readFastenOff),
  ...entries(['break'], (cursor) => readFinishOff(cursor) ?? readFastenOff(cursor)),
  ...entries(['at'], readAtEnd),
  ...entries(['following'], readColourOrder),
  ...entries(['rep', 'repeat', 'as'], readRepeat),
  ...entries(['same'], readSameAs),
  ...entries(['work'], readWork),
  ...entries(['put'], (cursor) => (isNumber(cursor, 1) ? readWork(cursor) : null)),
  ...entries(['make'], (cursor) => readMakeSure(cursor) ?? readWork(cursor)),
  ...entries(['making'], readMaking),
  ...entries(
    ['working'],
    (cursor) =>
      readButtonholes(cursor) ?? readCorners(cursor) ?? readWorking(cursor) ?? readColourOrder(cursor),
  ),
  ...entries(['alternating'], readColourOrder),
  ...entries(['but'], readButLater),
  ...entries(['on', 'along'], readFarEdge),
  ...entries(
    ['the'],
    (cursor) => readLastGoes(cursor) ?? readPartOfRow(cursor) ?? readSameAs(cursor) ?? readApposition(cursor),
  ),
  ...entries(['last'], readLastWorked),
  ...entries(['so'], readSoThat),
  ...entries(MAKER_WORDS, readMakerNote),
  ...entries(
    ['if', 'there', 'optional', 'optionally'],
    (cursor) => readSentence(cursor) ?? readRemark(cursor),
  ),
  ...entries(['try', 'mine', 'here', 'count', 'yours', 'this', 'that', 'it', 'no', 'we'], readRemark),
  ...entries(['bend', 'push', 'hold', 'again', 'tip', 'tilt', 'flip', 'swing'], readHolding),
  ...entries(['keep'], (cursor) => readHolding(cursor) ?? readKeepOn(cursor) ?? readGrowing(cursor)),
  ...entries(['keeping'], (cursor) => readHeldBack(cursor) ?? readColourOrder(cursor) ?? readManner(cursor)),
  ...entries(['holding', 'retaining'], readHeldBack),
  ...entries(['putting'], (cursor) => readCorners(cursor) ?? readPutting(cursor) ?? readManner(cursor)),
  ...entries(['which'], (cursor) => readWhichIs(cursor) ?? readApposition(cursor)),
  ...entries(['pass', 'passing'], readPassAlong),
  ...entries(['insert', 'inserting', 'slip', 'slipping', 'tuck', 'tucking'], readPutIn),
  ...entries(['placing'], (cursor) => readCorners(cursor) ?? readLastWorked(cursor) ?? readMakerNote(cursor)),
  ...entries(['from'], (cursor) => readFromSide(cursor) ?? readFromHereOn(cursor)),
  ...entries(['all'], readAllTheWay),
  ...entries(['for'], readForTheLoop),
  ...entries(['rs', 'ws'], readFacing),
  ...entries(['ending', 'finishing'], readEnding),
  ...entries(['end'], (cursor) => readFinishOff(cursor) ?? readEnding(cursor)),
  ...entries(['finish'], readFinishOff),
  ...entries(['take'], readFringe),
  ...entries(['cut'], (cursor) => readFinishOff(cursor) ?? readMakerNote(cursor)),
  ...entries(['leave', 'leaving'], (cursor) => readHeldBack(cursor) ?? readLeave(cursor)),
  ...entries(['long'], readTail),
  ...entries(['each', 'every', 'you', "you'll", 'you’ll'], readGrowth),
  ...entries([...UNITS], readNamedRows),
  ...entries(['until', 'till', 'til'], readMeasured),
  ...entries(['magic', 'adjustable'], readRingWith),
  ...entries(['stop'], readStopThere),
  ...entries(['these'], readPattern),
  ...entries(['cont', 'continue'], readContinue),
  ...entries(['carry'], (cursor) => readGrowing(cursor) ?? readChange(cursor)),
  ...entries(['go'], readGrowing),
  ...entries(['decreasing', 'increasing', 'losing', 'gaining'], readShapedRows),
]);

/** Reads one step or a few that were written as one; null after reporting what could not be read. */
export function readStep(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  const token = peek(cursor);
  if (token.kind === 'mark') return readStar(cursor);
  if (token.kind === 'open') return readOpened(cursor);
  const grows = readGrowthHere(cursor);
  if (grows !== null) return [grows];
  // No word for shaping is shorter than "inc".
  const shape = token.text.length > 2 ? readShape(cursor) : null;
  if (shape !== null) return readTrailing(cursor, from, [shape]);
  const more = wordAt(cursor, 1) === 'more' || token.text === 'so' ? readMoreRows(cursor) : null;
  if (more !== null) return [more];
  const timed = token.kind === 'number' ? readTimesFirst(cursor) : null;
  if (timed !== null) return timed;
  const ahead = token.kind === 'word' ? readYarnAhead(cursor) : null;
  if (ahead !== null) return [ahead];
  const before = cursor.faults.length;
  // A special stitch of the pattern's own goes before any word of the house's: `block` may be one.
  const own = cursor.lexicon.specials !== null && nameHere(cursor)?.named.kind === 'special';
  const reader =
    token.kind === 'word' && !own ? READERS.of(token) : token.kind === 'ordinal' ? readNamedRows : undefined;
  const read = reader?.(cursor) ?? null;
  if (read !== null) return readTrailing(cursor, from, isSeveral(read) ? read : [read]);
  // A reader that has said what is wrong is not followed by a second complaint.
  if (cursor.faults.length > before) return skipStep(cursor);
  const worked = readWorkStep(cursor);
  if (worked !== null) return readTrailing(cursor, from, worked);
  const yarn = cursor.faults.length === before && token.kind === 'word' ? readYarnAlone(cursor) : null;
  if (yarn !== null) return [yarn];
  if (cursor.faults.length === before) {
    cursor.at = from;
    // Of "1 htrr in each st" the word behind the number is what is not known.
    const next = peek(cursor, 1);
    const known = READERS.of(next) !== undefined || AFTER_NUMBER.holds(next);
    if (token.kind === 'number' && next.kind === 'word' && !known) cursor.at += 1;
    if (reader === undefined || token.text === 'the') reportUnknownWord(cursor);
    else {
      // The word is known, what it is used for here is not.
      skipStep(cursor);
      reportUnread(cursor, from, EXPECTED.get(token.text) ?? null);
    }
  }
  return skipStep(cursor);
}

function isSeveral(read: Step | readonly Step[]): read is readonly Step[] {
  return Array.isArray(read);
}

/** Words that may stand behind a number with no stitch between. */
const AFTER_NUMBER = new WordSet(['times', 'time', 'more', 'x', 'st', 'sts', 'in', 'to']);

/** What should follow a word that is known. */
const EXPECTED: ReadonlyMap<string, string> = new Map([
  ['rep', '"from *" or the number of a row, such as "rep Row 2",'],
  ['repeat', '"from *" or the number of a row, such as "repeat Row 2",'],
  ['as', 'the number of a row, such as "as Row 2",'],
  ['cont', 'which rows form the pattern and how long, such as "rep Rows 2 and 3 until work measures 30 cm",'],
  [
    'continue',
    'which rows form the pattern and how long, such as "rep Rows 2 and 3 until work measures 30 cm",',
  ],
  ['until', '"Rows 2 on:" before a row that goes on until a measure,'],
  ['ch', 'a number, such as "ch 3",'],
  ['chain', 'a number, such as "chain 3",'],
  ['with', 'a yarn\'s letter, such as "with A",'],
  ['change', 'a yarn\'s letter, such as "change to B in last yo",'],
]);

/** After a step nothing may stand but a boundary, or a word that begins the next step. */
function readTrailing(cursor: Cursor, from: number, steps: readonly Step[]): readonly Step[] | null {
  if (atBoundary(cursor)) return steps;
  if (isAlongTop(cursor, steps)) {
    // Surface stitches along a row that is done change nothing that is worked into later.
    skipStep(cursor);
    takeJoinedToItself(cursor);
    return [{ kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) }];
  }
  takeAny(cursor, 'then');
  takeAlongEdge(cursor);
  if (
    atBoundary(cursor) ||
    peek(cursor).kind === 'open' ||
    peek(cursor).kind === 'mark' ||
    cursor.at === from
  )
    return steps;
  const word = wordAt(cursor);
  if (word === 'and' || word === 'rep' || word === 'repeat' || word === 'ending') return steps;
  if (word === 'or' && isOtherGround(cursor)) return steps;
  const { kind, text } = peek(cursor);
  if (kind === 'dash' || kind === 'colon' || text === '=') return steps;
  if (READERS.of(peek(cursor)) !== undefined || isNumber(cursor) || nameHere(cursor) !== null) return steps;
  const start = cursor.at;
  skipStep(cursor);
  const end = cursor.at;
  // One stray word is most likely a slip of the pen: the nearest word helps more than quoting it back.
  if (end === start + 1) {
    cursor.at = start;
    reportUnknownWord(cursor);
    cursor.at = end;
  } else reportUnread(cursor, start, null);
  return null;
}

/** `rep Row 2`, `rep Rows 2 and 3 to height`; a `rep from *` that has no asterisk before it. */
function readRepeat(cursor: Cursor): Step | readonly Step[] | null {
  const from = cursor.at;
  const word = take(cursor).text;
  if (word !== 'as') {
    const between = readBetweenMarks(cursor, from);
    if (between !== null) return between;
    if (wordAt(cursor) === 'from' && peek(cursor, 1).kind === 'mark') {
      cursor.at += 2;
      readStop(cursor);
      cursor.faults.push(
        diagnose('repeat/no-start', { file: cursor.context.file, span: spanSince(cursor, from) }, {}),
      );
      return null;
    }
  } else takeAny(cursor, 'for');
  const rows = readRepeatRows(cursor, from) ?? readOtherSide(cursor, from, word !== 'as');
  if (rows === null) cursor.at = from;
  return rows;
}

/** `same as Row 2`. */
function readSameAs(cursor: Cursor): Step | null {
  const from = cursor.at;
  takeAny(cursor, 'the');
  const rows = takeWords(cursor, 'same', 'as') ? readRepeatRows(cursor, from) : null;
  if (rows === null) cursor.at = from;
  return rows;
}

/** `work 21 sc evenly along row ends`, `work as for Row 2`, `work sc in …`. */
function readWork(cursor: Cursor): Step | readonly Step[] | null {
  const from = cursor.at;
  cursor.at += 1;
  const ring = readRing(cursor, from) ?? readOtherSide(cursor, from, false) ?? readSideAgain(cursor, from);
  if (ring !== null) return ring;
  if (takeWords(cursor, 'on', 'these') || takeWords(cursor, 'over', 'these')) {
    // `work on these 4 sts only`: the rest of the row below is left.
    skipStep(cursor);
    return { kind: 'leave', span: spanSince(cursor, from) };
  }
  const whole = readAllRound(cursor, from) ?? readRoundOf(cursor, from) ?? readToldOfWork(cursor, from);
  if (whole !== null) return whole;
  if (takeWords(cursor, 'last', 'st', 'to') || takeWords(cursor, 'to', 'last', 'yo')) {
    // `work last st to 2 lps on hook`: the place of a colour change, told the long way.
    skipStep(cursor);
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  }
  if (takeAny(cursor, 'as') !== null) {
    takeAny(cursor, 'for');
    const rows = readRepeatRows(cursor, from);
    if (rows !== null) return rows;
    cursor.at = from + 1;
  }
  const even = readEvenly(cursor, from) ?? readWorkEven(cursor, from);
  if (even !== null) return even;
  if (WAYS.holds(peek(cursor))) {
    // `work along the other side of the chain: 1 dc in next 5 ch`.
    const along = readFarEdge(cursor);
    if (along !== null) return along;
  }
  const rows = readRepeatRows(cursor, from);
  if (rows !== null && isCertain(rows)) return rows;
  if (rows !== null) {
    reportUnread(cursor, from, '"rep last rnd 2 more times", or how many in all,');
    return null;
  }
  if (peek(cursor).kind === 'open') return readOpened(cursor);
  const worked = readWorkStep(cursor);
  if (worked === null) cursor.at = from;
  return worked;
}

const WAYS = new WordSet(['on', 'along', 'down', 'up']);

/** "Work last rnd twice" may count the one that is worked already; "rep" and "more" leave no doubt. */
function isCertain({ last, until }: RepeatRowsStep): boolean {
  return last === undefined || until.kind !== 'times' || until.more;
}

/** `with B`; `with 3 sc in each corner` and `with last dc in top of tch` say what "working" says. */
function readWith(cursor: Cursor): Step | readonly Step[] | null {
  const next = peek(cursor, 1).kind;
  if (comparesHere(cursor, 1)) return readGrowth(cursor);
  if (next === 'number' || next === 'open') return readCorners(cursor) ?? readWithHook(cursor);
  if (wordAt(cursor, 1) === 'last') return readLastWorked(cursor);
  return readWithYarn(cursor) ?? (wordAt(cursor, 1) === 'a' ? readWithHook(cursor) : null);
}

/** `working 3 dc in each corner sp`: what the stitch before it makes where it meets those. */
function readCorners(cursor: Cursor): Step | null {
  const from = cursor.at;
  const faults = cursor.faults.length;
  cursor.at += 1;
  const read = peek(cursor).kind === 'open' ? readOpened(cursor) : readWorkStep(cursor);
  const [only] = read ?? [];
  const place = only !== undefined && (only.kind === 'work' || only.kind === 'group') ? only.place : null;
  const what = place?.kind === 'each' ? place.what : null;
  if (only === undefined || what === null || (what.kind !== 'corner' && what.kind !== 'space')) {
    cursor.at = from;
    forgetSince(cursor, faults);
    return null;
  }
  const here: Place = { kind: 'same', what: { kind: 'st' }, asJoin: false, span: only.span };
  const body: readonly Step[] =
    only.kind === 'group' ? only.body : only.kind === 'work' ? [{ ...only, place: here }] : [];
  return { kind: 'corners', body, what, span: spanSince(cursor, from) };
}

/** `ending with dc in top of tch`: what follows the repeat; its words are read as any others. */
function readEnding(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  const before = lastOf(cursor.faults);
  // Where the phrase before it could not be read, this is part of the same fault.
  const echo = before !== undefined && Math.abs(spanAt(cursor, cursor.at).start - before.span.end) <= 2;
  cursor.at += 1;
  takeAny(cursor, 'last', 'final');
  takeAny(cursor, 'rep', 'repeat');
  if (!echo && takeAny(cursor, 'with') !== null && !atBoundary(cursor)) return readStep(cursor);
  // `finishing at the first dc`: where a repeat has come to by then; it works nothing more.
  const place = wordAt(cursor) === 'at' ? readPlace(cursor)?.place : undefined;
  if (place?.kind === 'first' && place.n === null && atBoundary(cursor))
    return [{ kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) }];
  cursor.at = from;
  skipStep(cursor);
  if (!echo) reportUnread(cursor, from, null);
  return [];
}

function entries(words: readonly string[], reader: Reader): [string, Reader][] {
  return words.map((word) => [word, reader]);
}
