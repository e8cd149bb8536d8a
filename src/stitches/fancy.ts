/** Rows of the stitch table for stitches with a way of their own: crab stitch, spikes, love knot, bullion, loops. */

import { howEntered, type PlainId, plainRow, round2, shortName } from './plain-row.ts';
import type { StitchRow, StitchTerms } from './stitch-row.ts';

// A single crochet about as tall as it is wide takes 10.6 times its width (one maker's measured strip), so a strand as
// long as a row is 0.094 of it. At four stitches to the inch one takes 67 mm.
const STRAND_A_ROW_IN_SC = 0.094;
const SC_MM = 67;

export const FANCY: readonly StitchRow[] = [
  {
    ...plainRow('sc'),
    id: 'rev-sc',
    family: 'fancy',
    us: {
      abbr: 'rev sc',
      name: 'reverse single crochet',
      alsoRead: ['rsc', 'crab st', 'crab stitch', 'reverse sc'],
    },
    uk: {
      abbr: 'rev dc',
      name: 'reverse double crochet',
      alsoRead: ['crab st', 'crab stitch', 'reverse dc'],
    },
    symbol: 'reverse-single',
    how: 'Going backwards along the edge, insert the hook in the stitch behind, pull up a loop, then wrap the yarn and draw it through both loops.',
    source: 'memory',
  },
  longRow('sc', 'spike-sc', spikeTerms),
  longRow('hdc', 'long-hdc', longTerms),
  longRow('dc', 'long-dc', longTerms),
  longRow('tr', 'long-tr', longTerms),
  {
    ...plainRow('sc'),
    id: 'inv-dec',
    family: 'fancy',
    us: { abbr: 'inv dec', name: 'invisible decrease', alsoRead: ['invdec', 'invisible dec', 'inv-dec'] },
    uk: { abbr: 'inv dec', name: 'invisible decrease', alsoRead: ['invdec', 'invisible dec', 'inv-dec'] },
    uses: 2,
    how: 'Put the hook under the front loops of the next 2 stitches, wrap the yarn and draw it through both, then wrap the yarn and draw it through both loops on the hook.',
    source: 'memory',
  },
  {
    ...plainRow('sc'),
    id: 'loop-st',
    family: 'fancy',
    us: { abbr: 'lp st', name: 'loop stitch', alsoRead: ['loop st', 'fur st', 'fur stitch'] },
    uk: { abbr: 'loop st', name: 'loop stitch', alsoRead: ['lp st', 'fur st', 'fur stitch'] },
    // Both strands of a loop 25 mm long.
    yarnInSc: round2(1 + (2 * 25) / SC_MM),
    symbol: 'looped-single',
    how: 'Insert the hook, catch both strands of a long loop held over a finger on the far side, pull them up, then wrap the yarn and draw it through all the loops.',
    source: 'memory',
  },
  {
    id: 'love-knot',
    family: 'fancy',
    us: loveKnotTerms(),
    uk: loveKnotTerms(),
    yarnOvers: 0,
    // Set by the length of its loop, 10 to 25 mm; about two single crochet as a rule.
    heightChains: 2,
    heightInSc: 2,
    // Three strands of a loop 18 mm long, and the stitch that locks it.
    yarnInSc: round2(1 + (3 * 18) / SC_MM),
    uses: 0,
    makes: 1,
    counted: true,
    turningChain: null,
    lies: true,
    legOf: 'love-knot',
    symbol: 'love-knot',
    how: 'Pull the loop on the hook up long, wrap the yarn and draw it through, then insert the hook under the back strand of the long loop, pull up a loop, wrap the yarn and draw it through both loops.',
    source: 'memory',
  },
  {
    id: 'bullion',
    family: 'fancy',
    us: { abbr: 'bullion', name: 'bullion stitch', alsoRead: ['bullion st', 'roll st', 'roll stitch'] },
    uk: { abbr: 'bullion', name: 'bullion stitch', alsoRead: ['bullion st', 'roll st', 'roll stitch'] },
    // From 5 to 10 and more; the pattern says how many.
    yarnOvers: 7,
    heightChains: 3,
    heightInSc: 2,
    // Seven wraps of 18 mm round a 5 mm hook, and 30 mm for the loop drawn through them.
    yarnInSc: round2((7 * 18 + 30) / SC_MM),
    uses: 1,
    makes: 1,
    counted: true,
    turningChain: { chains: 3, counts: 'varies' },
    legOf: 'bullion',
    symbol: 'bullion',
    how: 'Wrap the yarn 7 times or as often as told, insert the hook, pull up a loop, draw it through all the wraps, then wrap the yarn and draw it through the last loop.',
    source: 'memory',
  },
  {
    id: 'surf-sl-st',
    family: 'fancy',
    us: { abbr: 'surf sl st', name: 'surface slip stitch', alsoRead: ['surface sl st'] },
    uk: {
      abbr: 'surf ss',
      name: 'surface slip stitch',
      alsoRead: ['surface ss', 'surf sl st', 'surface sl st', 'surface crochet'],
    },
    yarnOvers: 0,
    heightChains: 0,
    heightInSc: 0,
    yarnInSc: 0.48,
    uses: 0,
    makes: 0,
    counted: false,
    turningChain: null,
    enters: 'surface',
    legOf: 'surf-sl-st',
    symbol: 'slip-stitch',
    how: 'With the yarn held behind the finished work, insert the hook from the front, wrap the yarn and draw it through the work and the loop on the hook.',
    source: 'memory',
  },
];

/** Into a row below, which the place names: a row of its own, so that a spike whose place names none can be told of. */
function longRow(id: PlainId, longId: string, terms: (plain: StitchTerms) => StitchTerms): StitchRow {
  const plain = plainRow(id);
  return {
    ...plain,
    id: longId,
    family: 'fancy',
    us: terms(plain.us),
    uk: terms(plain.uk),
    // One row further down, its first loop is two strands a row longer.
    yarnInSc: round2(plain.yarnInSc + 2 * STRAND_A_ROW_IN_SC),
    turningChain: null,
    reachesDown: true,
    how: howEntered(plain, 'insert the hook in the row below as told').replace(
      'pull up a loop',
      'pull up a loop to the height of the row in hand',
    ),
    source: 'memory',
  };
}

/** Of a US single crochet. */
function spikeTerms({ abbr, name }: StitchTerms): StitchTerms {
  return {
    abbr: abbr === 'sc' ? 'sp-sc' : `sp${abbr}`,
    name: `spike ${name}`,
    alsoRead: [
      `spike ${abbr}`,
      `spike ${shortName(name)}`,
      `sp ${abbr}`,
      `sp-${abbr}`,
      `sp${abbr}`,
      `long ${abbr}`,
      `long ${name}`,
    ],
  };
}

function longTerms({ abbr, name }: StitchTerms): StitchTerms {
  return {
    abbr: `long ${abbr}`,
    name: `long ${name}`,
    alsoRead: [`long ${shortName(name)}`, `long-${abbr}`, `spike ${abbr}`, `spike ${name}`],
  };
}

/** `SK`, which some print, is "skip" everywhere else. */
function loveKnotTerms(): StitchTerms {
  return {
    abbr: 'LK',
    name: 'love knot',
    alsoRead: ["solomon's knot", 'solomon’s knot', 'solomon knot', 'lover’s knot', "lover's knot"],
  };
}
