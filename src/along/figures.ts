/** What is out of an along -> the plain figures that a blanket is planned from, the same for a page's script and for the command line. */

import { takenM } from '../measure/measures.ts';
import { ownName } from '../pattern/own-name.ts';
import { stitchById } from '../stitches/table.ts';
import { mFromMm } from '../units.ts';
import type { Lie } from './lies.ts';
import type { BorderRule } from './plan-border.ts';
import { type ReleasedAlong, weeksOut } from './release.ts';
import { SEAMS } from './seams.ts';
import { type BorderFigures, yarnOfM } from './work-border.ts';

/** Tail at each end of a seam: common practice, from memory. */
const TAIL_M = 0.15;

export interface SquareFigures {
  /** Its folder's name: unique in its along. */
  readonly id: string;
  readonly title: string;
  readonly week: number;
  /** Places it covers, side by side. */
  readonly covers: number;
  /** How many of it fill its week. */
  readonly make: number;
  /** Metres of each colour for one, whole ones. */
  readonly yarnM: Readonly<Record<string, number>>;
}

export interface BlanketFigures {
  readonly lie: Lie;
  readonly across: number;
  readonly down: number;
  /** Of a square edge to edge, of a hexagon from one side to the one across. */
  readonly sizeMm: number;
  /** Along each edge of a piece. */
  readonly stitches: number;
  readonly yarns: readonly {
    readonly letter: string;
    readonly colour: string;
    readonly hex: string | null;
    readonly ballM: number | null;
  }[];
  /** In the order of the weeks, the choice for the undecided first in each. */
  readonly squares: readonly SquareFigures[];
  readonly seam: {
    readonly letter: string;
    readonly addsMm: number;
    /** Metres of a stitch, of a millimetre sewn, and of the tails of one seam. */
    readonly stitchM: number;
    readonly sewnM: number;
    readonly tailsM: number;
  };
  readonly border: BorderFigures & BorderRule & { readonly letter: string };
}

export function blanketFigures(released: ReleasedAlong, border: BorderFigures): BlanketFigures {
  const { along } = released;
  const { match, blanket, joining, yarns } = along;
  const { yarn, addsMm } = SEAMS[joining.method];
  const stitchM = yarn.kind === 'stitch' ? yarnOfM(along, stitchById(yarn.id).yarnInSc) : 0;
  return {
    ...blanket,
    sizeMm: match.sizeMm,
    stitches: match.stitches,
    yarns: yarns.map(({ letter, colour, hex, ballLengthM }) => ({ letter, colour, hex, ballM: ballLengthM })),
    squares: weeksOut(released).flatMap(({ number, squares }) =>
      squares.map(({ choice, compiled, pattern, size }) => ({
        id: ownName(compiled.slug),
        title: pattern.title,
        week: number,
        covers: choice.covers,
        make: choice.make,
        yarnM: Object.fromEntries(size.measures.yarn.map((use) => [use.letter, takenM(use)])),
      })),
    ),
    seam: {
      letter: joining.colour,
      addsMm,
      stitchM,
      sewnM: yarn.kind === 'sewn' ? mFromMm(yarn.timesSeam) : 0,
      tailsM: 2 * TAIL_M,
    },
    border: {
      ...border,
      letter: along.border.colour,
      stitches: match.stitches,
      rounds: along.border.rounds,
      edging:
        along.border.edging === null ? null : { of: along.border.edging.of, plus: along.border.edging.plus },
    },
  };
}
