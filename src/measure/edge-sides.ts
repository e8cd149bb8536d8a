/**
 * A worked size in, the sides of its largest piece out, as an edging would meet them: how many places each has and how
 * long it is. What edges the piece already is left out: the sides are those under it.
 */

import { type Fabric, type FabricRow, FLAG } from '../fabric/fabric.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { edgingSides } from './edgings.ts';
import { rowHeights, stitchWidthMm } from './row-heights.ts';
import { rowWidths } from './row-widths.ts';

/** Along a mesh each chain of a space is a place, as each stitch is. */
export type EdgePlaces = 'row ends' | 'stitches' | 'stitches and chains' | 'chains';

export interface EdgeSide {
  /** `sides` are the two of a piece of rows; `each side` those between the corners of a round. */
  readonly side: 'sides' | 'top' | 'bottom' | 'each side' | 'around';
  /** How many of them the piece has. */
  readonly count: number;
  readonly into: EdgePlaces;
  readonly places: number;
  /** Null without a gauge. */
  readonly mm: number | null;
  /** How many stitches of the gauge's width are as long. */
  readonly flat: number | null;
}

export interface EdgedPiece {
  readonly part: string;
  readonly sides: readonly EdgeSide[];
  /** Corners that the sides stop at; the piece of rows has four. */
  readonly corners: number;
  /** Row ends lie aslant where rows grow or shrink: their length is then more than their heights together. */
  readonly slants: boolean;
  /** No rows were counted in the gauge: they are taken to be as high as is usual. */
  readonly reckoned: boolean;
}

/** Rows that differ in width by more than this share of the widest make a side that slants. Our own choice. */
const SLANTS = 0.1;

/** Null where nothing is worked that has sides. */
export function edgeSides(pattern: Pattern, fabric: Fabric): EdgedPiece | null {
  const edgings = edgingSides(fabric);
  const isEdging = edgings.map((sides) => sides !== null);
  const { gauge } = pattern;
  const heights = gauge === null ? null : rowHeights(fabric, gauge, pattern.terms, isEdging);
  const stitchMm = gauge === null ? null : stitchWidthMm(gauge);
  const reckoned = gauge?.rows === null;
  const pieces = fabric.parts.flatMap((part, root) => {
    if (part.onto !== null) return [];
    const rows = fabric.rows.flatMap((row, index) =>
      belongsTo(fabric.parts, row.part, root) && !isEdging[index] ? [index] : [],
    );
    const stitches = rows.reduce((sum, index) => sum + (fabric.rows[index]?.stitches ?? 0), 0);
    return stitches === 0 ? [] : [{ name: part.name, root, rows, stitches }];
  });
  const [first] = pieces;
  if (first === undefined) return null;
  const { name, root, rows } = pieces.reduce(
    (most, one) => (one.stitches > most.stitches ? one : most),
    first,
  );
  const last = fabric.rows[rows.at(-1) ?? -1];
  if (last === undefined) return null;
  const widths = rowWidths(fabric);
  if (last.closing !== 'flat') {
    const around = roundSides(fabric, last, fabric.parts[root]?.corners ?? 0, stitchMm);
    return { part: name, ...around, slants: false, reckoned: false };
  }
  return { part: name, ...flatSides(fabric, rows, { heights, widths, stitchMm }), corners: 4, reckoned };
}

function belongsTo(parts: Fabric['parts'], part: number, root: number): boolean {
  const onto = parts[part]?.onto ?? null;
  return part === root || (onto !== null && belongsTo(parts, onto, root));
}

interface Measured {
  readonly heights: readonly number[] | null;
  readonly widths: readonly number[];
  readonly stitchMm: number | null;
}

function flatSides(
  fabric: Fabric,
  rows: readonly number[],
  { heights, widths, stitchMm }: Measured,
): Pick<EdgedPiece, 'sides' | 'slants'> {
  const ended = rows.filter((row) => {
    const { unit, closing, stitches = 0, spaces = 0 } = fabric.rows[row] ?? {};
    return unit === 'row' && closing === 'flat' && stitches + spaces > 0;
  });
  const last = fabric.rows[ended.at(-1) ?? -1];
  const endsMm = heights === null ? null : ended.reduce((sum, row) => sum + (heights[row] ?? 0), 0);
  const across = ended.map((row) => widths[row] ?? 0);
  const widest = Math.max(...across);
  const chain = foundationChains(fabric, rows[0], fabric.rows[ended[0] ?? -1]);
  const wide = (width: number | undefined): number | null =>
    stitchMm === null || width === undefined ? null : width * stitchMm;
  const side = (
    of: Pick<EdgeSide, 'side' | 'count' | 'into' | 'places'>,
    mm: number | null,
  ): readonly EdgeSide[] =>
    of.places === 0 ? [] : [{ ...of, mm, flat: mm === null || stitchMm === null ? null : mm / stitchMm }];
  return {
    sides: [
      ...side({ side: 'sides', count: 2, into: 'row ends', places: ended.length }, endsMm),
      ...side({ side: 'top', count: 1, ...topOf(last) }, wide(across.at(-1))),
      ...side({ side: 'bottom', count: 1, into: 'chains', places: chain }, wide(across[0])),
    ],
    slants: Math.min(...across) < widest * (1 - SLANTS),
  };
}

/** What a row leaves to be worked into: its stitches, and of its spaces every chain. */
function topOf(row: FabricRow | undefined): Pick<EdgeSide, 'into' | 'places'> {
  const chains = Object.entries(row?.bySpace ?? {}).reduce((sum, [each, n]) => sum + Number(each) * n, 0);
  const places = (row?.stitches ?? 0) + chains;
  return { into: chains > 0 ? 'stitches and chains' : 'stitches', places };
}

/** Chains of the foundation that carry a stitch: without those skipped, but for the foot of one that counts. */
function foundationChains(fabric: Fabric, index: number | undefined, first: FabricRow | undefined): number {
  const row = fabric.rows[index ?? -1];
  if (row === undefined || row.unit !== null || row.stitches > 0) return first?.stitches ?? 0;
  let skipped = 0;
  let counts = false;
  while (skipped < row.end - row.first) {
    const flags = fabric.flags[row.end - 1 - skipped] ?? 0;
    if ((flags & FLAG.turningChain) === 0) break;
    counts ||= (flags & FLAG.counted) !== 0;
    skipped += 1;
  }
  return row.end - row.first - skipped + (counts ? 1 : 0);
}

/** Between corner spaces where all sides are alike; otherwise the whole way round as one. */
function roundSides(
  fabric: Fabric,
  row: FabricRow,
  corners: number,
  stitchMm: number | null,
): Pick<EdgedPiece, 'sides' | 'corners'> {
  const between = betweenCorners(fabric, row);
  const [each = 0] = between;
  const alike = between.length >= 3 && between.length === corners && between.every((one) => one === each);
  const around = topOf(row);
  const mesh = fabric.spaces.some(({ first, corner }) => !corner && first >= row.first && first < row.end);
  const places = alike ? each : around.places;
  const side: EdgeSide = {
    side: alike ? 'each side' : 'around',
    count: alike ? corners : 1,
    into: alike && !mesh ? 'stitches' : around.into,
    places,
    mm: stitchMm === null ? null : places * stitchMm,
    flat: stitchMm === null ? null : places,
  };
  return { sides: places === 0 ? [] : [side], corners: alike ? corners : 0 };
}

/** Places from each corner, a space or the middle stitch of several, to the next: stitches, and the chains of other spaces. */
function betweenCorners(fabric: Fabric, row: FabricRow): readonly number[] {
  const inSpace = new Map<number, boolean>();
  for (const { first, end, corner } of fabric.spaces)
    for (let i = Math.max(first, row.first); i < Math.min(end, row.end); i += 1) inSpace.set(i, corner);
  const sides: number[] = [];
  let before = 0;
  for (let i = row.first; i < row.end; i += 1) {
    const flags = fabric.flags[i] ?? 0;
    const counted = (flags & FLAG.counted) !== 0;
    const corner = inSpace.get(i) === true || (counted && (flags & FLAG.corner) !== 0);
    if (corner && inSpace.get(i - 1) !== true) sides.push(0);
    if (corner || (inSpace.get(i) !== false && !counted)) continue;
    if (sides.length === 0) before += 1;
    else sides[sides.length - 1] = (sides.at(-1) ?? 0) + 1;
  }
  // The last side goes over the start of the round.
  if (sides.length > 0) sides[sides.length - 1] = (sides.at(-1) ?? 0) + before;
  return sides;
}
