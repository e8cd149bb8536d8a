/**
 * How many stitches go into each place of an edge in, instructions out:
 * `*1 sc in next row end, 2 sc in next row end; rep from * 9 more times, 1 sc in next row end`.
 */

import type { StitchName } from '../notation/tree.ts';
import type { Noun } from './phrases.ts';
import { printName } from './print-name.ts';
import type { Voice } from './voice.ts';

/** Like places next to each other. */
interface Run {
  readonly each: number;
  readonly places: number;
}

/** Whole runs before, a cycle of runs with how often it is worked, and runs after. */
interface Cycle {
  readonly before: readonly Run[];
  readonly cycle: readonly Run[];
  readonly passes: number;
  readonly after: readonly Run[];
}

export function printSpread(
  spread: readonly number[],
  stitch: StitchName,
  place: Noun,
  mark: string,
  voice: Voice,
): string {
  const words = (run: Run): string => runWords(run, stitch, place, voice);
  const { before, cycle, passes, after } = shortest(spread);
  if (passes < 2) return [...before, ...cycle, ...after].map(words).join(', ');
  const again = passes === 2 ? 'once more' : passes === 3 ? 'twice more' : `${passes - 1} more times`;
  const repeated = `${mark}${cycle.map(words).join(', ')}; ${voice.phrases.repeat} from ${mark} ${again}`;
  return [...before.map(words), repeated, ...after.map(words)].join(', ');
}

/** The way of writing a spread with the fewest instructions; a cycle counts one for the "rep". */
export function shortest(spread: readonly number[]): Cycle {
  let best: Cycle = { before: runsOf(spread), cycle: [], passes: 1, after: [] };
  let fewest = best.before.length;
  for (let length = 2; length <= spread.length / 2; length += 1) {
    for (let start = 0; start < Math.min(length, spread.length - 2 * length + 1); start += 1) {
      const passes = passesFrom(spread, start, length);
      if (passes < 2) continue;
      const found: Cycle = {
        before: runsOf(spread.slice(0, start)),
        cycle: runsOf(spread.slice(start, start + length)),
        passes,
        after: runsOf(spread.slice(start + length * passes)),
      };
      const count = found.before.length + found.cycle.length + found.after.length + 1;
      if (count < fewest) {
        best = found;
        fewest = count;
      }
    }
  }
  return best;
}

function passesFrom(spread: readonly number[], start: number, length: number): number {
  let end = start + length;
  while (end < spread.length && spread[end] === spread[end - length]) end += 1;
  return Math.floor((end - start) / length);
}

function runsOf(spread: readonly number[]): Run[] {
  const runs: Run[] = [];
  for (const each of spread) {
    const last = runs.at(-1);
    if (last?.each === each) runs[runs.length - 1] = { each, places: last.places + 1 };
    else runs.push({ each, places: 1 });
  }
  return runs;
}

function runWords({ each, places }: Run, stitch: StitchName, place: Noun, voice: Voice): string {
  const where = places === 1 ? `next ${place.one}` : `next ${places} ${place.many}`;
  if (each === 0) return `${voice.phrases.skip} ${where}`;
  return `${each} ${printName(stitch, each !== 1, voice)} in ${places === 1 ? where : `each of ${where}`}`;
}
