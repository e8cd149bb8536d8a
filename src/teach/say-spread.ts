/** How many stitches go into each place of an edge in, a sentence that says so out. */

import type { EvenlyStep } from '../notation/tree.ts';
import { printName } from '../wording/print-name.ts';
import { type Cycle, shortest, TOGETHER } from '../wording/print-spread.ts';
import type { Voice } from '../wording/voice.ts';

export function saySpread(spread: readonly number[], { edge, stitch }: EvenlyStep, voice: Voice): string {
  const place = edge === 'row ends' ? voice.phrases.rowEnd : voice.phrases.st;
  const [first] = spread;
  if (first === 1 && spread.every((each) => each === 1)) return `that is one in each ${place.one}`;
  const cycles = shortest(spread).map(({ runs, passes }) => {
    const words = runs.map((run) => runWords(run, place)).join(', ');
    return passes === 1 ? words : `${passes === 2 ? 'twice' : `${passes} times in all`}: ${words}`;
  });
  return `that is, ${cycles.join('; then ')}`;

  function runWords({ each, places }: Cycle['runs'][number], { one, many }: typeof place): string {
    const where = places === 1 ? `next ${one}` : `each of next ${places} ${many}`;
    if (each === 0) return `skip ${places === 1 ? where : `next ${places} ${many}`}`;
    if (each !== TOGETHER) return `${each} in ${where}`;
    const two = `${printName(stitch, false, voice)} 2 together over next 2 ${many}`;
    return places === 1 ? two : `${two}, ${places} times`;
  }
}
