/** A row's account in, how it uses up the row below out: `the repeat uses 6, 8 times = 48; the ends use 2 + 5: 55`. */

import type { Step } from '../notation/tree.ts';
import type { PassRun, RowAccount, StepAccount } from './row-account.ts';

type Unit = 'stitches' | 'spaces';

/** Null for a row without a repeat, or one that goes along several edges. */
export function wordUsed(account: RowAccount): string | null {
  const steps = ofTheRow(account.steps);
  const repeats = steps.filter(({ runs }) => timesOf(runs) > 0);
  const [repeat] = repeats;
  if (repeat === undefined || account.below !== 'worked') return null;
  const unit: Unit = repeats.every(bySpaces) ? 'spaces' : 'stitches';
  const used = steps.map((step) => usedBy(step, unit));
  if (used.some((n) => n === null)) return null;
  const numbers = used.map((n) => n ?? 0);
  const total = sum(numbers);
  // Into a ring, or into one place, a repeat may go on for ever.
  if (total === 0 || repeats.some(({ runs }) => runs.some(({ used }) => used?.[unit] === 0))) return null;
  const name = unit === 'spaces' ? (total === 1 ? ' sp' : ' sps') : '';
  if (repeats.length > 1) {
    const terms = steps.flatMap((step, i) =>
      (numbers[i] ?? 0) === 0 ? [] : [step.runs.length === 0 ? String(numbers[i]) : product(step.runs, unit)],
    );
    return `uses ${terms.join(' + ')}: ${total}${name}`;
  }
  const at = steps.indexOf(repeat);
  const ends = [sum(numbers.slice(0, at)), sum(numbers.slice(at + 1))].filter((n) => n > 0);
  const words = wordRepeat(repeat.runs, unit);
  if (ends.length === 0) return `${words}${name}`;
  return `${words}; ${ends.length === 1 ? 'the rest uses' : 'the ends use'} ${ends.join(' + ')}: ${total}${name}`;
}

/** `the repeat uses 6, 8 times = 48`, `the repeat uses 6, 7 times, then 4 = 46`. */
function wordRepeat(runs: readonly PassRun[], unit: Unit): string {
  const each = together(runs, unit);
  const total = sum(each.map(({ times, n }) => times * n));
  const [first, ...more] = each;
  if (first === undefined) return 'the repeat uses nothing';
  if (more.length > 2) return `the repeat is worked ${timesOf(runs)} times and uses ${total}`;
  const times = (n: number): string => (n === 1 ? 'once' : n === 2 ? 'twice' : `${n} times`);
  if (more.length === 0)
    return `the repeat uses ${first.n}, ${times(first.times)}${first.times === 1 ? '' : ` = ${total}`}`;
  const then = more.map((run) => `then ${run.n}${run.times === 1 ? '' : `, ${times(run.times)}`}`);
  return `the repeat uses ${first.n}, ${times(first.times)}, ${then.join(', ')} = ${total}`;
}

function product(runs: readonly PassRun[], unit: Unit): string {
  return together(runs, unit)
    .map(({ times, n }) => (times === 1 ? String(n) : `${n} x ${times}`))
    .join(' + ');
}

/** What moves along the new top after the join uses nothing of the row below. */
function ofTheRow(steps: readonly StepAccount[]): readonly StepAccount[] {
  const join = steps.findIndex(({ step }) => step.kind === 'join' && !step.ring);
  return join < 0 ? steps : steps.slice(0, join);
}

/** Null where a step left the row below for another edge. */
function usedBy({ used, made, step }: StepAccount, unit: Unit): number | null {
  if (used !== null) return used[unit];
  // The yarn was moved round to where the row starts.
  return made.stitches === 0 && (step.kind === 'work' || step.kind === 'yarn') ? 0 : null;
}

function together(runs: readonly PassRun[], unit: Unit): { times: number; n: number }[] {
  const joined: { times: number; n: number }[] = [];
  for (const { times, used } of runs) {
    const n = used?.[unit] ?? 0;
    const last = joined[joined.length - 1];
    if (last?.n === n) last.times += times;
    else joined.push({ times, n });
  }
  return joined;
}

/** Whether its passes go from space to space, and pass over the stitches between. */
function bySpaces({ bySpaces: endsInSpace, step }: StepAccount): boolean {
  return endsInSpace && !worksStitches([step]);
}

function worksStitches(steps: readonly Step[]): boolean {
  return steps.some((step) => {
    if (step.kind === 'repeat' || step.kind === 'bracket') return worksStitches(step.body);
    if (step.kind !== 'work' && step.kind !== 'group') return false;
    return step.place === null || ('what' in step.place && step.place.what.kind !== 'space');
  });
}

function timesOf(runs: readonly PassRun[]): number {
  return sum(runs.map(({ times }) => times));
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, n) => total + n, 0);
}
