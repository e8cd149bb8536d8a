/** A symbol's name in, its drawing out: the chart symbol of every stitch. */

import type { SymbolId } from '../stitches/stitch-row.ts';
import { bullion } from './bullion.ts';
import { chain } from './chain.ts';
import { double } from './double.ts';
import { doubleTreble } from './double-treble.ts';
import { extendedDouble } from './extended-double.ts';
import { extendedHalfDouble } from './extended-half-double.ts';
import { extendedSingle } from './extended-single.ts';
import { extendedTreble } from './extended-treble.ts';
import { halfDouble } from './half-double.ts';
import { linkedDouble } from './linked-double.ts';
import { linkedTreble } from './linked-treble.ts';
import { LOOP_MARKS, LOOP_MARKS_JAPANESE } from './loop-marks.ts';
import { loopedSingle } from './looped-single.ts';
import { loveKnot } from './love-knot.ts';
import { magicRing } from './magic-ring.ts';
import { magicRingJapanese } from './magic-ring-japanese.ts';
import { quadrupleTreble } from './quadruple-treble.ts';
import { reverseSingle } from './reverse-single.ts';
import { crossOn, single } from './single.ts';
import { saltireOn, singleJapanese } from './single-japanese.ts';
import { slipStitch } from './slip-stitch.ts';
import type { StitchSymbol } from './stitch-symbol.ts';
import { treble } from './treble.ts';
import { tripleTreble } from './triple-treble.ts';

export const SYMBOLS: Readonly<Record<SymbolId, StitchSymbol>> = {
  chain,
  'slip-stitch': slipStitch,
  single,
  'half-double': halfDouble,
  double,
  treble,
  'double-treble': doubleTreble,
  'triple-treble': tripleTreble,
  'quadruple-treble': quadrupleTreble,
  'extended-single': extendedSingle(crossOn),
  'extended-half-double': extendedHalfDouble,
  'extended-double': extendedDouble,
  'extended-treble': extendedTreble,
  'reverse-single': reverseSingle(crossOn),
  'looped-single': loopedSingle(crossOn),
  'linked-double': linkedDouble,
  'linked-treble': linkedTreble,
  'love-knot': loveKnot,
  bullion,
  'magic-ring': magicRing,
};

export interface SymbolSet {
  readonly symbols: Readonly<Record<SymbolId, StitchSymbol>>;
  readonly loopMarks: typeof LOOP_MARKS;
  /** Of two stems that cross the one behind is broken. */
  readonly breaksRear: boolean;
  /** Triangles point at where yarn is joined and cut. */
  readonly marksYarn: boolean;
  /** What the key adds to the magic ring's name. */
  readonly ringWords: string;
}

export type SymbolSetName = 'CYC' | 'JIS';

/** The Craft Yarn Council's forms, and those of JIS L 0201 where they differ; heights and widths are the same. */
export const SYMBOL_SETS: Readonly<Record<SymbolSetName, SymbolSet>> = {
  CYC: {
    symbols: SYMBOLS,
    loopMarks: LOOP_MARKS,
    breaksRear: false,
    marksYarn: false,
    ringWords: '',
  },
  JIS: {
    symbols: {
      ...SYMBOLS,
      single: singleJapanese,
      'extended-single': extendedSingle(saltireOn),
      'reverse-single': reverseSingle(saltireOn),
      'looped-single': loopedSingle(saltireOn),
      'magic-ring': magicRingJapanese,
    },
    loopMarks: LOOP_MARKS_JAPANESE,
    breaksRear: true,
    marksYarn: true,
    ringWords: ', the Japanese sign for “ring”',
  },
};
