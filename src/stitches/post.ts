/** Rows of the stitch table for post stitches, worked round the post of the stitch below, and two of them together. */

import {
  capital,
  howEntered,
  type PlainId,
  plainRow,
  round2,
  shortForms,
  shortName,
  small,
} from './plain-row.ts';
import type { StitchRow, StitchTerms } from './stitch-row.ts';
import { TOGETHER } from './together.ts';

const PLAIN: readonly PlainId[] = ['sc', 'hdc', 'dc', 'tr', 'dtr'];

interface Face {
  readonly face: 'front' | 'back';
  readonly letter: 'f' | 'b';
  readonly way: string;
  /** What stood in a published list or pattern. */
  readonly published: Readonly<Partial<Record<PlainId, string>>>;
}

const FACES: readonly Face[] = [
  {
    face: 'front',
    letter: 'f',
    way: 'from front to back to front',
    published: {
      sc: 'published: UK craft-book publisher for FPdc; figures from memory',
      dc: 'published: motif pattern, UK craft-book publisher for FPtr; figures from memory',
    },
  },
  { face: 'back', letter: 'b', way: 'from back to front to back', published: {} },
];

/** Its foot lies under the top of the row it is worked on, so the row stands lower than a plain one (memory). */
const LOWER = 0.85;

export const POST: readonly StitchRow[] = FACES.flatMap((face) => [
  ...PLAIN.map((id) => postRow(face, id)),
  ...PLAIN.map((id) => postTogetherRow(face, id)),
]);

function postRow({ face, letter, way, published }: Face, id: PlainId): StitchRow {
  const plain = plainRow(id);
  return {
    ...plain,
    id: `${letter}p${id}`,
    family: 'post',
    us: frontPostTerms(plain.us, face),
    uk: raisedTerms(plain.uk, face),
    heightInSc: round2(plain.heightInSc * LOWER),
    turningChain: lowerChain(plain),
    enters: `${face} post`,
    how: howEntered(plain, `put the hook round the post ${way}`),
    source: published[id] ?? 'memory',
  };
}

/** The row stands lower, so from double crochet up its chain is one shorter; whether it counts the pattern says. */
function lowerChain({ heightChains }: StitchRow): StitchRow['turningChain'] {
  return { chains: heightChains > 2 ? heightChains - 1 : heightChains, counts: 'varies' };
}

function postTogetherRow(face: Face, id: PlainId): StitchRow {
  const post = postRow(face, id);
  const together = togetherRow(`${id}2tog`);
  const places = /in each of the next 2 places/i;
  const posts = `round the posts of the next 2 stitches, each ${face.way},`;
  return {
    ...post,
    id: `${post.id}2tog`,
    us: twoTogether(post.us),
    uk: twoTogether(post.uk),
    yarnInSc: together.yarnInSc,
    uses: 2,
    legOf: post.id,
    how: capital(small(together.how).replace(places, posts)).replace(',,', ','),
    source: 'memory',
  };
}

/** `FPdc`, front post double crochet. */
function frontPostTerms(plain: StitchTerms, face: Face['face']): StitchTerms {
  return {
    abbr: `${face === 'front' ? 'FP' : 'BP'}${plain.abbr}`,
    name: `${face} post ${plain.name}`,
    alsoRead: frontPostSpellings(plain, face),
  };
}

/** `RtrF`, raised treble front; UK lists also print `FPtr`, which is not the US FPtr. */
function raisedTerms(plain: StitchTerms, face: Face['face']): StitchTerms {
  const letter = face === 'front' ? 'F' : 'B';
  return {
    abbr: `R${plain.abbr}${letter}`,
    name: `raised ${plain.name} ${face}`,
    alsoRead: [
      ...shortForms(plain).map((short) => `${face === 'front' ? 'fp' : 'bp'}${short}`),
      ...frontPostSpellings(plain, face),
      `${face} post ${plain.name}`,
      `raised ${shortName(plain.name)} ${face}`,
      `raised ${plain.abbr} ${face}`,
      `raised ${face} ${plain.name}`,
      `raised ${face} ${shortName(plain.name)}`,
      `raised ${face} ${plain.abbr}`,
      `r${letter.toLowerCase()}${plain.abbr}`,
      `r${letter.toLowerCase()} ${plain.abbr}`,
    ],
  };
}

function frontPostSpellings(plain: StitchTerms, face: Face['face']): string[] {
  const post = face === 'front' ? 'fp' : 'bp';
  return [
    ...shortForms(plain).flatMap((short) => [
      `${post} ${short}`,
      `${post}-${short}`,
      ...(short === plain.abbr ? [] : [`${post}${short}`]),
    ]),
    `${face} post ${plain.abbr}`,
    `${face} post ${shortName(plain.name)}`,
  ];
}

function twoTogether({ abbr, name, alsoRead }: StitchTerms): StitchTerms {
  const glued = alsoRead.filter((words) => !words.includes(' '));
  return {
    abbr: `${abbr}2tog`,
    name: `${name} 2 together`,
    alsoRead: [
      `${abbr} 2 tog`,
      `${abbr} 2 together`,
      ...glued.flatMap((words) => [`${words}2tog`, `${words} 2 tog`]),
      `${name} two together`,
    ].map((words) => words.toLowerCase()),
  };
}

function togetherRow(id: string): StitchRow {
  const row = TOGETHER.find((together) => together.id === id);
  if (row === undefined) throw new Error(`No decrease ${id} in the table.`);
  return row;
}
