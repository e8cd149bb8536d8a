/**
 * Whether the counts a pattern states hold of what is worked, told without the checker: each number is compared with
 * what the arrays hold, in every sense in which it held before the mistake was made.
 */

import type { CompiledPattern } from '../../src/compiled.ts';
import type { Fabric, FabricRow } from '../../src/fabric/fabric.ts';
import { NONE } from '../../src/fabric/fabric.ts';
import type { Terms } from '../../src/stitches/stitch-row.ts';
import { findStitch, stitchById } from '../../src/stitches/table.ts';

/** The first count that no longer holds, in words, or null when all do that did. */
export function brokenCount(before: CompiledPattern, after: CompiledPattern): string | null {
  const terms = before.pattern?.terms ?? 'US';
  for (const [index, size] of before.sizes.entries()) {
    const now = after.sizes[index]?.fabric;
    if (now === undefined) return `no size ${size.size.name}`;
    for (const row of size.fabric.rows) {
      if (row.stated === null) continue;
      // In a range it is the last row that states it, whatever its number.
      const ofLine = now.rows.filter(({ part, line }) => part === row.part && line === row.line);
      const same = ofLine.find(({ stated }) => stated !== null);
      if (same === undefined) return `${row.label} is not worked, which stated ${row.stated}`;
      const senses = entriesOf(row.stated).map((entry) =>
        SENSES.filter((sense) => sense(entry, size.fabric, row, terms) === entry.n),
      );
      for (const [at, entry] of entriesOf(same.stated ?? '').entries()) {
        const holds = (senses[at] ?? []).some((sense) => sense(entry, now, same, terms) === entry.n);
        if ((senses[at] ?? []).length > 0 && !holds)
          return `${same.label} states ${same.stated} in size ${size.size.name}, and makes ${told(same)}`;
      }
    }
  }
  return null;
}

/** The share of stated numbers that some sense explains, so that the test can say how much it sees. */
export function explainedEntries({ sizes, pattern }: CompiledPattern): { explained: number; all: number } {
  const terms = pattern?.terms ?? 'US';
  let explained = 0;
  let all = 0;
  for (const { fabric } of sizes)
    for (const row of fabric.rows)
      for (const entry of entriesOf(row.stated ?? '')) {
        all += 1;
        if (SENSES.some((sense) => sense(entry, fabric, row, terms) === entry.n)) explained += 1;
      }
  return { explained, all };
}

interface Entry {
  readonly n: number;
  readonly what: string;
}

function entriesOf(stated: string): Entry[] {
  return stated
    .split(/[,;:]|\band\b/)
    .map((piece) => /(\d+)\s*(.*)/.exec(piece.trim()))
    .flatMap((match) => (match === null ? [] : [{ n: Number(match[1]), what: (match[2] ?? '').trim() }]));
}

type Sense = (entry: Entry, fabric: Fabric, row: FabricRow, terms: Terms) => number | null;

const isTotal = ({ what }: Entry): boolean => /^(?:sts?|stitches)?\.?$/.test(what);

const SENSES: readonly Sense[] = [
  (entry, _, row) => (isTotal(entry) ? row.stitches : null),
  // Some houses count the ch-1 of a mesh.
  (entry, _, row) => (isTotal(entry) ? row.stitches + (row.bySpace[1] ?? 0) : null),
  ({ what }, _, row, terms) => {
    const id = findStitch(single(what), terms)?.id;
    return id === undefined ? null : (row.byStitch[id] ?? 0);
  },
  // Decreases among the stitches they are made of.
  ({ what }, _, row, terms) => {
    const id = findStitch(single(what), terms)?.id;
    if (id === undefined) return null;
    const family = Object.entries(row.byStitch).filter(([each]) => stitchById(each).legOf === id);
    return family.reduce((sum, [, n]) => sum + n, 0);
  },
  // Beside special stitches, the stitches outside them.
  ({ what }, fabric, row, terms) => {
    const id = findStitch(single(what), terms)?.id;
    return id === undefined ? null : outside(fabric, row, id);
  },
  ({ what }, _, row) => {
    const chains = /(?:ch-(\d+)|(\d+)-ch) (?:sp|lp|loop|corner)/.exec(what);
    return chains === null ? null : (row.bySpace[Number(chains[1] ?? chains[2])] ?? 0);
  },
  ({ what }, _, row) => {
    const name = Object.keys(row.groups).find((known) => single(what) === known || what === `${known}s`);
    return name === undefined ? null : (row.groups[name] ?? 0);
  },
];

function outside(fabric: Fabric, row: FabricRow, id: string): number {
  let n = 0;
  for (let i = row.first; i < row.end; i += 1) {
    const as = fabric.countsAs[i] ?? NONE;
    const special = fabric.groups[fabric.group[i] ?? NONE]?.special ?? null;
    if (as !== NONE && fabric.stitches[as] === id && special === null) n += 1;
  }
  return n;
}

function single(what: string): string {
  return what.replace(/^(sl st|ss|[^ ]+ st)s$/, '$1').replace(/\.$/, '');
}

function told({ stitches, byStitch, bySpace }: FabricRow): string {
  const kinds = Object.entries(byStitch).map(([id, n]) => `${n} ${id}`);
  const spaces = Object.entries(bySpace).map(([chains, n]) => `${n} ch-${chains} sps`);
  return `${stitches} sts: ${[...kinds, ...spaces].join(', ')}`;
}
