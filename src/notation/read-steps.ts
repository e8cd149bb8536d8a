/** Steps in a row, up to what closes them: the end, a closing bracket, or `rep from *`. */

import { diagnose } from '../diagnostics/catalogue.ts';
import { allSides, spacesAndCorners } from './border-of-spaces.ts';
import type { Counts } from './chain-counts.ts';
import type { Cursor, StepsRead, Until } from './cursor.ts';
import { peek, skipToBoundary, spanAt, takeAny, textSince, wordAt } from './cursor.ts';
import type { StatedCount } from './line.ts';
import type { Num } from './num.ts';
import { foldBlock } from './read-blocks.ts';
import { lastSide } from './read-border-side.ts';
import { mayBeCount, readEndingCount, readStatedCount } from './read-count.ts';
import { giveChainCounts } from './read-counts-together.ts';
import { readEachCount } from './read-growing.ts';
import { foldSquare } from './read-square.ts';
import { readStep } from './read-step.ts';
import { readSameStitch } from './read-work.ts';
import { sharePlace } from './share-place.ts';
import type { TokenKind } from './token.ts';
import type {
  CornersStep,
  CornerWork,
  GroupStep,
  JoinStep,
  NoteStep,
  Place,
  ShapeStep,
  Step,
  What,
  WorkStep,
} from './tree.ts';

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
    const same = kind === 'number' ? readSameStitch(cursor, steps[steps.length - 1]) : null;
    const read = same !== null ? [same] : readStep(cursor);
    if (read !== null) for (const step of read) addStep(cursor, steps, step);
    // Whatever happens, the reader moves on.
    if (cursor.at === at) cursor.at += 1;
  }
  return { steps, markAt, stated, closedByMark: false };
}

/** What the row is said to come to, where that is told here. */
function readCountHere(cursor: Cursor, steps: readonly Step[], kind: TokenKind): StatedCount | null {
  const last = steps[steps.length - 1]?.kind;
  if (kind === 'open' || (kind === 'dash' && last === 'repeat rows')) {
    const each = readEachCount(cursor, steps);
    if (each !== null) return each;
  } else if (last === 'repeat rows' || (last === 'note' && steps.at(-2)?.kind === 'repeat rows')) {
    const ending = readEndingCount(cursor);
    if (ending !== null) return ending;
  }
  if (!mayBeCount(cursor, steps.length > 0)) return null;
  return readStatedCount(cursor, steps.length > 0, last === 'join', goesToEnd(steps));
}

/** Whether the last step goes into each place there is, closes the round or turns. */
function goesToEnd(steps: readonly Step[]): boolean {
  const last = steps[steps.length - 1];
  if (last?.kind === 'join') return !last.ring;
  if (last?.kind === 'turn') return true;
  if (last?.kind === 'repeat') return last.stop.kind === 'end';
  if (last?.kind === 'work' && last.stitch.kind === 'stitch' && last.stitch.id === 'sl-st')
    return last.times === null && last.place?.kind === 'first' && last.place.n === null;
  return last?.kind === 'work' && last.place?.kind === 'each' && last.place.stop.kind === 'end';
}

/** What is worked in corners belongs to the stitch before it, which goes into each of something. */
function addStep(cursor: Cursor, steps: Step[], step: Step): void {
  putStep(cursor, steps, step);
  const { blocks } = cursor.context;
  if (blocks != null) foldBlock(steps, blocks);
}

function putStep(cursor: Cursor, steps: Step[], step: Step): void {
  const { kind } = step;
  if (
    kind !== 'work' &&
    kind !== 'group' &&
    kind !== 'join' &&
    kind !== 'note' &&
    kind !== 'shape' &&
    kind !== 'corners'
  ) {
    // Nothing else has to do with the step before it.
    steps.push(step);
    return;
  }
  const before = steps[steps.length - 1];
  if (step.kind === 'note' && step.sideAgain !== undefined) {
    putSideAgain(cursor, steps, step);
    return;
  }
  if (step.kind === 'note' && step.chainCounts !== undefined) {
    putChainCounts(cursor, steps, step, step.chainCounts);
    return;
  }
  const anew = step.kind === 'join' ? joinsAnew(cursor, steps, step) : null;
  if (anew !== null) {
    steps.push(anew);
    return;
  }
  if (before?.kind === 'chain' && step.kind === 'note' && step.seam === true) {
    const span = together(before, step);
    steps[steps.length - 1] = { ...step, text: textOf(cursor, span), span };
    return;
  }
  const round = step.kind === 'work' ? spacesAndCorners(before, step) : null;
  if (round !== null) {
    steps[steps.length - 1] = round;
    return;
  }
  const shared = step.kind === 'work' && step.place !== null && before !== undefined;
  const group = shared && isBare(before) ? sharePlace(steps, step) : null;
  const ring = step.kind === 'work' ? chainClosed(steps, step) : null;
  // `1 dc into each tr, 1 dc, 2 ch, 1 dc into each corner sp`: put together it may belong to what stands before it.
  if (group !== null) putStep(cursor, steps, group);
  else if (ring !== null) steps.push(ring);
  else if (step.kind === 'shape') shapeLast(cursor, steps, step);
  else if (before?.kind === 'work' && isSpacesOnTheWay(before, step)) {
    // `sc in each dc around, 3 sc in each ch-2 sp`: the spaces are met on the way round, not after it.
    const what: What = 'place' in step && step.place?.kind === 'each' ? step.place.what : { kind: 'corner' };
    steps[steps.length - 1] = {
      ...before,
      corners: { body: bodyAt(step, step.span), what },
      span: together(before, step),
    };
  } else if (isCornersEach(before) && liesBetween(step)) {
    // `3 sc in each corner sp and sc in each dc around`: the same, told the other way about.
    steps[steps.length - 1] = {
      ...step,
      corners: { body: bodyAt(before, before.span), what: before.place.what },
      span: together(before, step),
    };
  } else if (step.kind !== 'corners') steps.push(step);
  else if (before?.kind === 'repeat rows')
    // `As Row 2, working 2 dc in each 2-ch sp`: of the row that is worked again.
    steps.push(step);
  else if (before?.kind === 'work' && before.place?.kind === 'each')
    steps[steps.length - 1] = {
      ...before,
      corners: withCornersOf(before.corners, step),
    };
  else
    cursor.faults.push(
      diagnose(
        'phrase/unread',
        { file: cursor.context.file, span: step.span },
        { words: 'working … in each corner', expected: 'a stitch worked in each st around before it,' },
      ),
    );
}

/** What goes into corners, with what goes into those that were told before. */
export function withCornersOf(before: CornerWork | undefined, { body, what }: CornersStep): CornerWork {
  return before === undefined ? { body, what } : { ...before, also: { body, what } };
}

/** The side that a repeat before it goes along, worked once more. */
function putSideAgain(cursor: Cursor, steps: Step[], step: NoteStep): void {
  const round = step.sideAgain === 'all' ? allSides(steps, step) : null;
  const side = round === null ? lastSide(steps, step) : null;
  if (round !== null) steps.splice(0, steps.length, ...round);
  else if (side !== null) steps.push(side);
  else
    cursor.faults.push(
      diagnose(
        'phrase/unread',
        { file: cursor.context.file, span: step.span },
        { words: step.text, expected: 'a repeat with a side of the border before it,' },
      ),
    );
}

/** What a chain counts as with the stitch behind it, told once both are worked. */
function putChainCounts(cursor: Cursor, steps: Step[], { kind, text, span }: NoteStep, counts: Counts): void {
  if (giveChainCounts(steps, counts)) steps.push({ kind, text, span });
  else
    cursor.faults.push(
      diagnose(
        'phrase/unread',
        { file: cursor.context.file, span },
        { words: text, expected: 'a chain that the row begins with before it,' },
      ),
    );
}

/** What has no place of its own may go into that of the next step. */
function isBare(step: Step): boolean {
  return step.kind === 'chain' || (step.kind === 'work' && step.place === null);
}

/** `Join with sc in first dc of any 5-dc group` where a row begins: yarn is joined there, and nothing is closed. */
function joinsAnew(
  cursor: Cursor,
  steps: readonly Step[],
  { stitch, place, ring, span }: JoinStep,
): Step | null {
  if (ring || place === null || steps.some(({ kind }) => kind !== 'yarn' && kind !== 'note')) return null;
  // `join at the corner` closes nothing either.
  const corner = place.kind === 'next' && place.here === true && place.what.kind === 'corner';
  const anywhere = corner || place.kind === 'any' || (place.kind === 'of-group' && place.any === true);
  const said = steps.findLast((step) => step.kind === 'yarn');
  const [only, second] = cursor.context.yarns;
  const yarn = said?.yarn ?? (second === undefined ? (only ?? null) : null);
  const where: Place = corner ? { kind: 'any', what: place.what, span: place.span } : place;
  return anywhere ? { kind: 'yarn', action: 'join', yarn, stitch, place: where, span } : null;
}

/** What a step works, as it is worked where it is met. */
function bodyAt(step: Step, span: ShapeStep['span']): readonly Step[] {
  const here: Place = { kind: 'same', what: { kind: 'st' }, asJoin: false, span };
  return step.kind === 'group' ? step.body : step.kind === 'work' ? [{ ...step, place: here }] : [];
}

function together(first: Step, last: Step): ShapeStep['span'] {
  return { start: first.span.start, end: last.span.end };
}

/** `ch 24, sl st in first ch`: a ring, though the word is not said. */
function chainClosed(steps: readonly Step[], { stitch, times, place, span }: WorkStep): Step | null {
  if (stitch.kind !== 'stitch' || stitch.id !== 'sl-st' || times !== null) return null;
  const first = place?.kind === 'first' && place.what.kind === 'ch';
  const before = steps.filter(({ kind }) => kind !== 'yarn' && kind !== 'note');
  const closes = first && before.length === 1 && before[0]?.kind === 'chain';
  return closes ? { kind: 'join', stitch, place, ring: true, span } : null;
}

/** Spaces worked into each, said after stitches worked into each to the end: read as one step. */
export function isSpacesOnTheWay(before: WorkStep, step: Step): boolean {
  if (step.kind !== 'work' && step.kind !== 'group') return false;
  const { place } = before;
  const toEnd = place?.kind === 'each' && place.stop.kind === 'end' && before.corners === undefined;
  const stitches = place?.kind === 'each' && (place.what.kind === 'st' || place.what.kind === 'stitch');
  const next = step.place;
  return toEnd && stitches && next?.kind === 'each' && next.what.kind === 'space' && next.stop.kind === 'end';
}

type EachStep = (WorkStep | GroupStep) & { readonly place: Extract<Place, { kind: 'each' }> };

/** What lies between spaces that were each worked into to the end before it: read with them as one step. */
export function liesBetween(step: Step): step is WorkStep {
  return step.kind === 'work' && step.corners === undefined && goesBetween(step);
}

export function isCornersEach(step: Step | undefined): step is EachStep {
  if (step?.kind !== 'work' && step?.kind !== 'group') return false;
  const { place } = step;
  return (
    place?.kind === 'each' && place.stop.kind === 'end' && isCornerPlace(place.what) && !('corners' in step)
  );
}

function isCornerPlace(what: What): boolean {
  return what.kind === 'corner' || what.kind === 'space';
}

/** In each stitch, or in each space that is at no corner, to the end. */
function goesBetween({ place }: WorkStep): boolean {
  if (place?.kind !== 'each' || place.stop.kind === 'times') return false;
  const { what } = place;
  return what.kind === 'st' || what.kind === 'stitch' || (what.kind === 'space' && !what.corner);
}

/** What is gained or lost belongs to the stitch before it, which goes into each of something. */
function shapeLast(cursor: Cursor, steps: Step[], { does, n, where, span }: ShapeStep): void {
  const before = steps[steps.length - 1];
  if (before?.kind === 'work' && before.place?.kind === 'each' && isOne(before.times))
    steps[steps.length - 1] = {
      ...before,
      shaping: { does, n, where },
      span: { start: before.span.start, end: span.end },
    };
  else
    cursor.faults.push(
      diagnose(
        'phrase/unread',
        { file: cursor.context.file, span },
        { words: textOf(cursor, span), expected: 'a stitch worked in each st before it,' },
      ),
    );
}

/** UK `1 dc in each st` is `dc in each st`. */
function isOne(times: Num | null): boolean {
  return times === null || times.values.every((value) => value === 1);
}

function textOf(cursor: Cursor, span: ShapeStep['span']): string {
  const at = cursor.tokens.findIndex((_, i) => spanAt(cursor, i).start >= span.start);
  return at < 0 ? '' : textSince(cursor, at);
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
