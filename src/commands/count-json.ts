/** A compiled pattern -> the JSON of `count --json`: every row of every size, what it measures and takes. */

import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import type { FabricRow } from '../fabric/fabric.ts';
import { placesByRow, type RowPlaces, type Taken, type Unworked } from '../fabric/row-places.ts';
import { lineColumn } from '../source/span.ts';

export interface CountJson {
  readonly title: string | null;
  readonly sizes: readonly SizeJson[];
}

export interface SizeJson {
  readonly name: string;
  readonly rows: readonly RowJson[];
  /** Finished, in millimetres to a tenth; null where it cannot be told from the gauge. */
  readonly width: { readonly mm: number } | null;
  readonly height: { readonly mm: number } | null;
  /** Metres, an estimate to a tenth. */
  readonly yarn: readonly { readonly name: string; readonly m: number }[];
}

export interface RowJson {
  readonly part: string;
  readonly label: string;
  /** Line of the file it was written on. */
  readonly line: number;
  readonly stitches: number;
  readonly spaces: number;
  /** As in `check --explain --json`: what it is worked into, passes on the way, and leaves behind it. */
  readonly takes: Taken | null;
  readonly skips: Unworked;
  readonly leaves: Unworked;
  readonly byStitch: Readonly<Record<string, number>>;
  readonly groups: Readonly<Record<string, number>>;
  readonly stated: string | null;
}

export function countJson(
  compiled: CompiledPattern,
  text: string,
  sizes: readonly CompiledSize[],
): CountJson {
  return { title: compiled.pattern?.title ?? null, sizes: sizes.map((size) => sizeJson(size, text)) };
}

function sizeJson({ size, fabric, measures, accounts }: CompiledSize, text: string): SizeJson {
  const placesOf = placesByRow(fabric, accounts);
  return {
    name: size.name,
    // A foundation chain or a ring is no row or round: it has no stitches to count.
    rows: fabric.rows.filter(isCounted).map((row) => ({
      part: fabric.parts[row.part]?.name ?? '',
      label: row.label,
      line: lineColumn(text, row.span.start).line,
      stitches: row.stitches,
      spaces: row.spaces,
      ...withoutWords(placesOf(row)),
      byStitch: row.byStitch,
      groups: row.groups,
      stated: row.stated,
    })),
    width: inMm(measures.widthMm),
    height: inMm(measures.heightMm),
    yarn: measures.yarn.map(({ letter, lengthM }) => ({ name: letter, m: toTenth(lengthM) })),
  };
}

/** Whether it is said in words is for the table of people. */
function withoutWords({ takes, skips, leaves }: RowPlaces): Pick<RowPlaces, 'takes' | 'skips' | 'leaves'> {
  return { takes, skips, leaves };
}

function isCounted(row: FabricRow): boolean {
  return row.unit !== null || row.stitches > 0;
}

function inMm(mm: number | null): { readonly mm: number } | null {
  return mm === null ? null : { mm: toTenth(mm) };
}

function toTenth(n: number): number {
  return Math.round(n * 10) / 10;
}
