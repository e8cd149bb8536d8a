/** The worked sizes of a pattern -> their rows side by side, each size's count in a column of its own. */

import type { CompiledSize } from '../compiled.ts';
import { chainsOf } from '../row-table/explain-rows.ts';

export interface CountedRow {
  readonly part: string;
  /** `Row 4`, or the first and last of rows after one another that count the same. */
  readonly from: string;
  readonly to: string;
  /** A size without the row has null. */
  readonly counts: readonly (RowCount | null)[];
}

export interface RowCount {
  readonly stitches: number;
  readonly spaces: number;
  /** Of a row of chains only. */
  readonly chains: number;
}

export function sizeCounts(sizes: readonly CompiledSize[]): readonly CountedRow[] {
  const rowsOf = sizes.map(namedRows);
  const rows = inOneOrder(rowsOf.map((rows) => [...rows.keys()])).map((key): CountedRow => {
    const [part = '', label = ''] = JSON.parse(key) as string[];
    const counts = rowsOf.map((rows) => {
      return rows.get(key) ?? null;
    });
    return { part, from: label, to: label, counts };
  });
  return alikeTogether(rows);
}

/** Rows by part and label, and by how often both came before. */
function namedRows({ fabric, accounts }: CompiledSize): ReadonlyMap<string, RowCount> {
  const foundations = new Map(
    accounts.flatMap((account) => (account.foundation ? [[account.first, chainsOf(account)] as const] : [])),
  );
  const times = new Map<string, number>();
  return new Map(
    fabric.rows.map((row) => {
      const part = fabric.parts[row.part]?.name ?? '';
      const name = JSON.stringify([part, row.label]);
      const before = times.get(name) ?? 0;
      times.set(name, before + 1);
      const { stitches, spaces, first } = row;
      return [
        JSON.stringify([part, row.label, before]),
        { stitches, spaces, chains: foundations.get(first) ?? 0 },
      ];
    }),
  );
}

/** Every key once; one that only some sizes have stands behind the one it follows there. */
function inOneOrder(lists: readonly (readonly string[])[]): readonly string[] {
  const next = new Map<string | null, string[]>();
  const placed = new Set<string>();
  for (const list of lists) {
    let before: string | null = null;
    for (const key of list) {
      if (!placed.has(key)) {
        placed.add(key);
        next.set(before, [key, ...(next.get(before) ?? [])]);
      }
      before = key;
    }
  }
  const order: string[] = [];
  const waiting = [...(next.get(null) ?? [])].reverse();
  for (let key = waiting.pop(); key !== undefined; key = waiting.pop()) {
    order.push(key);
    waiting.push(...[...(next.get(key) ?? [])].reverse());
  }
  return order;
}

function alikeTogether(rows: readonly CountedRow[]): readonly CountedRow[] {
  const together: CountedRow[] = [];
  for (const row of rows) {
    const last = together.at(-1);
    const alike = last?.part === row.part && JSON.stringify(last.counts) === JSON.stringify(row.counts);
    if (last !== undefined && alike && row.from !== '')
      together[together.length - 1] = { ...last, to: row.to };
    else together.push(row);
  }
  return together;
}
