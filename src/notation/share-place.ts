/**
 * `3 tr, 2 ch, 3 tr into next sp` without brackets: leaflets say the place once, behind the last of what goes into it.
 * The steps of a row as they are read in, what shares a place put together out.
 */

import type { Num } from './num.ts';
import type { ChainStep, GroupStep, Place, Step, WorkStep } from './tree.ts';

type LaidDown = WorkStep | ChainStep;

/**
 * Takes from the end of `steps` what goes into the place of `last`: all that was said to, or what makes a whole with it
 * whose second half mirrors the first. Null, with nothing taken, where it stands alone.
 */
export function sharePlace(steps: Step[], last: WorkStep): GroupStep | null {
  const { place } = last;
  if (place === null || !(last.shares === true || isSpace(place))) return null;
  const before: LaidDown[] = [];
  for (let i = steps.length - 1; i >= 0; i -= 1) {
    const step = steps[i];
    if (step === undefined || !isLaidDown(step)) break;
    before.unshift(step);
  }
  // Two at least make a half, but for what is said to go there.
  if (before.length < (last.shares === true ? 1 : 2)) return null;
  const { shares: _, ...own } = last;
  const end: LaidDown = { ...own, place: null };
  const whole = [...before, end];
  for (let from = 0; from < before.length - 1 || (last.shares === true && from < before.length); from += 1) {
    const first = whole[from];
    if (first?.kind !== 'work') continue;
    const body = whole.slice(from);
    const risen = steps[steps.length - before.length + from - 1]?.kind === 'chain';
    if (last.shares !== true && !mirrors(body, risen)) continue;
    steps.length -= before.length - from;
    return { kind: 'group', body, place, span: { start: first.span.start, end: last.span.end } };
  }
  return null;
}

/** Only a space is worked into so; `1 dc, 2 ch, 1 dc in same st` has its first stitch in the next. */
function isSpace(place: Place): boolean {
  if (place.kind === 'ring') return true;
  if (!('what' in place) || place.kind === 'gap' || place.kind === 'below') return false;
  if ('n' in place && place.n !== null && place.n !== undefined) return false;
  return place.what.kind === 'space';
}

/** A chain, or `3 tr` with the number first and no place: `tr 3` goes along the stitches. */
function isLaidDown(step: Step): step is LaidDown {
  if (step.kind === 'chain') return step.counts === null && !('of' in step.n);
  const numbered = step.kind === 'work' && step.times !== null && step.stitch.span.start > step.span.start;
  return numbered && step.place === null && step.loop === 'both';
}

/** Whether the second half says what the first did backwards; a chain the row begins with may be one of the first stitches. */
function mirrors(body: readonly LaidDown[], risen: boolean): boolean {
  for (let i = 0; i < body.length / 2; i += 1) {
    const [one, other] = [body[i], body[body.length - 1 - i]];
    if (one === undefined || other === undefined || nameOf(one) !== nameOf(other)) return false;
    const fewer = i === 0 && risen ? 1 : 0;
    if (!isAsMany(numberOf(one), numberOf(other), 0) && !isAsMany(numberOf(one), numberOf(other), fewer))
      return false;
  }
  return true;
}

function nameOf(step: LaidDown): string {
  if (step.kind === 'chain') return 'ch';
  return step.stitch.kind === 'stitch' ? step.stitch.id : `special ${step.stitch.name}`;
}

function numberOf(step: LaidDown): Num | null {
  if (step.kind === 'work') return step.times;
  return 'of' in step.n ? null : step.n;
}

function isAsMany(one: Num | null, other: Num | null, fewer: number): boolean {
  return (
    one !== null &&
    other !== null &&
    one.values.every((n, size) => n !== null && n + fewer === other.values[size])
  );
}
