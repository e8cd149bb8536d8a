/** What a chain counts as, and the count at the end of a row, in; their words out. */

import type { Counts } from '../notation/chain-counts.ts';
import { describeThing, type ThingNames } from '../notation/describe-counted.ts';
import { isThing, type StatedCount } from '../notation/line.ts';
import type { Num } from '../notation/num.ts';
import { form, printSpecial, printStitch, printWhat } from './print-name.ts';
import { isMany, printNumber } from './print-number.ts';
import type { Voice } from './voice.ts';

/** `(counts as dc and ch 2)`, `(does not count as a st)`. */
export function printCounts(counts: Counts, voice: Voice): string {
  const verb = countsForNothing(counts) ? 'does not count' : 'counts';
  const where = counts.throughout ? ' here and throughout' : counts.onlyHere === true ? ' this time' : '';
  return `(${verb} as ${countedAs(counts, voice)}${where})`;
}

/** `(skipped 3 ch count as dc)` after a stitch in the chain that follows the skipped ones. */
export function printSkipped(counts: Counts, skipped: number | null, voice: Voice): string {
  const { ch } = voice.phrases;
  const chains = skipped === null ? ch.many : skipped === 1 ? ch.one : `${skipped} ${ch.many}`;
  const one = skipped === 1;
  const verb = countsForNothing(counts)
    ? one
      ? 'does not count'
      : 'do not count'
    : one
      ? 'counts'
      : 'count';
  return `(skipped ${chains} ${verb} as ${countedAs(counts, voice)}${counts.throughout ? ' here and throughout' : ''})`;
}

/** `37 sts`, `24 dc, 4 ch-2 sps`, without brackets. */
export function printStated(stated: StatedCount, voice: Voice): string {
  return stated.entries.map((entry) => printEntry(entry.n, entry.what, voice) + sideWords(entry)).join(', ');
}

function sideWords({ perSide, sides }: StatedCount['entries'][number]): string {
  if (sides !== undefined) return ` each ${sides} side`;
  return perSide ? ' each side' : '';
}

function printEntry(n: Num, what: StatedCount['entries'][number]['what'], voice: Voice): string {
  const number = printNumber(n, voice.numbers);
  if (what === null) return number;
  const many = isMany(n, voice.numbers);
  if (!isThing(what)) return `${number} ${printWhat(what, many, voice)}`;
  const names: ThingNames = {
    any: form(voice.phrases.st, true),
    stitch: (id, several) => printStitch(id, several, voice),
    special: (name, several) => printSpecial(name, several, voice),
  };
  return `${number} ${describeThing(what, many, names)}`;
}

function countsForNothing({ as, plusChains }: Counts): boolean {
  return as === null && plusChains === 0;
}

function countedAs(counts: Counts, voice: Voice): string {
  if (counts.as === null && counts.plusChains > 0)
    return printWhat({ kind: 'space', chains: counts.plusChains, corner: false }, false, voice);
  // The reader keeps "counts as a st", which names no stitch, under the id `st`.
  const plain = counts.as === null || counts.as === 'st';
  const stitch = plain ? `a ${voice.phrases.st.one}` : printStitch(counts.as, false, voice);
  return counts.plusChains === 0 ? stitch : `${stitch} and ${voice.phrases.ch.one} ${counts.plusChains}`;
}
