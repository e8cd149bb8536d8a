/** Steps of a row -> the stretch whose number is left to the maker. */

import type { NoteStep, Step } from './tree.ts';

/** The stretch of a line that is left to the maker so; null where it has none. */
export function unspreadIn(steps: readonly Step[]): NoteStep | null {
  for (const step of steps) {
    if (step.kind === 'note' && step.unspread === true) return step;
    const inner = step.kind === 'repeat' || step.kind === 'bracket' ? unspreadIn(step.body) : null;
    if (inner !== null) return inner;
  }
  return null;
}
