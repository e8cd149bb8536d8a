/** Instructions in, every list of numbers in them, one number a size, with where it stands out. */

import type { Line } from '../notation/line.ts';
import type { Num } from '../notation/num.ts';

export interface NumberList {
  readonly n: Num;
  /** What the numbers are of: only a foundation chain and a row's count say how large a size is. */
  readonly of: 'foundation' | 'count' | 'other';
}

/** Lists that leave a size out, or give one number for all, are none. */
export function numberLists(lines: readonly Line[], sizes: number): NumberList[] {
  const found: NumberList[] = [];
  const first = lines.find(({ steps }) => steps.length > 0);
  for (const line of lines) {
    const counted = new Set<unknown>(line.stated?.entries.map(({ n }) => n));
    const opening = line === first ? line.steps.find((step) => step.kind === 'chain') : undefined;
    for (const n of numsIn(line)) {
      if (n.values.length !== sizes || n.values.includes(null)) continue;
      const of =
        opening?.kind === 'chain' && opening.n === n ? 'foundation' : counted.has(n) ? 'count' : 'other';
      found.push({ n, of });
    }
  }
  return found;
}

/** Wherever they stand in a line: labels, chains, places, repeats, counts. */
function numsIn(value: unknown): Num[] {
  if (typeof value !== 'object' || value === null) return [];
  if (isNum(value)) return [value];
  return Object.values(value).flatMap(numsIn);
}

function isNum(value: object): value is Num {
  return 'values' in value && Array.isArray(value.values) && 'span' in value;
}
