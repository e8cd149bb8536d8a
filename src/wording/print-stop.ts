/** Where a repeat or "each" ends in, its words out: `across`, `5 more times`, `to last 6 sts`. */

import type { Num } from '../notation/num.ts';
import type { Stop } from '../notation/tree.ts';
import { printWhat } from './print-name.ts';
import { isMany, printNumber, soleValue } from './print-number.ts';
import type { Voice } from './voice.ts';

export function printStop(stop: Stop, voice: Voice): string {
  switch (stop.kind) {
    case 'end':
      return stop.word;
    case 'times':
      return printTimes(stop.n, stop.more, voice);
    case 'leaving': {
      const what = printWhat(stop.what, isMany(stop.n, voice.numbers), voice);
      if (soleValue(stop.n, voice.numbers) === 1) return `to last ${what}`;
      return `to last ${printNumber(stop.n, voice.numbers)} ${what}`;
    }
    case 'before':
      if (stop.centre === true) return `to ${voice.phrases.centre}`;
      if (stop.less !== undefined) {
        const sts = isMany(stop.less, voice.numbers) ? voice.phrases.st.many : voice.phrases.st.one;
        return `to ${printNumber(stop.less, voice.numbers)} ${sts} before ${printWhat(stop.what, false, voice)}`;
      }
      return `to next ${printWhat(stop.what, false, voice)}`;
  }
}

/** `once`, `twice more`, `5 more times`. */
export function printTimes(n: Num, more: boolean, voice: Voice): string {
  const sole = soleValue(n, voice.numbers);
  const word = sole === 1 ? 'once' : sole === 2 ? 'twice' : null;
  if (word !== null) return more ? `${word} more` : word;
  const number = printNumber(n, voice.numbers);
  return more ? `${number} more times` : `${number} times`;
}
