/** The magic ring as Japanese charts mark it: the sign "wa", for "ring", in strokes of our own, as no font of ours has it. */

import type { PathPart, Shape } from '../scene/scene.ts';
import { magicRing } from './magic-ring.ts';
import type { StitchSymbol } from './stitch-symbol.ts';

/** A stem at the left; over it a short bar that folds down to the left and sweeps up into an open bow. */
const WA: readonly PathPart[] = [
  ['M', -0.17, -0.46],
  ['L', -0.17, 0.44],
  ['M', -0.4, -0.24],
  ['L', -0.07, -0.28],
  ['L', -0.42, 0.2],
  ['C', -0.22, -0.02, 0.02, -0.18, 0.18, -0.17],
  ['C', 0.44, -0.15, 0.49, 0.12, 0.33, 0.28],
  ['C', 0.25, 0.36, 0.15, 0.4, 0.03, 0.42],
];

/** Finer than a stitch: it is written rather than drawn. */
const PEN_U = 0.085;

const wa = (): Shape[] => [{ kind: 'path', parts: WA, stroke: { ink: 'ink', widthMm: PEN_U }, fill: 'none' }];

export const magicRingJapanese: StitchSymbol = { ...magicRing, draw: wa, leg: wa };
