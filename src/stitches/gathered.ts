/**
 * Rows of the stitch table for several legs gathered in one place, 2 to 7 of them: popcorn, bobble, cluster, puff.
 * The bare words have no one meaning in the trade and are not here: a pattern says `5-dc popcorn`, or defines `pc`.
 */

import { type PlainId, plainRow, round2, shortName, small } from './plain-row.ts';
import type { StitchRow, StitchTerms } from './stitch-row.ts';
import { TOGETHER, togetherYarn } from './together.ts';

interface Kind {
  /** As printed after the number and the stitch: `5-dc popcorn`. */
  readonly abbr: string;
  readonly name: string;
  /** Other words for it that are whole, and short ones. */
  readonly alsoWords: readonly string[];
  readonly alsoShort: readonly string[];
  readonly legs: readonly PlainId[];
  readonly make: (leg: StitchRow, n: number) => Partial<StitchRow> & Pick<StitchRow, 'how' | 'yarnInSc'>;
  readonly source: string;
}

const COUNTS = [2, 3, 4, 5, 6, 7];

const KINDS: readonly Kind[] = [
  {
    abbr: 'popcorn',
    name: 'popcorn',
    alsoWords: ['popcorn st', 'popcorn stitch'],
    alsoShort: ['pc', 'pop'],
    legs: ['hdc', 'dc', 'tr'],
    make: (leg, n) => ({
      wholeLegs: true,
      // The loop pulled through is the one that was dropped.
      yarnInSc: round2(n * leg.yarnInSc),
      how: `In one place ${n} times ${small(leg.how).replace(/\.$/, '')}; then take the hook out of its loop, put it through the top of the first of the ${n} and draw the dropped loop through.`,
    }),
    source: 'published: motif patterns; figures from memory',
  },
  {
    abbr: 'bobble',
    name: 'bobble',
    alsoWords: ['bobble st', 'bobble stitch'],
    alsoShort: ['bo', 'bob'],
    legs: ['hdc', 'dc', 'tr', 'dtr'],
    make: joinedLegs,
    source: 'published: independent teaching page; figures from memory',
  },
  {
    abbr: 'cl',
    name: 'cluster',
    alsoWords: ['cluster st', 'cluster stitch'],
    alsoShort: [],
    legs: ['hdc', 'dc', 'tr', 'dtr'],
    make: joinedLegs,
    source: 'published: independent teaching page, motif pattern; figures from memory',
  },
  {
    abbr: 'puff',
    name: 'puff stitch',
    alsoWords: ['puff', 'puff st'],
    alsoShort: ['ps'],
    legs: ['hdc'],
    // Its loops are pulled up taller than those of plain legs: the middle of the ranges in shared/stitches.json.
    make: (leg, n) => ({
      heightChains: 2.5,
      heightInSc: 1.75,
      yarnInSc: round2(togetherYarn(leg, n) + n * TALLER_LOOP_IN_SC),
      how: `In one place wrap the yarn once and pull up a tall loop, ${n} times, then wrap the yarn and draw it through all ${2 * n + 1} loops.`,
    }),
    source:
      'published: independent teaching page, motif pattern, UK craft-book publisher; figures from memory',
  },
];

// Two strands as long as 0.3 of a row (1.75 high against 1.45). A single crochet about as tall as it is wide takes 10.6
// times its width (a measured strip), so a strand a row long is 0.094 of it.
const TALLER_LOOP_IN_SC = round2(2 * 0.3 * 0.094);

export const GATHERED: readonly StitchRow[] = KINDS.flatMap((kind) =>
  kind.legs.flatMap((leg) => COUNTS.map((n) => gatheredRow(kind, leg, n))),
);

function gatheredRow(kind: Kind, id: PlainId, n: number): StitchRow {
  const leg = plainRow(id);
  return {
    ...leg,
    id: `${id}${n}-${kind.abbr}`,
    family: 'gathered',
    us: gatheredTerms(kind, leg.us, n),
    uk: gatheredTerms(kind, leg.uk, n),
    turningChain: null,
    inOnePlace: true,
    legs: n,
    source: kind.source,
    ...kind.make(leg, n),
  };
}

/** As many part-worked in one place and closed by one draw through. */
function joinedLegs(leg: StitchRow, n: number): Pick<StitchRow, 'how' | 'yarnInSc'> {
  const together = TOGETHER.find((row) => row.id === `${leg.id}${n}tog`);
  if (together === undefined) throw new Error(`No decrease of ${n} ${leg.id} in the table.`);
  const how = together.how
    .replace(`In each of the next ${n} places`, `In one place ${n} times`)
    .replace(`in each of the next ${n} places`, `${n} times in one place`);
  return { how, yarnInSc: together.yarnInSc };
}

/** `5-dc popcorn`, `5 double crochet popcorn`, and the other ways to write it. */
function gatheredTerms(kind: Kind, leg: StitchTerms, n: number): StitchTerms {
  const words = [...new Set([kind.abbr, kind.name, ...kind.alsoWords])];
  return {
    abbr: `${n}-${leg.abbr} ${kind.abbr}`,
    name: `${n} ${leg.name} ${kind.name}`,
    alsoRead: [
      ...[...words, ...kind.alsoShort].flatMap((word) => [
        ...(word === kind.abbr ? [] : [`${n}-${leg.abbr} ${word}`]),
        `${n} ${leg.abbr} ${word}`,
      ]),
      ...words.flatMap((word) => [
        ...(word === kind.name ? [] : [`${n} ${leg.name} ${word}`]),
        `${n}-${shortName(leg.name)} ${word}`,
        `${n} ${shortName(leg.name)} ${word}`,
      ]),
    ],
  };
}
