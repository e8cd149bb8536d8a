/** Which row stands for each of those that `rep last 2 rows` and "work even" ask for. */

import type { Line } from '../notation/line.ts';
import type { RepeatRowsStep, Step, StitchName, WorkStep } from '../notation/tree.ts';
import { stitchById } from '../stitches/table.ts';

/** The row that `rep last 2 rows` comes to at its ith; for "work even" the last row with one stitch in each. */
export function lastRow(
  history: readonly Line[],
  { last = 1, even, inStitch, atEdge }: RepeatRowsStep,
  i: number,
): Line | undefined {
  const source = history[history.length - last + (i % last)];
  if (source === undefined || even !== true) return source;
  const worked = firstWork(source.steps);
  if (worked === null) return undefined;
  const place = {
    kind: 'each',
    what: { kind: 'st' },
    stop: { kind: 'end', word: 'across', span: worked.span },
    span: worked.span,
  } as const;
  const before = source.steps.slice(0, source.steps[0]?.kind === 'chain' ? 1 : 0);
  const after = source.steps.filter((step) => step.kind === 'join' || step.kind === 'turn');
  const each: Step = {
    kind: 'work',
    stitch: inStitch ?? plainStitch(worked.stitch),
    times: null,
    place,
    loop: 'both',
    skipped: null,
    ...(atEdge === undefined
      ? {}
      : { shaping: { does: atEdge.does, n: atEdge.n, where: shapedEnd(history.at(-1), i) } }),
    span: worked.span,
  };
  return { ...source, steps: [...before, each, ...after], stated: null };
}

/**
 * An edge lies where a row ends and where the next one begins, by turns. The row before turned at it where it left the
 * rest to the other side of a neck; otherwise it began or joined there.
 */
function shapedEnd(before: Line | undefined, i: number): 'start' | 'end' {
  const left = before?.steps.some(({ kind }) => kind === 'leave') === true;
  return left === (i % 2 === 0) ? 'start' : 'end';
}

/** Of a row that begins with a decrease the stitch it is made of. */
function plainStitch(stitch: StitchName): StitchName {
  if (stitch.kind !== 'stitch') return stitch;
  const { uses, legOf } = stitchById(stitch.id);
  return uses > 1 ? { ...stitch, id: legOf } : stitch;
}

function firstWork(steps: readonly Step[]): WorkStep | null {
  for (const step of steps) {
    if (step.kind === 'work') return step;
    const inside = 'body' in step ? firstWork(step.body) : null;
    if (inside !== null) return inside;
  }
  return null;
}
