/** Steps one by one in, the steps of the row out: what belongs to the step before it is put together with that. */

import { diagnose } from '../diagnostics/catalogue.ts';
import { allSides, spacesAndCorners } from './border-of-spaces.ts';
import type { Counts } from './chain-counts.ts';
import { withCornersOf } from './corner-work.ts';
import type { Cursor } from './cursor.ts';
import { spanAt, textSince } from './cursor.ts';
import { lastOf } from './last-of.ts';
import type { Num } from './num.ts';
import { lastSide } from './read-border-side.ts';
import { giveChainCounts } from './read-counts-together.ts';
import { sharePlace } from './share-place.ts';
import type {
  CornersStep,
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
 * Puts a step behind those before it, or together with the last of them. Steps are of many shapes, and to look into one that
 * may be of any is slow: so what kind it is is asked once.
 */
export function putStep(cursor: Cursor, steps: Step[], step: Step): void {
  switch (step.kind) {
    case 'work':
      putWork(cursor, steps, step);
      break;
    case 'group':
      putGroup(steps, step);
      break;
    case 'join':
      steps.push(joinsAnew(cursor, steps, step) ?? step);
      break;
    case 'note':
      putNote(cursor, steps, step);
      break;
    case 'shape':
      shapeLast(cursor, steps, step);
      break;
    case 'corners':
      cornersLast(cursor, steps, step);
      break;
    case 'repeat rows':
      cursor.repeatsRows = true;
      steps.push(step);
      break;
    default:
      // Nothing else has to do with the step before it.
      steps.push(step);
  }
}

function putWork(cursor: Cursor, steps: Step[], step: WorkStep): void {
  const before = lastOf(steps);
  switch (before?.kind) {
    case 'work':
      putBehindWork(cursor, steps, step, before);
      break;
    case 'group':
      if (isCornersEach(before) && liesBetween(step)) goRoundCorners(steps, before, step);
      else steps.push(step);
      break;
    case 'chain':
      putBehindChain(cursor, steps, step);
      break;
    case 'yarn':
    case 'note':
      steps.push(chainClosed(steps, step) ?? step);
      break;
    default:
      steps.push(step);
  }
}

/** What has no place of its own may go into that of the step. */
function putBehindChain(cursor: Cursor, steps: Step[], step: WorkStep): void {
  const group = step.place === null ? null : sharePlace(steps, step);
  if (group === null) steps.push(picotClosed(cursor, steps, step) ?? chainClosed(steps, step) ?? step);
  else putStep(cursor, steps, group);
}

function putBehindWork(cursor: Cursor, steps: Step[], step: WorkStep, before: WorkStep): void {
  const round = spacesAndCorners(before, step);
  const group =
    round === null && before.place === null && step.place !== null ? sharePlace(steps, step) : null;
  if (round !== null) steps[steps.length - 1] = round;
  // `1 dc into each tr, 1 dc, 2 ch, 1 dc into each corner sp`: put together it may belong to what stands before it.
  else if (group !== null) putStep(cursor, steps, group);
  else if (isSpacesOnTheWay(before, step)) meetOnTheWay(steps, before, step);
  else if (isCornersEach(before) && liesBetween(step)) goRoundCorners(steps, before, step);
  else steps.push(step);
}

function putGroup(steps: Step[], step: GroupStep): void {
  const before = lastOf(steps);
  if (before?.kind === 'work' && isSpacesOnTheWay(before, step)) meetOnTheWay(steps, before, step);
  else steps.push(step);
}

/** `sc in each dc around, 3 sc in each ch-2 sp`: the spaces are met on the way round, not after it. */
function meetOnTheWay(steps: Step[], before: WorkStep, step: WorkStep | GroupStep): void {
  const what: What = step.place?.kind === 'each' ? step.place.what : { kind: 'corner' };
  steps[steps.length - 1] = {
    ...before,
    corners: { body: bodyAt(step, step.span), what },
    span: together(before, step),
  };
}

/** `3 sc in each corner sp and sc in each dc around`: the same, told the other way about. */
function goRoundCorners(steps: Step[], before: EachStep, step: WorkStep): void {
  steps[steps.length - 1] = {
    ...step,
    corners: { body: bodyAt(before, before.span), what: before.place.what },
    span: together(before, step),
  };
}

function putNote(cursor: Cursor, steps: Step[], step: NoteStep): void {
  if (step.sideAgain !== undefined) putSideAgain(cursor, steps, step);
  else if (step.chainCounts !== undefined) putChainCounts(cursor, steps, step, step.chainCounts);
  else if (step.seam === true) putSeam(cursor, steps, step);
  else {
    if (step.rows !== undefined) cursor.repeatsRows = true;
    steps.push(step);
  }
}

/** A chain that a seam begins with is told with it. */
function putSeam(cursor: Cursor, steps: Step[], step: NoteStep): void {
  const before = lastOf(steps);
  if (before?.kind !== 'chain') {
    steps.push(step);
    return;
  }
  const span = together(before, step);
  steps[steps.length - 1] = { ...step, text: textOf(cursor, span), span };
}

/** What is worked in corners belongs to the stitch before it, which goes into each of something. */
function cornersLast(cursor: Cursor, steps: Step[], step: CornersStep): void {
  const before = lastOf(steps);
  // `As Row 2, working 2 dc in each 2-ch sp`: of the row that is worked again.
  if (before?.kind === 'repeat rows') steps.push(step);
  else if (before?.kind === 'work' && before.place?.kind === 'each')
    steps[steps.length - 1] = { ...before, corners: withCornersOf(before.corners, step) };
  else
    cursor.faults.push(
      diagnose(
        'phrase/unread',
        { file: cursor.context.file, span: step.span },
        { words: 'working … in each corner', expected: 'a stitch worked in each st around before it,' },
      ),
    );
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

/** `sc in next st, ch 3, sl st in first ch` in a repeat: a picot is closed on the first of the chains just made. */
function picotClosed(cursor: Cursor, steps: readonly Step[], step: WorkStep): WorkStep | null {
  const { stitch, times, place } = step;
  const [made, chain] = steps.slice(-2);
  const first = place?.kind === 'first' && place.n === null && place.what.kind === 'ch';
  const slips = stitch.kind === 'stitch' && stitch.id === 'sl-st' && times === null;
  if (!first || !slips || cursor.depth === 0 || chain?.kind !== 'chain' || 'of' in chain.n) return null;
  if (made?.kind !== 'work' && made?.kind !== 'group') return null;
  return { ...step, place: { kind: 'from-hook', nth: chain.n, span: place.span } };
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
  const before = lastOf(steps);
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
