/** Faults on words that could not be read: the nearest known word, the other terms' stitch, an undescribed special. */

import { diagnose } from '../diagnostics/catalogue.ts';
import { nearest } from '../diagnostics/nearest.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { stitchById, stitchNames, termsOf } from '../stitches/table.ts';
import type { Cursor } from './cursor.ts';
import { peek, spanAt, spanSince, textSince, writtenAt } from './cursor.ts';
import { findName, lexiconOf } from './lexicon.ts';
import { PLAIN_WORDS } from './plain-words.ts';
import { skipStep } from './read-note.ts';
import { isNumber } from './read-number.ts';
import { WordSet } from './word-set.ts';

/** Words of instructions other than stitches, for the nearest-word search. */
const INSTRUCTION_WORDS = [
  'chain',
  'skip',
  'turn',
  'join',
  'repeat',
  'with',
  'change',
  'fasten',
  'next',
  'each',
  'same',
  'first',
  'last',
  'across',
  'around',
  'ring',
  'corner',
  'space',
  'stitch',
  'stitches',
  'sts',
  'times',
  'twice',
  'working',
  'work',
  'along',
  'evenly',
];

/** Stitches that the trade gives no single meaning; a pattern must describe them itself. */
const UNSETTLED = new WordSet([
  'shell',
  'sh',
  'cl',
  'cluster',
  'puff',
  'ps',
  'pc',
  'pop',
  'popcorn',
  'bobble',
  'bo',
  'bob',
  'fan',
  'picot',
  'p',
  'v',
  'inc',
  'dec',
  'beg',
  'group',
  'gr',
  'petal',
  'berry',
  'spike',
  'scallop',
]);

/** Reports the word at the cursor as unknown, with the most useful thing to say about it. */
export function reportUnknownWord(cursor: Cursor): void {
  const token = peek(cursor);
  const { file, terms } = cursor.context;
  if (token.kind !== 'word') {
    const from = cursor.at;
    cursor.at += 1;
    reportUnread(cursor, from, null);
    return;
  }
  const other: Terms = terms === 'US' ? 'UK' : 'US';
  const foreign = findName(lexiconOf(other, []), cursor.tokens, cursor.at);
  if (foreign !== null && foreign.named.kind === 'stitch') {
    const from = cursor.at;
    cursor.at += foreign.length;
    const row = stitchById(foreign.named.id);
    const here = termsOf(row, terms);
    const facts = { word: textSince(cursor, from), terms, other, name: here.name, here: here.abbr };
    cursor.faults.push(diagnose('word/other-terms', { file, span: spanSince(cursor, from) }, facts));
    return;
  }
  if (PLAIN_WORDS.has(token.text) || /[a-z]['’][a-z]/.test(token.text)) {
    reportPlainWords(cursor);
    return;
  }
  const last = cursor.at + furtherInWord(cursor);
  // A word of two may stand on two printed lines.
  const word = writtenAt(cursor, cursor.at, last).replace(/\s+/g, ' ');
  if (UNSETTLED.has(token.text) || UNSETTLED.has(token.text.replace(/s$/, ''))) {
    if (countsUnknown(cursor)) {
      cursor.at += 1;
      return;
    }
    const named = specialName(cursor, word);
    const facts = {
      word: named,
      nearest: nearest(named, cursor.context.specials),
      example: exampleOf(named, terms),
    };
    cursor.faults.push(diagnose('special/undefined', { file, span: spanAt(cursor, cursor.at) }, facts));
    return;
  }
  if (INSTRUCTION_WORDS.includes(token.text)) {
    // The word is known; it is only no beginning of a step.
    const from = cursor.at;
    cursor.at += 1;
    reportUnread(cursor, from, null);
    return;
  }
  const facts = { word, nearest: nearestWord(cursor, word.toLowerCase()) };
  const span = { start: spanAt(cursor, cursor.at).start, end: spanAt(cursor, last).end };
  cursor.faults.push(diagnose('word/unknown', { file, span }, facts));
}

/** `9 bobbles, 50 dc` at the end of a row with a word that is not known: what it counts is what that word makes. */
function countsUnknown(cursor: Cursor): boolean {
  const led = peek(cursor, -2).kind;
  if (!isNumber(cursor, -1) || led === 'comma' || led === 'mark') return false;
  const from = spanAt(cursor, 0).start;
  return cursor.faults.some(({ code, span }) => code === 'word/unknown' && span.start >= from);
}

/** How many tokens more belong to the word here: `C4B` is one to a maker. */
function furtherInWord(cursor: Cursor): number {
  let ahead = 0;
  for (let next = peek(cursor, 1); next.glued; next = peek(cursor, ahead + 1)) {
    if (next.kind !== 'word' && next.kind !== 'number') break;
    ahead += 1;
  }
  return ahead;
}

/** Words that name no stitch: all of their sentence where they begin one, else up to the next comma. */
function reportPlainWords(cursor: Cursor): void {
  const from = cursor.at;
  const before = peek(cursor, -1).kind;
  const whole = cursor.brackets === 0 && (before === 'stop' || before === 'colon' || before === 'end');
  if (!whole) skipStep(cursor);
  else while (peek(cursor).kind !== 'stop' && peek(cursor).kind !== 'end') cursor.at += 1;
  reportUnread(
    cursor,
    from,
    'a stitch and where it goes, such as "… in next 3 sts", or "Note:" before a remark,',
  );
}

/** A text with more unknown words than this is no text of instructions: what each may be meant for is not looked for. */
const MOST_OFFERS = 400;

/** The known word most like an unknown one, looked for once a text. */
function nearestWord({ offered, context }: Cursor, word: string): string | null {
  const before = offered.get(word);
  if (before !== undefined) return before;
  if (offered.size >= MOST_OFFERS) return null;
  const names = stitchNames(context.terms).map(({ words }) => words);
  const known = [...names, ...context.specials, ...INSTRUCTION_WORDS];
  const found = nearest(
    word,
    known.filter((name) => mayBeMeant(word, name.toLowerCase())),
  );
  offered.set(word, found);
  return found;
}

/** In words of three letters or fewer a changed letter makes another word: only letters swapped or one too many are slips. */
function mayBeMeant(word: string, name: string): boolean {
  if (word.length > 3) return name.length > 2;
  if (word.length === name.length) return sorted(word) === sorted(name);
  const [shorter, longer] = word.length < name.length ? [word, name] : [name, word];
  return shorter.length > 1 && isWithin(shorter, longer);
}

function sorted(word: string): string {
  return [...word].toSorted().join('');
}

/** Whether the letters of one stand in the other in their order. */
function isWithin(shorter: string, longer: string): boolean {
  let at = -1;
  for (const letter of shorter) {
    at = longer.indexOf(letter, at + 1);
    if (at < 0) return false;
  }
  return true;
}

/** Whether a word is, or is spelt nearly like, one that instructions of either terms know. */
export function isNearKnown(cursor: Cursor, word: string): boolean {
  if (UNSETTLED.has(word) || INSTRUCTION_WORDS.includes(word)) return true;
  let asked = NEAR_KNOWN.get(cursor.offered);
  if (asked === undefined) {
    asked = new Map();
    NEAR_KNOWN.set(cursor.offered, asked);
  }
  const known = asked.get(word) ?? looksKnown(cursor, word);
  asked.set(word, known);
  return known;
}

/** What was found of each word of a text: to compare it with all that are known is dear, and counts say the same words row after row. */
const NEAR_KNOWN = new WeakMap<Cursor['offered'], Map<string, boolean>>();

function looksKnown(cursor: Cursor, word: string): boolean {
  const other: Terms = cursor.context.terms === 'US' ? 'UK' : 'US';
  const foreign = stitchNames(other).map(({ words }) => words);
  return nearestWord(cursor, word) !== null || nearest(word, foreign) !== null;
}

/** Reports the words from `from` up to the cursor as unread; names the first unknown one among them if there is one. */
export function reportUnread(cursor: Cursor, from: number, expected: string | null): void {
  const words = cutShort(textSince(cursor, from));
  cursor.faults.push(
    diagnose(
      'phrase/unread',
      { file: cursor.context.file, span: spanSince(cursor, from) },
      { words, expected },
    ),
  );
}

/** A sentence that goes on is quoted by its beginning. */
function cutShort(words: string): string {
  return words.length <= LONGEST_QUOTED
    ? words
    : `${words.slice(0, words.lastIndexOf(' ', LONGEST_QUOTED))} …`;
}

const LONGEST_QUOTED = 90;

/** `beg cl` and `V-st` are names of two words. */
function specialName(cursor: Cursor, word: string): string {
  const next = peek(cursor, 1);
  if (word.toLowerCase() === 'beg' && next.kind === 'word') return `${word} ${next.text}`;
  if (word.toLowerCase() === 'v') return `${word}-st`;
  return word;
}

/** A description that would do for a stitch of that name, in the pattern's own terms. */
function exampleOf(name: string, terms: Terms): string {
  const abbr = (id: string): string => termsOf(stitchById(id), terms).abbr;
  const word = name.toLowerCase();
  if (word.startsWith('beg')) return `ch 2, ${abbr('dc2tog')} in same st`;
  if (word.startsWith('inc')) return `2 ${abbr('sc')} in same st`;
  if (word.startsWith('dec')) return abbr('sc2tog');
  if (word.startsWith('v-')) return `(${abbr('dc')}, ch 1, ${abbr('dc')}) in same st`;
  if (/^(cl|puff|ps|pc|pop|bob?$|bobble|berry)/.test(word)) return `${abbr('dc3tog')} in same st`;
  if (/^p(icot)?s?$/.test(word)) return `ch 3, ${abbr('sl-st')} in 3rd ch from hook`;
  return `5 ${abbr('dc')} in same st`;
}

/** Whether a word is, or may be meant for, a stitch or an instruction. */
export function looksLikeInstruction(cursor: Cursor, word: string, ahead: number): boolean {
  if (findName(cursor.lexicon, cursor.tokens, cursor.at + ahead) !== null) return true;
  const { terms, specials } = cursor.context;
  const other: Terms = terms === 'US' ? 'UK' : 'US';
  if (findName(lexiconOf(other, []), cursor.tokens, cursor.at + ahead) !== null) return true;
  if (UNSETTLED.has(word)) return true;
  return nearest(word, [...INSTRUCTION_WORDS, ...specials]) !== null || INSTRUCTION_WORDS.includes(word);
}
