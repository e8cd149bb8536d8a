/** Words that say what sort of place is meant: `st`, `sc`, `ch-2 sp`, `corner`, `row end`, `shell`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, nameHere, peek, takeAny, takeOneOf, wordAt } from './cursor.ts';
import type { Num } from './num.ts';
import { isNumber, isNumberOrSkip, readNumber } from './read-number.ts';
import type { What } from './tree.ts';
import { WordSet } from './word-set.ts';

export const ANY_STITCH: What = { kind: 'st' };

const STITCH_WORDS = new WordSet(['st', 'sts', 'stitch', 'stitches']);
const SPACE_WORDS = new WordSet('sp sps space spaces lp lps loop loops arch arches gap gaps'.split(' '));
export const CHAIN_WORDS = new WordSet(['ch', 'chs', 'chain', 'chains']);
const SPACE_STARTS = new WordSet([...SPACE_WORDS, 'corner', 'corners']);
const GLUED_SPACE_WORDS = new WordSet(['sp', 'sps', 'space', 'spaces', 'lp', 'lps', 'loop', 'loops']);
/** What a space of so many chains looks like: `ch-5 point`. */
const LOOKS = new WordSet(['point', 'points', 'peak', 'peaks']);
const USES = new WordSet(['handle', 'strap', 'thumb', 'button', 'buttonhole', 'cord', 'ribbon']);
const GROUP_WORDS = new WordSet(['group', 'groups', 'grp', 'grps', 'gr', 'grs', 'pair', 'pairs']);

const WHERE_WORDS = new WordSet(['corner', 'corners', 'center', 'centre', 'middle', 'side']);

/** Words that may say what is meant with no stitch's name; before any other word only a name is looked for. */
const LEADING = new WordSet([
  ...WHERE_WORDS,
  ...USES,
  ...SPACE_STARTS,
  ...CHAIN_WORDS,
  ...GROUP_WORDS,
  ...STITCH_WORDS,
  'marked',
  'row',
  'rows',
]);

/** Reads what is meant, or null with the cursor where it was. */
export function readWhat(cursor: Cursor): What | null {
  const from = cursor.at;
  const token = peek(cursor);
  const { word } = token;
  if (word === 'st' || word === 'sts') return readName(cursor) ?? anyStitch(cursor);
  if (word !== '' && !LEADING.holds(token)) return readName(cursor) ?? readFoundationChain(cursor);
  const where = takeOneOf(cursor, WHERE_WORDS);
  if (where !== null) return readWhere(cursor, from, where);
  // `handle loop`: what the space is for.
  if (SPACE_WORDS.holds(peek(cursor, 1))) takeOneOf(cursor, USES);
  const space = readSpace(cursor);
  if (space !== null) return space;
  if (takeAny(cursor, 'marked') !== null) {
    readWhat(cursor);
    return { kind: 'marked' };
  }
  const group = readGroupWord(cursor);
  if (group !== null) return group;
  if (takeAny(cursor, 'row', 'rows') !== null) {
    if (takeAny(cursor, 'end', 'ends') !== null) return { kind: 'row-end' };
    cursor.at = from;
    return null;
  }
  const named = readName(cursor);
  if (named !== null) return named;
  if (STITCH_WORDS.holds(token)) return anyStitch(cursor);
  if (takeOneOf(cursor, CHAIN_WORDS) !== null) return { kind: 'ch' };
  return null;
}

/** `foundation ch`: which edge they are of is read where they stand. */
function readFoundationChain(cursor: Cursor): What | null {
  if (!FOUNDATION.holds(peek(cursor)) || !CHAIN_WORDS.holds(peek(cursor, 1))) return null;
  cursor.at += 2;
  return { kind: 'ch' };
}

const FOUNDATION = new WordSet(['foundation', 'fdn', 'base']);

/** Whether the words just read are `foundation ch`. */
export function wasFoundationChain(cursor: Cursor): boolean {
  return FOUNDATION.holds(peek(cursor, -2)) && CHAIN_WORDS.holds(peek(cursor, -1));
}

/** `st`, `stitches`; "sts." with a full stop of its own is read where the sentence is. */
function anyStitch(cursor: Cursor): What {
  cursor.at += 1;
  return ANY_STITCH;
}

/** A stitch by its name; chains are told apart where they are read. */
function readName(cursor: Cursor): What | null {
  const found = nameHere(cursor);
  if (found === null || (found.named.kind === 'stitch' && found.named.id === 'ch')) return null;
  cursor.at += found.length;
  if (found.named.kind === 'special') return { kind: 'special', name: found.named.name };
  return { kind: 'stitch', id: found.named.id };
}

/** `corner ch-2 sp`, `corner st`, `side sp`, and `center ch-2 sp` of a shawl, which is the corner it grows from. */
function readWhere(cursor: Cursor, from: number, where: string): What | null {
  const space = readSpace(cursor);
  if (space !== null) return where === 'side' ? { ...space, side: true } : { ...space, corner: true };
  if (!where.startsWith('corner')) {
    // `center corner st`.
    if (takeAny(cursor, 'corner', 'corners') === null) {
      cursor.at = from;
      return null;
    }
  } else takeAny(cursor, 'center', 'centre', 'middle');
  const stitch = takeCornerStitch(cursor);
  if (stitch !== null) return { kind: 'corner', of: stitch };
  if (takeOneOf(cursor, STITCH_WORDS) === null) takeOneOf(cursor, CHAIN_WORDS);
  return { kind: 'corner' };
}

/** `corner sc`: the stitch behind "corner" and its id. Null where another step may begin with it. */
function takeCornerStitch(cursor: Cursor): string | null {
  const found = nameHere(cursor);
  if (found === null || found.named.kind !== 'stitch' || found.named.id === 'ch') return null;
  const start = cursor.at;
  cursor.at += found.length;
  const word = wordAt(cursor);
  if (atBoundary(cursor) || word === 'around' || word === 'across' || word === 'and') return found.named.id;
  cursor.at = start;
  return null;
}

/** `ch-2 sp`, `2-ch sp`, `ch sp`, `sp`, `ch-2 corner sp`; a length before "corner" makes it a space: `4 ch-2 corners`. */
function readSpace(cursor: Cursor): Extract<What, { kind: 'space' }> | null {
  const from = cursor.at;
  let chains: number | null = null;
  const first = peek(cursor);
  const chainFirst = CHAIN_WORDS.holds(first);
  if (first.kind === 'word' && !chainFirst && !SPACE_STARTS.holds(first)) return null;
  if (chainFirst && peek(cursor, 1).kind === 'dash' && peek(cursor, 2).kind === 'number') {
    chains = peek(cursor, 2).value;
    cursor.at += 3;
  } else if (
    peek(cursor).kind === 'number' &&
    peek(cursor, 1).kind === 'dash' &&
    CHAIN_WORDS.holds(peek(cursor, 2))
  ) {
    chains = peek(cursor).value;
    cursor.at += 3;
  } else if (
    chainFirst &&
    peek(cursor, 1).kind === 'number' &&
    SPACE_WORDS.holds(peek(cursor, peek(cursor, 2).kind === 'dash' ? 3 : 2))
  ) {
    // `ch3 sp`, `ch3-sp`.
    chains = peek(cursor, 1).value;
    cursor.at += 2;
  } else if (peek(cursor).kind === 'number' && CHAIN_WORDS.holds(peek(cursor, 1)) && isGluedSpace(cursor)) {
    // `3ch-sp`, `3ch sp`.
    chains = peek(cursor).value;
    cursor.at += 2;
  } else if (chainFirst) cursor.at += 1;
  if (peek(cursor).kind === 'dash') cursor.at += 1;
  const corner = takeAny(cursor, 'corner', 'corners') !== null;
  const space = takeOneOf(cursor, SPACE_WORDS) !== null;
  if (space || (chains !== null && corner)) return { kind: 'space', chains, corner };
  // `ch-2` alone as a place is its space, as in "in next ch-2".
  if (chains !== null && !corner) {
    takeOneOf(cursor, LOOKS);
    return { kind: 'space', chains, corner: false };
  }
  cursor.at = from;
  return null;
}

/** `3ch-sp`, `3 ch sp`: written in one with its chains, or before one space, the number is a length and no count. */
function isGluedSpace(cursor: Cursor): boolean {
  const dashed = peek(cursor, 2).kind === 'dash' ? 1 : 0;
  const behind = peek(cursor, 2 + dashed);
  return peek(cursor, 1).glued ? GLUED_SPACE_WORDS.holds(behind) : ONE_SPACE.holds(behind);
}

const ONE_SPACE = new WordSet(['sp', 'space', 'loop', 'lp', 'arch']);

/** True when a number stands here that says how many, not how long a space is: UK `2-ch sp` begins with one. */
export function isAmount(cursor: Cursor): boolean {
  // `next - (0, 1) sts`: the first size has none.
  if (peek(cursor).kind === 'dash') return isNumberOrSkip(cursor);
  if (!isNumber(cursor) || peek(cursor, 1).kind === 'dash') return false;
  return !(CHAIN_WORDS.holds(peek(cursor, 1)) && isGluedSpace(cursor));
}

/** True when a word for a stitch, a chain or a space stands here. */
export function isWhat(cursor: Cursor): boolean {
  const from = cursor.at;
  const what = readWhat(cursor);
  cursor.at = from;
  return what !== null;
}

/** True when the name of a special stitch of the pattern's own stands here. */
export function isSpecialNext(cursor: Cursor): boolean {
  return nameHere(cursor)?.named.kind === 'special';
}

/** `group`, `3-dc groups`, `grp`, `groups of 3 dc`, `pairs of tr`; nothing of the pattern's own. */
function readGroupWord(cursor: Cursor): What | null {
  const from = cursor.at;
  if (nameHere(cursor)?.named.kind === 'special') return null;
  let size: number | null = null;
  if (peek(cursor).kind === 'number' && peek(cursor, 1).kind === 'dash') {
    size = peek(cursor).value;
    cursor.at += 2;
    const found = nameHere(cursor);
    if (found !== null) cursor.at += found.length;
    else takeOneOf(cursor, STITCH_WORDS);
    if (peek(cursor).kind === 'dash') cursor.at += 1;
  }
  const word = takeOneOf(cursor, GROUP_WORDS);
  if (word !== null) {
    size = takeOfHowMany(cursor) ?? size ?? (word.startsWith('pair') ? 2 : null);
    return size === null ? { kind: 'group' } : { kind: 'group', size };
  }
  cursor.at = from;
  return null;
}

/** `of 3 dc`, `of 4`, `of tr` behind "group": how many stand in it; null where that is not said. */
function takeOfHowMany(cursor: Cursor): number | null {
  const start = cursor.at;
  if (takeAny(cursor, 'of') === null) return null;
  const size = peek(cursor).kind === 'number' && isAmount(cursor) ? peek(cursor).value : null;
  if (size !== null) cursor.at += 1;
  const found = nameHere(cursor);
  if (found?.named.kind === 'stitch') cursor.at += found.length;
  else if (takeOneOf(cursor, STITCH_WORDS) === null && size === null) cursor.at = start;
  return size;
}

/** `below`, `from the row before`, `of previous row`: where it stands anyway. */
export function takeBelow(cursor: Cursor): void {
  if (takeAny(cursor, 'below') !== null) return;
  const start = cursor.at;
  if (takeAny(cursor, 'from', 'of', 'on', 'in') !== null) {
    takeAny(cursor, 'the');
    const before = takeAny(cursor, 'previous', 'prev', 'last') !== null;
    if (before) takeAny(cursor, 'full', 'complete', 'whole', 'long');
    const row = takeAny(cursor, 'row', 'rnd', 'round') !== null;
    if (row && !before && takeReached(cursor)) return;
    if (row && (before || takeAny(cursor, 'before', 'below') !== null)) return;
  }
  cursor.at = start;
}

/** The number of the row below, behind "Row"; false, the cursor where it was, where it is another's. */
function takeReached(cursor: Cursor): boolean {
  const { kind, value } = peek(cursor);
  if (kind !== 'number' || value !== cursor.reached || peek(cursor, 1).kind === 'open') return false;
  cursor.at += 1;
  return true;
}

const ROWS = new WordSet(['row', 'rnd', 'round']);
const PICKS = ['next', 'first', 'last', 'each', 'same'] as const;

export interface SpaceOf {
  readonly of: string;
  readonly pick: (typeof PICKS)[number];
  /** `of each of the next 10 blocks`: how many of them, one behind the other. */
  readonly n?: Num;
}

/** After a space: `of next shell`, `of each V-st`, `of last block`, `of that first block`: which special stitch and which of them. */
export function readSpaceOf(cursor: Cursor): SpaceOf | null {
  const from = cursor.at;
  if (takeAny(cursor, 'of') !== null) {
    takeAny(cursor, 'the', 'that', 'this');
    const n = takeNextOf(cursor);
    const pick =
      n !== null ? 'next' : (takeAny(cursor, 'next', 'first', 'last', 'each') ?? takeAny(cursor, 'same'));
    // `of Row 1 tile`: the row below.
    if (pick === null && ROWS.holds(peek(cursor)) && peek(cursor, 1).value === cursor.reached) cursor.at += 2;
    const found = nameHere(cursor);
    if (found !== null && found.named.kind === 'special') {
      cursor.at += found.length;
      takeBelow(cursor);
      const of = { of: found.named.name, pick: PICKS.find((one) => one === pick) ?? 'next' };
      return n === null ? of : { ...of, n };
    }
  }
  cursor.at = from;
  return null;
}

/** `each of the next 10`, `next 10`, `each of 10` before what they are of; null, the cursor where it was, where no number stands. */
function takeNextOf(cursor: Cursor): Num | null {
  const start = cursor.at;
  const each = takeAny(cursor, 'each', 'every') !== null && takeAny(cursor, 'of') !== null;
  if (each) takeAny(cursor, 'the', 'these');
  const next = takeAny(cursor, 'next', 'following', 'foll') !== null;
  const n = (each || next) && isAmount(cursor) ? readNumber(cursor) : null;
  if (n === null) cursor.at = start;
  return n;
}
