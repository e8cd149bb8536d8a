/** An edging as it is planned, size by size -> the text that tells it, or the figures for other programs. */

import type { EdgedSide } from '../measure/edge-plan.ts';
import type { EdgedPiece as Piece } from '../measure/edge-sides.ts';
import { HEIGHTS_AS_USUAL } from '../measure/heights-in-sc.ts';
import { printCm, printIn } from '../units.ts';
import { form, printStitch } from '../wording/print-name.ts';
import { allRound, nounOf, wordEdge } from '../wording/word-edge.ts';
import type { EdgeWanted } from './edge-flags.ts';

export interface EdgedPiece {
  /** Of the size; null without a pattern. */
  readonly name: string | null;
  readonly piece: Piece;
  readonly sides: readonly EdgedSide[];
  readonly inCorner: number;
}

export interface EdgeTold {
  readonly title: string | null;
  readonly pieces: readonly EdgedPiece[];
  /** The whole edging as a row of the pattern, for all its sizes. */
  readonly row: string | null;
  readonly wanted: EdgeWanted;
}

export function edgeText({ title, pieces, row, wanted }: EdgeTold): string {
  return [
    ...(title === null ? [] : [title]),
    ...pieces.map((piece) => pieceText(piece, wanted)),
    ...(row === null ? [] : [`As a row of the pattern:\n  ${row}`]),
  ].join('\n\n');
}

function pieceText(edged: EdgedPiece, wanted: EdgeWanted): string {
  const { name, piece, sides, inCorner } = edged;
  const { voice, stitch } = wanted;
  const lines = sides.flatMap((side) => [
    `${headOf(side, wanted)}: ${side.stitches} ${printStitch(stitch, side.stitches !== 1, voice)}`,
    `  ${wordEdge(side, stitch, voice)}`,
    ...remarks(side, wanted).map((said) => `  ${said}`),
  ]);
  const corners =
    piece.corners > 0 && inCorner > 0
      ? [
          `Corners: ${inCorner} ${printStitch(stitch, inCorner !== 1, voice)} in each of the ${piece.corners}`,
          `All round: ${allRound(edged, piece.corners)} ${printStitch(stitch, true, voice)}`,
        ]
      : [];
  const slants = piece.slants
    ? ['The rows differ in width: a side that slants is longer than its rows are high, and takes more.']
    : [];
  const reckoned = piece.reckoned ? [HEIGHTS_AS_USUAL] : [];
  return [...(name === null ? [] : [name]), ...lines, ...corners, ...slants, ...reckoned].join('\n');
}

const SIDE_WORDS: Readonly<Record<EdgedSide['of']['side'], string>> = {
  sides: 'Each side',
  top: 'Top',
  bottom: 'Bottom',
  'each side': 'Each side',
  around: 'All round',
};

function headOf({ of, places }: EdgedSide, { voice }: EdgeWanted): string {
  const long = of.mm === null ? '' : `, ${printCm(of.mm)} (${printIn(of.mm)})`;
  const between = places < of.places ? ' between the corners' : '';
  return `${SIDE_WORDS[of.side]}, ${places} ${form(nounOf(of.into, voice), places !== 1)}${between}${long}`;
}

function remarks(
  { stitches, flat, lies, symmetrical, places, of }: EdgedSide,
  { voice, stitch }: EdgeWanted,
): string[] {
  const name = printStitch(stitch, true, voice);
  const said: string[] = [];
  if (flat !== null && lies !== 'flat')
    said.push(
      lies === 'ruffles'
        ? `About ${Math.round(flat)} ${name} lie flat there: so many more make the edge ruffle.`
        : `About ${Math.round(flat)} ${name} lie flat there: so many fewer pull the edge in.`,
    );
  if (!symmetrical && of.side !== 'around')
    said.push(
      `${stitches} over ${places} cannot be the same from both ends; ${stitches - 1} or ${stitches + 1} can.`,
    );
  return said;
}

export function edgeJson({ title, pieces, row, wanted }: EdgeTold): object {
  return {
    title,
    sizes: pieces.map((edged) => ({
      name: edged.name,
      sides: edged.sides.map((side) => ({
        side: side.of.side,
        count: side.of.count,
        into: side.of.into,
        places: side.places,
        mm: side.of.mm,
        stitches: side.stitches,
        flat: side.flat === null ? null : Math.round(side.flat * 10) / 10,
        lies: side.lies,
        symmetrical: side.symmetrical,
        spread: side.spread,
        words: wordEdge(side, wanted.stitch, wanted.voice),
      })),
      corners: { count: edged.piece.corners, stitches: edged.piece.corners > 0 ? edged.inCorner : 0 },
      allRound: allRound(edged, edged.piece.corners),
      slants: edged.piece.slants,
      reckoned: edged.piece.reckoned,
    })),
    row,
  };
}
