/** Instructions and the names of special stitches that are not described in, the lines that use them marked unreadable out. */

import type { Instructions } from '../notation/line.ts';
import type { Step } from '../notation/tree.ts';

/** What they would make can't be told, so the lines are not worked; the missing description is the fault, told once. */
export function withoutUndescribed(
  instructions: Instructions,
  undescribed: ReadonlySet<string>,
): Instructions {
  if (undescribed.size === 0) return instructions;
  const lines = instructions.lines.map((line) =>
    line.readable && line.steps.some((step) => uses(step, undescribed)) ? { ...line, readable: false } : line,
  );
  return { lines };
}

/** A special stitch made of one that is not described is itself not described whole. */
export function allUndescribed(
  without: readonly string[],
  described: ReadonlyMap<string, readonly Step[]>,
): ReadonlySet<string> {
  const names = new Set(without);
  for (let before = -1; before !== names.size; ) {
    before = names.size;
    for (const [name, steps] of described) if (steps.some((step) => uses(step, names))) names.add(name);
  }
  return names;
}

function uses(step: Step, names: ReadonlySet<string>): boolean {
  if ('stitch' in step && step.stitch?.kind === 'special' && names.has(step.stitch.name)) return true;
  return 'body' in step && step.body.some((inner) => uses(inner, names));
}
