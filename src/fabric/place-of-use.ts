/** A special stitch's steps in, the same steps with its first place as the place it is used at out. */

import type { Step } from '../notation/tree.ts';

/** A special stitch that says `2 sc in next st` means the place it is used at. */
export function atPlaceOfUse(steps: readonly Step[]): readonly Step[] {
  const at = steps.findIndex((step) => step.kind === 'work' || step.kind === 'group' || step.kind === 'skip');
  const step = steps[at];
  if (step === undefined || (step.kind !== 'work' && step.kind !== 'group')) return steps;
  const { place } = step;
  if (place === null || place.kind !== 'next' || place.n !== null) return steps;
  const same: Step = { ...step, place: { kind: 'same', what: place.what, asJoin: false, span: place.span } };
  return [...steps.slice(0, at), same, ...steps.slice(at + 1)];
}
