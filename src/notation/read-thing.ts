/** What only a count speaks of: `groups of 3 dc`, `increases`, `open squares`, `half shells`, `petals`, `handle`. */

import type { Cursor } from './cursor.ts';
import { nameHere, peek, takeAny, takeOneOf, textSince, wordAt, writtenAt } from './cursor.ts';
import type { GatheredWord, Thing } from './line.ts';
import { isNumber, readNumber } from './read-number.ts';
import { takeListedYarn } from './read-yarn-name.ts';
import { isNearKnown } from './report-unread.ts';
import { WordSet } from './word-set.ts';

const GROUPS = new WordSet(['group', 'groups', 'grp', 'grps', 'gr', 'grs']);
const CLUSTERS = new WordSet(['cluster', 'clusters']);
const INCREASES = new WordSet(['increase', 'increases', 'incs']);
const DECREASES = new WordSet(['decrease', 'decreases', 'decs']);
const PICOTS = new WordSet(['picot', 'picots']);
/** Words for stitches of several legs. */
const GATHERED: ReadonlyMap<string, GatheredWord> = new Map([
  ...(['cl', 'cls', 'clus', 'cluster', 'clusters'] as const).map((word) => [word, 'cluster'] as const),
  ...(['bobble', 'bobbles', 'bob', 'bobs'] as const).map((word) => [word, 'bobble'] as const),
  ...(['popcorn', 'popcorns', 'pc', 'pcs'] as const).map((word) => [word, 'popcorn'] as const),
  ...(['puff', 'puffs'] as const).map((word) => [word, 'puff'] as const),
]);
const BLOCKS = new WordSet(['block', 'blocks', 'tile', 'tiles']);
const OPEN = new WordSet(['open', 'empty']);
const FILLED = new WordSet(['solid', 'filled', 'closed', 'full']);
const SQUARES = new WordSet([
  'square',
  'squares',
  'sq',
  'sqs',
  'mesh',
  'meshes',
  'block',
  'blocks',
  'sp',
  'sps',
  'space',
  'spaces',
]);

/** Shapes that a row may make with a bracket each. */
const SHAPES = new WordSet(
  ['shell', 'petal', 'point', 'scallop', 'fan', 'ray', 'ruffle', 'wave', 'peak', 'spike', 'flower', 'flame']
    .concat('leaf', 'repeat', 'rep', 'motif')
    .flatMap((word) => [word, `${word}s`])
    .concat('leaves'),
);

/** What several stitches into one place look like. */
const SPREADS = new WordSet(['shell', 'shells', 'fan', 'fans', 'scallop', 'scallops', 'petal', 'petals']);

const ROWS = new WordSet(['row', 'rows', 'rnd', 'rnds', 'round', 'rounds']);

/** Words behind a number that make it no count. */
const NO_THINGS = new WordSet([
  'times',
  'time',
  'more',
  'size',
  'sizes',
  'in',
  'inch',
  'inches',
  'cm',
  'mm',
  'yd',
  'yds',
  'yard',
  'yards',
  'oz',
  'skein',
  'skeins',
  'ball',
  'balls',
]);

/** What a thing may begin with. */
const THING_WORDS = new WordSet([
  ...['half', 'pattern', 'patt', 'corner'],
  ...GATHERED.keys(),
  ...[GROUPS, CLUSTERS, INCREASES, DECREASES, PICOTS, BLOCKS, OPEN, FILLED, SQUARES, SHAPES, ROWS].flatMap(
    (words) => [...words],
  ),
]);

/** Reads what stands behind the number of a count, or null with the cursor where it was. */
export function readThing(cursor: Cursor): Thing | null {
  const token = peek(cursor);
  const { kind } = token;
  const yarn = kind === 'word' && cursor.context.yarns.length > 1 ? readOfYarn(cursor) : null;
  if (yarn !== null) return yarn;
  // Nearly every count is of stitches.
  if (kind === 'word' && !THING_WORDS.holds(token) && !isNumber(cursor)) return null;
  const from = cursor.at;
  const thing = readHalf(cursor) ?? readTogether(cursor) ?? readSquare(cursor) ?? readWord(cursor);
  if (thing === null) cursor.at = from;
  return thing;
}

/** `A`, `navy` with nothing behind it; null with the cursor where it was. */
function readOfYarn(cursor: Cursor): Thing | null {
  const from = cursor.at;
  const yarn = takeListedYarn(cursor);
  if (yarn !== null && COUNT_PARTS.has(peek(cursor).kind))
    return { kind: 'of-yarn', yarn, word: textSince(cursor, from) };
  cursor.at = from;
  return null;
}

const COUNT_PARTS: ReadonlySet<string> = new Set(['comma', 'semicolon', 'close', 'stop', 'end']);

/** `half shells`, `half-shells`. */
function readHalf(cursor: Cursor): Thing | null {
  const from = cursor.at;
  // A half shell that the pattern describes is a stitch of its own.
  if (wordAt(cursor) === 'half' && nameHere(cursor)?.named.kind === 'special') return null;
  if (takeAny(cursor, 'half') !== null) {
    if (peek(cursor).kind === 'dash') cursor.at += 1;
    const found = nameHere(cursor);
    if (found !== null && found.named.kind === 'special') {
      cursor.at += found.length;
      return { kind: 'half', special: found.named.name };
    }
    // `a half loop at each end`: only the eye can count it.
    if (HALF_SPACES.holds(peek(cursor))) {
      cursor.at += 1;
      return { kind: 'named', word: textSince(cursor, from) };
    }
    const shape = takeOneOf(cursor, SHAPES);
    const stitches = shape === null ? null : readOfStitches(cursor);
    if (stitches !== null) return { kind: 'together', word: 'group', ...stitches, half: true };
    if (shape !== null) return { kind: 'half', special: shape.replace(/s$/, '') };
  }
  cursor.at = from;
  return null;
}

const HALF_SPACES = new WordSet([
  'loop',
  'loops',
  'lp',
  'lps',
  'sp',
  'sps',
  'space',
  'spaces',
  'square',
  'squares',
]);

/** `of 3 dc` behind a half shell; the cursor stays where none stands. */
function readOfStitches(cursor: Cursor): { readonly size: number; readonly id: string | null } | null {
  const from = cursor.at;
  if (takeAny(cursor, 'of') !== null && peek(cursor).kind === 'number') {
    const size = peek(cursor).value;
    cursor.at += 1;
    const id = takeStitch(cursor);
    if (id !== null) return { size, id };
  }
  cursor.at = from;
  return null;
}

/** `groups of 3 dc`, `3-dc groups`, `groups`; `clusters of 3 dc` only so, as a cluster alone is a stitch. */
function readTogether(cursor: Cursor): Thing | null {
  const from = cursor.at;
  if (nameHere(cursor)?.named.kind === 'special') return null;
  const size = peek(cursor, 1).kind === 'dash' && isNumber(cursor) ? (numberHere(cursor) ?? 0) : 0;
  if (size > 0) {
    cursor.at += 1;
    const id = takeStitch(cursor);
    if (peek(cursor).kind === 'dash') cursor.at += 1;
    if (takeOneOf(cursor, GROUPS) !== null || (id !== null && takeOneOf(cursor, SPREADS) !== null))
      return { kind: 'together', word: 'group', size, id };
    cursor.at = from;
    return null;
  }
  // `12 fans of 7 tr`, `4 corner shells of 7 dc`.
  if (wordAt(cursor) === 'corner' && SPREADS.holds(peek(cursor, 1))) cursor.at += 1;
  const spread =
    wordAt(cursor, 1) === 'of' && peek(cursor, 2).kind === 'number' && SPREADS.holds(peek(cursor));
  if (spread) cursor.at += 1;
  const group = spread || takeOneOf(cursor, GROUPS) !== null;
  if (!group && takeOneOf(cursor, CLUSTERS) === null) return null;
  const word = group ? 'group' : 'cluster';
  if (takeAny(cursor, 'of', 'with') !== null && peek(cursor).kind === 'number') {
    const size = peek(cursor).value;
    cursor.at += 1;
    return { kind: 'together', word, size, id: takeStitch(cursor) };
  }
  cursor.at = group ? from + 1 : from;
  return group ? { kind: 'together', word, size: null, id: null } : null;
}

/** `5` or `five`, the cursor then behind it. */
function numberHere(cursor: Cursor): number | null {
  const { kind, value } = peek(cursor);
  if (kind !== 'number') return readNumber(cursor)?.values[0] ?? null;
  cursor.at += 1;
  return value;
}

/** A stitch of the table; null, and past a word for any, where none is named. */
function takeStitch(cursor: Cursor): string | null {
  const found = nameHere(cursor);
  if (found !== null && found.named.kind === 'stitch') {
    cursor.at += found.length;
    return found.named.id;
  }
  takeAny(cursor, 'st', 'sts', 'stitch', 'stitches');
  return null;
}

/** `open squares`, `open mesh`, `solid`, `squares`. */
function readSquare(cursor: Cursor): Thing | null {
  const filled = takeOneOf(cursor, OPEN) !== null ? false : takeOneOf(cursor, FILLED) !== null ? true : null;
  if (filled !== null) {
    takeOneOf(cursor, SQUARES);
    return { kind: 'square', filled };
  }
  const plain = wordAt(cursor);
  if (plain === 'sp' || plain === 'sps' || plain === 'space' || plain === 'spaces') return null;
  if (BLOCKS.has(plain) || takeOneOf(cursor, SQUARES) === null) return null;
  return { kind: 'square', filled: null };
}

/** A word by itself; none that the pattern describes, or that a stitch may be meant by. */
function readWord(cursor: Cursor): Thing | null {
  if (nameHere(cursor) !== null) return null;
  if (takeOneOf(cursor, INCREASES) !== null) return { kind: 'shaping', does: 'inc' };
  if (takeOneOf(cursor, DECREASES) !== null) return { kind: 'shaping', does: 'dec' };
  if (takeOneOf(cursor, PICOTS) !== null) return { kind: 'picot' };
  const gathered = GATHERED.get(wordAt(cursor));
  if (gathered !== undefined) {
    cursor.at += 1;
    takeAny(cursor, 'st', 'sts', 'stitch', 'stitches');
    return { kind: 'gathered', word: gathered };
  }
  if (takeOneOf(cursor, BLOCKS) !== null) return { kind: 'block' };
  if (takeOneOf(cursor, ROWS) !== null) return { kind: 'rows' };
  takeAny(cursor, 'pattern', 'patt');
  const word = takeOneOf(cursor, SHAPES);
  return word === null ? null : { kind: 'shape', word };
}

/** `ch-45 handles`: what the chains are for is said, not counted again. */
export function skipNoun(cursor: Cursor): void {
  const { kind, text } = peek(cursor);
  const after = peek(cursor, 1).kind;
  const ends = after === 'close' || after === 'comma' || after === 'stop';
  if (kind === 'word' && ends && text.length >= SHORTEST_THING && !isNearKnown(cursor, text)) cursor.at += 1;
}

/** `(8 lozenges, 97 rows)`: how many rows there are can be told, whatever they are seen as. */
export function leadsToRows(cursor: Cursor): boolean {
  const told = peek(cursor).kind === 'word' && peek(cursor, 1).kind === 'comma';
  return told && peek(cursor, 2).kind === 'number' && wordAt(cursor, 3) === 'rows';
}

/** `handle`, `thumb hole`: one word or two that are not like any word known here. */
export function readNamedThing(cursor: Cursor): Thing | null {
  const from = cursor.at;
  for (;;) {
    const token = peek(cursor);
    if (token.kind !== 'word' || token.text === 'and' || isNumber(cursor)) break;
    const short = token.text.length < SHORTEST_THING;
    if (cursor.at - from >= 2 || short || NO_THINGS.has(token.text) || isNearKnown(cursor, token.text)) {
      cursor.at = from;
      return null;
    }
    cursor.at += 1;
  }
  if (cursor.at === from) return null;
  return { kind: 'named', word: writtenAt(cursor, from, cursor.at - 1) };
}

/** Shorter words are abbreviations, which have to be known. */
const SHORTEST_THING = 4;
