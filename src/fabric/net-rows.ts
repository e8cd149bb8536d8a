/**
 * Rows of squares behind one that has too few or too many of them: a square goes over whatever stands below, so the rest
 * can be worked on the row before that one, and a slip of the pen is told once.
 */

import type { Step } from '../notation/tree.ts';
import type { Top } from './row-start.ts';
import { squareNamed } from './work-square.ts';
import type { Worker } from './worker.ts';

/** The first of a row's steps that makes squares of filet: rows that repeat it have the same one. */
export function firstSquares(worker: Worker, steps: readonly Step[]): Step | undefined {
  return steps.find(
    (step) =>
      step.kind === 'square' ||
      (step.kind === 'work' &&
        step.stitch.kind === 'special' &&
        squareNamed(worker, step.stitch.name) !== null),
  );
}

/** A row's top as the next row of the same width would leave it. */
export function asWideAs(top: Top): Top {
  const side = top.side === null ? null : top.side === 'RS' ? 'WS' : 'RS';
  return { ...top, sites: [...top.sites].reverse(), side, turned: true };
}
