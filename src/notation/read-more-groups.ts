/** Rows that grow by groups: `working one more group of 3 tr on each side of the center on every row`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, nameHere, peek, takeAny, takeOneOf, wordAt } from './cursor.ts';
import type { MoreGroups, MoreSpecials } from './more.ts';
import type { Num } from './num.ts';
import { isNumber, readNumber } from './read-number.ts';
import { readStitchName } from './read-yarn.ts';
import { WordSet } from './word-set.ts';

/** What stands behind `one more`; null, the cursor where it was, where no group is named or it is not said on which sides. */
export function readMoreGroups(cursor: Cursor, n: Num): MoreGroups | null {
  const start = cursor.at;
  const before = readGroupSize(cursor);
  if (before !== null && peek(cursor).kind === 'dash') cursor.at += 1;
  const named = takeOneOf(cursor, GROUPS) !== null;
  const behind = named && before === null && takeAny(cursor, 'of') !== null ? readGroupSize(cursor) : null;
  const bare = peek(cursor, -1).text === 'of';
  const ends = named && !bare && takeEachSide(cursor) && (atBoundary(cursor) || wordAt(cursor) === 'and');
  if (ends) return { n, group: before ?? behind };
  cursor.at = start;
  return null;
}

/** `3tr`, `3-tr`, `3 tr`: how many of which stitch. */
function readGroupSize(cursor: Cursor): MoreGroups['group'] {
  const start = cursor.at;
  const size = isNumber(cursor) ? (readNumber(cursor)?.values[0] ?? null) : null;
  if (size !== null && peek(cursor).kind === 'dash') cursor.at += 1;
  const found = size === null ? null : nameHere(cursor);
  if (size !== null && found?.named.kind === 'stitch') {
    cursor.at += found.length;
    return { size, stitch: found.named.id };
  }
  cursor.at = start;
  return null;
}

/** `on each side of the center on every row`, `each side`, `at both sides of the 2ch-sp in each row`. */
function takeEachSide(cursor: Cursor): boolean {
  const every = takeEveryRow(cursor);
  if (!takeBetweenCorners(cursor)) {
    takeAny(cursor, 'on', 'at', 'to', 'along');
    if (takeAny(cursor, 'each', 'either', 'both', 'all') === null) return false;
    if (wordAt(cursor, -1) === 'all' && isNumber(cursor)) readNumber(cursor);
    if (takeAny(cursor, 'side', 'sides', 'half', 'halves') === null) return false;
  }
  if (takeAny(cursor, 'of') !== null) {
    takeAny(cursor, 'the');
    // The middle, whatever it is called: a sp, a spine, a marker.
    const middle = cursor.at;
    while (!atBoundary(cursor) && !ROW_LEADS.has(peek(cursor).text)) cursor.at += 1;
    if (cursor.at === middle) return false;
  }
  if (!every) takeEveryRow(cursor);
  return true;
}

/** `between the corners`: along each side of a round. */
function takeBetweenCorners(cursor: Cursor): boolean {
  if (wordAt(cursor) !== 'between') return false;
  const the = wordAt(cursor, 1) === 'the' || wordAt(cursor, 1) === 'each' ? 1 : 0;
  if (!wordAt(cursor, 1 + the).startsWith('corner')) return false;
  cursor.at += 2 + the;
  return true;
}

function takeEveryRow(cursor: Cursor): boolean {
  const start = cursor.at;
  takeAny(cursor, 'on', 'in', 'of', 'for');
  if (takeAny(cursor, 'each', 'every') !== null && takeOneOf(cursor, ROWS) !== null) return true;
  cursor.at = start;
  return false;
}

/** `with one block fewer in each row`, `decreasing 1 shell each row`; null, the cursor where it was, for anything else. */
export function readMoreSpecials(cursor: Cursor): MoreSpecials | null {
  const start = cursor.at;
  const verb = takeOneOf(cursor, CHANGING);
  takeAny(cursor, 'by');
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  const before = n === null ? null : takeOneOf(cursor, COMPARING);
  const special = n === null ? null : readStitchName(cursor);
  if (n !== null && special?.kind === 'special') {
    const compared = before ?? takeOneOf(cursor, COMPARING);
    const less = compared === 'fewer' || compared === 'less' || LOSING.has(verb ?? '');
    if ((compared !== null || BY_ITSELF.has(verb ?? '')) && takeEveryRow(cursor)) {
      takeThanBefore(cursor);
      if (atBoundary(cursor))
        return less ? { n, special: special.name, fewer: true } : { n, special: special.name };
    }
  }
  cursor.at = start;
  return null;
}

const CHANGING = new WordSet(
  'with working making adding having decreasing increasing losing gaining dropping'.split(' '),
);
const LOSING = new Set(['decreasing', 'losing', 'dropping']);
/** What says by itself which way it goes. */
const BY_ITSELF = new Set([...LOSING, 'increasing', 'gaining', 'adding']);
const COMPARING = new WordSet(['more', 'extra', 'fewer', 'less']);

/** `than the row before`. */
function takeThanBefore(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'than') === null) return;
  takeAny(cursor, 'the', 'in');
  takeAny(cursor, 'the', 'one');
  takeOneOf(cursor, ROWS);
  const last = takeAny(cursor, 'last', 'previous', 'before', 'below') !== null;
  takeOneOf(cursor, ROWS);
  if (!last) cursor.at = start;
}

const GROUPS = new WordSet(['group', 'groups', 'grp', 'grps', 'gr', 'cluster', 'clusters', 'set', 'sets']);
const ROWS = new WordSet(['row', 'rnd', 'round', 'time']);
const ROW_LEADS = new Set(['on', 'in', 'each', 'every']);
