/** The count a row's stitches make in, as printed out when the pattern states none: `37 sts`, `12 sc, 4 ch-2 sps`. */

import type { Fabric, FabricRow } from '../fabric/fabric.ts';
import type { Num } from '../notation/num.ts';
import type { What } from '../notation/tree.ts';
import { printWhat } from './print-name.ts';
import { isMany, printValues } from './print-number.ts';
import type { Voice } from './voice.ts';

/** Rows whose counts change are listed up to this many: `30, 36, 42 sts`. */
const LONGEST_LIST = 8;

/** What is counted, how many. */
interface Entry {
  readonly what: What;
  readonly n: number;
}

/**
 * The count of a line: of its row, or of all its rows when they are alike. `works` has one entry a size. Null for a
 * line that counts nothing, and for one whose rows go up and down.
 */
export function countWords(
  works: readonly { readonly fabric: Fabric; readonly rows: readonly number[] }[],
  voice: Voice,
): string | null {
  const bySize = works.map(({ fabric, rows }) => rows.flatMap((row) => entriesOf(fabric.rows[row])));
  const [first] = works;
  if (first === undefined || bySize.every((entries) => entries.length === 0)) return null;
  const alike = works.every(({ fabric, rows }) => {
    const words = rows.map((row) => JSON.stringify(entriesOf(fabric.rows[row])));
    return words.every((word) => word === words[0]);
  });
  if (alike)
    return mergedWords(
      works.map(({ fabric, rows }) => entriesOf(fabric.rows[rows[0] ?? -1])),
      voice,
    );
  return works.length === 1 ? listWords(first.fabric, first.rows, voice) : null;
}

/** `sts`, or stitches one by one and spaces by length where the row has spaces. */
function entriesOf(row: FabricRow | undefined): Entry[] {
  if (row === undefined || isFoundation(row)) return [];
  const stitches = Object.entries(row.byStitch).filter(([id, n]) => n > 0 && id !== 'ch' && id !== 'sl-st');
  if (stitches.length === 0 && row.spaces === 0) return [];
  const sts: Entry = { what: { kind: 'st' }, n: row.stitches };
  if (row.spaces === 0) return row.stitches === 0 ? [] : [sts];
  const named = stitches.map(([id, n]): Entry => ({ what: { kind: 'stitch', id }, n }));
  // Where chains or slip stitches are counted as well, the names would not add up to the count.
  const addsUp = stitches.reduce((sum, [, n]) => sum + n, 0) === row.stitches;
  const spaces = Object.entries(row.bySpace).map(([chains, n]): Entry => {
    return { what: { kind: 'space', chains: Number(chains), corner: false }, n };
  });
  return [...(addsUp ? named : [sts]), ...spaces];
}

/** Chains of their own before the first row: the text has said how many. */
function isFoundation(row: FabricRow): boolean {
  return row.unit === null && row.stitches === 0;
}

/** All sizes' entries as one list, 0 where a size has none of a kind. */
function mergedWords(bySize: readonly (readonly Entry[])[], voice: Voice): string {
  const kinds = new Map<string, What>();
  for (const entries of bySize) for (const { what } of entries) kinds.set(JSON.stringify(what), what);
  return [...kinds]
    .map(([key, what]) => {
      const values = bySize.map(
        (entries) => entries.find((entry) => JSON.stringify(entry.what) === key)?.n ?? 0,
      );
      const n: Num = { values, span: { start: 0, end: 0 } };
      return `${printValues(values)} ${printWhat(what, isMany(n, 'all'), voice)}`;
    })
    .join(', ');
}

/** `30, 36, 42 sts` for a few rows that each count more or each fewer, in stitches alone. */
function listWords(fabric: Fabric, rows: readonly number[], voice: Voice): string | null {
  const counts = rows
    .map((row) => fabric.rows[row])
    .map((row) => (row === undefined || row.spaces > 0 ? null : row.stitches));
  if (rows.length > LONGEST_LIST || counts.includes(null)) return null;
  const [a, b] = [counts[0] ?? 0, counts[1] ?? 0];
  const steady = counts.every(
    (count, i) => i === 0 || Math.sign((count ?? 0) - (counts[i - 1] ?? 0)) === Math.sign(b - a),
  );
  return steady && a !== b ? `${counts.join(', ')} ${printWhat({ kind: 'st' }, true, voice)}` : null;
}
