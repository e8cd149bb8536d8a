/** Brackets that hold words and work nothing: `(corner made)`, `(RS)`, `(the one that holds the first dc)`. */

import type { Cursor } from './cursor.ts';
import { peek, spanSince, textSince, wordAt } from './cursor.ts';
import { findName } from './lexicon.ts';
import { readCounts } from './read-chain.ts';
import { readCountsTogether, TOGETHER_LEADS } from './read-counts-together.ts';
import { readGrowth } from './read-growth.ts';
import { readLeave } from './read-note.ts';
import { isNumber } from './read-number.ts';
import { reportUnread } from './report-unread.ts';
import type { Step } from './tree.ts';
import { WordSet } from './word-set.ts';

/**
 * Brackets that hold words and work nothing: `(corner made)`, `(RS)`, `(counts as dc)` after something that is no
 * chain. Null when they hold instructions, with the cursor where it was.
 */
export function readAside(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  const counts = readCounts(cursor);
  if (counts !== null && counts.as === null && counts.plusChains > 0) {
    // A stitch that stands for a space is not worked as one.
    reportUnread(cursor, from, 'a chain before it, such as "ch 2 (counts as ch-2 sp)",');
    return [];
  }
  if (counts !== null)
    return [{ kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) }];
  const both = TOGETHER_LEADS.holds(peek(cursor, 1)) ? readCountsTogether(cursor) : null;
  if (both !== null) return [both];
  const growth = readBracketedGrowth(cursor);
  if (growth !== null) return [growth];
  if (isRowsSoFar(cursor)) {
    while (peek(cursor).kind !== 'close') cursor.at += 1;
    cursor.at += 1;
    return [{ kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) }];
  }
  const left = LEAVING.holds(peek(cursor, 1)) ? readLeft(cursor, from) : null;
  if (left !== null) return left;
  const either = wordAt(cursor, 1) === 'or' ? readOtherWay(cursor, from) : null;
  if (either !== null) return either;
  // What begins with one of these is work, whatever follows.
  if (WORKING.holds(peek(cursor, 1)) || isUsed(cursor)) return null;
  // `(holding first sc)`, `(see note)`: words about what is done, whatever they name.
  const telling =
    TELLING.holds(peek(cursor, 1)) ||
    (MIDDLE.holds(peek(cursor, 1)) && wordAt(cursor, 2) === 'of') ||
    tellsWhenThere(cursor);
  let ahead = 1;
  let names = false;
  for (; peek(cursor, ahead).kind !== 'close'; ahead += 1) {
    const token = peek(cursor, ahead);
    // `(1 sp made)`, but not `(2 sc in last sc made)`.
    const counted =
      ahead === 1 &&
      token.kind === 'number' &&
      (peek(cursor, 4).kind === 'close' ||
        (peek(cursor, 3).kind === 'close' && SPACES.holds(peek(cursor, 2))));
    const words = token.kind === 'word' || token.kind === 'comma' || token.kind === 'dash' || counted;
    names ||= counted;
    if (telling && token.kind !== 'end' && token.kind !== 'open') continue;
    if (!words) return null;
    names ||= findName(cursor.lexicon, cursor.tokens, cursor.at + ahead) !== null;
  }
  // `(picot made)` tells what has been worked, `(1 sp)` how far that is.
  const sp = ahead === 3 && peek(cursor, 1).kind === 'number' && SPACES.holds(peek(cursor, 2));
  if (names && !sp && wordAt(cursor, ahead - 1) !== 'made') return null;
  cursor.at += ahead + 1;
  return [{ kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) }];
}

/** `(when you get to the middle, the 2ch sp is your gap)`: what lies there; not where it is said what to do there. */
function tellsWhenThere(cursor: Cursor): boolean {
  if (wordAt(cursor, 1) !== 'when' || !COMES.holds(peek(cursor, 2))) return false;
  for (let ahead = 2; ; ahead += 1) {
    const { kind } = peek(cursor, ahead);
    if (kind === 'close') return true;
    const word = wordAt(cursor, ahead);
    const chains = (word === 'ch' || word === 'chain') && peek(cursor, ahead + 1).kind === 'number';
    if (kind === 'end' || kind === 'open' || kind === 'mark' || chains || DOES.holds(peek(cursor, ahead)))
      return false;
  }
}

const COMES = new WordSet(['you', "you're", 'you’re', 'we', 'it']);
const DOES = new WordSet(
  'work make put do add miss skip sk turn join inc dec increase decrease crochet place'.split(' '),
);

const SPACES = new WordSet(['sp', 'sps', 'space', 'spaces', 'loop', 'loops', 'arch', 'arches']);

/** `(27 rows worked, 30 cm)`: how far the work has come. */
function isRowsSoFar(cursor: Cursor): boolean {
  if (peek(cursor, 1).kind !== 'number' || !ROWS.holds(peek(cursor, 2))) return false;
  for (let ahead = 3; ; ahead += 1) {
    const { kind } = peek(cursor, ahead);
    if (kind === 'close') return true;
    if (kind !== 'comma' && kind !== 'number' && !SO_FAR.holds(peek(cursor, ahead))) return false;
  }
}

const ROWS = new WordSet(['rows', 'rnds', 'rounds']);
const SO_FAR = new WordSet([
  'worked',
  'made',
  'done',
  'in',
  'all',
  'total',
  'or',
  'about',
  'cm',
  'ins',
  'inches',
]);

const WORKING = new WordSet(['sk', 'skip', 'miss', 'ch', 'chain', 'rep', 'repeat']);

/** Behind the bracket it is said where or how often: what it holds is worked. */
function isUsed(cursor: Cursor): boolean {
  let ahead = 1;
  for (let { kind } = peek(cursor, ahead); kind !== 'close'; kind = peek(cursor, ahead).kind) {
    if (kind === 'open' || kind === 'end') return false;
    ahead += 1;
  }
  return isNumber(cursor, ahead + 1) || USES.holds(peek(cursor, ahead + 1));
}

const USES = new WordSet(['in', 'into', 'twice', 'around', 'across', 'to']);

/** `(or chain 4 and join, whichever you like better)`: another way to the same, which is left to the maker. */
function readOtherWay(cursor: Cursor, from: number): readonly Step[] | null {
  let left = false;
  for (let ahead = 1; ; ahead += 1) {
    const { kind } = peek(cursor, ahead);
    left ||= LEFT_TO_MAKER.holds(peek(cursor, ahead));
    if (kind === 'open' || kind === 'end') return null;
    if (kind !== 'close') continue;
    if (!left) return null;
    cursor.at += ahead + 1;
    return [{ kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) }];
  }
}

const LEFT_TO_MAKER = new WordSet([
  'whichever',
  'whatever',
  'prefer',
  'if',
  'like',
  'favourite',
  'favorite',
  'usual',
]);

/** `(Leave the sc of R9 unworked.)` tells of stitches passed on the way; what is left at the end is said to be so. */
function readLeft(cursor: Cursor, from: number): readonly Step[] | null {
  cursor.at += 1;
  const left = readLeave(cursor);
  if (peek(cursor).kind === 'stop') cursor.at += 1;
  if (peek(cursor).kind !== 'close') {
    cursor.at = from;
    return null;
  }
  const atEnd = left.kind === 'leave' && LAST_LEFT.holds(peek(cursor, 2 + from - cursor.at));
  cursor.at += 1;
  if (atEnd) return [left];
  return [{ kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) }];
}

const LEAVING = new WordSet(['leave', 'leaving']);
const LAST_LEFT = new WordSet(['rem', 'remaining', 'rest', 'last']);

/** `(center of the shell)`. */
const MIDDLE = new WordSet(['center', 'centre', 'middle', 'top']);

/** What begins words about the work. */
const TELLING = new WordSet([
  'same',
  'holding',
  'see',
  'counting',
  'including',
  'where',
  'for',
  'the',
  'this',
  'that',
  'which',
  'you',
]);

/** `(each round adds 8 sts)`. */
function readBracketedGrowth(cursor: Cursor): Step | null {
  const from = cursor.at;
  cursor.at += 1;
  const growth = readGrowth(cursor);
  if (growth === null || peek(cursor).kind !== 'close') {
    cursor.at = from;
    return null;
  }
  cursor.at += 1;
  return { ...growth, text: textSince(cursor, from), span: spanSince(cursor, from) };
}
