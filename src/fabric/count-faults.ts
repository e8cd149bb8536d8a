/** A stated count and what the row makes in, what is to be said of the two out. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { describeCounted } from '../notation/describe-counted.ts';
import type { StatedCount } from '../notation/line.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { RowCount } from './row-count.ts';
import { countedByHalves, differences, notTold } from './row-count.ts';
import type { Worker } from './worker.ts';

interface Setting {
  readonly file: string;
  readonly size: string;
}

export interface Mismatch {
  readonly faults: readonly Diagnostic[];
  /** How many more the row makes than it states, of all that it states; null where the two agree. */
  readonly off: number | null;
}

/** One fault for a count that is not what the row makes; none where it is. `sum` words how the row comes to it. */
export function mismatch(
  row: string,
  stated: StatedCount,
  made: RowCount,
  worker: Worker,
  { file, size }: Setting,
  sum: () => string | null,
): Mismatch {
  const wrong = differences(stated, made, worker.sizeIndex, worker.terms);
  if (wrong.length === 0) return { faults: [], off: null };
  const at = { file, span: stated.span, sizes: [size] };
  const fault = diagnose('count/mismatch', at, { row, differences: wrong, sum: sum() });
  return { faults: [fault], off: wrong.reduce((off, each) => off + each.made - each.stated, 0) };
}

/** What is counted that no stitch tells, and what comes out only one of the ways the trade counts. */
export function softCountFaults(
  stated: StatedCount,
  made: RowCount,
  { sizeIndex, terms }: Worker,
  { file, size }: Setting,
): Diagnostic[] {
  const at = { file, sizes: [size] };
  const unchecked = notTold(stated, made, sizeIndex).map(({ span, what }) =>
    diagnose('count/not-checked', { ...at, span }, { thing: describeCounted(what, 2, terms) }),
  );
  const halved = countedByHalves(stated, made, sizeIndex).map(({ span, what, n }) => {
    const said = numberForSize(n, sizeIndex) ?? 0;
    const whole = (count: number): string => `${count} ${describeCounted(what, count, terms)}`;
    return diagnose('count/halves', { ...at, span }, { stated: whole(said), whole: whole(said - 1) });
  });
  return [...unchecked, ...halved];
}
