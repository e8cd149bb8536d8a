/** How much yarn is wanted and what is on a ball in, how many of those balls it is out: by length, for weights deceive. */

/** What is on the band of one ball. */
export interface PutUp {
  readonly lengthM: number;
  readonly massG: number | null;
}

export interface Balls {
  readonly balls: number;
  /** What is worked of them weighs; null where the band does not say. */
  readonly massG: number | null;
}

/** Whole balls that hold a length. A millimetre short is no reason for one more. */
export function inBalls(lengthM: number, { lengthM: each, massG }: PutUp): Balls {
  return {
    balls: Math.max(1, Math.ceil(lengthM / each - 1e-6)),
    massG: massG === null ? null : (lengthM / each) * massG,
  };
}

export interface Against {
  /** Balls of the other yarn that weigh as much as the first: what a maker who goes by weight would buy. */
  readonly byWeight: number | null;
  /** Length of a gram against length of a gram: above 1 the other is the thinner; null where a band tells no weight. */
  readonly finer: number | null;
}

/** One yarn against another put-up. */
export function against(lengthM: number, first: PutUp, other: PutUp): Against {
  if (first.massG === null || other.massG === null) return { byWeight: null, finer: null };
  const massG = (lengthM / first.lengthM) * first.massG;
  return {
    byWeight: Math.max(1, Math.ceil(massG / other.massG - 1e-6)),
    finer: other.lengthM / other.massG / (first.lengthM / first.massG),
  };
}

/** Yarns whose grams differ in length by more than this are hardly worked to one gauge: our own choice. */
const ALIKE = 1.15;

export function thickness({ finer }: Against): 'thinner' | 'thicker' | null {
  if (finer === null || (finer <= ALIKE && finer >= 1 / ALIKE)) return null;
  return finer > 1 ? 'thinner' : 'thicker';
}

/** `1 ball`, `3 balls`. */
export function ballsWords(balls: number): string {
  return `${balls} ${balls === 1 ? 'ball' : 'balls'}`;
}
