/** One part of a pattern worked row by row, and what is to be said where a row cannot be. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { RowAccount } from '../explain/row-account.ts';
import type { Step } from '../notation/tree.ts';
import type { Part } from '../pattern/pattern.ts';
import type { Span } from '../source/span.ts';
import { backToMark, markBuilder } from './builder.ts';
import { chainWarning, toldByNextRow } from './chain-warning.ts';
import type { FabricRow } from './fabric.ts';
import { NONE } from './fabric.ts';
import { withFirstLeg } from './first-leg.ts';
import { type HungRow, hangFaults } from './hanging.ts';
import { loopNamedNext } from './named-loop.ts';
import { asWideAs, firstSquares } from './net-rows.ts';
import type { PartEnd } from './part-end.ts';
import { type PlanSetting, planRows } from './plan-rows.ts';
import { forOneSize, statedStitches } from './row-count.ts';
import { goesBackToLeft } from './row-edge.ts';
import type { Top } from './row-start.ts';
import { beginsMagicRing, splitClosingChain, withImpliedJoin } from './row-start.ts';
import { topFor } from './shared-top.ts';
import { plainSite } from './site.ts';
import { tellsSides } from './stated-border.ts';
import { workEitherFace } from './work-either-face.ts';
import { liesElsewhere } from './work-elsewhere.ts';
import type { RowPlan, RowWorked } from './work-row.ts';
import { workRow } from './work-row.ts';
import type { Worker } from './worker.ts';

/** What the work of all parts comes to. */
export interface Results {
  readonly rows: FabricRow[];
  readonly diagnostics: Diagnostic[];
  readonly accounts: RowAccount[];
}

/** How far what a row is worked into is known. */
interface Ground {
  top: Top | null;
  /** A count stated below that the row there does not make: this one may be meant for that count. */
  doubt: { readonly stitches: number; readonly of: Cause } | null;
  /** The row from which on nothing is known to work into, until one states its count. */
  lost: Cause | null;
  /** What may have left the work otherwise than it is here: a fault of the next row may be only an echo. */
  suspect: Cause | null;
  /** The first row, where it does not make what it states: the chain it stands on may be the wrong one. */
  chain: Cause | null;
  /** The row that the top is known from by its stated count alone. */
  basis: Cause | null;
  /** Of a net, where the last row had squares too few or too many: a row as wide as the one before it. */
  width: Top | null;
}

interface Cause {
  /** `Row 4`, or nothing for words outside of rows. */
  readonly label: string;
  /** By how many stitches more it makes than it states, where it was worked. */
  readonly off: number;
}

export function workPart(
  worker: Worker,
  part: Part,
  from: PartEnd | null,
  setting: PlanSetting,
  { rows, diagnostics, accounts }: Results,
): { top: Top | null; whole: boolean } {
  const { file, size } = setting;
  const { plans, faults } = planRows(part.instructions.lines, setting);
  diagnostics.push(...faults);
  beginPart(worker, from, rows.length);
  let whole =
    faults.every((fault) => fault.severity !== 'error') &&
    part.instructions.lines.every((line) => line.readable);
  const top = from === null ? null : topFor(from, plans[0]?.steps ?? []);
  const ground: Ground = {
    top,
    doubt: null,
    lost: null,
    suspect: null,
    chain: null,
    basis: null,
    width: null,
  };
  let pending: readonly Step[] = [];
  const warned = new Set<number>();
  const told = new Set<Step>();
  const hung: HungRow[] = [];
  const keep = (row: FabricRow): void => {
    rows.push(row);
    pushRange(worker, row);
  };
  for (const [nth, made] of plans.entries()) {
    const { steps, closing } = splitClosingChain(withFirstLeg(withImpliedJoin(made.steps, made.unit)));
    if (ground.top !== null && made.unread !== true && joinsForNext(made)) {
      pending = [...pending, ...steps];
      continue;
    }
    const withPending: readonly Step[] = pending.length === 0 ? steps : [...pending, ...steps];
    pending = closing === null ? [] : [closing];
    const plan: RowPlan = {
      ...made,
      steps: withPending,
      part: setting.part,
      partHasFoundation: ground.top !== null,
    };
    worker.namedLoop = loopNamedNext(withPending, plans[nth + 1]?.steps ?? []);
    if (made.unread === true) {
      whole = false;
      worker.row = rows.length;
      passUnread(worker, plan, ground, keep);
      continue;
    }
    // A chain in a row that stands on nothing known is no foundation.
    for (const piece of ground.lost === null ? separateFoundation(plan, ground.top) : [plan]) {
      worker.row = rows.length;
      if (ground.lost !== null) {
        hung.push({ label: piece.label, span: labelSpan(piece), cause: ground.lost.label });
        standOnCount(worker, piece, ground, keep);
        continue;
      }
      const mark = markBuilder(worker.builder);
      const next = plans[plans.indexOf(made) + 1]?.steps ?? [];
      worker.leftLater = goesBackToLeft(next);
      const worked =
        onFullWidth(worker, piece, ground, setting) ??
        workEitherFace(worker, piece, ground.top, ground.doubt?.stitches ?? null, setting);
      const cause = echoOf(worked, ground, piece);
      if (cause !== null) {
        whole = false;
        backToMark(worker.builder, mark);
        hung.push({ label: piece.label, span: labelSpan(piece), cause: cause.label });
        ground.lost = cause;
        standOnCount(worker, piece, ground, keep);
        continue;
      }
      // What was told of a row of squares is not told again where it is repeated.
      const squares = isBroken(worked) ? firstSquares(worker, piece.steps) : undefined;
      if (squares === undefined || !told.has(squares)) diagnostics.push(...worked.faults);
      if (squares !== undefined) told.add(squares);
      if (worked.account !== null) accounts.push(worked.account);
      if (isBroken(worked)) whole = false;
      if (worked.assumed !== null && !worker.settled.has(worked.assumed.span.start))
        worker.settled.set(worked.assumed.span.start, worked.assumed.counts);
      const { assumed } = worked;
      const open = assumed !== null && !assumed.told && !warned.has(assumed.chains);
      if (open) {
        // Told of one row, it is told of all that begin so.
        warned.add(assumed.chains);
        if (!toldByNextRow(assumed, next)) diagnostics.push(chainWarning(assumed, worker, file));
      }
      if (worked.row !== null) keep(worked.row);
      // There is no end to it: the rows on it are not worked either.
      if (worked.endless) return { top: null, whole: false };
      goOn(worker, piece, worked, ground, keep);
    }
  }
  diagnostics.push(...hangFaults(hung, { file, size }));
  return { top: ground.lost === null ? ground.top : null, whole };
}

/** What the row after this one is worked into, and how sure that is. */
function goOn(
  worker: Worker,
  piece: RowPlan,
  worked: RowWorked,
  ground: Ground,
  keep: (row: FabricRow) => void,
): void {
  const cause: Cause = { label: piece.label, off: worked.off ?? 0 };
  const { doubt } = ground;
  if (cause.off !== 0 && ground.top !== null && ground.top.side === null) ground.chain = cause;
  const silent = doubt !== null && !isBroken(worked) && (!piece.checksCount || piece.line.stated === null);
  // `Sc in each st around` on a row that misses its count: what was in doubt before is so still.
  const same = silent && worked.top?.stitches === ground.top?.stitches;
  if (worked.doubt !== null) ground.doubt = { stitches: worked.doubt, of: cause };
  else if (!same) ground.doubt = null;
  if (cause.off !== 0 && worked.doubt === null) ground.suspect = cause;
  else if (silent && !same && worked.doubt === null) ground.suspect = doubt.of;
  else if (!isBroken(worked) && piece.checksCount && piece.line.stated !== null) ground.suspect = null;
  if (worked.row !== null) ground.basis = null;
  const { top } = ground;
  const net = isBroken(worked) && top?.side != null && firstSquares(worker, piece.steps) !== undefined;
  ground.width = net ? asWideAs(top) : null;
  if (worked.top !== null) ground.top = worked.top;
  else if (ground.width !== null) ground.top = ground.width;
  else if (isBroken(worked)) {
    ground.lost = cause;
    standOnCount(worker, piece, ground, keep);
  }
}

/** A row of squares behind one that had too few or too many, where it does not fit that one and fits the row before. */
function onFullWidth(
  worker: Worker,
  piece: RowPlan,
  { width, top, doubt }: Ground,
  setting: PlanSetting,
): RowWorked | null {
  if (width === null || width === top || firstSquares(worker, piece.steps) === undefined) return null;
  const mark = markBuilder(worker.builder);
  const narrow = workRow(worker, piece, top, doubt?.stitches ?? null, setting);
  if (!isBroken(narrow)) return narrow;
  backToMark(worker.builder, mark);
  const full = workRow(worker, piece, width, null, setting);
  if (!isBroken(full)) return full;
  backToMark(worker.builder, mark);
  return null;
}

/** What the faults of a row are only an echo of; null where they are its own, or it has none. */
function echoOf(
  worked: RowWorked,
  { suspect, doubt, basis, chain }: Ground,
  { steps }: RowPlan,
): Cause | null {
  if (worked.unknown) return basis ?? suspect ?? { label: '', off: 0 };
  if (!isBroken(worked)) return null;
  if (chain !== null && steps.some((step) => step.kind === 'along' && step.edge === 'foundation'))
    return chain;
  if (doubt !== null && worked.unsure) return doubt.of;
  if (suspect === null) return null;
  // A row that can be worked and is off the other way has a fault of its own.
  const own = worked.top !== null && worked.off !== null && suspect.off !== 0;
  return own && Math.sign(worked.off) !== Math.sign(suspect.off) ? null : suspect;
}

function isBroken({ faults }: RowWorked): boolean {
  return faults.some((fault) => fault.severity === 'error');
}

function labelSpan({ line }: RowPlan): Span {
  return line.label?.span ?? line.span;
}

/** A row whose words could not be read: its count tells what stands there; words outside of rows may be no work at all. */
function passUnread(worker: Worker, plan: RowPlan, ground: Ground, keep: (row: FabricRow) => void): void {
  const cause = { label: plan.label, off: 0 };
  const isRow = plan.unit !== null || plan.line.label !== null;
  const counts = statedStitches(plan.line.stated, worker.sizeIndex) !== null;
  if (isRow || counts) {
    ground.lost = cause;
    standOnCount(worker, plan, ground, keep);
  } else if (ground.lost === null && plan.line.prose !== true) ground.suspect ??= cause;
}

/** What a row was meant to make is known if it says so: the rest can still be checked against that. */
function standOnCount(worker: Worker, plan: RowPlan, ground: Ground, keep: (row: FabricRow) => void): void {
  const meant = plan.checksCount ? statedStitches(plan.line.stated, worker.sizeIndex) : null;
  if (meant === null) return;
  ground.top = unknownTop(meant, ground.top, plan);
  ground.doubt = null;
  ground.lost = null;
  ground.suspect = null;
  ground.basis = { label: plan.label, off: 0 };
  keep(emptyRow(worker, plan, meant));
}

/** `Skip next 8 sts and join B with sl st in next st.` on a line of its own: the row under it begins there. */
function joinsForNext({ line, steps }: Pick<RowPlan, 'line' | 'steps'>): boolean {
  if (line.label !== null || line.stated !== null) return false;
  return (
    steps.some(
      (step) =>
        (step.kind === 'yarn' && step.action === 'join' && step.place !== null) ||
        (step.kind === 'along' && step.edge === 'opening'),
    ) && steps.every(({ kind }) => kind === 'yarn' || kind === 'note' || kind === 'skip' || kind === 'along')
  );
}

function beginPart(worker: Worker, from: PartEnd | null, row: number): void {
  worker.sites = null;
  worker.next = 0;
  worker.last = -1;
  worker.edges = null;
  worker.row = row;
  worker.foundation = from?.foundation ?? null;
  worker.rowBegun = false;
  worker.leftAs = null;
  // Ranges are found by row index, so those of other pieces stay, but only this piece's are its edges.
  worker.pieceFirst = from?.pieceFirst ?? row;
}

/** A chain that begins a labelled round is a foundation of its own: `Rnd 1: Ch 2, 6 sc in 2nd ch from hook`. */
function separateFoundation(plan: RowPlan, top: Top | null): RowPlan[] {
  if (top !== null || plan.unit === null || beginsMagicRing(plan.steps) || liesElsewhere(plan.steps))
    return [plan];
  // Round a cloth or a blanket its first chain only lifts the hook.
  if (plan.unit === 'round' && tellsSides(plan.steps)) return [plan];
  const at = plan.steps.findIndex((step) => step.kind === 'chain');
  const leading = plan.steps.slice(0, at);
  if (at < 0 || leading.some((step) => step.kind !== 'yarn' && step.kind !== 'note')) return [plan];
  const next = plan.steps[at + 1];
  const end = next !== undefined && next.kind === 'join' ? at + 2 : at + 1;
  const foundation: RowPlan = {
    ...plan,
    label: 'Foundation',
    unit: null,
    number: null,
    steps: plan.steps.slice(0, end),
    checksCount: false,
  };
  return [foundation, { ...plan, steps: plan.steps.slice(end) }];
}

function pushRange(worker: Worker, row: FabricRow | undefined): void {
  if (row === undefined) return;
  const { first, end, part, direction, closing, number, label } = row;
  const flat = closing === 'flat';
  worker.rowRanges.push({
    first,
    end,
    part,
    direction,
    flat,
    countedStart: worker.countedStart,
    number: number ?? (label !== '' && row.stitches > 0 ? 0 : null),
  });
  if (row.side === null && flat) worker.foundation = { first, end };
}

function unknownTop(stitches: number, before: Top | null, plan: RowPlan): Top {
  const sites = Array.from({ length: stitches }, () => plainSite('unknown', NONE, ''));
  const closing = plan.unit === 'round' ? 'joined' : 'flat';
  const side = before?.side === 'RS' && before.turned ? 'WS' : 'RS';
  return { sites, closing, side, turned: plan.unit === 'row', travelled: false, stitches };
}

/** Holds the place of a row that could not be worked, so that rows keep their order. */
function emptyRow(worker: Worker, plan: RowPlan, stitches: number): FabricRow {
  const at = worker.builder.kind.length;
  return {
    label: plan.label,
    unit: plan.unit,
    number: plan.number,
    part: plan.part,
    side: null,
    direction: worker.direction,
    first: at,
    end: at,
    closing: plan.unit === 'round' ? 'joined' : 'flat',
    edging: false,
    onto: null,
    span: plan.line.span,
    line: plan.lineIndex,
    stitches,
    spaces: 0,
    byStitch: {},
    groups: {},
    bySpace: {},
    stated: plan.line.stated === null ? null : forOneSize(plan.line.stated, worker.sizeIndex),
  };
}
