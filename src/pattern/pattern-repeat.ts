/** A pattern in, its repeat out: the stitches of "a multiple of …" across, the rows repeated "to height" up. */

import type { Multiple } from '../notation/num.ts';
import type { Step } from '../notation/tree.ts';
import type { Pattern } from './pattern.ts';

/** The first "a multiple of" in the pattern, which needs a number of repeats. */
export function firstMultiple({ parts }: Pick<Pattern, 'parts'>): Multiple | null {
  for (const part of parts) {
    for (const line of part.instructions.lines) {
      const found = inSteps(line.steps);
      if (found !== null) return found;
    }
  }
  return null;
}

/** How many rows are repeated until a size has its height; 0 where all rows are numbered. */
export function rowsRepeated(pattern: Pattern, sizeIndex: number): number {
  for (const { instructions } of pattern.parts) {
    for (const { steps, sizes } of instructions.lines) {
      if (sizes !== undefined && !sizes.includes(sizeIndex)) continue;
      for (const step of steps)
        if (step.kind === 'repeat rows' && step.until.kind === 'height') return step.last ?? step.rows.length;
    }
  }
  return 0;
}

function inSteps(steps: readonly Step[]): Multiple | null {
  for (const step of steps) {
    if (step.kind === 'chain' && 'of' in step.n) return step.n;
    if (step.kind === 'group' || step.kind === 'bracket' || step.kind === 'repeat') {
      const found = inSteps(step.body);
      if (found !== null) return found;
    }
  }
  return null;
}
