/** A pattern and what one maker asks of it in, the same pattern with a size of hers out. */

import type { Gauge, Pattern, Size } from './pattern.ts';

/** What a maker has and wants; null where she goes by the pattern. */
export interface OwnSize {
  /** The size it is made from, whose numbers hold where the pattern has one for each size. */
  readonly from: number;
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  readonly repeats: number | null;
  readonly rows: number | null;
  readonly gauge: OwnGauge | null;
  /** What is on the ball of each of her yarns, by letter. */
  readonly balls: ReadonlyMap<string, OwnBall>;
  readonly hookMm: number | null;
}

/** The pattern's own first size as it is. */
export const NOTHING_ASKED: OwnSize = {
  from: 0,
  widthMm: null,
  heightMm: null,
  repeats: null,
  rows: null,
  gauge: null,
  balls: new Map(),
  hookMm: null,
};

/** Counted over the same stitch as the pattern's. */
export interface OwnGauge {
  readonly stitches: number;
  /** Where she counted repeats rather than stitches. */
  readonly repeats?: number;
  readonly rows: number | null;
  readonly overMm: number;
  readonly upMm: number;
}

export interface OwnBall {
  readonly lengthM: number;
  readonly massG: number | null;
}

/** Rather than the pattern's own size at another gauge, or from another yarn. */
export function asksSize({ widthMm, heightMm, repeats, rows }: OwnSize): boolean {
  return [widthMm, heightMm, repeats, rows].some((wanted) => wanted !== null);
}

export const OWN_NAME = 'your own';
/** What no size of a pattern may be called in addresses. */
export const OWN_SLUG = 'your-own';

export function withOwnSize(pattern: Pattern, own: OwnSize): Pattern {
  const sizes = pattern.sizes.map((size, index) => (index === own.from ? ownSize(size, own) : size));
  return {
    ...pattern,
    sizes,
    ...(own.hookMm === null ? {} : { hookMm: own.hookMm, hookUs: null }),
    gauge: own.gauge === null ? pattern.gauge : ownGauge(pattern.gauge, own.gauge),
    yarns: pattern.yarns.map((yarn) => {
      const ball = own.balls.get(yarn.letter);
      // Another ball, or another amount of work, is not what the designer counted balls for.
      if (ball === undefined) return { ...yarn, balls: null };
      return { ...yarn, balls: null, ballLengthM: ball.lengthM, ballMassG: ball.massG };
    }),
  };
}

/** A width asked for takes the place of repeats that were given, and the other way about; so for height and rows. */
function ownSize(size: Size, own: OwnSize): Size {
  const across = own.widthMm !== null || own.repeats !== null ? own : size;
  const up = own.heightMm !== null || own.rows !== null ? own : size;
  return {
    name: OWN_NAME,
    widthMm: across.widthMm,
    repeats: across.repeats,
    heightMm: up.heightMm,
    rows: up.rows,
  };
}

/** Before and after blocking are the designer's; a swatch of hers tells nothing of another hand's yarn. */
function ownGauge(designers: Gauge | null, own: OwnGauge): Gauge {
  return {
    ...own,
    of: designers?.of ?? null,
    after: designers?.after ?? null,
    before: null,
    tookM: null,
  };
}
