/** What is said beside the stitches in, flags on those it is said of out: how the hand went, where yarn is joined and cut. */

import type { FastenOffStep } from '../notation/end-steps.ts';
import type { Step } from '../notation/tree.ts';
import { addFlag, type Builder } from './builder.ts';
import { FLAG } from './fabric.ts';

/** After a step was worked that made the stitches from `first` on. */
export function markMade(builder: Builder, step: Step, before: Step | undefined, first: number): void {
  if (step.kind === 'fasten off') {
    markCut(builder, step);
    return;
  }
  const end = builder.kind.length;
  if (end === first) return;
  if (step.kind === 'yarn' ? step.action === 'join' : before?.kind === 'yarn' && joinsWithout(before))
    addFlag(builder, first, FLAG.joinsYarn);
  if (before?.kind !== 'note' || before.hand === undefined) return;
  for (let i = first; i < end; i += 1) addFlag(builder, i, FLAG[before.hand]);
}

/** `Join B, ch 1`: the yarn comes in with what is made next. */
function joinsWithout({ action, place }: Extract<Step, { kind: 'yarn' }>): boolean {
  return action === 'join' && place === null;
}

function markCut(builder: Builder, step: FastenOffStep): void {
  const letter = step.yarn === null ? -1 : builder.yarns.indexOf(step.yarn);
  const last = letter < 0 ? builder.kind.length - 1 : builder.yarn.lastIndexOf(letter);
  if (last >= 0) addFlag(builder, last, FLAG.cut);
}
