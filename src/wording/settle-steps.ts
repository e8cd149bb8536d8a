/** Steps with every size's numbers in, the steps that one size works out: what it skips is left out. */

import type { Num } from '../notation/num.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { Place, RepeatStep, Step } from '../notation/tree.ts';

export function settleSteps(steps: readonly Step[], size: number): Step[] {
  return steps.flatMap((step) => settleStep(step, size));
}

function settleStep(step: Step, size: number): Step[] {
  const skips = (n: Num | null): boolean => n !== null && (numberForSize(n, size) ?? 0) === 0;
  switch (step.kind) {
    case 'work':
      return skips(step.times) || skips(placeNumber(step.place)) ? [] : [step];
    case 'chain':
      return !('of' in step.n) && skips(step.n) ? [] : [step];
    case 'skip':
    case 'evenly':
      return skips(step.n) ? [] : [step];
    case 'group': {
      const body = settleSteps(step.body, size);
      return body.length === 0 || skips(placeNumber(step.place)) ? [] : [{ ...step, body }];
    }
    case 'bracket': {
      const body = settleSteps(step.body, size);
      const none = step.stop.kind === 'times' && !step.stop.more && skips(step.stop.n);
      return body.length === 0 || none ? [] : [{ ...step, body }];
    }
    case 'repeat':
      return settleRepeat(step, size, skips);
    case 'repeat rows':
      return step.until.kind === 'times' && skips(step.until.n) ? [] : [step];
    default:
      return [step];
  }
}

function settleRepeat(step: RepeatStep, size: number, skips: (n: Num) => boolean): Step[] {
  const body = settleSteps(step.body, size);
  if (body.length === 0) return [];
  if (step.stop.kind === 'times' && skips(step.stop.n)) {
    // "0 more times" leaves the pass that was written, up to where the last pass ends.
    if (!step.stop.more) return [];
    return step.lastPassEnds === null ? body : settleSteps(step.body.slice(0, step.lastPassEnds), size);
  }
  const ends = step.lastPassEnds;
  const lastPassEnds = ends === null ? null : settleSteps(step.body.slice(0, ends), size).length;
  return [{ ...step, body, lastPassEnds }];
}

function placeNumber(place: Place | null): Num | null {
  if (place === null) return null;
  return place.kind === 'next' || place.kind === 'first' || place.kind === 'last' ? place.n : null;
}
