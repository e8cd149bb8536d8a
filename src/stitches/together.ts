/** Rows of the stitch table for decreases: 2 to 7 stitches worked together, made from the stitch each leg is. */

import { capital, type PlainId, plainRow, round2 } from './plain-row.ts';
import type { StitchRow, StitchTerms } from './stitch-row.ts';

interface Leg {
  readonly id: PlainId;
  /** How one leg is left unfinished, for each of n places. */
  readonly begin: (n: number) => string;
  /** Loops on the hook once n legs are there. */
  readonly loops: (n: number) => number;
  /** The numbers whose abbreviations stood in a published list. */
  readonly published: readonly number[];
}

const LEGS: readonly Leg[] = [
  {
    id: 'sc',
    begin: (n) => `pull up a loop in each of the next ${n} places`,
    loops: (n) => n + 1,
    published: [2, 3],
  },
  {
    id: 'hdc',
    begin: (n) => `wrap the yarn once and pull up a loop in each of the next ${n} places`,
    loops: (n) => 2 * n + 1,
    published: [2],
  },
  { id: 'dc', begin: (n) => partWorked(n, 'once', 'once'), loops: (n) => n + 1, published: [2, 3] },
  { id: 'tr', begin: (n) => partWorked(n, 'twice', 'twice'), loops: (n) => n + 1, published: [] },
  { id: 'dtr', begin: (n) => partWorked(n, '3 times', '3 times'), loops: (n) => n + 1, published: [] },
];

const NUMBER_WORDS: Readonly<Record<number, string>> = {
  2: 'two',
  3: 'three',
  4: 'four',
  5: 'five',
  6: 'six',
  7: 'seven',
};

// Closing n legs with one draw through all the loops saves n - 1 closing loops of a chain's length each (computed).
const CLOSING_LOOP_IN_SC = 0.48;

export const TOGETHER: readonly StitchRow[] = LEGS.flatMap((leg) =>
  Object.keys(NUMBER_WORDS).map((n) => togetherRow(leg, Number(n))),
);

function togetherRow(leg: Leg, n: number): StitchRow {
  const one = plainRow(leg.id);
  return {
    ...one,
    id: `${leg.id}${n}tog`,
    family: 'together',
    us: togetherTerms(one.us, n),
    uk: togetherTerms(one.uk, n),
    yarnInSc: togetherYarn(one, n),
    uses: n,
    turningChain: decreaseTurningChain(one),
    makes: 1,
    how: `${capital(leg.begin(n))}, then wrap the yarn and draw it through all ${leg.loops(n)} loops.`,
    source: leg.published.includes(n) ? 'published: lists of terms; figures from memory' : 'memory',
  };
}

/** Of n legs closed by one draw through. */
export function togetherYarn(leg: StitchRow, n: number): number {
  return round2(n * leg.yarnInSc - (n - 1) * CLOSING_LOOP_IN_SC);
}

/** The chain is its leg's; whether it counts as a leg of the decrease is for the pattern to say, but for sc. */
function decreaseTurningChain(leg: StitchRow): StitchRow['turningChain'] {
  if (leg.turningChain === null || leg.turningChain.counts === 'no') return leg.turningChain;
  return { chains: leg.turningChain.chains, counts: 'varies' };
}

/** `dc2tog`, `double crochet 2 together`, and the other ways to write it. */
function togetherTerms(leg: StitchTerms, n: number): StitchTerms {
  const spellings = [leg.abbr, leg.name, ...leg.alsoRead];
  return {
    abbr: `${leg.abbr}${n}tog`,
    name: `${leg.name} ${n} together`,
    alsoRead: spellings.flatMap((words) => [
      ...(words === leg.name ? [] : [`${words} ${n} together`]),
      ...(words.includes(' ') || words === leg.abbr ? [] : [`${words}${n}tog`]),
      `${words} ${n} tog`,
      `${words} ${n} sts tog`,
      `${words} ${n} sts together`,
      `${words} ${n} stitches together`,
      `${words} ${NUMBER_WORDS[n]} together`,
      `${words} next ${n} sts tog`,
      `${words} next ${n} sts together`,
      `${words} next ${n} stitches together`,
    ]),
  };
}

function partWorked(n: number, wraps: string, pairs: string): string {
  return `in each of the next ${n} places wrap the yarn ${wraps}, pull up a loop and draw the yarn through 2 loops ${pairs}`;
}
