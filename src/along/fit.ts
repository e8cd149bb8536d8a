/** One choice of a week, worked, against what is agreed for all of them -> whether it can be joined, and what would make it fit. */

import type { CompiledSize } from '../compiled.ts';
import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { listed } from '../diagnostics/listed.ts';
import { printCm, printIn } from '../units.ts';
import type { Along, AlongChoice } from './along.ts';
import { type Edges, edgesOf } from './edges.ts';
import { LIES } from './lies.ts';
import { CORNERS_TO_SIDES } from './plan-hexagons.ts';
import { remedyFor } from './remedy.ts';
import { roundMm } from './rounds.ts';
import { SEAMS } from './seams.ts';

/** Stitches against the two corners and the seam between two squares side by side: our own choice, said to makers. */
export const STITCHES_AT_A_SEAM = 2;

/** Of the spaces that the border of hexagons is worked into. */
const CORNER_CHAINS = 2;

/** Stitches of an edge as long as so many squares, joined. */
export function longEdge(stitches: number, squares: number): number {
  return stitches * squares + STITCHES_AT_A_SEAM * (squares - 1);
}

export interface Fit {
  /** Null where they cannot be counted. */
  readonly edges: Edges | null;
  readonly faults: readonly Diagnostic[];
}

export function fitOf(
  along: Along,
  week: number,
  { covers, span }: AlongChoice,
  title: string,
  { fabric, measures }: Pick<CompiledSize, 'fabric' | 'measures'>,
): Fit {
  const { match, joining, blanket } = along;
  const { piece, pieces, sides, sidesWord } = LIES[blanket.lie];
  const where = { file: along.source.file, span };
  const isHexagon = sides === 6;
  const edges = edgesOf(fabric, sides);
  if (edges.kind === 'none') {
    const other = Object.values(LIES).find((lie) => lie.sides !== sides && isOfShape(fabric, lie.sides));
    const fault =
      other === undefined
        ? diagnose('along/corners', where, { week, title, found: edges.why, sides: sidesWord })
        : diagnose('along/other-shape', where, {
            week,
            title,
            is: other.piece,
            piece,
            pieces,
            others: other.pieces,
            stitches: match.stitches,
          });
    return { edges: null, faults: [fault] };
  }
  // The border goes into the corner spaces, and is told before any of the weeks is out.
  if (isHexagon && edges.cornerChains !== CORNER_CHAINS)
    return {
      edges,
      faults: [diagnose('along/hexagon-corners', where, { week, title, chains: edges.cornerChains })],
    };
  const { widthMm, heightMm } = measures;
  if (widthMm === null || heightMm === null)
    return { edges, faults: [diagnose('along/no-measure', where, { week, title })] };

  const wantedMm = [longMm(match.sizeMm, covers, SEAMS[joining.method].addsMm), match.sizeMm] as const;
  const madeMm = isHexagon
    ? acrossHexagon(widthMm, heightMm)
    : covers > 1 && heightMm > widthMm
      ? ([heightMm, widthMm] as const)
      : ([widthMm, heightMm] as const);
  const wanted = isHexagon
    ? edges.counts.map(() => match.stitches)
    : wantedCounts(edges.counts, match.stitches, covers);
  const growMm = meanOf(wantedMm.map((mm, i) => mm - (madeMm[i] ?? 0)));
  const remedy = remedyFor({
    round: edges.round,
    counts: edges.counts,
    wanted,
    growMm,
    toleranceMm: match.toleranceMm,
    roundMm: roundMm(along),
    terms: along.terms,
  });
  const faults: Diagnostic[] = [];
  if (edges.counts.some((count, i) => count !== wanted[i]))
    faults.push(
      diagnose('along/edge', where, {
        week,
        title,
        piece,
        counts: joined(edges.counts),
        wanted: joined(wanted),
        remedy,
      }),
    );
  const off = wantedMm.some((mm, i) => Math.abs(mm - (madeMm[i] ?? 0)) > match.toleranceMm);
  // One message for one square: what would make the edges right says also what becomes of its size.
  if (off && faults.length === 0)
    faults.push(
      diagnose('along/finished-size', where, {
        week,
        title,
        pieces,
        measured: `${sizeWords(madeMm)}${isHexagon ? ' from side to side' : ''}`,
        wanted: sizeWords(wantedMm),
        remedy: sizeRemedy(growMm, along),
      }),
    );
  return { edges, faults };
}

/** What is no more than rounding. */
const ALIKE_MM = 0.5;

/** From side to side, twice: lying on a side it is as high as that, and wider by its corners. One drawn out to a length is not alike. */
function acrossHexagon(widthMm: number, heightMm: number): readonly [number, number] {
  const otherMm = widthMm / CORNERS_TO_SIDES;
  return Math.abs(otherMm - heightMm) < ALIKE_MM ? [heightMm, heightMm] : [heightMm, otherMm];
}

/** Whether it has so many corners to its last round, and edges to be joined between them. */
function isOfShape(fabric: CompiledSize['fabric'], sides: number): boolean {
  return edgesOf(fabric, sides).kind === 'edges';
}

/** As long as so many squares with the seams between them. */
export function longMm(sizeMm: number, squares: number, seamMm: number): number {
  return sizeMm * squares + seamMm * (squares - 1);
}

/** The long sides are those with more stitches, whichever the round comes to first. */
function wantedCounts(counts: readonly number[], stitches: number, covers: number): number[] {
  const long = longEdge(stitches, covers);
  const [a = 0, b = 0, c = 0, d = 0] = counts;
  return a + c >= b + d ? [long, stitches, long, stitches] : [stitches, long, stitches, long];
}

/** The edges are right, so no round may be added: the gauge is what can be changed. */
function sizeRemedy(growMm: number, { match }: Along): string {
  const share = Math.round((Math.abs(growMm) / match.sizeMm) * 100);
  return growMm > 0
    ? `use a larger hook: the gauge has to be about ${share} % looser. The edges have the stitches agreed, so no round can be added.`
    : `use a smaller hook: the gauge has to be about ${share} % tighter. The edges have the stitches agreed, so no round can be left out.`;
}

function meanOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, n) => sum + n, 0) / numbers.length;
}

/** `30` where all are alike. */
function joined(counts: readonly number[]): string {
  return new Set(counts).size === 1 ? String(counts[0]) : listed(counts.map(String), 'and');
}

function sizeWords([across, up]: readonly [number, number]): string {
  const inCm = across === up ? printCm(across) : `${printCm(across)} by ${printCm(up)}`;
  const inInches = across === up ? printIn(across) : `${printIn(across)} by ${printIn(up)}`;
  return `${inCm} (${inInches})`;
}
