/** A row in, what is printed beside it out: its number, and its yarn where the pattern has several. */

import type { Fabric } from '../fabric/fabric.ts';

export function rowLabel(fabric: Fabric, row: number): string {
  const { number = null, first = 0, end = 0 } = fabric.rows[row] ?? {};
  if (number === null) return '';
  if (fabric.yarns.length < 2) return String(number);
  const letters = [...new Set(fabric.yarn.subarray(first, end))].flatMap((yarn) => fabric.yarns[yarn] ?? []);
  return `${number} ${letters.join('')}`;
}
