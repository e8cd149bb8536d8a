/** Rounds that grow as those before them did: `Carry on like this, working 1 more dc after every increase (78, 84, 90)`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, takeWords, textSince, wordAt } from './cursor.ts';
import type { StatedCount } from './line.ts';
import { readMoreGroups } from './read-more-groups.ts';
import { readNumber } from './read-number.ts';
import { readStitchName } from './read-yarn.ts';
import type { NoteStep, RepeatRowsStep, Step } from './tree.ts';

const INCREASES = new Set(['increase', 'increases', 'inc', 'incs']);
const ROWS = new Set(['row', 'rnd', 'round']);

/** Null, with the cursor where it was, where something else is said. */
export function readGrowing(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  const on =
    takeWords(cursor, 'carry', 'on') ||
    takeWords(cursor, 'go', 'on') ||
    takeWords(cursor, 'keep', 'going') ||
    takeAny(cursor, 'continue', 'cont') !== null;
  if (on) takeThisWay(cursor);
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  if (on) takeAny(cursor, 'but');
  const working = on && takeAny(cursor, 'working', 'with', 'making', 'adding') !== null;
  const n = working ? readNumber(cursor) : null;
  const more = n !== null && takeAny(cursor, 'more', 'extra', 'additional') !== null;
  const groups = more ? readMoreGroups(cursor, n) : null;
  if (groups !== null) return [growing(cursor, from, groups)];
  const stitch = more ? readStitchName(cursor) : null;
  const after = takeAny(cursor, 'after', 'between', 'before') !== null;
  takeAny(cursor, 'each', 'every', 'the');
  if (n === null || stitch?.kind !== 'stitch' || !after || takeOneOf(cursor, INCREASES) === null) {
    cursor.at = from;
    return null;
  }
  takeEachRow(cursor);
  if (!atBoundary(cursor)) {
    cursor.at = from;
    return null;
  }
  const rep = growing(cursor, from, { n, stitch: stitch.id });
  const gained = readGained(cursor);
  return gained === null ? [rep] : [rep, gained];
}

function growing(cursor: Cursor, from: number, more: NonNullable<RepeatRowsStep['more']>): RepeatRowsStep {
  const until = { kind: 'label' } as const;
  const span = spanSince(cursor, from);
  return { kind: 'repeat rows', unit: cursor.unit, rows: [], last: 1, more, until, span };
}

/** `like this`, `in this way`, `as established`. */
function takeThisWay(cursor: Cursor): void {
  if (takeWords(cursor, 'like', 'this')) return;
  if (takeAny(cursor, 'in') !== null) {
    takeAny(cursor, 'this', 'the');
    takeAny(cursor, 'same');
    takeAny(cursor, 'way', 'manner');
  } else if (takeAny(cursor, 'as') !== null) takeAny(cursor, 'set', 'established', 'before');
}

/** `in each round`, `every rnd`. */
function takeEachRow(cursor: Cursor): void {
  const start = cursor.at;
  takeAny(cursor, 'in', 'on');
  if (takeAny(cursor, 'each', 'every') === null || takeOneOf(cursor, ROWS) === null) cursor.at = start;
}

/** `, 6 more dc per round`: what each is said to gain. */
function readGained(cursor: Cursor): NoteStep | null {
  const start = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  const from = cursor.at;
  const adds = readNumber(cursor);
  const more = adds !== null && takeAny(cursor, 'more') !== null;
  const what = more && (takeAny(cursor, 'st', 'sts', 'stitches') !== null || readStitchName(cursor) !== null);
  if (
    what &&
    takeAny(cursor, 'per', 'each', 'every') !== null &&
    takeOneOf(cursor, ROWS) !== null &&
    adds !== null
  )
    return { kind: 'note', text: textSince(cursor, from), adds, span: spanSince(cursor, from) };
  cursor.at = start;
  return null;
}

/** `(78, 84, 90)` behind rounds that grow: a count for each of them; null where none stands here. */
export function readEachCount(cursor: Cursor, steps: readonly Step[]): StatedCount | null {
  if (peek(cursor).kind !== 'open') return null;
  const grows = steps.some((step) => step.kind === 'repeat rows' && step.more !== undefined);
  if (!grows) return null;
  const from = cursor.at;
  const each: StatedCount[] = [];
  do {
    cursor.at += 1;
    const at = cursor.at;
    const { kind, value, text } = peek(cursor);
    if (kind !== 'number') break;
    cursor.at += 1;
    const span = spanSince(cursor, at);
    each.push({ entries: [{ n: { values: [value], span }, what: null, span }], text, span });
  } while (peek(cursor).kind === 'comma');
  takeAny(cursor, 'st', 'sts', 'stitches');
  const last = each.at(-1);
  if (last === undefined || peek(cursor).kind !== 'close' || wordAt(cursor, 1) !== '') {
    cursor.at = from;
    return null;
  }
  cursor.at += 1;
  return { ...last, each };
}
