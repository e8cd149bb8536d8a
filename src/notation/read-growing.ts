/** Rounds that grow as those before them did: `Carry on like this, working 1 more dc after every increase (78, 84, 90)`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, takeWords, textSince, wordAt } from './cursor.ts';
import type { StatedCount } from './line.ts';
import { readMoreGroups, readMoreSpecials } from './read-more-groups.ts';
import { readNumber } from './read-number.ts';
import { readWhat } from './read-what.ts';
import { readStitchName } from './read-yarn.ts';
import { unitOfPart } from './row-unit.ts';
import type { NoteStep, RepeatRowsStep, Step } from './tree.ts';
import { WordSet } from './word-set.ts';

const INCREASES = new WordSet(['increase', 'increases', 'inc', 'incs']);
const ROWS = new WordSet(['row', 'rnd', 'round']);

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
  const specials = on ? readMoreSpecials(cursor) : null;
  if (specials !== null) return [growing(cursor, from, specials)];
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
  return { kind: 'repeat rows', unit: unitOfPart(cursor), rows: [], last: 1, more, until, span };
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

/** `(78, 84, 90)` behind rounds that grow, `— 29, 27 and 25 sc` behind rows repeated: a count for each of them; null where none stands here. */
export function readEachCount(cursor: Cursor, steps: readonly Step[]): StatedCount | null {
  const { kind: opening } = peek(cursor);
  if (opening !== 'open' && opening !== 'dash') return null;
  // With several sizes the numbers would be theirs.
  const grows = steps.some(
    (step) =>
      step.kind === 'repeat rows' &&
      (step.more !== undefined || (step.until.kind === 'label' && cursor.context.sizes === 1)),
  );
  if (!grows || peek(cursor, 1).kind !== 'number' || !JOINTS.has(peek(cursor, 2).text)) return null;
  const from = cursor.at;
  const counts: { readonly value: number; readonly text: string; readonly span: StatedCount['span'] }[] = [];
  do {
    cursor.at += 1;
    if (wordAt(cursor) === 'and') cursor.at += 1;
    const at = cursor.at;
    const { kind, value, text } = peek(cursor);
    if (kind !== 'number') break;
    cursor.at += 1;
    counts.push({ value, text, span: spanSince(cursor, at) });
  } while (JOINTS.has(peek(cursor).text));
  const what = readWhat(cursor);
  const each = counts.map(
    ({ value, text, span }): StatedCount => ({
      entries: [{ n: { values: [value], span }, what: what?.kind === 'st' ? null : what, span }],
      text,
      span,
    }),
  );
  const last = each.at(-1);
  const closes =
    opening === 'open' ? peek(cursor).kind === 'close' && wordAt(cursor, 1) === '' : atBoundary(cursor);
  if (last === undefined || each.length < 2 || !closes) {
    cursor.at = from;
    return null;
  }
  if (opening === 'open') cursor.at += 1;
  return { ...last, each };
}

const JOINTS = new Set([',', 'and', '/']);
