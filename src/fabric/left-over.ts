/** What a row leaves of the row below, and the fault that it is. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { RowAccount } from '../explain/row-account.ts';
import { wordUsed } from '../explain/word-used.ts';
import type { Line } from '../notation/line.ts';
import type { Step, WorkStep } from '../notation/tree.ts';
import { countOwed, countSpaces } from './find-site.ts';
import { howMany } from './place-sites.ts';
import { rowSubject } from './row-subject.ts';
import { unworked } from './work-repeat.ts';
import type { Worker } from './worker.ts';

interface Row {
  readonly label: string;
  readonly line: Line;
  readonly steps: readonly Step[];
}

export function leftFault(
  worker: Worker,
  { label, line, steps }: Row,
  account: RowAccount,
  { file, size }: { readonly file: string; readonly size: string },
): Diagnostic | null {
  const { sites, next, lastWasSpace } = belowState(worker);
  const said = worker.leaves ? worker.leavesSaid : null;
  if (sites === null || (worker.leaves && said === null) || isLoop(line, steps)) return null;
  const left = unworked(sites, next, sites.length, lastWasSpace);
  if (left === (said ?? 0) || (worker.round && closesOver(worker, steps, left))) return null;
  if (said === null && line.stated !== null && stopsShort(worker, steps, left)) return null;
  const below = lastWasSpace ? countSpaces(sites, 0, sites.length) : countOwed(sites, 0, sites.length);
  const { start, end } = line.span;
  const last = steps[steps.length - 1]?.span.end ?? end;
  // Of a row that is repeated the steps stand in another line.
  const whole = { start, end: last > start && last <= end ? last : end };
  return diagnose(
    'row/unworked',
    { file, span: whole, sizes: [size] },
    {
      row: rowSubject(label),
      left,
      said,
      below,
      unit: lastWasSpace ? 'space' : 'stitch',
      used: wordUsed(account),
    },
  );
}

/**
 * `*ch 5, skip next 3 dc, sc in next dc; rep from * 10 more times, ch 5, join`: the last loop goes over as many as each
 * before it, though that is not said again.
 */
function closesOver(worker: Worker, steps: readonly Step[], left: number): boolean {
  const work = steps.filter(({ kind }) => kind !== 'note' && kind !== 'fasten off' && kind !== 'turn');
  const [before, chain, join] = work.slice(-3);
  if (join?.kind !== 'join' || chain?.kind !== 'chain') return false;
  if (before?.kind !== 'repeat' && before?.kind !== 'bracket') return false;
  const skips = before.body.filter((step) => step.kind === 'skip');
  return skips.length === 1 && skips.every(({ n }) => howMany(worker, n) === left);
}

/** `1 tr in each st to last 5 sts, turn. 59 sts.`: an armhole; the count that is told bears out that they are left. */
function stopsShort(worker: Worker, steps: readonly Step[], left: number): boolean {
  const work = steps.filter(({ kind }) => kind !== 'note');
  const [last, turn] = work.slice(-2);
  if (turn?.kind !== 'turn' || last?.kind !== 'work' || last.place?.kind !== 'each') return false;
  const { stop } = last.place;
  return stop.kind === 'leaving' && howMany(worker, stop.n) === left;
}

/**
 * `Hanging loop: ch 12, sl st in same st as join. Fasten off.`: a chain that goes back to where the yarn stands, under a
 * name and no number. Behind it the yarn is cut, so nothing is left for a row to come.
 */
function isLoop({ label, stated }: Line, steps: readonly Step[]): boolean {
  const numbered = label !== null && label.kind !== 'named';
  if (numbered || stated !== null) return false;
  const [chain, close, off, ...more] = steps.filter(({ kind }) => kind !== 'note');
  const ends = off?.kind === 'fasten off' && more.length === 0;
  return ends && chain?.kind === 'chain' && close !== undefined && staysPut(close);
}

function staysPut(step: Step): boolean {
  if ((step.kind !== 'join' && step.kind !== 'work') || step.stitch.kind !== 'stitch') return false;
  // `sc in the last sc you made`.
  const last = step.stitch.id === 'sl-st' || step.stitch.id === 'sc';
  return (
    (step.stitch.id === 'sl-st' && step.place?.kind === 'same') || (last && step.place?.kind === 'last-made')
  );
}

/** The places below as they stood when the row was done with them. */
function belowState(worker: Worker): {
  sites: Worker['sites'] | readonly Parameters<typeof countOwed>[0][number][];
  next: number;
  lastWasSpace: boolean;
} {
  return worker.below ?? { sites: worker.sites, next: worker.next, lastWasSpace: worker.lastWasSpace };
}

/** Whether nothing that has to be worked is left of the row below. */
export function usedUp(worker: Worker): boolean {
  const { sites, next, lastWasSpace } = belowState(worker);
  if (sites === null || !worker.rowBegun || worker.leaves) return true;
  return unworked(sites, next, sites.length, lastWasSpace) === 0;
}

/**
 * `1 dc into each of next 12 dc, turn, leaving the rest. (28 dc)` and a row in the same words that states its count: it
 * leaves some too, though that is not said again.
 */
export function leavesAsBefore(worker: Worker, { line, steps }: Pick<Row, 'line' | 'steps'>): boolean {
  const says = steps.some(({ kind }) => kind === 'leave');
  if (!says && worker.leftAs === null) return false;
  const words = wordsOf(steps);
  const same = worker.leftAs === words;
  worker.leftAs = says || same ? words : null;
  return !says && same && line.label !== null;
}

function wordsOf(steps: readonly Step[]): string {
  const work = steps.filter(({ kind }) => kind !== 'note' && kind !== 'leave' && kind !== 'fasten off');
  return JSON.stringify(work, (key: string, value: unknown) => (key === 'span' ? undefined : value));
}

/** The most slip stitches that ease the step at the end of a spiral. */
const MOST_EASING = 3;

/** `sl st in next st, fasten off` outside of rounds: it ends the last of them, the rest of which stays the edge. */
export function endsSpiral({ line, steps }: Pick<Row, 'line' | 'steps'>): boolean {
  if (line.label !== null || line.stated !== null) return false;
  let slips = 0;
  let fastened = false;
  for (const step of steps) {
    if (step.kind === 'fasten off') fastened = true;
    else if (step.kind === 'work') {
      if (fastened || step.stitch.kind !== 'stitch' || step.stitch.id !== 'sl-st') return false;
      slips += slipsOf(step);
    } else if (step.kind !== 'note') return false;
  }
  return fastened && slips > 0 && slips <= MOST_EASING;
}

/** How many places at most it slips into; any other place than the next is no easing. */
function slipsOf({ times, place }: WorkStep): number {
  const n = place === null ? times : place.kind === 'next' && place.what.kind !== 'space' ? place.n : NOWHERE;
  return n === null ? 1 : n.values.reduce<number>((most, value) => Math.max(most, value ?? 0), 0);
}

const NOWHERE = { values: [Number.POSITIVE_INFINITY] } as const;
