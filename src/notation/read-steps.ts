/** Steps in a row, up to what closes them: the end, a closing bracket, or `rep from *`. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Cursor, StepsRead, Until } from './cursor.ts';
import { peek, skipToBoundary, spanAt, takeAny, wordAt } from './cursor.ts';
import { lastOf } from './last-of.ts';
import type { StatedCount } from './line.ts';
import { putStep } from './put-step.ts';
import { foldBlock } from './read-blocks.ts';
import { mayBeCount, readEndingCount, readStatedCount } from './read-count.ts';
import { readEachCount } from './read-growing.ts';
import { foldSquare } from './read-square.ts';
import { readStep } from './read-step.ts';
import { readSameStitch } from './read-work.ts';
import type { TokenKind } from './token.ts';
import type { Step } from './tree.ts';

/**
 * Reads steps until what ends them, leaving the cursor on it: for `'line'` the end of the line, for `'bracket'`
 * the closing bracket, for an asterisk the words `rep from *` that belong to it.
 */
export function readSteps(cursor: Cursor, until: Until): StepsRead {
  const steps: Step[] = [];
  let markAt: number | null = null;
  let stated: StatedCount | null = null;
  for (;;) {
    const token = peek(cursor);
    const { kind } = token;
    if (kind === 'end') break;
    const led = kind === 'colon' && until === 'line' && stated === null;
    if (led) stated = readStatedCount(cursor, steps.length > 0);
    if (led && stated !== null) continue;
    if (
      kind === 'comma' ||
      kind === 'semicolon' ||
      kind === 'stop' ||
      kind === 'newline' ||
      kind === 'colon'
    ) {
      cursor.at += 1;
      continue;
    }
    if (kind === 'close') {
      if (cursor.brackets > 0) break;
      const at = { file: cursor.context.file, span: spanAt(cursor, cursor.at) };
      cursor.faults.push(diagnose('bracket/unopened', at, { close: token.text }));
      // "] 3 times" belongs to the bracket that is missing.
      cursor.at += 1;
      skipToBoundary(cursor);
      continue;
    }
    if (kind === 'mark' && token.text === until && steps.length > 0) {
      cursor.at += 1;
      return { steps, markAt, stated, closedByMark: true };
    }
    if (kind === 'mark' && until !== 'line' && token.text === '**' && !opensInner(cursor)) {
      markAt = steps.length;
      cursor.at += 1;
      continue;
    }
    if (until !== 'line' && until !== 'bracket' && isRepeatFrom(cursor, until)) break;
    if (until === 'line' && stated === null) {
      stated = readCountHere(cursor, steps, kind);
      if (stated !== null) continue;
    }
    if (kind === 'word' && takeAny(cursor, 'and', 'then', 'now') !== null) continue;
    if (token.text === 'or' && foldSquare(cursor, steps)) continue;
    const at = cursor.at;
    const same = kind === 'number' ? readSameStitch(cursor, lastOf(steps)) : null;
    const read = same !== null ? [same] : readStep(cursor);
    if (read !== null) for (const step of read) addStep(cursor, steps, step);
    // Whatever happens, the reader moves on.
    if (cursor.at === at) cursor.at += 1;
  }
  return { steps, markAt, stated, closedByMark: false };
}

/** What the row is said to come to, where that is told here. */
function readCountHere(cursor: Cursor, steps: readonly Step[], kind: TokenKind): StatedCount | null {
  const last = lastOf(steps);
  // Asked once: what may be of any shape is slow to look into.
  const lastKind = last === undefined ? '' : last.kind;
  if (kind === 'open' || (kind === 'dash' && lastKind === 'repeat rows')) {
    const each = readEachCount(cursor, steps);
    if (each !== null) return each;
  } else if (lastKind === 'repeat rows' || (lastKind === 'note' && steps.at(-2)?.kind === 'repeat rows')) {
    const ending = readEndingCount(cursor);
    if (ending !== null) return ending;
  }
  if (!mayBeCount(cursor, steps.length > 0)) return null;
  return readStatedCount(
    cursor,
    steps.length > 0,
    lastKind === 'join',
    last !== undefined && goesToEnd(last),
  );
}

/** Whether a step goes into each place there is, closes the round or turns. */
function goesToEnd(step: Step): boolean {
  switch (step.kind) {
    case 'work': {
      const { stitch, times, place } = step;
      if (stitch.kind === 'stitch' && stitch.id === 'sl-st')
        return times === null && place?.kind === 'first' && place.n === null;
      return place?.kind === 'each' && place.stop.kind === 'end';
    }
    case 'join':
      return !step.ring;
    case 'repeat':
      return step.stop.kind === 'end';
    default:
      return step.kind === 'turn';
  }
}

/** Blocks worked from corner to corner are folded as soon as they are whole. */
function addStep(cursor: Cursor, steps: Step[], step: Step): void {
  putStep(cursor, steps, step);
  const { blocks } = cursor.context;
  if (blocks != null) foldBlock(steps, blocks);
}

/** `rep from *` with the mark that began the repeat; `rep from *` with another mark belongs to an outer one. */
function isRepeatFrom(cursor: Cursor, mark: string): boolean {
  const word = wordAt(cursor);
  return (
    (word === 'rep' || word === 'repeat' || word === 'work') &&
    wordAt(cursor, 1) === 'from' &&
    peek(cursor, 2).text === mark
  );
}

/** Whether `**` begins a repeat inside another: `rep from **` comes before anything is repeated from `*`. */
function opensInner(cursor: Cursor): boolean {
  for (let ahead = 1; ; ahead += 1) {
    const token = peek(cursor, ahead);
    if (token.kind === 'end') return false;
    if (token.kind === 'mark' && wordAt(cursor, ahead - 1) === 'from') return token.text === '**';
  }
}
