/** The sides of a flat piece: row ends and the foundation's other side, gone along in the order they come. */

import { describeWhat } from '../notation/describe-what.ts';
import type { AlongStep, EvenlyStep, Place } from '../notation/tree.ts';
import type { Span } from '../source/span.ts';
import { alongPoints } from './along-points.ts';
import { countedId, firstTarget, hasFlag } from './builder.ts';
import { FLAG } from './fabric.ts';
import { countOwed, passPlace } from './find-site.ts';
import { makeNamed } from './make-stitch.ts';
import { rowEnd } from './row-edge.ts';
import type { Site } from './site.ts';
import { isOwed, plainSite, sitesOfRow } from './site.ts';
import { spread, spreadAround } from './spread.ts';
import { workStatedSide } from './stated-border.ts';
import { workElsewhere } from './work-elsewhere.ts';
import { standOnLeft } from './work-left.ts';
import { standRoundOpening } from './work-opening.ts';
import type { PieceEdges, RowRange, Worker } from './worker.ts';
import { stuck, valueFor } from './worker.ts';

/** `working along row ends`: the edge the next steps go into. What came before must have been used up. */
export function workAlong(worker: Worker, { edge, span, ...step }: AlongStep): boolean {
  if (edge === 'all round') return true;
  if (edge === 'opening') return standRoundOpening(worker, step.from ?? null, span);
  if (edge === 'unused loops') return alongLoops(worker, step.row ?? null, span);
  if (edge === 'foundation' && step.named === true && worker.sites?.[0]?.kind === 'chain') return true;
  // Its first chain may have been worked already, as the corner before it.
  if (edge === 'foundation' && worker.sites?.[0]?.kind === 'underside' && worker.next > 0) return true;
  if (edge === 'foundation' && worker.round && alongPoints(worker)) return true;
  // Round an opening the chains over it come next.
  if (step.loops === true && worker.sites?.[worker.next]?.kind === 'underside') return true;
  // `working down the side, work 28 sc evenly along the row ends`: the same side, named twice.
  if (edge === 'row ends' && worker.sites?.[0]?.kind === 'row end' && worker.last < 0 && worker.next === 0)
    return true;
  worker.edges ??= edgesOf(worker);
  const { edges, sites } = worker;
  if (edge === 'last row' && sites?.[0]?.kind === 'stitch' && worker.last < 0 && isLastRow(edges, step.row))
    return true;
  const along = edges === null ? undefined : sitesAlong(edges, edge, step.row);
  if (edges === null || along === undefined || along.length === 0)
    return stuck(worker, { kind: 'no edge', edge: step.row === undefined ? edge : `Row ${step.row}`, span });
  const left = sites === null ? 0 : countOwed(sites, worker.next, sites.length);
  if (left > 0 && worker.rowBegun)
    return stuck(worker, { kind: 'passed over', count: left, wanted: edge, span });
  if (edge === 'row ends') edges.sidesDone += 1;
  edges.spread = false;
  worker.sites = [...along];
  worker.next = 0;
  worker.last = -1;
  worker.lastWasSpace = false;
  return true;
}

function sitesAlong(edges: PieceEdges, edge: AlongStep['edge'], row?: number): readonly Site[] | undefined {
  if (edge === 'foundation') return edges.foundation;
  if (edge === 'last row') return isLastRow(edges, row) ? edges.top : undefined;
  return edges.sides[edges.sidesDone];
}

/** Of the rows below only the last lies open; one named by another number is none to go along. */
function isLastRow(edges: PieceEdges | null, row?: number): boolean {
  return edges !== null && (row === undefined || row === edges.lastRow);
}

/** Goes to the edge or the row that a place names while the work is elsewhere: its row ends, `next sc of Rnd 1`. */
export function goTo(worker: Worker, place: Place): boolean {
  if (place.kind === 'next' && place.ofRow !== undefined)
    return standOnRow(worker, place.ofRow.number, place.ofRow.unit, place);
  if (place.kind === 'first' && place.ofRow !== undefined && !isOfRow(worker, place.ofRow.number)) {
    const of = `first ${describeWhat(place.what, worker.terms)} of Row ${place.ofRow.number}`;
    return stuck(worker, { kind: 'used up', wanted: of, span: place.span });
  }
  // What an earlier row left, once an edge beside it is done.
  if (
    place.kind === 'next' &&
    place.left === true &&
    worker.sites?.[0]?.kind === 'row end' &&
    isSideDone(worker)
  )
    return standOnLeft(worker) || stuck(worker, { kind: 'used up', wanted: 'unworked st', span: place.span });
  const ends =
    'what' in place &&
    place.what.kind === 'row-end' &&
    (worker.sites?.[0]?.kind !== 'row end' || (place.kind === 'each' && isSideDone(worker)));
  if (!ends) return true;
  // Rows that could not be worked end somewhere too: how many there are is not known.
  const unread = worker.rowRanges.slice(worker.pieceFirst).some(({ first, end }) => first >= end);
  return unread
    ? stuck(worker, { kind: 'unknown', span: place.span })
    : workAlong(worker, { kind: 'along', edge: 'row ends', span: place.span });
}

/** Whether the places below are those of the row of that number: only the last lies open. */
function isOfRow({ sites, rowRanges }: Worker, number: number): boolean {
  const node = sites?.find(({ kind }) => kind === 'stitch')?.node ?? -1;
  const row = rowRanges.find(({ first, end }) => node >= first && node < end);
  return row === undefined || row.number === number;
}

/** `2 sc in each row end up the second side`: one side is worked, and there is another. */
function isSideDone({ sites, next, edges }: Worker): boolean {
  return sites !== null && next > 0 && countOwed(sites, next, sites.length) === 0 && edges?.sidesDone === 1;
}

/** The stitches of an earlier row in the place of those below, all of which this row leaves to it. */
function standOnRow(
  worker: Worker,
  number: number,
  unit: 'row' | 'round',
  { what, span }: Extract<Place, { kind: 'next' }>,
): boolean {
  const { builder, sites } = worker;
  const range = worker.rowRanges.slice(worker.pieceFirst).findLast((row) => row.number === number);
  // Round an opening, stitches of one row and chains of the next lie side by side.
  const on = (sites?.[worker.next] ?? sites?.[0])?.node ?? -1;
  if (range !== undefined && on >= range.first && on < range.end) return true;
  if (range === undefined || worker.rowBegun || sites === null) {
    const of = `${describeWhat(what, worker.terms)} of ${unit === 'row' ? 'Row' : 'Rnd'} ${number}`;
    return stuck(worker, { kind: 'used up', wanted: of, span });
  }
  const spaces = builder.spaces.length;
  const along = sitesOfRow(builder, range.first, range.end).filter(({ kind }) => kind === 'stitch');
  builder.spaces.length = spaces;
  worker.sites = range.direction === worker.direction ? along : along.reverse();
  worker.next = 0;
  worker.last = -1;
  worker.lastWasSpace = false;
  return true;
}

/** `work 21 sc evenly along row ends`: as many to each row end as the spread gives it. */
export function workEvenly(worker: Worker, step: EvenlyStep): boolean {
  if (step.edge === 'elsewhere') return workElsewhere(worker, step);
  const stated = workStatedSide(worker, step);
  if (stated !== null) return stated;
  if (step.side !== undefined) return stuck(worker, { kind: 'no edge', edge: 'sides', span: step.span });
  if (!workAlong(worker, { ...step, kind: 'along' })) return false;
  const sites = worker.sites ?? [];
  const along = sites.flatMap((site, i) => (i >= worker.next && isOwed(site) ? [i] : []));
  const n = valueFor(worker, step.n.values) ?? 0;
  const counts =
    step.edge === 'all round' && worker.round ? spreadAround(n, along.length) : spread(n, along.length);
  for (const [nth, i] of along.entries()) {
    const site = sites[i];
    if (site === undefined) continue;
    for (let n = 0; n < (counts[nth] ?? 0); n += 1) {
      if (!makeNamed(worker, step.stitch, site, step.span)) return false;
    }
    passPlace(worker, i);
  }
  if (worker.edges !== null) worker.edges.spread = true;
  return true;
}

/**
 * "In corner" of an edging: the stitch that is left at the end of an edge, or, when a side is done, the first chain of
 * the foundation behind it, or its last one when stitches were spread over it. False with nothing changed when it is neither.
 */
export function comesToCorner(worker: Worker): boolean {
  const { sites, edges } = worker;
  if (!worker.edging || sites === null || sites.some((site) => site.corner)) return false;
  const left = countOwed(sites, worker.next, sites.length);
  if (left === 1) return true;
  if (left === 0 && sites[0]?.kind === 'underside' && edges?.spread === true) {
    edges.spread = false;
    worker.next = sites.length - 1;
    return true;
  }
  const sideDone = left === 0 && sites[0]?.kind === 'row end' && edges?.sidesDone === 1;
  return sideDone && workAlong(worker, { kind: 'along', edge: 'foundation', span: { start: 0, end: 0 } });
}

/** The place that the first stitch of an edging went into, when the work has come round to other edges. */
export function startOfEdging(worker: Worker): Site | null {
  const { sites, builder } = worker;
  if (!worker.edging && sites?.[0]?.kind === 'underside') return startOfOval(worker);
  if (!worker.edging || (sites?.[0]?.kind !== 'row end' && sites?.[0]?.kind !== 'underside')) return null;
  for (let i = worker.rowFirst; i < builder.kind.length; i += 1) {
    if (countedId(builder, i) === null) continue;
    const node = firstTarget(builder, i);
    return node < 0 ? null : plainSite('stitch', node, countedId(builder, node) ?? 'ch');
  }
  return null;
}

/** The other side of the chain that the round began in, once all before it are worked; null where it is not come to. */
function startOfOval(worker: Worker): Site | null {
  const { sites, builder } = worker;
  let first = worker.rowFirst;
  while (first < builder.kind.length && countedId(builder, first) === null) first += 1;
  const node = firstTarget(builder, first);
  const at = sites?.findIndex((site) => site.node === node) ?? -1;
  if (sites === null || at < 0 || countOwed(sites, worker.next, at) > 0) return null;
  passPlace(worker, at);
  return sites[at] ?? null;
}

/**
 * The way round the piece after its last row, seen from the side that faces: down the side where the row in hand
 * will end, along the foundation, up the other side.
 */
function edgesOf(worker: Worker): PieceEdges | null {
  const rows = worker.rowRanges
    .slice(worker.pieceFirst)
    .filter((range) => range.flat && range.first < range.end && range.number !== null);
  if (rows.length === 0) return otherSideOfChain(worker);
  const far = worker.direction === 'left' ? 'left' : 'right';
  const near = far === 'left' ? 'right' : 'left';
  const down = [...rows].reverse().map((row) => rowEnd(worker, row, far));
  const up = rows.map((row) => rowEnd(worker, row, near));
  return {
    sides: [down, up],
    foundation: foundationSites(worker, rows[0], far),
    top: topOf(worker),
    lastRow: rows.at(-1)?.number ?? null,
    sidesDone: 0,
    spread: false,
  };
}

/** The last row, where the way round begins elsewhere and comes to it last. */
function topOf({ sites, last }: Worker): readonly Site[] {
  return sites?.[0]?.kind === 'stitch' && last < 0 ? sites : [];
}

/** Both sides of a chain: the last chain, already turned, is the end; the rest comes back from there. */
function otherSideOfChain(worker: Worker): PieceEdges | null {
  const { foundation } = worker;
  if (foundation === null) return null;
  const sites: Site[] = [];
  for (let i = foundation.first + 1; i < foundation.end - skippedAtHook(worker); i += 1)
    sites.push(plainSite('underside', i, 'ch'));
  const last = sites[sites.length - 1];
  // `3 sc in 2nd ch from hook` has gone round the end of the chain with the first stitches.
  if (last !== undefined && stitchesIn(worker, last.node) > 1)
    sites[sites.length - 1] = { ...last, full: true };
  return { sides: [], foundation: sites, top: [], lastRow: null, sidesDone: 0, spread: false };
}

/** How many stitches of the row in hand go into one node. */
function stitchesIn({ builder, rowFirst }: Worker, node: number): number {
  let stitches = 0;
  for (let i = rowFirst; i < builder.kind.length; i += 1) if (firstTarget(builder, i) === node) stitches += 1;
  return stitches;
}

/** The stitches of a row whose other loop was left free by the row worked on it. */
function alongLoops(worker: Worker, ofRow: number | null, span: Span): boolean {
  const { builder, rowRanges } = worker;
  const candidates = rowRanges
    .slice(worker.pieceFirst)
    .filter((range) => ofRow === null || range.number === ofRow);
  for (const range of candidates.reverse()) {
    const free = new Set<number>();
    for (let i = range.end; i < worker.rowFirst; i += 1) {
      const target = firstTarget(builder, i);
      if ((builder.loop[i] ?? 0) !== 0 && target >= range.first && target < range.end) free.add(target);
    }
    if (free.size === 0) continue;
    const sites = [...free]
      .sort((a, b) => a - b)
      .map((node) => plainSite('stitch', node, countedId(builder, node) ?? 'ch'));
    worker.sites = range.direction === worker.direction || !range.flat ? sites : sites.reverse();
    worker.next = 0;
    worker.last = -1;
    return true;
  }
  return stuck(worker, { kind: 'no edge', edge: 'unused loops', span });
}

/** How many chains at the hook's end were skipped to stand up for row 1. */
export function skippedAtHook(worker: Worker): number {
  const { foundation } = worker;
  let skipped = 0;
  if (foundation !== null)
    while (hasFlag(worker.builder, foundation.end - 1 - skipped, FLAG.turningChain)) skipped += 1;
  return skipped;
}

/** The one chain that all of a row's stitches go into; null where there are several. */
function onlyTarget({ builder }: Worker, { first, end }: RowRange): number | null {
  let only: number | null = null;
  let stitches = 0;
  for (let i = first; i < end; i += 1) {
    if (countedId(builder, i) === null) continue;
    const target = firstTarget(builder, i);
    if (only !== null && target !== only) return null;
    only = target;
    stitches += 1;
  }
  return stitches > 1 ? only : null;
}

/** The chains of the foundation from below, from the side named to the other. */
function foundationSites(worker: Worker, row: RowRange | undefined, from: 'left' | 'right'): Site[] {
  const { foundation } = worker;
  if (foundation === null || row === undefined) return [];
  // Of skipped chains that count as a stitch one is its foot, and as many lie under a space as go over it.
  const feet = row.countedStart >= 0 ? Math.max(1, foundation.end - row.countedStart) : 0;
  const sites: Site[] = [];
  for (let i = foundation.first; i < foundation.end - skippedAtHook(worker) + feet; i += 1)
    sites.push(plainSite('underside', i, 'ch'));
  // All of row 1 in one chain: the point of a pennant, with its turning chain beside it.
  const only = onlyTarget(worker, row);
  if (only !== null) return sites.filter(({ node }) => node === only);
  // Row 1 starts at the last chain: worked to the left, the first chain lies at the left.
  return row.direction === from ? sites : sites.reverse();
}
