/** Lines that work a row: what they are called, where their label stands, and whether they turn. */

import type { Line } from '../notation/line.ts';
import type { Step } from '../notation/tree.ts';
import type { Span } from '../source/span.ts';

export function isWorked({ steps }: Line): boolean {
  return steps.some(({ kind }) => WORKS.has(kind)) && !steps.some(repeatsRows);
}

/** `Rep Rows 2 and 3`, also `[Rep Rows 2-7] twice`: the rows it names say what is done at their ends. */
export function repeatsRows(step: Step): boolean {
  if (step.kind === 'bracket' || step.kind === 'repeat') return step.body.some(repeatsRows);
  return step.kind === 'repeat rows';
}

/** A row of chains alone is a foundation, and nothing turns before the yarn is cut. */
const WORKS: ReadonlySet<Step['kind']> = new Set(['work', 'group', 'bracket', 'repeat']);

export function placeOfLabel({ label, span }: Line): Span {
  return label?.span ?? span;
}

export function turns(step: Step): boolean {
  return step.kind === 'turn' && step.what === 'turn';
}

export function nameOf({ label }: Line): string {
  if (label === null || label.kind === 'named') return '';
  return label.kind === 'next'
    ? `Next ${label.word.toLowerCase()}`
    : `${label.word} ${label.from.values[0] ?? ''}`;
}
