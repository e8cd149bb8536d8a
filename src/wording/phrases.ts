/** The words that instructions are built from, in each dialect and form: data that the printers read. */

import type { Dialect } from './words.ts';

/** A noun, for one and for more than one. */
export interface Noun {
  readonly one: string;
  readonly many: string;
}

export interface Phrases {
  readonly st: Noun;
  readonly ch: Noun;
  readonly sp: Noun;
  readonly corner: Noun;
  readonly rowEnd: Noun;
  /** As in labels. */
  readonly row: Noun;
  readonly round: Noun;
  readonly skip: string;
  readonly repeat: string;
  readonly beginning: string;
  readonly turningChain: string;
  readonly yarnOver: string;
  readonly backLoop: string;
  readonly frontLoop: string;
  readonly rightSide: string;
  readonly wrongSide: string;
  readonly centre: string;
  /** A run of n chains as one thing: `ch-3`, `3-ch`. */
  readonly chainsOf: (n: number) => string;
}

/** The phrases of a dialect. */
export function phrasesOf(dialect: Dialect): Phrases {
  return PHRASES[dialect.terms][dialect.form];
}

const ABBREVIATED_US: Phrases = {
  st: { one: 'st', many: 'sts' },
  ch: { one: 'ch', many: 'ch' },
  sp: { one: 'sp', many: 'sps' },
  corner: { one: 'corner', many: 'corners' },
  rowEnd: { one: 'row end', many: 'row ends' },
  row: { one: 'Row', many: 'Rows' },
  round: { one: 'Rnd', many: 'Rnds' },
  skip: 'sk',
  repeat: 'rep',
  beginning: 'beg',
  turningChain: 'tch',
  yarnOver: 'yo',
  backLoop: 'BLO',
  frontLoop: 'FLO',
  rightSide: 'RS',
  wrongSide: 'WS',
  centre: 'center',
  chainsOf: (n) => `ch-${n}`,
};

// UK word order of chain spaces, "miss" and "yrh": UK craft-book abbreviations pages; "miss" from common practice.
const ABBREVIATED_UK: Phrases = {
  ...ABBREVIATED_US,
  skip: 'miss',
  yarnOver: 'yrh',
  centre: 'centre',
  chainsOf: (n) => `${n}-ch`,
};

const FULL_US: Phrases = {
  st: { one: 'stitch', many: 'stitches' },
  ch: { one: 'chain', many: 'chains' },
  sp: { one: 'space', many: 'spaces' },
  corner: { one: 'corner', many: 'corners' },
  rowEnd: { one: 'row end', many: 'row ends' },
  row: { one: 'Row', many: 'Rows' },
  round: { one: 'Round', many: 'Rounds' },
  skip: 'skip',
  repeat: 'repeat',
  beginning: 'beginning',
  turningChain: 'turning chain',
  yarnOver: 'yarn over',
  backLoop: 'back loop only',
  frontLoop: 'front loop only',
  rightSide: 'right side',
  wrongSide: 'wrong side',
  centre: 'center',
  chainsOf: (n) => `chain-${n}`,
};

const FULL_UK: Phrases = {
  ...FULL_US,
  skip: 'miss',
  yarnOver: 'yarn round hook',
  centre: 'centre',
  chainsOf: (n) => `${n}-chain`,
};

const PHRASES = {
  US: { abbreviated: ABBREVIATED_US, full: FULL_US },
  UK: { abbreviated: ABBREVIATED_UK, full: FULL_UK },
} as const;
