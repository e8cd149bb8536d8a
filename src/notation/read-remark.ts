/** Sentences that talk to the maker between rows: `Try it on, it should reach your toes.`, `Mine was 13 inches tall.`, `Make sure it isn't twisted.` */

import type { Cursor } from './cursor.ts';
import { atBoundary, nameHere, peek, spanSince, textSince, wordAt } from './cursor.ts';
import type { NoteStep } from './tree.ts';
import { WordSet } from './word-set.ts';

/** Words without which no work is told. */
export const WORK =
  /^(?:each|next|every|same|sts?|stitch|stitches|rows?|rnds?|rounds?|turn|join|rejoin|attach|rep|repeat|sk|skip|miss|work|fasten|cont|continue|inc|dec)$/;
/** A chain is spoken of by these, and worked with none of them before it. */
const SPOKEN_OF = new WordSet(['the', 'those', 'these', 'your', 'that', 'this']);

const TOLD = new WordSet(['this', 'that', 'it', 'these']);
const NEEDING = new WordSet(['need', 'will', 'want', 'use', 'have', 'are']);
const BEING = new WordSet(['is', 'are', 'was', 'will', 'marks']);

/** The whole sentence; null where a stitch or a place in it may be work, or where no sentence begins. */
export function readRemark(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  const before = peek(cursor, -1).kind;
  // `fasten off, no need to stuff`.
  const needless = wordAt(cursor) === 'no' && wordAt(cursor, 1) === 'need';
  // `leave the yarn on, we need it`; `mark the 20th sc, this is the center`.
  const needs = wordAt(cursor) === 'we' && NEEDING.holds(peek(cursor, 1));
  const tells = before === 'comma' && (needs || (TOLD.holds(peek(cursor)) && BEING.holds(peek(cursor, 1))));
  if (from > 0 && before !== 'stop' && before !== 'close' && !needless && !tells) return null;
  for (let { kind } = peek(cursor); kind !== 'stop' && kind !== 'end'; { kind } = peek(cursor)) {
    if (cursor.at > from && leadsToCount(cursor)) break;
    const spoken = SPOKEN_OF.holds(peek(cursor, -1));
    if (kind === 'mark' || WORK.test(wordAt(cursor)) || (!spoken && nameHere(cursor) !== null)) {
      cursor.at = from;
      return null;
    }
    cursor.at += 1;
  }
  return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
}

const WHO = new WordSet(['you', "you're", 'you’re', 'you’ll', "you'll", 'that', 'it', 'the', 'they', 'your']);

const MARKS = new WordSet(['put', 'place', 'use', 'pop', 'keep', 'move', 'mark', 'hang']);
const MARKERS = new WordSet(['marker', 'thread', 'pin', 'scrap', 'safety', 'markers', 'first']);

/** `so put a bit of coloured thread at the start of the round and move it up as you go`: where a marker is. */
function readSoMark(cursor: Cursor, from: number): NoteStep | null {
  const start = cursor.at;
  let marker = false;
  for (; !atBoundary(cursor); cursor.at += 1) marker ||= MARKERS.holds(peek(cursor));
  if (marker) return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  cursor.at = start;
  return null;
}

/** `so you're in the middle of it`, `so that the seam lies inside`: what for, to the end of the phrase; null where a stitch is named. */
export function readSoThat(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  cursor.at += 1;
  const marks = MARKS.holds(peek(cursor)) ? readSoMark(cursor, from) : null;
  if (marks !== null) return marks;
  let plain = WHO.holds(peek(cursor));
  for (; plain && !atBoundary(cursor); cursor.at += 1)
    plain = peek(cursor).kind === 'word' && !WORK.test(wordAt(cursor)) && nameHere(cursor) === null;
  if (plain) return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

/** `= 48 dc`, `(48 dc)`, `- 48 dc` behind the sentence: what the row comes to is none of it. */
function leadsToCount(cursor: Cursor): boolean {
  const { kind, text, glued } = peek(cursor);
  if (peek(cursor, 1).kind !== 'number') return false;
  return kind === 'open' || (kind === 'dash' && !glued) || text === '=';
}

/** `Make sure those chains aren't twisted`; null for anything made. */
export function readMakeSure(cursor: Cursor): NoteStep | null {
  return wordAt(cursor, 1) === 'sure' ? readRemark(cursor) : null;
}

/** `The chain 2 and double crochet make the last loop`: what was worked, told once more; null for any other sentence. */
export function readMakesUp(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  const before = peek(cursor, -1).kind;
  if (from > 0 && before !== 'stop' && before !== 'close') return null;
  let verb = 1;
  while (verb < LONGEST_SUBJECT && !MAKES_UP.holds(peek(cursor, verb))) {
    const { kind } = peek(cursor, verb);
    if (kind !== 'word' && kind !== 'number' && kind !== 'dash') return null;
    verb += 1;
  }
  const the = wordAt(cursor, verb + 1);
  if (verb === 1 || verb === LONGEST_SUBJECT || (the !== 'the' && the !== 'a' && the !== 'your')) return null;
  for (let { kind } = peek(cursor); kind !== 'stop' && kind !== 'end'; { kind } = peek(cursor)) {
    if (kind === 'comma' || kind === 'semicolon' || kind === 'mark') {
      cursor.at = from;
      return null;
    }
    cursor.at += 1;
  }
  return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
}

const LONGEST_SUBJECT = 9;
const MAKES_UP = new WordSet(['make', 'makes', 'form', 'forms']);
