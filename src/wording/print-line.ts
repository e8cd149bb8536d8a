/** Trees in, text out: steps as one sentence, and a whole labelled line with its count, in the tree's own forms. */

import type { Line } from '../notation/line.ts';
import type { Step } from '../notation/tree.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { joinSteps, sentence } from './join-steps.ts';
import { printStated } from './print-count.ts';
import { printLabel } from './print-label.ts';
import { printStep } from './print-step.ts';
import { type Numbers, plainVoice, type Voice } from './voice.ts';

/** `Sc in 2nd ch from hook, sc in next ch, turn.`, with all sizes' numbers. */
export function printSteps(steps: readonly Step[], terms: Terms): string {
  return wordSteps(steps, plainVoice(terms, 'all'));
}

/** `Row 2 (WS): Ch 1, sc in each st across, turn. (12 sts)` */
export function printLine(line: Line, terms: Terms, numbers: Numbers): string {
  const voice = plainVoice(terms, numbers);
  const label = printLabel(line, voice);
  const count = line.stated === null ? null : `(${printStated(line.stated, voice)})`;
  const text = [wordSteps(line.steps, voice), count]
    .filter((piece) => piece !== null && piece !== '')
    .join(' ');
  return label === null ? text : `${label}: ${text}`;
}

export function wordSteps(steps: readonly Step[], voice: Voice): string {
  const worded = steps.map((step) => ({ step, words: printStep(step, voice) }));
  return sentence(joinSteps(worded, voice, 'line'));
}
