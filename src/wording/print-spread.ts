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

/** Runs one after the other, and how often they are worked. */
export interface Cycle {
  readonly runs: readonly Run[];
  readonly passes: number;
}

/** In the place of a number: two stitches worked together, over two places. */
export const TOGETHER = -1;

export function printSpread(
  spread: readonly number[],
  stitch: StitchName,
  place: Noun,
  mark: string,
  voice: Voice,
): string {
  const words = ({ runs }: Cycle): string =>
    runs.map((run) => runWords(run, stitch, place, voice)).join(', ');
  const cycles = shortest(spread);
  // Where more than one part of it comes again, a mark would not say which of them is meant.
  const oneOnly = cycles.filter(({ passes }) => passes > 1).length === 1;
  return cycles
    .map((cycle) => {
      const { passes } = cycle;
      if (passes < 2) return words(cycle);
      if (!oneOnly) return `[${words(cycle)}] ${passes === 2 ? 'twice' : `${passes} times`}`;
      const again = passes === 2 ? 'once more' : passes === 3 ? 'twice more' : `${passes - 1} more times`;
      return `${mark}${words(cycle)}; ${voice.phrases.repeat} from ${mark} ${again}`;
    })
    .join(', ');
}

/**
 * The way of writing a spread with the fewest instructions; a cycle counts one for the "rep", and a run that is cut in
 * two by the edge of a cycle a half. Found from the end backwards: what is shortest from a place on is a run or a cycle
 * that begins there, and what is shortest behind it.
 */
export function shortest(spread: readonly number[]): readonly Cycle[] {
  const best: Best[] = [];
  best[spread.length] = { cost: 0, length: 0, passes: 1 };
  const changes = changesBefore(spread);
  const alike = alikeAt(spread);
  const behind = (end: number): number =>
    (best[end]?.cost ?? 0) + (end < spread.length && spread[end] === spread[end - 1] ? CUT : 0);
  for (let i = spread.length - 1; i >= 0; i -= 1) {
    const here: Best = { cost: Number.POSITIVE_INFINITY, length: 0, passes: 1 };
    for (let length = 2; i + 2 * length <= spread.length; length += 1) {
      const body = 2 + (changes[i + length - 1] ?? 0) - (changes[i] ?? 0);
      const most = 1 + Math.floor((alike[length]?.[i] ?? 0) / length);
      for (let passes = 2; passes <= most; passes += 1)
        take(here, body + behind(i + length * passes), length, passes);
    }
    for (let end = i + 1; end === i + 1 || (end <= spread.length && spread[end - 1] === spread[i]); end += 1)
      take(here, 1 + behind(end), end - i, 1);
    best[i] = here;
  }
  return cyclesOf(spread, best);
}

const CUT = 0.5;

interface Best {
  cost: number;
  length: number;
  passes: number;
}

/** The first of several as good stays: a cycle that begins at once, before one that begins after a run. */
function take(here: Best, cost: number, length: number, passes: number): void {
  if (cost >= here.cost) return;
  here.cost = cost;
  here.length = length;
  here.passes = passes;
}

/** How often the number has changed up to each place. */
function changesBefore(spread: readonly number[]): number[] {
  let changes = 0;
  return spread.map((each, i) => {
    if (i > 0 && each !== spread[i - 1]) changes += 1;
    return changes;
  });
}

/** For each distance and place: how many places from there on are as those so far behind them. */
function alikeAt(spread: readonly number[]): readonly Uint16Array[] {
  const most = Math.floor(spread.length / 2);
  return Array.from({ length: most + 1 }, (_, distance) => {
    const alike = new Uint16Array(spread.length + 1);
    for (let i = spread.length - distance - 1; i >= 0 && distance > 0; i -= 1)
      alike[i] = spread[i] === spread[i + distance] ? (alike[i + 1] ?? 0) + 1 : 0;
    return alike;
  });
}

/** Runs that stand alone one after the other are taken together. */
function cyclesOf(spread: readonly number[], best: readonly Best[]): Cycle[] {
  const cycles: { runs: Run[]; passes: number }[] = [];
  let i = 0;
  while (i < spread.length) {
    const { length = 1, passes = 1 } = best[i] ?? {};
    const runs = runsOf(spread.slice(i, i + length));
    const last = cycles.at(-1);
    if (last?.passes === 1 && passes === 1) last.runs.push(...runs);
    else cycles.push({ runs, passes });
    i += length * passes;
  }
  return cycles;
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
  if (each === TOGETHER) {
    const two = `${twoTogether(stitch, voice)} over next 2 ${place.many}`;
    return places === 1 ? two : `[${two}] ${places === 2 ? 'twice' : `${places} times`}`;
  }
  const where = places === 1 ? `next ${place.one}` : `next ${places} ${place.many}`;
  if (each === 0) return `${voice.phrases.skip} ${where}`;
  return `${each} ${printName(stitch, each !== 1, voice)} in ${places === 1 ? where : `each of ${where}`}`;
}

function twoTogether(stitch: StitchName, voice: Voice): string {
  return stitch.kind === 'stitch'
    ? printName({ ...stitch, id: `${stitch.id}2tog` }, false, voice)
    : `${printName(stitch, false, voice)} 2 together`;
}
