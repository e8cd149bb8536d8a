/** A row as the times of a film name it, `Rnd 3`, `Rows 4-15`, `Foundation`, in; the row of a fabric that it means out. */

import type { Fabric, FabricRow } from '../fabric/fabric.ts';
import type { Unit } from '../notation/line.ts';

const NUMBERED = /^(rows?|rnds?|rounds?|r)\.?\s*(\d+)(?:\s*(?:-|–|to)\s*\d+|\s+on)?:?$/i;

/** An index of `fabric.rows`; null where the part has no such row. Of several rows the first is meant. */
export function findRow(fabric: Fabric, part: string, written: string): number | null {
  const { firstRow, endRow } = fabric.parts.find(({ name }) => name === part) ?? { firstRow: 0, endRow: 0 };
  const numbered = NUMBERED.exec(written);
  for (let row = firstRow; row < endRow; row += 1) {
    const found = fabric.rows[row];
    if (found === undefined) continue;
    const meant =
      numbered === null
        ? sameWords(found.label, written)
        : found.number === Number(numbered[2]) && isOfUnit(found, unitOf(numbered[1] ?? ''));
    if (meant) return row;
  }
  return null;
}

/** `R3` may be either. */
function unitOf(word: string): Unit | null {
  if (word.toLowerCase() === 'r') return null;
  return word.toLowerCase().startsWith('row') ? 'row' : 'round';
}

function isOfUnit(row: FabricRow, unit: Unit | null): boolean {
  return unit === null || row.unit === unit;
}

function sameWords(label: string, written: string): boolean {
  return label.trim().toLowerCase() === written.replace(/:$/, '').trim().toLowerCase();
}
