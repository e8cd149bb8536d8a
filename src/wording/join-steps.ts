/** Steps with their words in, one text out: commas between, a sentence of its own for fastening off, capitals and stops. */

import type { Step } from '../notation/tree.ts';
import type { Voice } from './voice.ts';

export interface WordedStep {
  readonly step: Step;
  readonly words: string;
}

/** `inside` a bracket or a repeat nothing begins a sentence of its own. */
export function joinSteps(steps: readonly WordedStep[], voice: Voice, where: 'inside' | 'line'): string {
  let text = '';
  for (const [i, { step, words }] of steps.entries()) {
    const before = steps[i - 1]?.step;
    if (before === undefined) text += words;
    else if (where === 'line' && step.kind === 'fasten off') text += `. ${capitalised(words)}`;
    // An aside belongs to what it follows: `3 sc in next st (corner made)`.
    else if (step.kind === 'note' && words.startsWith('(')) text += ` ${words}`;
    // The spread of "work 21 sc evenly" has commas of its own.
    else if (before.kind === 'evenly' && voice.spreads.has(before)) text += `; ${words}`;
    // `rep from * across, ending with sc in last st`.
    else if (before.kind === 'repeat' && before.endsWith !== undefined) text += ` ${words}`;
    else text += `, ${words}`;
  }
  return text;
}

/** A whole line: begins with a capital and ends with a stop. */
export function sentence(text: string): string {
  if (text === '') return '';
  return /[.!?]$/.test(text) ? capitalised(text) : `${capitalised(text)}.`;
}

/** The first letter, also where an asterisk or a bracket stands before it, but not after a number. */
export function capitalised(text: string): string {
  return text.replace(
    /^([*†‡([]*)(\p{Ll})/u,
    (_, marks: string, letter: string) => marks + letter.toUpperCase(),
  );
}
