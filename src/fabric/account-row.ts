/** The notes of a row just worked in, its account out: what each step used, passed and made. */

import type { PassRun, RowAccount, StepAccount, Tally } from '../explain/row-account.ts';
import type { Line, Unit } from '../notation/line.ts';
import { firstTarget, hasFlag } from './builder.ts';
import { FLAG, INTO, NONE } from './fabric.ts';
import { countOwed, countSpaces } from './find-site.ts';
import { forOneSize } from './row-count.ts';
import type { Top } from './row-start.ts';
import type { Site } from './site.ts';
import { topSites } from './work-join.ts';
import type { LedgerEntry, Worker } from './worker.ts';

type RowSteps = Pick<RowAccount, 'steps' | 'made' | 'skippedChains' | 'left'>;

/** What the row is called and what it states. */
interface Planned {
  readonly label: string;
  readonly unit: Unit | null;
  readonly number: number | null;
  readonly part: number;
  readonly line: Line;
  readonly checksCount: boolean;
}

interface Ended {
  /** The first of the row's spaces in the builder. */
  readonly firstSpace: number;
  readonly foundation: boolean;
  readonly broken: boolean;
}

/** The account of the row in hand, its faults still to be told. */
export function keepAccount(worker: Worker, plan: Planned, below: Top | null, ended: Ended): RowAccount {
  const { stated } = plan.line;
  const { foundation, broken } = ended;
  return {
    label: plan.label,
    unit: plan.unit,
    number: plan.number,
    part: plan.part,
    span: plan.line.span,
    onto: below?.row ?? null,
    first: worker.rowFirst,
    end: worker.builder.kind.length,
    countedStart: worker.countedStart,
    foundation,
    ...stepsOfRow(worker, ended),
    below: below === null ? 'none' : isStated(worker) ? 'stated' : 'worked',
    stated: plan.checksCount && stated !== null ? forOneSize(stated, worker.sizeIndex) : null,
    broken,
    faults: [],
    sizeIndex: worker.sizeIndex,
  };
}

/** Whether the places below are known by a stated count only. */
function isStated({ ledger }: Worker): boolean {
  return ledger[0]?.sites?.[0]?.kind === 'unknown';
}

/** Where a step ends: where the next begins, or where the row was done with the row below. */
interface End {
  readonly first: number;
  readonly sites: readonly Site[] | null;
  readonly next: number;
  readonly behindSpace: boolean;
}

function stepsOfRow(worker: Worker, { firstSpace, broken }: Ended): RowSteps {
  const { builder, ledger } = worker;
  const spaces = builder.spaces.length;
  // The spaces of a row that came to no end have not been told apart yet.
  if (broken && worker.top === null) topSites(worker);
  const below = worker.below ?? worker;
  const last: End = {
    first: builder.kind.length,
    sites: below.sites,
    next: below.next,
    behindSpace: below.lastWasSpace,
  };
  const between = runningTally(worker, firstSpace);
  const starts = ledger.flatMap((entry, i) => (entry.of === 'row' ? [i] : []));
  const steps = starts.flatMap((start, i) => {
    const entry = ledger[start];
    const notes = ledger.slice(start, starts[i + 1] ?? ledger.length);
    const end = ledger[starts[i + 1] ?? ledger.length] ?? last;
    return entry === undefined ? [] : [stepAccount(entry, notes, end, between)];
  });
  const skippedChains = chainsSkipped(worker, firstSpace);
  const { made } = between(worker.rowFirst, last.first);
  builder.spaces.length = spaces;
  const end = below.sites?.length ?? 0;
  return {
    steps,
    made: {
      stitches: made.stitches + (skippedChains?.made.stitches ?? 0),
      spaces: made.spaces + (skippedChains?.made.spaces ?? 0),
    },
    skippedChains,
    left: {
      // Stitches behind a space are passed, not left.
      stitches: below.lastWasSpace ? 0 : countOwed(below.sites ?? [], below.next, end),
      spaces: countSpaces(below.sites ?? [], below.next, end),
    },
  };
}

/** Chains before the row's first stitch of which one counts, with the space that may lie between the two. */
function chainsSkipped(worker: Worker, firstSpace: number): RowAccount['skippedChains'] {
  const { builder, countedStart, rowFirst, ledger } = worker;
  const counted = countedStart >= 0 && countedStart < rowFirst;
  if (!counted && worker.skippedSpace === 0) return null;
  const { sites } = ledger[0] ?? worker;
  let chains = 0;
  while (hasFlag(builder, sites?.[chains]?.node ?? NONE, FLAG.turningChain)) chains += 1;
  const spaces = builder.spaces.slice(firstSpace).filter(({ first }) => first < rowFirst).length;
  return { chains, made: { stitches: counted ? 1 : 0, spaces } };
}

function stepAccount(
  entry: LedgerEntry,
  notes: readonly LedgerEntry[],
  end: End,
  between: (from: number, to: number) => Counted,
): StepAccount {
  const passes = notes.flatMap((note, i) => (note.of === 'pass' ? [i] : []));
  const firstPass = passes[0] === undefined ? [] : notes.slice(passes[0] + 1, passes[1] ?? notes.length);
  const behind = (i: number | undefined): End => notes[i ?? notes.length] ?? end;
  const runs: PassRun[] = [];
  for (const [nth, start] of passes.entries()) {
    const pass = notes[start];
    if (pass === undefined) continue;
    const next = behind(passes[nth + 1]);
    const { made } = between(pass.first, next.first);
    const used = usedBetween(pass, next);
    const run = runs[runs.length - 1];
    if (run !== undefined && same(run.made, made) && same(run.used, used))
      runs[runs.length - 1] = { ...run, times: run.times + 1 };
    else runs.push({ times: 1, made, used });
  }
  const firstEnd = behind(passes[1]);
  return {
    step: entry.step,
    ...between(entry.first, end.first),
    used: usedBetween(entry, end),
    runs,
    parts: firstPass.map((note, i) => {
      const { made, chains } = between(note.first, (firstPass[i + 1] ?? firstEnd).first);
      return { step: note.step, made, chains };
    }),
    bySpaces: passes.length > 0 && firstEnd.behindSpace,
  };
}

/** Tells what lies between any two stitches of the row, each stitch looked at once. */
function runningTally(
  { builder, rowFirst }: Worker,
  firstSpace: number,
): (from: number, to: number) => Counted {
  const length = builder.kind.length - rowFirst;
  const stitches = new Uint32Array(length + 1);
  const chains = new Uint32Array(length + 1);
  const spaces = new Uint32Array(length + 1);
  for (let s = firstSpace; s < builder.spaces.length; s += 1) {
    const at = (builder.spaces[s]?.first ?? -1) - rowFirst;
    if (at >= 0) spaces[at + 1] = 1;
  }
  const intoStitches = new Uint32Array(length + 1);
  const intoSpaces = new Uint32Array(length + 1);
  const inSpaces = new Uint32Array(length + 1);
  const chain = builder.idIndex.get('ch') ?? NONE;
  let lastPlace = NONE;
  for (let i = 0; i < length; i += 1) {
    const node = rowFirst + i;
    const place = builder.kind[node] === chain ? NONE : firstTarget(builder, node);
    const inSpace = builder.where[node] === INTO.space;
    const anew = place !== NONE && place < rowFirst && place !== lastPlace;
    const legs = inSpace
      ? 1
      : Math.max(1, (builder.intoStart[node + 1] ?? builder.into.length) - (builder.intoStart[node] ?? 0));
    intoStitches[i + 1] = at(intoStitches, i) + (anew && !inSpace ? legs : 0);
    intoSpaces[i + 1] = at(intoSpaces, i) + (anew && inSpace ? 1 : 0);
    inSpaces[i + 1] = at(inSpaces, i) + (inSpace && builder.countsAs[node] !== NONE ? 1 : 0);
    if (place !== NONE) lastPlace = place;
    stitches[i + 1] = at(stitches, i) + (builder.countsAs[rowFirst + i] === NONE ? 0 : 1);
    chains[i + 1] = at(chains, i) + (builder.kind[rowFirst + i] === chain ? 1 : 0);
    spaces[i + 1] = at(spaces, i) + at(spaces, i + 1);
  }
  return (from, to) => ({
    made: {
      stitches: at(stitches, to - rowFirst) - at(stitches, from - rowFirst),
      spaces: at(spaces, to - rowFirst) - at(spaces, from - rowFirst),
    },
    chains: at(chains, to - rowFirst) - at(chains, from - rowFirst),
    into: {
      stitches: at(intoStitches, to - rowFirst) - at(intoStitches, from - rowFirst),
      spaces: at(intoSpaces, to - rowFirst) - at(intoSpaces, from - rowFirst),
    },
    inSpaces: at(inSpaces, to - rowFirst) - at(inSpaces, from - rowFirst),
  });
}

interface Counted {
  readonly made: Tally;
  readonly chains: number;
  readonly into: Tally;
  readonly inSpaces: number;
}

function at(column: Uint32Array, i: number): number {
  return column[i] ?? 0;
}

/** What lies between two places below; null when they lie along different edges. */
function usedBetween(from: LedgerEntry, to: End): Tally | null {
  const { sites } = from;
  if (sites === null || sites !== to.sites) return null;
  let stitches = 0;
  let spaces = 0;
  // Both in one go: every place of every row comes by here.
  for (let i = from.next; i < to.next; i += 1) {
    const space = sites[i]?.space ?? NONE;
    if (space === NONE) stitches += 1;
    else if (sites[i - 1]?.space !== space) spaces += 1;
  }
  return { stitches, spaces };
}

function same(a: Tally | null, b: Tally | null): boolean {
  return a === b || (a !== null && b !== null && a.stitches === b.stitches && a.spaces === b.spaces);
}
