/** How many squares lie across and down -> the stitches of every round of the border, and where the last plain one is made to fit the edging. */

/** Stitches worked at each seam of the edge: one in the corner space on either side of it. */
export const AT_EACH_SEAM = 2;
/** What (sc, ch 2, sc) in the corners adds to each side of a round. */
const ADDED_A_ROUND = 2;

export interface BorderRule {
  /** Along each edge of a square. */
  readonly stitches: number;
  readonly rounds: number;
  /** A last round whose sides come out over `of` stitches and `plus` more. */
  readonly edging: { readonly of: number; readonly plus: number } | null;
}

/** Top and bottom edges first, then the two sides. */
export type PerSide = readonly [across: number, down: number];

export interface BorderPlan {
  /** Places along each edge of the joined squares, before the border. */
  readonly edge: PerSide;
  /** Stitches on each side after every plain round, corners left out. */
  readonly rounds: readonly PerSide[];
  /** What the last plain round makes more, or less than nothing where fewer, for the edging to come out. */
  readonly adjust: PerSide;
  /** Repeats of the edging on each side; null without one. */
  readonly repeats: PerSide | null;
}

export function planBorder(rule: BorderRule, across: number, down: number): BorderPlan {
  const { stitches, rounds, edging } = rule;
  const edge = pair((k) => stitches * k + AT_EACH_SEAM * (k - 1));
  const plain = pairOf(edge, (n) => n + ADDED_A_ROUND * rounds);
  const adjust = edging === null ? ([0, 0] as const) : pairOf(plain, (n) => fewestTo(n, edging));
  const ends = [plain[0] + adjust[0], plain[1] + adjust[1]] as const;
  return {
    edge,
    rounds: Array.from({ length: rounds }, (_, r) =>
      r === rounds - 1 ? ends : pairOf(edge, (n) => n + ADDED_A_ROUND * (r + 1)),
    ),
    adjust,
    repeats: edging === null ? null : pairOf(ends, (n) => (n - edging.plus) / edging.of),
  };

  function pair(of: (squares: number) => number): PerSide {
    return [of(across), of(down)];
  }
}

/** The nearest number that the edging comes out over; of two as near, the larger: stitches put in show less than those taken out. */
function fewestTo(n: number, { of, plus }: { readonly of: number; readonly plus: number }): number {
  const over = (((n - plus) % of) + of) % of;
  const fewer = n - over;
  // At least one repeat.
  if (fewer < plus + of) return plus + of - n;
  return over * 2 < of ? -over : over === 0 ? 0 : of - over;
}

function pairOf([across, down]: PerSide, of: (n: number) => number): PerSide {
  return [of(across), of(down)];
}
