/** The state of one size while it is worked: the fabric so far, the row in hand, and the places it is worked into. */

import { numberForSize } from '../notation/number-for-size.ts';
import type { Loop, Step } from '../notation/tree.ts';
import type { Span } from '../source/span.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import type { Builder, BuilderMark } from './builder.ts';
import { backToMark, emptyBuilder, markBuilder } from './builder.ts';
import { NONE } from './fabric.ts';
import { atPlaceOfUse } from './place-of-use.ts';
import type { Site } from './site.ts';
import type { Trouble } from './trouble.ts';

/** A special stitch: its steps, worked wherever it is used. */
export interface SpecialWork {
  readonly name: string;
  readonly steps: readonly Step[];
}

/** A stitch worked into once more, with no word that says so. */
export interface Again {
  readonly which: 'first' | 'last';
  readonly span: Span;
}

/** Where a step of the row in hand, or a pass of one of its repeats, begins. */
export interface LedgerEntry {
  readonly step: Step;
  /** A step of the row itself, a pass of a repeat among them, or a step of the first pass. */
  readonly of: 'row' | 'pass' | 'first pass';
  /** The first stitch it makes. */
  readonly first: number;
  /** The places below as they stand, and the next of them. */
  readonly sites: readonly Site[] | null;
  readonly next: number;
  /** The place worked before it was a space. */
  readonly behindSpace: boolean;
}

export interface Worker {
  /** The pattern's own terms, which faults speak in. */
  readonly terms: Terms;
  readonly builder: Builder;
  readonly specials: ReadonlyMap<string, SpecialWork>;
  /** Which of the sizes is worked; numbers are taken from its place in each list. */
  readonly sizeIndex: number;
  /** Pattern repeats of this size, for `a multiple of …`. */
  readonly repeats: number;
  /** Chains that the pattern says count, or don't, "throughout", by length. */
  readonly throughout: Map<number, { readonly as: string | null; readonly plusChains: number }>;
  /** Whether the pattern says of all turning chains that they count or don't; null where it says nothing. */
  everyChain: boolean | null;
  /** How unstated turning chains were read at a width where a stated count told, by where they stand in the file. */
  readonly settled: Map<number, boolean>;
  /** Something was read the way that comes out at this width; at another it may have to be read otherwise. */
  wavered: boolean;

  /** The places the row goes into, from the one it starts at; null before anything is made. */
  sites: Site[] | null;
  /** Index of the next place not yet passed. */
  next: number;
  /** Index of the place last worked into, or stood at: "same st". */
  last: number;
  /** Places from here on are out of reach: `to last 6 sts`, `to next corner`. */
  limit: number;
  /** The yarn was moved along to the place the row starts at, so "next" is the one after it. */
  travelled: boolean;
  /** The row in hand, as an index of the fabric's rows. */
  row: number;
  /** Which way the row in hand goes, as in FabricRow. */
  direction: 'left' | 'right';
  /** First stitch of the row in hand. */
  rowFirst: number;
  /** A chain before row 1's first stitch that counts as one of the row's stitches, or -1. */
  countedStart: number;
  /** How many skipped chains stand for a space and no stitch before it: `(3 missed ch count as 1-ch sp)`. */
  skippedSpace: number;
  /** Whether a stitch other than a chain or a travelling slip stitch has been made in it. */
  rowBegun: boolean;
  /** Whether the row has closed with a join: what follows moves along its new top. */
  joined: boolean;
  /** Index into the builder's yarns. */
  yarn: number;
  /** Innermost special stitch or bracket being worked, or NONE. */
  group: number;
  inSpecial: boolean;
  /** The place that a bracket or special stitch is worked into, or null. */
  into: Site | null;
  /** What an unstated turning chain is taken to do in this row; null for the trade's habit. */
  chainReading: boolean | null;
  /** An unstated turning chain of this row that was read by the trade's habit. */
  chainAssumed: ChainAssumed | null;
  trouble: Trouble | null;
  /** "First st" and "last st" that went into a stitch this row had already worked into, by where they stand. */
  again: readonly Again[];
  /** Index into `skipped` of the last skipped stitch gone back to in this row; -1 for none yet. */
  skippedUsed: number;
  /** The unworked stitches of a row below, found once for the row in hand. */
  skipped: { readonly byRow: number; readonly ofRow: number; readonly sites: readonly Site[] } | null;
  /** The last place worked was a space: stitches behind it need not be worked. */
  lastWasSpace: boolean;
  /** Steps worked so far, against endless work. */
  effort: number;
  /** The rows so far: first stitch and just past the last, the part, and which way each was worked. */
  readonly rowRanges: RowRange[];
  /** The row below as the join left it, for whether it was used up; null before a join. */
  below: { readonly sites: readonly Site[]; readonly next: number; readonly lastWasSpace: boolean } | null;
  /** The top of the row in hand once it is joined. */
  top: readonly Site[] | null;
  /** Slip stitches of this row that only move the yarn along. */
  travel: ReadonlySet<Step>;
  /** Chains of the ring the first round goes into; 0 when it is a magic ring. */
  ringChains: number;
  /** Stitches just skipped that have not been gone back to, as indices of the sites. */
  passed: readonly number[];
  /** The row after goes back to a stitch that this one passes without a word. */
  leftLater: boolean;
  /** `Ch 2, dc in next dc` is a space over a block as well: tried where a stated count can tell that it is meant. */
  asSquares: boolean;
  /** Spaces of another length may be passed over: tried where a stated count can tell that it is meant. */
  passesSpaces: boolean;
  /** What is left of a shell whose space was worked into is passed over, whatever its stitches are: tried where the row comes out so. */
  passesRest: boolean;
  /** The turning chain of the row in hand that the row on it calls a loop: it counts as no stitch. */
  namedLoop: Step | null;
  /** The round begins with a loop: its first chain is no turning chain. */
  opensLoop: boolean;
  /** Works steps; carried along so that the files of the worker need not import each other in a ring. */
  readonly workSteps: (worker: Worker, steps: readonly Step[]) => boolean;
  /** Whether the row in hand, as far as it is worked, uses up the row below and makes what it states. */
  fits: () => boolean;
  /** The loop every stitch of the row goes under where its own words name none. */
  rowLoop: Loop;
  /** The row says that it stops short. */
  leaves: boolean;
  /** How many stitches it is said to leave; null where that is not said. */
  leavesSaid: number | null;
  /** The words of the row before, where it said that it left some: the same words leave some again. */
  leftAs: string | null;
  /** A round along the edges of a flat piece. */
  edging: boolean;
  /** `Lay out the squares in 4 rows of 5`: how many lie along two sides that meet; null where that is not said. */
  layout: readonly [number, number] | null;
  /** How many are made of the piece that the part in hand is worked onto. */
  pieces: number;
  /** All that the row works lies along an edge that is not worked here. */
  elsewhere: boolean;
  /** Rows are closed into rounds: the place worked from may move round. */
  round: boolean;
  /** Row index where the piece in hand begins: its edges are its own rows'. */
  pieceFirst: number;
  /** How the row in hand has fared, step by step. */
  readonly ledger: LedgerEntry[];
  /** How deep the steps being worked lie: 0 those of the row, 1 those of a repeat's first pass, more for all others. */
  depth: number;
  /** The foundation chain of the piece. */
  foundation: { readonly first: number; readonly end: number } | null;
  /** Edges of the piece still to be gone along, in order; null when the piece has none yet. */
  edges: PieceEdges | null;
}

export interface ChainAssumed {
  readonly chains: number;
  readonly counts: boolean;
  readonly as: string;
  /** Chains beyond the stitch, where it counts: a space. */
  readonly plusChains: number;
  readonly skipped: boolean;
  /** A note says so, or the round is joined into its top, which says that it counts though the words do not. */
  readonly told: boolean;
  readonly span: Span;
}

export interface RowRange {
  readonly first: number;
  readonly end: number;
  readonly part: number;
  readonly direction: 'left' | 'right';
  readonly flat: boolean;
  /** A chain of the foundation that counts as the row's first stitch, or -1. */
  readonly countedStart: number;
  /** Null for what is no numbered row, such as a foundation. */
  readonly number: number | null;
}

/** What is left of the way round a flat piece after its last row: the sides and the foundation in the order they come. */
export interface PieceEdges {
  readonly sides: readonly (readonly Site[])[];
  readonly foundation: readonly Site[];
  /** The stitches of the last row, where nothing was worked into them before the way went elsewhere. */
  readonly top: readonly Site[];
  /** What the last row is numbered. */
  readonly lastRow: number | null;
  /** How many sides have been gone along. */
  sidesDone: number;
  /** Stitches were spread over the edge in hand: which of them its last place had is not said. */
  spread: boolean;
}

export interface Mark {
  readonly builder: BuilderMark;
  readonly sites: Site[] | null;
  readonly next: number;
  readonly last: number;
  readonly limit: number;
  readonly travelled: boolean;
  readonly countedStart: number;
  readonly skippedSpace: number;
  readonly rowBegun: boolean;
  readonly joined: boolean;
  readonly yarn: number;
  readonly group: number;
  readonly into: Site | null;
  readonly skippedUsed: number;
  readonly lastWasSpace: boolean;
  readonly chainAssumed: ChainAssumed | null;
  readonly inSpecial: boolean;
  readonly sidesDone: number;
  readonly noted: number;
  readonly below: Worker['below'];
  readonly top: Worker['top'];
  readonly passed: Worker['passed'];
  readonly again: Worker['again'];
}

export function newWorker(
  specials: readonly SpecialWork[],
  terms: Terms,
  sizeIndex: number,
  repeats: number,
  workSteps: Worker['workSteps'],
): Worker {
  return {
    terms,
    builder: emptyBuilder(),
    specials: new Map(specials.map(({ name, steps }) => [name, { name, steps: atPlaceOfUse(steps) }])),
    sizeIndex,
    repeats,
    throughout: new Map(),
    everyChain: null,
    settled: new Map(),
    wavered: false,
    sites: null,
    next: 0,
    last: -1,
    limit: Number.POSITIVE_INFINITY,
    travelled: false,
    countedStart: -1,
    skippedSpace: 0,
    row: 0,
    direction: 'left',
    rowFirst: 0,
    rowBegun: false,
    joined: false,
    yarn: 0,
    group: NONE,
    inSpecial: false,
    into: null,
    chainReading: null,
    chainAssumed: null,
    trouble: null,
    again: [],
    skippedUsed: -1,
    skipped: null,
    lastWasSpace: false,
    effort: 0,
    rowRanges: [],
    leftLater: false,
    asSquares: false,
    passesSpaces: false,
    passesRest: false,
    namedLoop: null,
    opensLoop: false,
    ringChains: 0,
    passed: [],
    workSteps,
    fits: () => true,
    below: null,
    top: null,
    travel: new Set(),
    rowLoop: 'both',
    leaves: false,
    leavesSaid: null,
    leftAs: null,
    edging: false,
    layout: null,
    pieces: 1,
    elsewhere: false,
    round: false,
    foundation: null,
    pieceFirst: 0,
    ledger: [],
    depth: 0,
    edges: null,
  };
}

export function markWorker(worker: Worker): Mark {
  const {
    sites,
    next,
    last,
    limit,
    travelled,
    countedStart,
    skippedSpace,
    rowBegun,
    joined,
    yarn,
    group,
    into,
    inSpecial,
  } = worker;
  const { skippedUsed, lastWasSpace, chainAssumed, below, top, passed, again } = worker;
  const sidesDone = worker.edges?.sidesDone ?? 0;
  const place = {
    sites,
    next,
    last,
    limit,
    travelled,
    countedStart,
    skippedSpace,
    rowBegun,
    joined,
    yarn,
    group,
    into,
    inSpecial,
  };
  return {
    builder: markBuilder(worker.builder),
    ...place,
    skippedUsed,
    lastWasSpace,
    chainAssumed,
    sidesDone,
    noted: worker.ledger.length,
    below,
    top,
    passed,
    again,
  };
}

/** Back to a mark, with whatever trouble came since forgotten. */
export function restore(worker: Worker, mark: Mark): void {
  backToMark(worker.builder, mark.builder);
  const { builder: _builder, sidesDone, noted, ...state } = mark;
  Object.assign(worker, state);
  worker.ledger.length = noted;
  if (worker.edges !== null) worker.edges.sidesDone = sidesDone;
  worker.trouble = null;
}

/** Notes why the row cannot go on; the first reason stands. */
export function stuck(worker: Worker, trouble: Trouble): false {
  worker.trouble ??= trouble;
  return false;
}

/** A value for the size in hand; null where the size skips. */
export function valueFor(worker: Worker, values: readonly (number | null)[]): number | null {
  return numberForSize({ values }, worker.sizeIndex);
}
