/** A square of filet in, its words out: `ch 2, sk next 2 sts or next ch-2 sp, dc in next dc`. */

import type { SquareStep } from '../notation/square.ts';
import { stitchById } from '../stitches/table.ts';
import { form, printStitch, printWhat } from './print-name.ts';
import type { Voice } from './voice.ts';

export function printSquare({ filled, chains, begins, of: stitch }: SquareStep, voice: Voice): string {
  const one = printStitch(stitch, false, voice);
  const space = `next ${printWhat({ kind: 'space', chains, corner: false }, false, voice)}`;
  const sts = `next ${chains === 1 ? '' : `${chains} `}${form(voice.phrases.st, chains !== 1)}`;
  const { ch, skip } = voice.phrases;
  const rise = stitchById(stitch).turningChain?.chains ?? 1;
  const first = filled ? `${ch.one} ${rise} (counts as ${one}), ` : '';
  const over = begins === true ? `${rise + chains} (counts as ${one} and ${ch.one} ${chains})` : `${chains}`;
  const inside = filled
    ? `${begins === true ? first : ''}${one} in ${sts} or ${chains} ${printStitch(stitch, chains !== 1, voice)} in ${space}`
    : `${ch.one} ${over}, ${skip} ${sts} or ${space}`;
  return `${inside}, ${one} in next ${one}`;
}
