/** A number of the tree in, as printed out: one size's value, or all sizes' as `35 (44, 53)`, once where they agree. */

import type { Num } from '../notation/num.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { Numbers } from './voice.ts';

export function printNumber(n: Num, numbers: Numbers): string {
  return printValues(valuesFor(n, numbers));
}

/** `35 (44, 53)`; a hyphen where a size skips it. */
export function printValues(values: readonly (number | null)[]): string {
  const [first, ...rest] = values.map((value) => (value === null ? '-' : String(value)));
  if (first === undefined) return '';
  return rest.every((value) => value === first) ? first : `${first} (${rest.join(', ')})`;
}

/** Whether a noun after the number stands in the plural. */
export function isMany(n: Num, numbers: Numbers): boolean {
  return valuesFor(n, numbers).some((value) => value !== 1);
}

/** The one value that all sizes printed share, or null. */
export function soleValue(n: Num, numbers: Numbers): number | null {
  const values = valuesFor(n, numbers);
  const first = values[0] ?? null;
  return values.every((value) => value === first) ? first : null;
}

function valuesFor(n: Num, numbers: Numbers): readonly (number | null)[] {
  return numbers === 'all' ? n.values : [numberForSize(n, numbers)];
}
