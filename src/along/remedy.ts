/** A piece's edges and size against what is agreed -> what would make it fit, in words: rounds to add, and stitches spread along which side. */

import { listed } from '../diagnostics/listed.ts';

export interface Misfit {
  /** The round the edges are counted in. */
  readonly round: string;
  readonly counts: readonly number[];
  readonly wanted: readonly number[];
  /** By how much it is to grow; less than nothing where it is too large. */
  readonly growMm: number;
  readonly toleranceMm: number;
  /** Height of a round of single crochet. */
  readonly roundMm: number;
  readonly terms: 'US' | 'UK';
}

/** More rounds than these are another square. */
const MOST_ROUNDS = 8;
/** What a round of single crochet with (sc, ch 2, sc) in its corners adds to each side. */
export const ADDED_A_ROUND = 2;
/** A hexagon of single crochet lies flat where its sides grow by one a round: two in one round, none in the next. */
const GROWS_EVERY = { 4: 1, 6: 2 } as const satisfies Record<number, number>;

/** Stitches that so many rounds add to each side of a piece with so many. */
export function addedBy(rounds: number, sides: number): number {
  const every = sides === 6 ? GROWS_EVERY[6] : GROWS_EVERY[4];
  return ADDED_A_ROUND * Math.ceil(rounds / every);
}

/** More of a side's stitches than this cannot be put in or taken out of one round without ruffling it or pulling it in: our own choice. */
const MOST_SPREAD = 1 / 4;

interface Plan {
  readonly rounds: number;
  /** Stitches each side has too few, or too many below nothing, once the rounds are worked. */
  readonly short: readonly number[];
  /** How far beyond the tolerance it still is. */
  readonly offMm: number;
}

export function remedyFor(misfit: Misfit): string {
  const { counts, wanted, growMm, toleranceMm, roundMm, round } = misfit;
  const sc = misfit.terms === 'US' ? 'sc' : 'dc';
  const plans = Array.from({ length: MOST_ROUNDS + 1 }, (_, rounds): Plan => {
    const left = growMm - 2 * rounds * roundMm;
    return {
      rounds,
      short: counts.map((count, i) => (wanted[i] ?? 0) - count - addedBy(rounds, counts.length)),
      offMm: Math.max(0, Math.abs(left) - toleranceMm),
    };
  });
  const best = plans.reduce((one, other) => (isBetter(other, one) ? other : one));
  if (best.short.some((n, i) => Math.abs(n) > (wanted[i] ?? 0) * MOST_SPREAD))
    return `an edging cannot make up for so much: work it over more or fewer stitches from the start, so that its sides come to ${listed(wanted.map(String), 'and')}.`;
  const sides = spreads(best, counts, sc);
  const size = best.offMm > 0 ? sizeWords(growMm) : null;
  if (best.rounds === 0) return sentence([sides === null ? null : `in ${round}, ${sides}`, size]);
  const rounds = best.rounds === 1 ? 'a round' : `${best.rounds} rounds`;
  const edging = `work ${rounds} of ${sc} round it, ${cornerWords(best.rounds, counts.length, sc)}`;
  const last = best.rounds === 1 ? 'in it' : 'in the last of them';
  return sentence([edging, sides === null ? null : `${last}, ${sides}`, size]);
}

function sentence(clauses: readonly (string | null)[]): string {
  return `${clauses.filter((words) => words !== null).join('; ')}.`;
}

/** `(sc, ch 2, sc) in each corner`, or of every second round only. */
function cornerWords(rounds: number, sides: number, sc: string): string {
  const corner = `(${sc}, ch 2, ${sc}) in each corner`;
  if (addedBy(rounds, sides) === ADDED_A_ROUND * rounds) return corner;
  return rounds === 2
    ? `${corner} of the first; in the second, ch 2 over each corner space`
    : `${corner} of the first and of every second round after it; in the others, ch 2 over each corner space`;
}

/** First the size, then the fewest stitches to spread, then the fewest rounds. */
function isBetter(one: Plan, other: Plan): boolean {
  const off = Math.round(one.offMm) - Math.round(other.offMm);
  if (off !== 0) return off < 0;
  const spread = sum(one.short) - sum(other.short);
  return spread === 0 ? one.rounds < other.rounds : spread < 0;
}

function sum(short: readonly number[]): number {
  return short.reduce((all, n) => all + Math.abs(n), 0);
}

/** Null where every side comes out as it is. */
function spreads({ short, rounds }: Plan, counts: readonly number[], sc: string): string | null {
  if (short.every((n) => n === 0)) return null;
  const alike = short.every((n, i) => n === short[0] && counts[i] === counts[0]);
  if (alike)
    return `on each side ${spreadWords(short[0] ?? 0, (counts[0] ?? 0) + addedBy(rounds, counts.length), sc)}`;
  const each = short.flatMap((n, i) =>
    n === 0
      ? []
      : [
          `on the ${ORDINALS[i] ?? 'last'} side ${spreadWords(n, (counts[i] ?? 0) + addedBy(rounds, counts.length), sc)}`,
        ],
  );
  return `counting the sides from the first corner, ${listed(each, 'and')}`;
}

const ORDINALS = ['1st', '2nd', '3rd', '4th', '5th', '6th'] as const;

/** `make 3 more: 2 sc in every 8th stitch, 3 times`. */
export function spreadWords(more: number, among: number, sc: string): string {
  const n = Math.abs(more);
  const what = more > 0 ? `make ${n} more` : `make ${n} fewer`;
  const how = more > 0 ? `2 ${sc} in` : 'work 2 together at';
  if (n === 1) return `${what}: ${how} the ${ordinal(Math.max(1, Math.round(among / 2)))} stitch`;
  return `${what}: ${how} every ${ordinal(Math.max(1, Math.floor(among / n)))} stitch, ${n} times`;
}

export function ordinal(n: number): string {
  const teen = n % 100 >= 11 && n % 100 <= 13;
  const end = teen ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th');
  return `${n}${end}`;
}

function sizeWords(growMm: number): string {
  return growMm > 0
    ? 'it is then still too small, so a larger hook or one more round in the middle is needed'
    : 'it is then still too large, so a smaller hook or one round fewer in the middle is needed';
}
