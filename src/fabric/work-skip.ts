/** `sk next 2 ch`, `sk first st`, `sk next shell`: places passed without being worked. */

import { describeWhat } from '../notation/describe-what.ts';
import type { SkipStep } from '../notation/tree.ts';
import { describeSite } from './describe-site.ts';
import { countOwed, findFirst, findLast, findNext, passChain, passPlace } from './find-site.ts';
import { howMany, rowOfSite } from './place-sites.ts';
import type { Worker } from './worker.ts';
import { stuck, valueFor } from './worker.ts';

export function workSkip(worker: Worker, step: SkipStep): boolean {
  const n = howMany(worker, step.n);
  if (step.pick === 'last') {
    for (let i = 0; i < n; i += 1) {
      const index = findLast(worker, step.what, n - i, step.span);
      if (index < 0) return false;
      skipTo(worker, index);
    }
    return true;
  }
  if (step.pick === 'first') {
    for (let i = 0; i < n; i += 1) {
      const index = findFirst(worker, step.what, i + 1, step.span);
      if (index < 0) return false;
      skipTo(worker, index);
    }
    return true;
  }
  for (let i = 0; i < n; i += 1) {
    const index = findNext(worker, step.what, step.span);
    if (index < 0 || !standsThere(worker, step, index) || !isRest(worker, step, index)) return false;
    worker.passed = i === 0 ? [index] : [...worker.passed, index];
    if (step.what.kind === 'ch') skipChain(worker, index);
    else skipTo(worker, index, step.what.kind === 'special');
  }
  return true;
}

/** Whether the place is all that is left of the fan that was worked into before it. */
function isRest(worker: Worker, { restOf, what, span }: SkipStep, index: number): boolean {
  const { sites, last } = worker;
  if (restOf === undefined || sites === null) return true;
  const foot = sites[last]?.foot;
  if (sites[index]?.foot === foot && sites[index + 1]?.foot !== foot) return true;
  const wanted = `last ${describeWhat(what, worker.terms)} of the ${restOf}`;
  const at = sites[index]?.foot === foot ? index + 1 : index;
  const site = sites[at];
  if (site === undefined) return stuck(worker, { kind: 'used up', wanted, span });
  const found = describeSite(site, worker.terms);
  return stuck(worker, { kind: 'not there', wanted, found, nth: countOwed(sites, 0, at) + 1, span });
}

/** Whether a place that is skipped is in the row it is said to be in. */
function standsThere(worker: Worker, { what, ofRow, span }: SkipStep, index: number): boolean {
  const said = ofRow === undefined ? null : valueFor(worker, ofRow.values);
  const row = said === null ? null : rowOfSite(worker, index);
  if (said === row || said === null) return true;
  const sort = describeWhat(what, worker.terms);
  const [wanted, found] = [
    `${sort} of Row ${said}`,
    `${sort} ${row === null ? 'elsewhere' : `of Row ${row}`}`,
  ];
  return stuck(worker, { kind: 'not there', wanted, found, nth: index + 1, span });
}

/** Past one chain without working it. */
function skipChain(worker: Worker, index: number): void {
  const { last, lastWasSpace } = worker;
  passChain(worker, index);
  worker.last = last;
  worker.lastWasSpace = lastWasSpace;
}

/** Past a place without working it; past all of a special stitch when that is what is skipped. */
export function skipTo(worker: Worker, index: number, whole = false): void {
  const { last, lastWasSpace, sites } = worker;
  passPlace(worker, index);
  if (whole && sites !== null) {
    const group = sites[index]?.group;
    while (worker.next < sites.length && sites[worker.next]?.group === group) worker.next += 1;
  }
  worker.last = last;
  worker.lastWasSpace = lastWasSpace;
}
