/** One row or round worked, in the reading that fits, with what it makes and every fault of it. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { RowAccount } from '../explain/row-account.ts';
import { wordStitches } from '../explain/word-made.ts';
import type { Line, StatedCount, Unit } from '../notation/line.ts';
import type { Step } from '../notation/tree.ts';
import { keepAccount } from './account-row.ts';
import { beginsWithBridge } from './bridge-chain.ts';
import { mismatch, softCountFaults } from './count-faults.ts';
import { countWorked } from './count-worked.ts';
import type { FabricRow } from './fabric.ts';
import { NONE } from './fabric.ts';
import { endsSpiral, leavesAsBefore, leftFault, usedUp } from './left-over.ts';
import { netBorder } from './net-border.ts';
import type { RowPlace } from './report.ts';
import { reportTrouble } from './report.ts';
import type { RowCount } from './row-count.ts';
import { countRow, differences, statedStitches } from './row-count.ts';
import type { RowStart, Top } from './row-start.ts';
import { beginsMagicRing, beginsWithLoop, startRow, travelSteps, turnsAfter } from './row-start.ts';
import { rowSubject } from './row-subject.ts';
import { plainSite } from './site.ts';
import { standRound, statedBorder } from './stated-border.ts';
import type { Trouble } from './trouble.ts';
import { magicRing } from './work-chain.ts';
import { edgeNotes, liesElsewhere, standElsewhere } from './work-elsewhere.ts';
import { topSites } from './work-join.ts';
import { comesOutAsSquares } from './work-square.ts';
import { workSteps } from './work-steps.ts';
import type { ChainAssumed, Worker } from './worker.ts';
import { markWorker, restore } from './worker.ts';

/** A row to be worked: what it is called and what it says. */
export interface RowPlan {
  readonly label: string;
  readonly unit: Unit | null;
  readonly number: number | null;
  readonly line: Line;
  readonly lineIndex: number;
  readonly steps: readonly Step[];
  readonly statedSide: 'RS' | 'WS' | null;
  /** Whether the count the line states is this row's: in a range it is the last one's. */
  readonly checksCount: boolean;
  /** Its words could not be read: it is not worked. */
  readonly unread?: boolean;
  /** How many rows its line works in all. */
  readonly rows?: number;
  /** Of a row that repeats another: the count stated where it is written. */
  readonly meant?: StatedCount | null;
  /** How many rows its line works is left to the maker. */
  readonly open?: true;
  readonly part: number;
  readonly partHasFoundation: boolean;
}

export interface RowWorked {
  readonly row: FabricRow | null;
  readonly top: Top | null;
  readonly faults: readonly Diagnostic[];
  /** A count was stated that the row does not make: what follows may be meant for that count. */
  readonly doubt: number | null;
  readonly assumed: ChainAssumed | null;
  /** Null where nothing was made. */
  readonly account: RowAccount | null;
  /** How many more it makes than it states; null where the two agree or nothing is stated. */
  readonly off: number | null;
  /** It goes into what is known by a stated count only, which does not say enough; nothing is told of that. */
  readonly unknown: boolean;
  /** It is more than can be worked. */
  readonly endless: boolean;
  /** It may be meant for the count stated below, which does not say enough to tell. */
  readonly unsure: boolean;
}

export interface RowSetting {
  readonly file: string;
  readonly size: string;
}

/** Works a row on the top of the last, trying the readings the trade itself leaves open. */
export function workRow(
  worker: Worker,
  plan: RowPlan,
  top: Top | null,
  doubt: number | null,
  setting: RowSetting,
): RowWorked {
  const start = top === null ? null : startRow(top, plan.unit, plan.statedSide);
  begin(worker, plan, start, top);
  const before = markWorker(worker);
  const firstSpace = worker.builder.spaces.length;
  const fits = (): boolean => usedUp(worker) && statesRight(worker, plan, firstSpace);
  worker.fits = fits;
  const attempt = (chainReading: boolean | null): boolean => {
    restore(worker, before);
    worker.chainReading = chainReading;
    const done = workSteps(worker, plan.steps);
    return done && fits();
  };
  let good = attempt(null);
  if (!good && worker.namedLoop !== null) {
    good = passingRest(worker, attempt);
    // It may stand for the first stitch as well.
    worker.namedLoop = null;
    good ||= attempt(null);
  }
  const habit = worker.chainAssumed;
  // More than can be worked stays so in every reading.
  if (worker.trouble?.kind === 'too many') return finish(worker, plan, start, firstSpace, top, setting);
  if (!good && habit !== null) {
    good = attempt(!habit.counts);
    if (good) worker.wavered = true;
    else attempt(null);
  }
  const told = (plan.checksCount ? plan.line.stated : null) ?? plan.meant ?? null;
  if (!good && worker.trouble?.kind === 'not there' && told !== null) {
    // "next ch-3 lp" past a ch-2 sp: the trade does it, and the count tells whether it is meant. In a range that is
    // the count of the row repeated.
    worker.passesSpaces = true;
    good = attempt(null);
    worker.passesSpaces = false;
    if (good) worker.wavered = true;
    else attempt(null);
  }
  if (!good && worker.specials.size > 0 && worker.trouble?.kind !== 'unknown')
    good = passingRest(worker, attempt) || attempt(null);
  const counts = [told, plan.meant ?? null];
  const makesAll = (): boolean =>
    counts.every((count) => count === null || makes(worker, count, plan, firstSpace));
  if (comesOutAsSquares(worker, makesAll, () => attempt(null))) good = true;
  let unsure = false;
  if (!good && doubt !== null && worker.trouble?.kind !== 'not there') {
    // The row before was stated to make another count: if this one fits that, its fault is only an echo.
    const intended = Array.from({ length: doubt }, () => plainSite('unknown', NONE, ''));
    const actual = before.sites;
    restore(worker, { ...before, sites: intended });
    worker.chainReading = null;
    if (workSteps(worker, plan.steps) && fits()) good = true;
    else {
      unsure = worker.trouble?.kind === 'unknown';
      restore(worker, { ...before, sites: actual });
      attempt(null);
    }
  }
  return { ...finish(worker, plan, start, firstSpace, top, setting), unsure };
}

/** `shell in sp of shell, tr in next 2 tr`: those beyond the shell, where the row comes out so. */
function passingRest(worker: Worker, attempt: (chainReading: boolean | null) => boolean): boolean {
  worker.passesRest = true;
  const good = attempt(null);
  worker.passesRest = false;
  if (good) worker.wavered = true;
  return good;
}

function begin(worker: Worker, plan: RowPlan, start: RowStart | null, below: Top | null): void {
  const side = start?.side ?? plan.statedSide ?? 'RS';
  worker.rowFirst = worker.builder.kind.length;
  worker.countedStart = NONE;
  worker.skippedSpace = 0;
  worker.travelled = below?.travelled ?? false;
  worker.passed = [];
  worker.rowBegun = false;
  worker.joined = false;
  worker.trouble = null;
  worker.again = [];
  worker.group = NONE;
  worker.into = null;
  worker.inSpecial = false;
  worker.limit = Number.POSITIVE_INFINITY;
  worker.skippedUsed = -1;
  worker.chainAssumed = null;
  worker.lastWasSpace = false;
  worker.below = null;
  worker.top = null;
  worker.ledger.length = 0;
  worker.rowLoop = 'both';
  worker.leavesSaid = null;
  worker.leaves = endsSpiral(plan) || leavesAsBefore(worker, plan);
  worker.direction = side === 'RS' ? 'left' : 'right';
  worker.round = start?.round ?? false;
  worker.edging =
    start !== null && !start.round && plan.unit !== 'row' && below !== null && below.side !== null;
  worker.opensLoop =
    worker.round &&
    (beginsWithLoop(plan.steps, below?.closing) || beginsWithBridge(plan.steps, below?.closing));
  worker.travel = travelSteps(plan.steps);
  worker.elsewhere = liesElsewhere(plan.steps);
  if (worker.elsewhere) standElsewhere(worker);
  else if (start === null) {
    // A chain that stands for the first stitch is written before the ring it stands in.
    if (worker.sites === null && beginsMagicRing(plan.steps)) magicRing(worker);
    else if (worker.sites === null && plan.unit !== 'row')
      standRound(worker, plan.steps, plan.checksCount ? plan.line.stated : null);
  } else {
    worker.sites =
      (worker.round || worker.edging
        ? statedBorder(worker, plan.steps, plan.checksCount ? plan.line.stated : null, start.sites)
        : null) ??
      netBorder(worker, plan.steps, start.sites) ??
      start.sites;
    worker.next = 0;
    worker.last = worker.round ? 0 : -1;
  }
}

function finish(
  worker: Worker,
  plan: RowPlan,
  start: RowStart | null,
  firstSpace: number,
  below: Top | null,
  setting: RowSetting,
): RowWorked {
  const { builder } = worker;
  const { file, size } = setting;
  const faults: Diagnostic[] = [];
  const place: RowPlace = {
    file,
    size,
    row: rowSubject(plan.label),
    below: below?.stitches ?? null,
    terms: worker.terms,
  };
  if (start?.sites[0]?.kind === 'unknown' && (meetsCorners(plan.steps) || asksMore(worker.trouble)))
    return { ...NOT_MADE, unknown: true };
  if (worker.trouble !== null) {
    const account = keepAccount(worker, plan, below, { firstSpace, foundation: false, broken: true });
    const fault = reportTrouble(worker.trouble, place, account);
    if (fault !== null) faults.push(fault);
    const unknown = worker.trouble.kind === 'unknown';
    return {
      ...NOT_MADE,
      faults,
      account: told(account, faults),
      unknown,
      endless: worker.trouble.kind === 'too many',
    };
  }
  if (builder.kind.length === worker.rowFirst) {
    const { stated } = plan.line;
    if (stated !== null && plan.checksCount && plan.unit !== null) {
      const nothing = countRow(builder, worker.rowFirst, worker.rowFirst, NONE, firstSpace, worker.row);
      faults.push(...mismatch(rowSubject(plan.label), stated, nothing, worker, setting, () => null).faults);
    }
    return { ...NOT_MADE, top: below, faults };
  }
  const joined = worker.joined;
  const foundation =
    !(below?.stitches != null && plan.line.stated !== null) &&
    !worker.rowBegun &&
    worker.countedStart < 0 &&
    builder.countsAs.slice(worker.rowFirst).every((as) => as === NONE);
  const sites = joined || foundation ? (worker.sites ?? []) : topSites(worker);
  const made = countWorked(worker, plan, firstSpace);
  const account = keepAccount(worker, plan, below, { firstSpace, foundation, broken: false });
  let doubt: number | null = null;
  let off: number | null = null;
  faults.push(...edgeNotes(plan.steps, setting));
  for (const { which, span } of worker.again)
    faults.push(diagnose('row/twice', { file, span, sizes: [size] }, { row: rowSubject(plan.label), which }));
  if (!foundation) {
    const left = leftFault(worker, plan, account, setting);
    if (left !== null) faults.push(left);
    const { stated } = plan.line;
    if (plan.checksCount && stated !== null) {
      const sum = (): string | null => wordStitches(account, worker.terms);
      const wrong = mismatch(rowSubject(plan.label), stated, made, worker, setting, sum);
      faults.push(...softCountFaults(stated, made, worker, setting), ...wrong.faults);
      off = wrong.off;
      if (off !== null) doubt = statedStitches(stated, worker.sizeIndex);
    }
    // Where the row it repeats was told to make another count, the rows on it are no fault of theirs.
    const meant = statedStitches(plan.meant ?? null, worker.sizeIndex);
    if (meant !== null && meant !== made.stitches) doubt ??= meant;
  }
  const closing = joined ? 'joined' : plan.unit === 'round' && !foundation ? 'spiral' : 'flat';
  const side = start?.side ?? plan.statedSide ?? 'RS';
  const row: FabricRow = {
    label: plan.label === '' && foundation ? 'Foundation' : plan.label,
    unit: plan.unit,
    number: plan.number,
    part: plan.part,
    side: foundation ? null : side,
    direction: worker.direction,
    first: worker.rowFirst,
    end: builder.kind.length,
    closing,
    edging: !worker.elsewhere && below?.closing === 'flat' && closing !== 'flat' && below.side !== null,
    onto: worker.row > 0 && below !== null && !worker.elsewhere ? worker.row - 1 : null,
    span: plan.line.span,
    line: plan.lineIndex,
    ...pick(made),
    stated: account.stated,
    ...(plan.open === true ? { open: true } : {}),
  };
  const nextTop: Top = foundation
    ? {
        sites: worker.sites ?? [],
        closing: worker.sites?.[0]?.kind === 'ring' ? 'joined' : 'flat',
        side: null,
        turned: false,
        travelled: false,
        stitches: null,
        row: worker.row,
      }
    : {
        sites,
        closing,
        side,
        turned: turnsAfter(plan.steps, plan.unit),
        travelled: joined && worker.travelled,
        stitches: made.stitches,
        row: worker.row,
      };
  return {
    row,
    top: nextTop,
    faults,
    doubt,
    assumed: worker.chainAssumed,
    account: told({ ...account, label: row.label }, faults),
    off,
    unknown: false,
    endless: false,
    unsure: false,
  };
}

/** A stated count tells how many stitches there are, not of what sort they are nor what lies between them. */
function asksMore(trouble: Worker['trouble']): boolean {
  if (trouble === null || (trouble.kind === 'not there' && trouble.join === true)) return false;
  return !TOLD_BY_NUMBER.has(trouble.kind);
}

const TOLD_BY_NUMBER: ReadonlySet<Trouble['kind']> = new Set<Trouble['kind']>([
  'used up',
  'too few',
  'uneven',
  'endless',
  'two senses',
  'after join',
  'legs',
  'too many',
  'crowded',
]);

/** `sc in each st around, 3 sc in each corner`: how many corners there are no count tells. */
function meetsCorners(steps: readonly Step[]): boolean {
  return steps.some((step) => step.kind === 'work' && step.corners !== undefined);
}

/** A row of which nothing came about. */
const NOT_MADE: RowWorked = {
  row: null,
  top: null,
  faults: [],
  doubt: null,
  assumed: null,
  account: null,
  off: null,
  unknown: false,
  endless: false,
  unsure: false,
};

function told(account: RowAccount, faults: readonly Diagnostic[]): RowAccount {
  return { ...account, faults: faults.map(({ message }) => message) };
}

function pick({
  stitches,
  spaces,
  byStitch,
  groups,
  bySpace,
}: RowCount): Pick<FabricRow, 'stitches' | 'spaces' | 'byStitch' | 'groups' | 'bySpace'> {
  return { stitches, spaces, byStitch, groups, bySpace };
}

function statesRight(worker: Worker, plan: RowPlan, firstSpace: number): boolean {
  const { stated } = plan.line;
  return stated === null || !plan.checksCount || makes(worker, stated, plan, firstSpace);
}

function makes(worker: Worker, stated: StatedCount, plan: RowPlan, firstSpace: number): boolean {
  const { builder } = worker;
  const spaces = builder.spaces.length;
  // The top is counted anew after a join; before one its spaces are not there yet.
  if (worker.top === null) topSites(worker);
  const made = countWorked(worker, plan, firstSpace);
  builder.spaces.length = spaces;
  return differences(stated, made, worker.sizeIndex, worker.terms).length === 0;
}
