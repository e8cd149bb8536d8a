/** The figures of an along and what one maker chooses -> squares, yarn by colour, size and seams of her blanket. It runs in a browser as well. */

import type { BlanketFigures, SquareFigures } from './figures.ts';
import { type BorderPlan, planBorder } from './plan-border.ts';

export interface Wish {
  readonly across: number;
  readonly down: number;
  /** How many of each square, by its id. */
  readonly make: Readonly<Record<string, number>>;
}

export interface YarnTotal {
  readonly letter: string;
  readonly colour: string;
  readonly squaresM: number;
  readonly joiningM: number;
  readonly borderM: number;
  /** Whole metres, rounded up. */
  readonly allM: number;
  /** Null where what is on a ball is not known. */
  readonly balls: number | null;
}

export interface Seams {
  readonly count: number;
  readonly stitches: number;
}

export interface BlanketPlan {
  readonly places: number;
  readonly filled: number;
  readonly squares: number;
  readonly yarn: readonly YarnTotal[];
  readonly widthMm: number;
  readonly heightMm: number;
  /** From side to side first, then from top to bottom. */
  readonly seams: readonly [Seams, Seams];
  /** Stitches of one seam of each kind. */
  readonly seamStitches: readonly [number, number];
  readonly border: BorderPlan;
}

/** Every corner of a square is joined as well as its edge. */
const AT_CORNERS = 2;

export function planBlanket(figures: BlanketFigures, { across, down, make }: Wish): BlanketPlan {
  const { squares, seam, border, sizeMm, stitches, yarns } = figures;
  const count = (square: SquareFigures): number => make[square.id] ?? 0;
  const filled = squares.reduce((sum, square) => sum + count(square) * square.covers, 0);
  const seamStitches = [across * (stitches + AT_CORNERS), down * (stitches + AT_CORNERS)] as const;
  const seams = [
    { count: down - 1, stitches: (down - 1) * seamStitches[0] },
    { count: across - 1, stitches: (across - 1) * seamStitches[1] },
  ] as const;
  const sewnMm = ((down - 1) * across + (across - 1) * down) * sizeMm;
  const joiningM =
    (seams[0].stitches + seams[1].stitches) * seam.stitchM +
    sewnMm * seam.sewnM +
    (down - 1 + across - 1) * seam.tailsM;
  const planned = planBorder(border, across, down);
  const borderM = borderYarnM(figures, planned);
  const wide = (n: number): number => n * sizeMm + (n - 1) * seam.addsMm + 2 * border.heightMm;
  return {
    places: across * down,
    filled,
    squares: squares.reduce((sum, square) => sum + count(square), 0),
    yarn: yarns.map(({ letter, colour, ballM }) => {
      const squaresM = squares.reduce((sum, square) => sum + count(square) * (square.yarnM[letter] ?? 0), 0);
      const [joining, edge] = [
        letter === seam.letter ? Math.ceil(joiningM) : 0,
        letter === border.letter ? Math.ceil(borderM) : 0,
      ];
      const allM = squaresM + joining + edge;
      return {
        letter,
        colour,
        squaresM,
        joiningM: joining,
        borderM: edge,
        allM,
        balls: ballM === null ? null : Math.ceil(allM / ballM),
      };
    }),
    widthMm: wide(across),
    heightMm: wide(down),
    seams,
    seamStitches,
    border: planned,
  };
}

function borderYarnM({ border, seam }: BlanketFigures, { rounds, repeats }: BorderPlan): number {
  const stitches = rounds.reduce((sum, [across, down]) => sum + 2 * (across + down), 0);
  const repeated = repeats === null ? 0 : 2 * (repeats[0] + repeats[1]);
  return (
    stitches * border.stitchM +
    rounds.length * border.roundM +
    repeated * border.repeatM +
    border.edgingM +
    seam.tailsM
  );
}

/** What is made by whoever takes the first choice of every week. */
export function defaultMake({ squares }: BlanketFigures): Record<string, number> {
  const seen = new Set<number>();
  return Object.fromEntries(
    squares.map(({ id, week, make }) => {
      const first = !seen.has(week);
      seen.add(week);
      return [id, first ? make : 0];
    }),
  );
}

/** The most that any mix of choices takes of each colour: what is enough whatever a maker chooses. */
export function mostOfAny(figures: BlanketFigures): ReadonlyMap<string, number> {
  const weeks = new Map<number, SquareFigures[]>();
  for (const square of figures.squares) weeks.set(square.week, [...(weeks.get(square.week) ?? []), square]);
  const fixed = planBlanket(figures, { across: figures.across, down: figures.down, make: {} });
  return new Map(
    fixed.yarn.map(({ letter, joiningM, borderM }) => {
      const most = [...weeks.values()].reduce(
        (sum, squares) => sum + Math.max(...squares.map(({ make, yarnM }) => make * (yarnM[letter] ?? 0))),
        0,
      );
      return [letter, most + joiningM + borderM];
    }),
  );
}
