/**
 * A pattern in a size of a maker's own, and how long its sides are in the size it is made from and in hers, in; the same
 * pattern with `work 23 sc evenly along row ends` written for her sides out. More rows take more stitches along them.
 *
 * As many as stand to hers as the designer's do to the designer's, and of those about as near the ones that are spread
 * alike from both ends. An edging with a repeat of its own may not come out over that number: others near it follow.
 */

import { nearestFitting } from '../measure/edge-plan.ts';
import type { EdgedPiece, EdgeSide } from '../measure/edge-sides.ts';
import type { Edge } from '../notation/edge.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { EvenlyStep, Step } from '../notation/tree.ts';
import type { Pattern } from '../pattern/pattern.ts';

const SIDE_OF: Readonly<Partial<Record<Edge, EdgeSide['side']>>> = {
  'row ends': 'sides',
  foundation: 'bottom',
  'last row': 'top',
};

/** How far beside the nearest number others are offered. Our own choice: further off the edge would no longer lie flat. */
const BESIDE = 6;

/** The nearest first; none where nothing is spread along a side that has changed. */
export function withOwnEdging(
  pattern: Pattern,
  index: number,
  before: EdgedPiece | null,
  after: EdgedPiece | null,
): readonly Pattern[] {
  if (before === null || after === null) return [];
  const offs = Array.from({ length: 2 * BESIDE + 1 }, (_, i) => (i % 2 === 0 ? i / 2 : -(i + 1) / 2));
  const fitted = offs.map((off) => edged(pattern, (step) => refit(step, index, before, after, off)));
  return fitted[0] === pattern ? [] : fitted;
}

function refit(
  step: EvenlyStep,
  index: number,
  before: EdgedPiece,
  after: EdgedPiece,
  off: number,
): EvenlyStep {
  const side = SIDE_OF[step.edge];
  const [was, is] = [before, after].map(({ sides }) => sides.find((one) => one.side === side));
  const n = numberForSize(step.n, index);
  if (was === undefined || is === undefined || n === null || step.side !== undefined) return step;
  if (was.places === is.places) return step;
  const grown = (is.flat ?? is.places) / (was.flat ?? was.places);
  const fitting = Math.max(1, nearestFitting(n * grown, is.places, null) + off);
  const values = step.n.values.length === 1 ? [fitting] : step.n.values.with(index, fitting);
  return { ...step, n: { ...step.n, values } };
}

/** The same pattern, and not one like it, where no step is changed. */
function edged(pattern: Pattern, change: (step: EvenlyStep) => EvenlyStep): Pattern {
  let changed = false;
  const stepsOf = (steps: readonly Step[]): readonly Step[] =>
    steps.map((step): Step => {
      if (step.kind === 'bracket' || step.kind === 'repeat') return { ...step, body: stepsOf(step.body) };
      if (step.kind !== 'evenly') return step;
      const other = change(step);
      changed ||= other !== step;
      return other;
    });
  const parts = pattern.parts.map((part) => ({
    ...part,
    instructions: { lines: part.instructions.lines.map((line) => ({ ...line, steps: stepsOf(line.steps) })) },
  }));
  return changed ? { ...pattern, parts } : pattern;
}
