/** Rows of stitches written out by hand in, the fabric they make out: for tests of what is read from a fabric. */

import {
  type Fabric,
  type FabricPart,
  type FabricRow,
  FLAG,
  INTO,
  NONE,
  type Space,
} from '../../src/fabric/fabric.ts';
import { stitchById } from '../../src/stitches/table.ts';

export interface Worked {
  readonly id: string;
  readonly into?: readonly number[];
  readonly where?: number;
  readonly flags?: number;
  /** The stitch a turning chain counts as. */
  readonly countsAs?: string;
  readonly yarn?: string;
}

export interface WorkedRow
  extends Partial<Omit<FabricRow, 'first' | 'end' | 'stitches' | 'spaces' | 'byStitch' | 'bySpace'>> {
  readonly work: readonly Worked[];
}

export function buildFabric(
  rows: readonly WorkedRow[],
  parts: readonly Partial<FabricPart>[],
  size = 'only',
): Fabric {
  const all = rows.flatMap((row, index) => row.work.map((worked) => ({ ...worked, row: index })));
  const stitches = [
    ...new Set(all.flatMap(({ id, countsAs }) => (countsAs === undefined ? [id] : [id, countsAs]))),
  ];
  const yarns = [...new Set(all.map(({ yarn }) => yarn ?? 'A'))];
  const counted = all.map(({ id, countsAs }) => countsAs ?? (stitchById(id).counted ? id : null));
  const intoStart = [0];
  for (const { into } of all) intoStart.push((intoStart.at(-1) ?? 0) + (into?.length ?? 0));
  const spaces = spacesIn(all, counted);
  let at = 0;
  const fabricRows = rows.map((row, index): FabricRow => {
    const first = at;
    at += row.work.length;
    const ids = counted.slice(first, at).filter((id) => id !== null);
    const own = spaces.filter((space) => space.row === index);
    return {
      label: '',
      unit: 'row',
      number: null,
      part: 0,
      side: null,
      direction: 'left',
      closing: 'flat',
      edging: false,
      onto: index === 0 ? null : index - 1,
      span: { start: 0, end: 0 },
      line: index,
      groups: {},
      stated: null,
      ...row,
      first,
      end: at,
      stitches: ids.length,
      spaces: own.length,
      byStitch: tally(ids),
      bySpace: tally(own.map((space) => String(space.end - space.first))),
    };
  });
  return {
    size,
    stitches,
    yarns,
    count: all.length,
    kind: Uint16Array.from(all, ({ id }) => stitches.indexOf(id)),
    countsAs: Int16Array.from(counted, (id) => (id === null ? NONE : stitches.indexOf(id))),
    row: Uint32Array.from(all, ({ row }) => row),
    yarn: Uint8Array.from(all, ({ yarn }) => yarns.indexOf(yarn ?? 'A')),
    where: Uint8Array.from(all, ({ where, into }) => where ?? (into === undefined ? INTO.nothing : INTO.top)),
    loop: new Uint8Array(all.length),
    flags: Uint16Array.from(all, ({ flags }, i) => (flags ?? 0) | (counted[i] === null ? 0 : FLAG.counted)),
    group: new Int32Array(all.length).fill(NONE),
    intoStart: Uint32Array.from(intoStart),
    into: Uint32Array.from(all.flatMap(({ into }) => into ?? [])),
    groups: [],
    spaces,
    rows: fabricRows,
    parts: parts.map((part, index) => ({
      name: `Part ${index + 1}`,
      firstRow: fabricRows.findIndex((row) => row.part === index),
      endRow: fabricRows.findLastIndex((row) => row.part === index) + 1,
      shape: 'flat',
      start: null,
      corners: 0,
      onto: null,
      ...part,
    })),
  };
}

/** `n` of one thing, or one made for each number from 0. */
export function times<T>(n: number, make: (i: number) => T): T[];
export function times(n: number, worked: Worked): Worked[];
export function times(n: number, work: Worked | ((i: number) => unknown)): unknown[] {
  return Array.from({ length: n }, (_, i) => (typeof work === 'function' ? work(i) : work));
}

/** A chain of its own before the first row. */
export function chainRow(chains: number): WorkedRow {
  return { label: 'Foundation', unit: null, work: times(chains, { id: 'ch' }) };
}

/** Plain rows of one stitch, numbered from `from`. */
export function plainRows(id: string, stitches: number, rows: number, from = 1): WorkedRow[] {
  return Array.from({ length: rows }, (_, i) => ({
    label: `Row ${from + i}`,
    number: from + i,
    work: times(stitches, { id }),
  }));
}

/** Rounds of one stitch, as many in each as given, closed as a spiral. */
export function rounds(id: string, counts: readonly number[]): WorkedRow[] {
  return counts.map((n, i) => ({
    label: `Rnd ${i + 1}`,
    unit: 'round',
    number: i + 1,
    closing: 'spiral',
    work: times(n, { id }),
  }));
}

function spacesIn(all: readonly (Worked & { row: number })[], counted: readonly (string | null)[]): Space[] {
  const spaces: Space[] = [];
  for (let i = 0; i < all.length; i += 1) {
    const first = i;
    const open = (at: number): boolean =>
      all[at]?.id === 'ch' &&
      all[at]?.row === all[first]?.row &&
      counted[at] === null &&
      ((all[at]?.flags ?? 0) & FLAG.turningChain) === 0;
    while (open(i)) i += 1;
    const row = all[first]?.row ?? 0;
    if (i === first) continue;
    // A foundation chain leaves no space to work into.
    const wholeRow = all[first - 1]?.row !== row && all[i]?.row !== row;
    if (!wholeRow) spaces.push({ row, first, end: i, corner: false });
  }
  return spaces;
}

function tally(keys: readonly string[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const key of keys) counts[key] = (counts[key] ?? 0) + 1;
  return counts;
}
