/** The figures of an along and what one maker chooses -> squares, yarn by colour, size and seams of her blanket. It runs in a browser as well. */

import type { BlanketFigures, SquareFigures } from './figures.ts';
import { type HexagonEdges, zigzagEdges } from './hexagon-edges.ts';
import { LIES, type Lie, placesOf, rowPlaces } from './lies.ts';
import { type BorderPlan, planBorder } from './plan-border.ts';
import { EDGE_TO_SIDES, hexagonLie, hexagonSizeMm, type ZigzagRound } from './plan-hexagons.ts';

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

interface PlanTotals {
  readonly places: number;
  readonly filled: number;
  readonly squares: number;
  readonly yarn: readonly YarnTotal[];
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface SquaresPlan extends PlanTotals {
  readonly shape: 'squares';
  /** From side to side first, then from top to bottom. */
  readonly seams: readonly [Seams, Seams];
  /** Stitches of one seam of each kind. */
  readonly seamStitches: readonly [number, number];
  readonly border: BorderPlan;
}

export interface HexagonsPlan extends PlanTotals {
  readonly shape: 'hexagons';
  readonly lie: Lie;
  /** Within the rows first, one edge each; then from row to row, one zigzag each. */
  readonly seams: readonly [Seams, Seams];
  readonly seamStitches: readonly [number, number];
  /** Hexagons of the rows from the top. */
  readonly rows: readonly number[];
  readonly edges: HexagonEdges;
  readonly border: { readonly rounds: readonly ZigzagRound[] };
}

export type BlanketPlan = SquaresPlan | HexagonsPlan;

/** Every corner of a piece is joined as well as its edge. */
const AT_CORNERS = 2;

/** What a way of lying comes to: everything but what is counted square by square. */
interface Laid {
  readonly edgesJoined: number;
  /** Length of an edge. */
  readonly edgeMm: number;
  readonly borderM: number;
}

export function planBlanket(figures: BlanketFigures, wish: Wish): BlanketPlan {
  return LIES[figures.lie].offset ? planHexagons(figures, wish) : planSquares(figures, wish);
}

export function planSquares(figures: BlanketFigures, wish: Wish): SquaresPlan {
  const { seam, border, sizeMm, stitches } = figures;
  const { across, down } = wish;
  const seamStitches = [across * (stitches + AT_CORNERS), down * (stitches + AT_CORNERS)] as const;
  const seams = [
    { count: down - 1, stitches: (down - 1) * seamStitches[0] },
    { count: across - 1, stitches: (across - 1) * seamStitches[1] },
  ] as const;
  const planned = planBorder(border, across, down);
  const wide = (n: number): number => n * sizeMm + (n - 1) * seam.addsMm + 2 * border.heightMm;
  const laid = {
    edgesJoined: (down - 1) * across + (across - 1) * down,
    edgeMm: sizeMm,
    borderM: borderYarnM(figures, planned),
  };
  return {
    shape: 'squares',
    ...totals(figures, wish, seams, laid),
    widthMm: wide(across),
    heightMm: wide(down),
    seams,
    seamStitches,
    border: planned,
  };
}

export function planHexagons(figures: BlanketFigures, wish: Wish): HexagonsPlan {
  const { lie, seam, border, sizeMm, stitches } = figures;
  const { across, down } = wish;
  const { edges, rounds } = hexagonLie({ lie, stitches, rounds: border.rounds }, across, down);
  const each = stitches + AT_CORNERS;
  const seamStitches = [each, zigzagEdges(lie, across) * each] as const;
  const seams = [
    { count: edges.inRows, stitches: edges.inRows * each },
    { count: down - 1, stitches: edges.betweenRows * each },
  ] as const;
  const laid = {
    edgesJoined: edges.inRows + edges.betweenRows,
    edgeMm: sizeMm * EDGE_TO_SIDES,
    borderM: zigzagYarnM(figures, rounds),
  };
  const size = { lie, sizeMm, addsMm: seam.addsMm, borderMm: border.heightMm };
  const [widthMm, heightMm] = hexagonSizeMm(size, across, down);
  return {
    shape: 'hexagons',
    lie,
    ...totals(figures, wish, seams, laid),
    widthMm,
    heightMm,
    seams,
    seamStitches,
    rows: Array.from({ length: down }, (_, y) => rowPlaces(lie, across, y)),
    edges,
    border: { rounds },
  };
}

function totals(
  { squares, seam, border, yarns, lie }: BlanketFigures,
  { across, down, make }: Wish,
  [one, other]: readonly [Seams, Seams],
  { edgesJoined, edgeMm, borderM }: Laid,
): Omit<PlanTotals, 'widthMm' | 'heightMm'> {
  const count = (square: SquareFigures): number => make[square.id] ?? 0;
  const joiningM =
    (one.stitches + other.stitches) * seam.stitchM +
    edgesJoined * edgeMm * seam.sewnM +
    (one.count + other.count) * seam.tailsM;
  return {
    places: placesOf(lie, across, down),
    filled: squares.reduce((sum, square) => sum + count(square) * square.covers, 0),
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

function zigzagYarnM({ border, seam }: BlanketFigures, rounds: readonly ZigzagRound[]): number {
  const [two, three] = border.togetherM;
  return rounds.reduce(
    (sum, { stitches, together, of }) =>
      sum + (stitches - together) * border.stitchM + together * (of === 2 ? two : three) + border.roundM,
    seam.tailsM,
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
