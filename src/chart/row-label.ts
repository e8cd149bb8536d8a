/** A row in, what is printed beside it out: its number, and its yarn where the pattern has several. */

import type { Fabric } from '../fabric/fabric.ts';

/** A round stands close to its neighbours: its yarn is named where it is not the last round's. */
export function rowLabel(fabric: Fabric, row: number): string {
  const { number = null, closing = 'flat', onto = null } = fabric.rows[row] ?? {};
  if (number === null) return '';
  const letters = yarnLetters(fabric, row);
  if (fabric.yarns.length < 2) return String(number);
  if (closing !== 'flat' && onto !== null && letters === yarnLetters(fabric, onto)) return String(number);
  return `${number} ${letters}`;
}

function yarnLetters(fabric: Fabric, row: number): string {
  const { first = 0, end = 0 } = fabric.rows[row] ?? {};
  return [...new Set(fabric.yarn.subarray(first, end))].flatMap((yarn) => fabric.yarns[yarn] ?? []).join('');
}
