/** A pattern and one of its sizes in, the fabric worked stitch by stitch and every fault of the work out. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { RowAccount } from '../explain/row-account.ts';
import type { Step } from '../notation/tree.ts';
import type { Part, Pattern, Special } from '../pattern/pattern.ts';
import { emptyBuilder } from './builder.ts';
import { circularSpecials } from './circular-specials.ts';
import type { Fabric, FabricPart, FabricRow } from './fabric.ts';
import { NONE } from './fabric.ts';
import { finishFabric } from './finish-fabric.ts';
import { chainHabits, everyChainInNotes } from './notes-chains.ts';
import { partShape } from './part-shape.ts';
import { planRows } from './plan-rows.ts';
import { forOneSize, statedStitches } from './row-count.ts';
import type { Top } from './row-start.ts';
import { beginsMagicRing, splitClosingChain, withImpliedJoin } from './row-start.ts';
import { plainSite } from './site.ts';
import type { RowPlan } from './work-row.ts';
import { chainWarning, workRow } from './work-row.ts';
import { workSteps } from './work-steps.ts';
import { yarnIndex } from './work-yarn.ts';
import type { Worker } from './worker.ts';
import { newWorker } from './worker.ts';

/** How large a size is: what the file gives or the gauge tells. */
export interface SizePlan {
  /** Pattern repeats, for `a multiple of …`. */
  readonly repeats: number;
  /** Rows or rounds in all, for what goes on to height; null when nothing says. */
  readonly rows: number | null;
  /** Readings settled where the whole pattern was worked and stated counts told; for a part worked by itself. */
  readonly readings?: Readings;
}

/** How turning chains that a part alone does not explain were read. */
export interface Readings {
  /** Whether each unstated one was taken to count, by its offset in the file. */
  readonly settled: ReadonlyMap<number, boolean>;
  /** What those of a length are "throughout". */
  readonly throughout: Worker['throughout'];
}

export interface Worked {
  readonly fabric: Fabric;
  readonly diagnostics: readonly Diagnostic[];
  /** Every row was worked; otherwise the fabric ends before the first that could not be. */
  readonly whole: boolean;
  readonly readings: Readings;
  /** Something was read the way that comes out at this width, and may have to be read otherwise at another. */
  readonly wavered: boolean;
  /** How each row came to its number, also the one where a part breaks off. */
  readonly accounts: readonly RowAccount[];
  /** Stitches made and steps gone through, against endless work. */
  readonly effort: number;
}

/** What a part leaves for another that goes on from it. */
interface PartEnd {
  readonly top: Top;
  readonly index: number;
  readonly pieceFirst: number;
  readonly foundation: Worker['foundation'];
}

export function workSize(pattern: Pattern, sizeIndex: number, plan: SizePlan): Worked {
  const size = pattern.sizes[sizeIndex]?.name ?? 'one size';
  const circular = circularSpecials(pattern.specials);
  if (circular.length > 0) return unworkable(pattern, size, circular);
  const worker = newWorker(pattern.specials, pattern.terms, sizeIndex, plan.repeats, workSteps);
  const first = pattern.yarns[0];
  if (first !== undefined) yarnIndex(worker, first.letter);
  for (const [chains, habit] of chainHabits(pattern.notes ?? [], pattern.terms))
    worker.throughout.set(chains, habit);
  worker.everyChain = everyChainInNotes(pattern.notes ?? []);
  for (const [offset, counts] of plan.readings?.settled ?? []) worker.settled.set(offset, counts);
  for (const [chains, what] of plan.readings?.throughout ?? []) worker.throughout.set(chains, what);
  const rows: FabricRow[] = [];
  const parts: FabricPart[] = [];
  const diagnostics: Diagnostic[] = [];
  const accounts: RowAccount[] = [];
  const ends = new Map<string, PartEnd | null>();
  let whole = true;
  for (const [index, part] of pattern.parts.entries()) {
    const from = part.onto === null ? undefined : ends.get(part.onto);
    // A part that goes on from one that could not be worked cannot be either; saying so would be an echo.
    if (from === null) {
      ends.set(part.name, null);
      whole = false;
      parts.push({
        name: part.name,
        firstRow: rows.length,
        endRow: rows.length,
        shape: 'flat',
        start: null,
        corners: 0,
        onto: null,
      });
      continue;
    }
    const firstRow = rows.length;
    const end = workPart(
      worker,
      pattern,
      part,
      index,
      from ?? null,
      { size, sizeIndex, rows: plan.rows },
      rows,
      diagnostics,
      accounts,
    );
    if (!end.whole) whole = false;
    ends.set(
      part.name,
      end.top === null || !end.whole
        ? null
        : { top: end.top, index, pieceFirst: worker.pieceFirst, foundation: worker.foundation },
    );
    parts.push({
      name: part.name,
      firstRow,
      endRow: rows.length,
      ...partShape(worker.builder, rows.slice(firstRow)),
      onto: from?.index ?? null,
    });
  }
  const { builder, settled, throughout, wavered } = worker;
  return {
    fabric: finishFabric(builder, size, rows, parts),
    diagnostics,
    whole,
    readings: { settled, throughout },
    wavered,
    accounts,
    effort: worker.effort + builder.kind.length,
  };
}

/** With a special stitch that is described by itself nothing can be worked. */
function unworkable(pattern: Pattern, size: string, circular: readonly Special[]): Worked {
  const { file } = pattern.source;
  // Of several that lead round in one ring the first is enough.
  const diagnostics = circular
    .slice(0, 1)
    .map(({ name, span }) => diagnose('special/circular', { file, span }, { name }));
  return {
    fabric: finishFabric(emptyBuilder(), size, [], []),
    diagnostics,
    whole: false,
    readings: { settled: new Map(), throughout: new Map() },
    wavered: false,
    accounts: [],
    effort: 0,
  };
}

interface PartSetting {
  readonly size: string;
  readonly sizeIndex: number;
  readonly rows: number | null;
}

function workPart(
  worker: Worker,
  pattern: Pattern,
  part: Part,
  index: number,
  from: PartEnd | null,
  setting: PartSetting,
  rows: FabricRow[],
  diagnostics: Diagnostic[],
  accounts: RowAccount[],
): { top: Top | null; whole: boolean } {
  const { file } = pattern.source;
  const { size } = setting;
  const { plans, faults } = planRows(part.instructions.lines, { file, ...setting, part: index });
  diagnostics.push(...faults);
  beginPart(worker, from, rows.length);
  let whole =
    faults.every((fault) => fault.severity !== 'error') &&
    part.instructions.lines.every((line) => line.readable);
  let top = from?.top ?? null;
  let doubt: number | null = null;
  let pending: readonly Step[] = [];
  const warned = new Set<number>();
  for (const made of plans) {
    const { steps, closing } = splitClosingChain(withImpliedJoin(made.steps, made.unit));
    if (top !== null && joinsForNext(made)) {
      pending = [...pending, ...steps];
      continue;
    }
    const withPending: readonly Step[] = pending.length === 0 ? steps : [...pending, ...steps];
    pending = closing === null ? [] : [closing];
    const plan: RowPlan = { ...made, steps: withPending, part: index, partHasFoundation: top !== null };
    for (const piece of separateFoundation(plan, top)) {
      worker.row = rows.length;
      const worked = workRow(worker, piece, top, doubt, { file, size });
      diagnostics.push(...worked.faults);
      if (worked.account !== null) accounts.push(worked.account);
      doubt = worked.doubt;
      if (worked.faults.some((fault) => fault.severity === 'error')) whole = false;
      if (worked.assumed !== null && !worker.settled.has(worked.assumed.span.start))
        worker.settled.set(worked.assumed.span.start, worked.assumed.counts);
      if (worked.assumed !== null && !worked.assumed.told && !warned.has(worked.assumed.chains)) {
        warned.add(worked.assumed.chains);
        diagnostics.push(chainWarning(worked.assumed, worker, file));
      }
      if (worked.row !== null) {
        rows.push(worked.row);
        pushRange(worker, worked.row);
      }
      // `With B.` on a line of its own, before anything is made.
      if (worked.top === null && worked.account === null && worked.faults.length === 0) continue;
      if (worked.top === null) {
        // What the row was meant to make is known if it says so: the rest can still be checked against that.
        const meant = statedStitches(piece.line.stated, setting.sizeIndex);
        if (meant === null || !piece.checksCount || worked.faults.length === 0)
          return { top: null, whole: false };
        top = unknownTop(meant, top, piece);
        rows.push(emptyRow(worker, piece, meant));
        pushRange(worker, rows[rows.length - 1]);
      } else top = worked.top;
    }
  }
  return { top, whole };
}

/** `Join B with sl st in any corner.` on a line of its own: the row under it begins there. */
function joinsForNext({ line, steps }: Pick<RowPlan, 'line' | 'steps'>): boolean {
  if (line.label !== null || line.stated !== null) return false;
  return (
    steps.some((step) => step.kind === 'yarn' && step.action === 'join' && step.place !== null) &&
    steps.every((step) => step.kind === 'yarn' || step.kind === 'note')
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
  // Ranges are found by row index, so those of other pieces stay, but only this piece's are its edges.
  worker.pieceFirst = from?.pieceFirst ?? row;
}

/** A chain that begins a labelled round is a foundation of its own: `Rnd 1: Ch 2, 6 sc in 2nd ch from hook`. */
function separateFoundation(plan: RowPlan, top: Top | null): RowPlan[] {
  if (top !== null || plan.unit === null || beginsMagicRing(plan.steps)) return [plan];
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
