/** A row's account in, the sum of what it makes in a maker's arithmetic out: `ch 3 is 1, (1 + 5) x 5 = 30, …: 37 sts`. */

import type { ChainStep } from '../notation/tree.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import type { PassRun, RowAccount, StepAccount } from './row-account.ts';
import { wordStep } from './word-step.ts';

/** More runs of unlike passes than this are told by their sum. */
const MOST_RUNS = 6;

/** How the row comes to its stitches; null for one that makes none. */
export function wordStitches(account: RowAccount, terms: Terms): string | null {
  if (account.foundation) return wordFoundation(account.steps);
  const { skippedChains, steps, made, broken } = account;
  const counted = skippedChains !== null && skippedChains.made.stitches > 0;
  const skipped = counted ? [`the ${skippedChains.chains} skipped ch are 1`] : [];
  const words = steps.flatMap((step) => {
    const n = step.made.stitches;
    if (n === 0) return [];
    return [step.runs.length === 0 ? wordStep(step, terms) : wordRuns(step, 'stitches')];
  });
  const all = [...skipped, ...words];
  const [only, another] = all;
  if (only === undefined) return null;
  // `7 in each of 11 sps = 77: 77 sts` says it twice.
  if (another === undefined) all[0] = only.replace(` = ${made.stitches}`, '');
  return `${all.join(', ')}: ${made.stitches} ${made.stitches === 1 ? 'st' : 'sts'}${broken ? ' so far' : ''}`;
}

/** How the row comes to its chain spaces; null for one that makes none. */
export function wordSpaces({ skippedChains, steps, made, broken }: RowAccount): string | null {
  if (made.spaces === 0) return null;
  const before = skippedChains?.made.spaces ?? 0;
  const terms = [
    ...(before === 0 ? [] : [String(before)]),
    ...steps.flatMap((step) => {
      const n = step.made.spaces;
      if (n === 0) return [];
      return [step.runs.length === 0 ? String(n) : product(step, 'spaces')];
    }),
  ];
  const sum = terms.join(' + ');
  const total = `${made.spaces} ${made.spaces === 1 ? 'sp' : 'sps'}${broken ? ' so far' : ''}`;
  return sum === String(made.spaces) ? total : `${sum}: ${total}`;
}

/** `(1 + 5) x 5 = 30`, `2 x 6 = 12`, `6 x 3 + 7 = 25`. */
function wordRuns(step: StepAccount, of: 'stitches' | 'spaces'): string {
  const words = product(step, of);
  return words === String(step.made[of]) ? words : `${words} = ${step.made[of]}`;
}

function product(step: StepAccount, of: 'stitches' | 'spaces'): string {
  const runs = together(step.runs, of);
  if (runs.length > MOST_RUNS) return String(step.made[of]);
  const alike = runs.length === 1 || (runs[0]?.times ?? 0) > 1;
  return runs.map(({ times, n }, i) => run(times, n, alike && i === 0 ? partsOf(step, of) : [])).join(' + ');
}

/** What a pass is made of is shown where it is more than one thing and makes the pass. */
function run(times: number, n: number, parts: readonly number[]): string {
  const sum = parts.reduce((total, part) => total + part, 0);
  const pass = parts.length > 1 && sum === n ? `(${parts.join(' + ')})` : String(n);
  return times === 1 ? pass : `${pass} x ${times}`;
}

function partsOf({ parts }: StepAccount, of: 'stitches' | 'spaces'): number[] {
  return parts.map(({ made }) => made[of]).filter((n) => n > 0);
}

/** Runs that differ in what they use only are one here. */
function together(runs: readonly PassRun[], of: 'stitches' | 'spaces'): { times: number; n: number }[] {
  const joined: { times: number; n: number }[] = [];
  for (const { times, made } of runs) {
    const last = joined[joined.length - 1];
    if (last?.n === made[of]) last.times += times;
    else joined.push({ times, n: made[of] });
  }
  return joined.filter(({ n }) => n > 0);
}

/** `6 x 6 + 2: 38 ch` where the foundation is a multiple. */
function wordFoundation(steps: readonly StepAccount[]): string | null {
  const found = steps.find(({ step }) => step.kind === 'chain' && 'of' in step.n);
  if (found === undefined) return null;
  const { n } = found.step as ChainStep;
  if (!('of' in n)) return null;
  return `${n.of} x ${(found.chains - n.plus) / n.of} + ${n.plus}: ${found.chains} ch`;
}
