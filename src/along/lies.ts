/** The ways a blanket's pieces may lie, a row each: what one is called, how many sides it has, how many there are in each row, and which touch. It runs in a browser as well. */

export interface LieRow {
  readonly piece: string;
  readonly pieces: string;
  readonly sides: 4 | 6;
  /** The same in words: `four`. */
  readonly sidesWord: string;
  /** How many meet in one place, in words. */
  readonly meet: string;
  /** Every second row lies half a piece further to the right. */
  readonly offset: boolean;
  /** How many pieces fewer every second row has. */
  readonly fewer: 0 | 1;
}

export const LIES = {
  squares: {
    piece: 'square',
    pieces: 'squares',
    sides: 4,
    sidesWord: 'four',
    meet: 'four',
    offset: false,
    fewer: 0,
  },
  hexagons: {
    piece: 'hexagon',
    pieces: 'hexagons',
    sides: 6,
    sidesWord: 'six',
    meet: 'three',
    offset: true,
    fewer: 0,
  },
  'hexagons, one fewer': {
    piece: 'hexagon',
    pieces: 'hexagons',
    sides: 6,
    sidesWord: 'six',
    meet: 'three',
    offset: true,
    fewer: 1,
  },
} as const satisfies Record<string, LieRow>;

export type Lie = keyof typeof LIES;

/** What an organiser may call the pieces. */
export const SHAPES = ['squares', 'hexagons'] as const;
/** What she may say of every second row. */
export const SECOND_ROWS = ['as many', 'one fewer'] as const;

/** Pieces of one row, counted from 0. */
export function rowPlaces(lie: Lie, across: number, y: number): number {
  return y % 2 === 1 ? across - LIES[lie].fewer : across;
}

/** Pieces of the whole blanket. */
export function placesOf(lie: Lie, across: number, down: number): number {
  return across * down - LIES[lie].fewer * Math.floor(down / 2);
}

/** The narrowest blanket: a row of none is no row. */
export function leastAcross(lie: Lie): number {
  return 1 + LIES[lie].fewer;
}

export interface Lying {
  readonly x: number;
  readonly y: number;
  /** Places it covers, from x on. */
  readonly covers: number;
}

/** Whether two pieces are joined along an edge. */
export function touch(lie: Lie, one: Lying, other: Lying): boolean {
  if (one.y === other.y) return one.x + one.covers === other.x || other.x + other.covers === one.x;
  if (Math.abs(one.y - other.y) !== 1) return false;
  if (!LIES[lie].offset) return one.x < other.x + other.covers && other.x < one.x + one.covers;
  const [inset, flush] = one.y % 2 === 1 ? [one, other] : [other, one];
  return flush.x === inset.x || flush.x === inset.x + 1;
}

/** The middle of a piece from the left edge of the blanket, in halves of a piece. */
export function middleInHalves(lie: Lie, { x, y, covers }: Lying): number {
  return 2 * x + covers + (LIES[lie].offset && y % 2 === 1 ? 1 : 0);
}

/** How wide the blanket is, in halves of a piece. */
export function widthInHalves(lie: Lie, across: number, down: number): number {
  const { offset, fewer } = LIES[lie];
  return 2 * across + (offset && fewer === 0 && down > 1 ? 1 : 0);
}

/** Which of three: hexagons of one class touch only those of the other two. */
export function classOf({ x, y }: Lying): number {
  const slanting = x - Math.floor(y / 2);
  return (((slanting - y) % 3) + 3) % 3;
}
