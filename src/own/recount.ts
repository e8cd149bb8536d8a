/**
 * The designer's counts in, the same words with the numbers of a maker's own size out: `(8 cl, 8 ch-2 sps)` of her round
 * becomes `(12 cl, 12 ch-2 sps)` of this one. Only where the words come out at the designer's own number when her own row
 * is counted in one of a few plain ways; for any other row its stitches are named instead.
 */

import type { Fabric, FabricRow } from '../fabric/fabric.ts';
import type { Line, StatedCount, StatedEntry } from '../notation/line.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { Pattern } from '../pattern/pattern.ts';

/** The pattern as it is worked in a maker's own size, with the counts that it makes, in the words of the designer's. */
export function recounted(
  pattern: Pattern,
  fabric: Fabric,
  designers: { readonly pattern: Pattern; readonly fabric: Fabric },
  size: number,
): Pattern {
  const counts = designersCounts(designers.pattern, designers.fabric, size);
  const parts = pattern.parts.map((part, index) => {
    const lines = part.instructions.lines.map((line, at): Line => {
      const counted = counts.get(line.span.start);
      const row = lastRow(fabric, index, at);
      return line.stated !== null || counted === undefined || row === undefined
        ? line
        : { ...line, stated: countedIn(row, counted, pattern.sizes.length) };
    });
    return { ...part, instructions: { lines } };
  });
  return { ...pattern, parts };
}

/** What a count says, and how each of its numbers is come by. */
interface Counted {
  readonly stated: StatedCount;
  readonly ways: readonly Way[];
}

type Way = (row: FabricRow) => number;

/** By where their lines begin in the file. */
function designersCounts(pattern: Pattern, fabric: Fabric, size: number): ReadonlyMap<number, Counted> {
  const counts = new Map<number, Counted>();
  for (const [part, { instructions }] of pattern.parts.entries()) {
    for (const [at, { stated, span }] of instructions.lines.entries()) {
      const row = lastRow(fabric, part, at);
      if (stated === null || row === undefined || stated.each !== undefined || stated.ofRow !== undefined)
        continue;
      const ways = stated.entries.map((entry) => wayOf(entry, row, size));
      if (ways.every((way) => way !== null)) counts.set(span.start, { stated, ways });
    }
  }
  return counts;
}

function wayOf({ n, what, perSide, sides }: StatedEntry, row: FabricRow, size: number): Way | null {
  const said = numberForSize(n, size);
  if (said === null || perSide !== undefined || sides !== undefined) return null;
  return waysOf(what).find((way) => way(row) === said) ?? null;
}

/** The plain ways of counting a thing in a row, the strictest first. */
function waysOf(what: StatedEntry['what']): readonly Way[] {
  if (what === null || what.kind === 'st') return [(row) => row.stitches, (row) => row.stitches + row.spaces];
  switch (what.kind) {
    case 'stitch':
      return [(row) => row.byStitch[what.id] ?? 0];
    case 'special': {
      const { name } = what;
      const like = (other: string): boolean => other === name || other.endsWith(` ${name}`);
      // `beg cl` is one of the clusters.
      return [(row) => row.groups[name] ?? 0, (row) => sum(row.groups, like)];
    }
    case 'space': {
      const { chains } = what;
      return chains === null ? [(row) => row.spaces] : [(row) => row.bySpace[chains] ?? 0];
    }
    default:
      return [];
  }
}

function sum(counts: Readonly<Record<string, number>>, which: (name: string) => boolean): number {
  return Object.entries(counts).reduce((all, [name, n]) => all + (which(name) ? n : 0), 0);
}

function countedIn(row: FabricRow, { stated, ways }: Counted, sizes: number): StatedCount {
  const entries = stated.entries.map((entry, i) => {
    const n = ways[i]?.(row) ?? 0;
    return { ...entry, n: { ...entry.n, values: Array.from({ length: sizes }, () => n) } };
  });
  // A size with none of a thing does not speak of it.
  const there = entries.filter(({ n }) => n.values[0] !== 0);
  return { ...stated, entries: there.length > 0 ? there : entries };
}

function lastRow({ rows }: Fabric, part: number, line: number): FabricRow | undefined {
  return rows.findLast((row) => row.part === part && row.line === line);
}
