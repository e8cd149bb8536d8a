/** A pattern and what one maker asks of it in, the pattern written so that it can be worked in a size of hers out. */

import { type NearSizes, nearSizes, withNearest } from '../check/near-sizes.ts';
import type { Fabric } from '../fabric/fabric.ts';
import { asksSize, type OwnSize, withOwnSize } from '../pattern/own-size.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { firstMultiple } from '../pattern/pattern-repeat.ts';
import { asMultiples } from '../proof/as-multiples.ts';
import { asOpen } from '../proof/as-open.ts';
import type { PartMultiple } from '../proof/part-multiple.ts';
import { foundationOf } from '../proof/trial.ts';
import { type GrowingRounds, growingRounds, roundSizes, withRounds } from './as-rounds.ts';

/** A pattern with all that is needed to write it for another size. */
export interface Remakeable {
  readonly pattern: Pattern;
  readonly multiples: readonly PartMultiple[];
  /** The size it is made from, as the designer has it; null where it could not be worked. */
  readonly fabric: Fabric | null;
}

/**
 * Over a multiple wherever that is proved, on to a height wherever its last rows repeat others, and with more or fewer
 * rounds wherever those make it larger.
 */
export function ownPattern(remakeable: Remakeable, own: OwnSize): Pattern {
  const { pattern, multiples, fabric } = remakeable;
  if (!asksSize(own) || fabric === null) return withOwnSize(pattern, own);
  const round = growingRounds(pattern, own.from, fabric);
  if (round !== null) return withOwnRounds(withOwnSize(pattern, own), round, own);
  const wide = asMultiples(pattern, multiples, own.from);
  // What is asked across only is as high as it was, and the other way about.
  const high = own.heightMm !== null || own.rows !== null ? asOpen(wide, own.from, fabric) : wide;
  return withOwnSize(high, keeping(own, pattern, wide, fabric));
}

/** What is near her wish: of a piece in rounds the rounds in all, of any other the repeats and rows. */
export function nearOwn(remakeable: Remakeable, own: OwnSize): NearSizes {
  const { pattern, fabric } = remakeable;
  const round = fabric === null ? null : growingRounds(pattern, own.from, fabric);
  const wantedMm = own.widthMm ?? own.heightMm;
  if (round === null || wantedMm === null || (pattern.gauge === null && own.gauge === null))
    return nearSizes(ownPattern(remakeable, own), own.from, own);
  const sizes = roundSizes(withOwnSize(pattern, own), round, own.from, wantedMm);
  return { repeats: null, rows: null, rounds: withNearest(sizes, wantedMm) };
}

/** Of rounds, as many as are asked for or come nearest to what is asked across. */
function withOwnRounds(pattern: Pattern, round: GrowingRounds, own: OwnSize): Pattern {
  const wantedMm = own.widthMm ?? own.heightMm;
  const nearest =
    wantedMm === null || pattern.gauge === null
      ? undefined
      : withNearest(roundSizes(pattern, round, own.from, wantedMm), wantedMm).find((one) => one.nearest);
  return withRounds(pattern, round, nearest?.count ?? own.rows ?? round.total);
}

/** A foundation made a multiple, which the maker does not ask about, keeps the chains it had. */
function keeping(own: OwnSize, pattern: Pattern, wide: Pattern, fabric: Fabric): OwnSize {
  const multiple = firstMultiple(wide);
  if (own.widthMm !== null || own.repeats !== null || multiple === null || firstMultiple(pattern) !== null)
    return own;
  const part = pattern.parts.findIndex((one) => foundationOf(one) !== null);
  const { first = 0, end = 0 } = fabric.rows[fabric.parts[part]?.firstRow ?? 0] ?? {};
  const chains = end - first;
  return { ...own, repeats: Math.max(1, Math.round((chains - multiple.plus) / multiple.of)) };
}
