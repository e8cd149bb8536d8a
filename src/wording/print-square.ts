/** A square of filet in, its words out: `ch 2, sk next 2 sts or next ch-2 sp, dc in next dc`. */

import type { SquareStep } from '../notation/square.ts';
import { form, printStitch, printWhat } from './print-name.ts';
import type { Voice } from './voice.ts';

export function printSquare({ filled, chains, of: stitch }: SquareStep, voice: Voice): string {
  const one = printStitch(stitch, false, voice);
  const space = `next ${printWhat({ kind: 'space', chains, corner: false }, false, voice)}`;
  const sts = `next ${chains === 1 ? '' : `${chains} `}${form(voice.phrases.st, chains !== 1)}`;
  const inside = filled
    ? `${one} in ${sts} or ${chains} ${printStitch(stitch, chains !== 1, voice)} in ${space}`
    : `${voice.phrases.ch.one} ${chains}, ${voice.phrases.skip} ${sts} or ${space}`;
  return `${inside}, ${one} in next ${one}`;
}
