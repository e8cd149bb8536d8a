/** A number as a pattern writes it, `3` or `35 (44, 53)`, and one of its sizes in, the number of that size out. */

import type { Num } from './num.ts';

/** One number holds for all sizes; null where the size skips, or where the list is too short for it. */
export function numberForSize({ values }: Pick<Num, 'values'>, sizeIndex: number): number | null {
  return (values.length === 1 ? values[0] : values[sizeIndex]) ?? null;
}
