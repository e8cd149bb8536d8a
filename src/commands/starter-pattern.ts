/** What a pattern is to be -> the text of a starter pattern that checks clean, each line explained. */

import type { Terms } from '../stitches/stitch-row.ts';

/** Worked to and fro, or round and round. */
export const SHAPES = ['flat', 'round'] as const;
export type StarterShape = (typeof SHAPES)[number];

export interface StarterChoice {
  readonly terms: Terms;
  readonly shape: StarterShape;
  /** One or more, each with a name of its own. */
  readonly sizes: readonly string[];
}

export const USUAL_STARTER: StarterChoice = {
  terms: 'US',
  shape: 'flat',
  sizes: ['small', 'medium', 'large'],
};

/** Of sizes beyond this nobody starts with. */
export const MOST_SIZES = 12;

export function starterPattern(title: string, choice: StarterChoice = USUAL_STARTER): string {
  const { terms, sizes } = choice;
  const { about, gauge, part, work } = choice.shape === 'flat' ? flatPiece(choice) : roundPiece(choice);
  const several =
    sizes.length === 1
      ? ''
      : `# Where sizes differ a number is written ${listed(sizes, (i) => 16 + 8 * i)}, in the order of the sizes.\n`;
  return `# A starter pattern. Change it line by line, and check it after each change:
#   npm run -s rowfold -- check patterns/NAME
# Lines that begin with # are notes to yourself; nobody else sees them.

title: ${JSON.stringify(title)}
about: ${about}
terms: ${terms}            # the terms the instructions below are written in: US or UK
skill: easy          # basic, easy, intermediate or complex (Craft Yarn Council levels)

# Count your swatch after washing it: finished sizes and yarn are worked out from these.
gauge: ${gauge}
hook: 5 mm
yarn:
  A: {colour: oat, hex: "#c9b48a", weight: 4, fibre: wool, ball: {length: 200 m, mass: 100 g}}
notions: [tapestry needle]

${several}sizes:
${sizes.map((name) => `  - {name: ${inYaml(name)}}`).join('\n')}

parts:
  - name: ${part}
    # Each ${choice.shape === 'flat' ? 'row' : 'round'} on a line of its own, as you would print it. A count in brackets at the end is checked.
    work: |
${work.map((line) => `      ${line}`).join('\n')}

finishing: [Weave in ends., Block to size.]
licence: All rights reserved.
`;
}

interface Piece {
  readonly about: string;
  readonly gauge: string;
  readonly part: string;
  readonly work: readonly string[];
}

/** The plainest stitch, and the one that squares in rounds are made of, in either terms. */
const STITCHES = {
  US: { short: 'sc', shortName: 'single crochet', tall: 'dc', tallName: 'double crochet' },
  UK: { short: 'dc', shortName: 'double crochet', tall: 'tr', tallName: 'treble crochet' },
} as const satisfies Record<Terms, unknown>;

/** Each size eight stitches wider than the one before, and higher by what keeps it square. */
function flatPiece({ terms, sizes }: StarterChoice): Piece {
  const { short, shortName } = STITCHES[terms];
  const counted = `(${listed(sizes, (i) => 16 + 8 * i)} sts)`;
  return {
    about: 'A plain square to try things on.',
    gauge: `{stitches: 16, rows: 18, over: 10 cm, of: ${shortName}, after: blocking}`,
    part: 'Square',
    work: [
      `Foundation: With A, ch ${listed(sizes, (i) => 17 + 8 * i)}.`,
      `Row 1 (RS): ${capital(short)} in 2nd ch from hook and in each ch across, turn. ${counted}`,
      `Rows 2-${listed(sizes, (i) => 18 + 9 * i)}: Ch 1, ${short} in each st across, turn. ${counted}`,
      'Fasten off.',
    ],
  };
}

/** A square from the middle out: sixteen stitches more a round, and each size two rounds larger than the one before. */
function roundPiece({ terms, sizes }: StarterChoice): Piece {
  const { tall, tallName } = STITCHES[terms];
  const rounds = (i: number) => 4 + 2 * i;
  return {
    about: 'A plain square worked from the middle out, to try things on.',
    gauge: `{stitches: 15, rows: 8, over: 10 cm, of: ${tallName}, after: blocking}`,
    part: 'Square',
    work: [
      `Rnd 1 (RS): With A, ch 3 (counts as ${tall}), ${tall} in magic ring, ch 2, *3 ${tall} in ring, ch 2; rep from * 2 more times, ${tall} in ring, join with sl st in top of beg ch-3. (12 ${tall}, 4 ch-2 sps)`,
      `Rnd 2: Sl st in next ${tall} and in next ch-2 sp, ch 3 (counts as ${tall}), (${tall}, ch 2, 2 ${tall}) in same sp, *${tall} in each ${tall} to next corner, (2 ${tall}, ch 2, 2 ${tall}) in next corner ch-2 sp; rep from * 2 more times, ${tall} in each rem ${tall} around, join with sl st in top of beg ch-3. (28 ${tall}, 4 ch-2 sps)`,
      `Rnds 3-${listed(sizes, rounds)}: Rep Rnd 2. (${listed(sizes, (i) => 12 + 16 * (rounds(i) - 1))} ${tall}, 4 ch-2 sps)`,
      'Fasten off.',
    ],
  };
}

/** `16 (24, 32)`, one number a size. */
function listed(sizes: readonly string[], numberOf: (i: number) => number): string {
  const [first = 0, ...others] = sizes.map((_, i) => numberOf(i));
  return others.length === 0 ? String(first) : `${first} (${others.join(', ')})`;
}

function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}

/** Words that YAML would take for something else are quoted. */
function inYaml(name: string): string {
  return /^[A-Za-z][A-Za-z -]*$/.test(name) && !/^(?:true|false|null)$/i.test(name)
    ? name
    : JSON.stringify(name);
}
