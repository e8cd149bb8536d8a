/** The row in hand, as far as it is worked, in; its count out. */

import { numberForSize } from '../notation/number-for-size.ts';
import type { Step } from '../notation/tree.ts';
import { countRow, type RowCount } from './row-count.ts';
import type { Worker } from './worker.ts';

/** `firstSpace` is the first of the row's spaces in the builder; `plan` what is known of the row besides. */
export function countWorked(
  worker: Worker,
  plan: { readonly number: number | null; readonly rows?: number },
  firstSpace: number,
): RowCount {
  const { builder, rowFirst, countedStart, row, specials, sizeIndex } = worker;
  const end = builder.kind.length;
  return countRow(builder, rowFirst, end, countedStart, firstSpace, row, {
    passes: passesIn(worker),
    number: plan.number,
    rows: plan.rows ?? 1,
    described: (name) => stitchesOf(specials.get(name)?.steps ?? [], sizeIndex),
  });
}

/** How often the row's repeats were worked in all. */
function passesIn({ ledger }: Worker): number {
  return ledger.reduce((passes, { of }) => passes + (of === 'pass' ? 1 : 0), 0);
}

/** The stitches that a special stitch is described as, where it is stitches in one place and nothing more; null otherwise. */
function stitchesOf(steps: readonly Step[], sizeIndex: number): readonly string[] | null {
  const ids: string[] = [];
  for (const step of steps) {
    const inner = step.kind === 'group' ? stitchesOf(step.body, sizeIndex) : null;
    if (inner !== null) ids.push(...inner);
    else if (step.kind !== 'work' || step.stitch.kind !== 'stitch') return null;
    else {
      const times = step.times === null ? 1 : (numberForSize(step.times, sizeIndex) ?? 0);
      for (let n = 0; n < times; n += 1) ids.push(step.stitch.id);
    }
  }
  return ids.length === 0 ? null : ids;
}
