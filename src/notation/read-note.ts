/** Words to the maker that work no stitch in, notes kept as written out. */

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
import { findName } from './lexicon.ts';
import { isNumber, readNumber } from './read-number.ts';
import { isAmount, readWhat } from './read-what.ts';
import { tellsChoice } from './told-choice.ts';
import type { Step } from './tree.ts';
import { WordSet } from './word-set.ts';

/** Moves to the next boundary, over brackets that open on the way. */
export function skipStep(cursor: Cursor): null {
  let depth = 0;
  for (;;) {
    const { kind } = peek(cursor);
    if (kind === 'end') return null;
    if (depth === 0 && atBoundary(cursor) && !inDecimal(cursor)) return null;
    // The asterisk that closes a repeat is none of the step before it.
    if (depth === 0 && kind === 'mark' && cursor.depth > 0) return null;
    if (kind === 'open') depth += 1;
    if (kind === 'close') depth -= 1;
    cursor.at += 1;
  }
}

/** The point of `2.5 inches` ends nothing. */
function inDecimal(cursor: Cursor): boolean {
  const point = peek(cursor);
  const after = peek(cursor, 1);
  return (
    point.kind === 'stop' &&
    point.glued &&
    after.kind === 'number' &&
    after.glued &&
    peek(cursor, -1).kind === 'number'
  );
}

/** What a maker does with the work in hand, or is told of it, with no stitch worked. */
export const MAKER_WORDS: readonly string[] =
  `place pm pull move weave draw thread gather mark remove sm stuff rotate being taking cut block sew hide trim
   close secure press steam spray soak rinse wet seam bring fold note darn knot tie pin pinning damp wrap lay pop flatten`.split(
    /\s+/,
  );

/** `place marker in first st`, `pull ring closed`: kept as written to the end of the phrase. */
export function readMakerNote(cursor: Cursor): Step {
  const from = cursor.at;
  const careful = wordAt(cursor, 1) === 'careful' || wordAt(cursor, 1) === 'care';
  if (careful) while (!atBoundary(cursor) && !JOINS.holds(peek(cursor))) cursor.at += 1;
  else skipStep(cursor);
  takeApart(cursor);
  takeEachLong(cursor);
  if (cursor.tokens[from]?.text === 'fold') takeSlipped(cursor);
  if (FINISHING.has(cursor.tokens[from]?.text ?? '')) takeRemark(cursor);
  return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
}

/** `being careful not to twist join with a sl st`: the join is a step of its own, comma or none. */
const JOINS = new WordSet(['join', 'sl', 'ss', 'slip']);
const FINISHING = new Set([
  'weave',
  'hide',
  'darn',
  'trim',
  'secure',
  'sew',
  'knot',
  'tie',
  'steam',
  'press',
]);

/** `, tiny toes get caught in loose ends` behind `weave in ends well`: why, to the end of the sentence, where no word of it is work. */
function takeRemark(cursor: Cursor): void {
  const start = cursor.at;
  for (let { kind } = peek(cursor); kind !== 'stop' && kind !== 'end'; { kind } = peek(cursor)) {
    const word = wordAt(cursor);
    const work = WORK_WORDS.has(word) || MAKER_TASKS.has(word) || nameHere(cursor) !== null;
    if ((kind !== 'word' && kind !== 'comma') || work) {
      cursor.at = start;
      return;
    }
    cursor.at += 1;
  }
}

/** Words without which no work is told. */
const WORK_WORDS = new WordSet(
  `each next every same st sts stitch stitches row rows rnd rnds round rounds turn join rejoin attach rep repeat sk skip
   miss ch chain work fasten continue cont inc dec`.split(/\s+/),
);
/** What would be a step of its own behind the comma. */
const MAKER_TASKS = new WordSet(['stuff', 'place', 'change', 'with', 'using', 'cut', 'do']);

/** `, 8 sl sts` behind an edge folded and closed: how many the seam has. */
function takeSlipped(cursor: Cursor): void {
  const start = cursor.at;
  if (peek(cursor).kind === 'comma' && peek(cursor, 1).kind === 'number') {
    cursor.at += 2;
    const found = nameHere(cursor);
    if (found?.named.kind === 'stitch' && found.named.id === 'sl-st') {
      cursor.at += found.length;
      if (atBoundary(cursor)) return;
    }
  }
  cursor.at = start;
}

/** `, 7 stitches apart`, `, about 4 sts between them` behind eyes that are placed: how far from each other. */
function takeApart(cursor: Cursor): void {
  if (peek(cursor).kind !== 'comma') return;
  const start = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'with', 'leaving');
  takeAny(cursor, 'about', 'approx', 'approximately', 'roughly');
  const counted = isNumber(cursor);
  skipStep(cursor);
  const last = wordAt(cursor, -1);
  const between = last === 'between' || wordAt(cursor, -2) === 'between';
  if (!counted || (last !== 'apart' && !between)) cursor.at = start;
}

/** `, each 14" long` behind strands that are cut: the cursor stays where a length stands not. */
function takeEachLong(cursor: Cursor): void {
  if (peek(cursor).kind !== 'comma' || wordAt(cursor, 1) !== 'each' || peek(cursor, 2).kind !== 'number')
    return;
  const start = cursor.at;
  cursor.at += 1;
  skipStep(cursor);
  if (wordAt(cursor, -1) !== 'long') cursor.at = start;
}

/** `If you want a loop, ch 14 …`, `There are 2 more groups`: a sentence of its own that tells, whole; null for any other. */
export function readSentence(cursor: Cursor): Step | null {
  const from = cursor.at;
  if (peek(cursor, -1).kind !== 'stop') return null;
  const states = wordAt(cursor) === 'there' && ['are', 'is', 'will'].includes(wordAt(cursor, 1));
  while (peek(cursor).kind !== 'stop' && peek(cursor).kind !== 'end') cursor.at += 1;
  const text = textSince(cursor, from);
  if (states || tellsChoice(text)) return { kind: 'note', text, span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

/**
 * `keeping to the stripe sequence`, `putting the pillow form in before the last side is closed`: how it is done. Null
 * where a number or a stitch is named: that may be work.
 */
export function readManner(cursor: Cursor): Step | null {
  const from = cursor.at;
  skipStep(cursor);
  let plain = true;
  for (let at = from; at < cursor.at; at += 1)
    plain &&= cursor.tokens[at]?.kind === 'word' && findName(cursor.lexicon, cursor.tokens, at) === null;
  if (plain) return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

/**
 * `Bend the petals forward and work behind them`, `keep this round behind the petals`, `again behind the petals`: how
 * the hand holds the work. Null where it is not said which way, or where a number may hide stitches.
 */
export function readHolding(cursor: Cursor): Step | null {
  const from = cursor.at;
  let held = false;
  let way = false;
  for (; !atBoundary(cursor); cursor.at += 1) {
    const { kind } = peek(cursor);
    // What names a stitch or a place is work, however the hand holds it.
    const word = wordAt(cursor);
    const named = nameHere(cursor) !== null && !HELD.has(word);
    if ((kind !== 'word' && kind !== 'ordinal') || PLACES_WORKED.has(word) || named) break;
    held ||= HELD.has(word);
    way ||= WAYS_HELD.holds(peek(cursor));
  }
  // `tip the first block over and (sl st, ch 3, 3 dc) in its ch-3 sp`: what is worked then is a step of its own.
  const goesOn = wordAt(cursor, -1) === 'and' && (peek(cursor).kind === 'open' || nameHere(cursor) !== null);
  if (goesOn) cursor.at -= 1;
  if (held && way && (goesOn || atBoundary(cursor)))
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

const PLACES_WORKED = new WordSet(['each', 'next', 'every', 'same', 'into']);

/** `from the back` behind a stitch round a stem: which way the hook goes in. Null behind any other. */
export function readFromSide(cursor: Cursor): Step | null {
  const from = cursor.at;
  let back = -1;
  if (peek(cursor, back).kind === 'comma') back -= 1;
  while (peek(cursor, back).kind === 'word' || peek(cursor, back).kind === 'ordinal') {
    if (STEMS.holds(peek(cursor, back))) break;
    back -= 1;
  }
  cursor.at += 1;
  takeAny(cursor, 'the');
  const side = takeAny(cursor, 'back', 'front', 'behind');
  if (side !== null && STEMS.holds(peek(cursor, from - cursor.at + back)) && atBoundary(cursor))
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

const STEMS = new WordSet(['stem', 'stems', 'post', 'posts']);
const HELD = new WordSet([
  'petal',
  'petals',
  'scallops',
  'fans',
  'flower',
  'block',
  'blocks',
  'tile',
  'tiles',
]);
const WAYS_HELD = new WordSet([
  'forward',
  'forwards',
  'behind',
  'towards',
  'down',
  'back',
  'over',
  'round',
  'sideways',
]);

/** `RS facing`, `the right side facing you`: which side; null with the cursor where it was. */
export function readFacingSide(cursor: Cursor): 'RS' | 'WS' | null {
  const from = cursor.at;
  takeAny(cursor, 'the');
  const short = takeAny(cursor, 'rs', 'ws');
  const word = short ?? takeAny(cursor, 'right', 'wrong');
  if (word !== null && short === null) takeAny(cursor, 'side');
  if (word !== null && wordAt(cursor) === 'of') takeOfWhat(cursor);
  if (word !== null && takeAny(cursor, 'facing') !== null) {
    takeAny(cursor, 'you', 'up');
    return word.startsWith('r') ? 'RS' : 'WS';
  }
  cursor.at = from;
  return null;
}

/** `of the tea towel`, `of work` before "facing". */
function takeOfWhat(cursor: Cursor): void {
  cursor.at += 1;
  takeAny(cursor, 'the', 'your');
  for (let n = 0; n < 2 && peek(cursor).kind === 'word' && wordAt(cursor) !== 'facing'; n += 1)
    cursor.at += 1;
}

/** `WS now facing`, `RS facing throughout`. */
export function readFacing(cursor: Cursor): Step | null {
  const from = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'now', 'is');
  if (takeAny(cursor, 'facing') === null) {
    cursor.at = from;
    return null;
  }
  takeAny(cursor, 'throughout', 'you');
  return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
}

/** `make a tile there`, `work another one here` behind "do not": what is told not to be made. Null for anything else. */
export function readNotMade(cursor: Cursor, from: number): Step | null {
  const makes = takeAny(cursor, 'make', 'work', 'add') !== null;
  takeAny(cursor, 'a', 'an', 'another', 'any');
  const found = makes ? nameHere(cursor) : null;
  if (found !== null) cursor.at += found.length;
  const named = found !== null || (makes && takeAny(cursor, 'one', 'anything') !== null);
  if (named && takeAny(cursor, 'there', 'here') !== null && atBoundary(cursor))
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  // `Don't ch 6 this time`.
  cursor.at = from + 1;
  if (wordAt(cursor) === 'not') cursor.at += 1;
  if (takeAny(cursor, 'ch', 'chain') !== null && isNumber(cursor) && readNumber(cursor) !== null) {
    const here = takeWords(cursor, 'this', 'time') || takeAny(cursor, 'here', 'now', 'first') !== null;
    if (here && atBoundary(cursor))
      return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  }
  cursor.at = from;
  return null;
}

/** `up the brim about 2"`, `the cuff back` behind "turn": what is made is folded, and no row is begun. */
export function takeFoldedUp(cursor: Cursor): boolean {
  const start = cursor.at;
  let way = false;
  let edge = false;
  for (; !atBoundary(cursor) && nameHere(cursor) === null; cursor.at += 1) {
    way ||= WAYS_FOLDED.holds(peek(cursor));
    edge ||= FOLDED.holds(peek(cursor));
  }
  if (way && edge && atBoundary(cursor)) return true;
  cursor.at = start;
  return false;
}

const WAYS_FOLDED = new WordSet(['up', 'back', 'under', 'over']);
const FOLDED = new WordSet([
  'brim',
  'cuff',
  'cuffs',
  'edge',
  'hem',
  'collar',
  'band',
  'ribbing',
  'rib',
  'top',
]);

/** `long tail`, `long tail for sewing` behind a fastening off: what is left of the yarn. Null for anything else. */
export function readTail(cursor: Cursor): Step | null {
  const from = cursor.at;
  cursor.at += 1;
  const tail = takeAny(cursor, 'tail', 'tails', 'end', 'ends') !== null;
  if (tail && takeAny(cursor, 'for', 'to') !== null) skipStep(cursor);
  if (tail && atBoundary(cursor))
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

/** `leaving rem sts unworked`, `leaving last 2 ch`, `leaving the rest`; a tail left for sewing is a note. */
export function readLeave(cursor: Cursor): Step {
  const from = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'the');
  if (takeAny(cursor, 'last', 'remaining', 'rem', 'other') !== null) {
    const n = isAmount(cursor) ? readNumber(cursor) : null;
    const what = readWhat(cursor)?.kind;
    const unworked = takeAny(cursor, 'unworked') !== null;
    // `for back neck`.
    if ((unworked || what !== undefined) && wordAt(cursor) === 'for') skipStep(cursor);
    if (what !== undefined && atBoundary(cursor)) {
      const span = spanSince(cursor, from);
      const counted = n !== null && (what === 'st' || what === 'stitch');
      return counted ? { kind: 'leave', n, span } : { kind: 'leave', span };
    }
  }
  // `leaving the loops of the fan`.
  cursor.at = from + 1;
  takeAny(cursor, 'the', 'all');
  const shape = takeOneOf(cursor, LEFT_BESIDE) !== null;
  cursor.at = from;
  skipStep(cursor);
  if (shape) return { kind: 'leave', span: spanSince(cursor, from) };
  const rest = wordAt(cursor, -1) === 'rest' && cursor.at - from <= 3;
  if (rest || wordAt(cursor, -1) === 'unworked') return { kind: 'leave', span: spanSince(cursor, from) };
  return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
}

/** What the chains and stitches over a fan are called, which the row after it leaves. */
const LEFT_BESIDE = new WordSet(['loops', 'fan', 'scallop', 'scallops', 'picots']);
