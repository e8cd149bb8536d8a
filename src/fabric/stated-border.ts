/**
 * A round told side by side, `*51 dc evenly along the side, 3 dc into the corner; rep from * 3 more times`, in; the places
 * it goes into, out. Whatever it borders, pieces sewn together or two layers at once, its words say how many there are.
 */

import { isThing, type StatedCount, type StatedEntry } from '../notation/line.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { EvenlyStep, GroupStep, Step, WorkStep } from '../notation/tree.ts';
import { groupOf } from './builder.ts';
import { type Group, NONE } from './fabric.ts';
import { passPlace } from './find-site.ts';
import { makeNamed } from './make-stitch.ts';
import { howMany } from './place-sites.ts';
import type { Site } from './site.ts';
import { plainSite } from './site.ts';
import type { Worker } from './worker.ts';
import { valueFor } from './worker.ts';

/** Sides and corners of a closed piece: fewer are an edge of something else. */
const FEWEST_SIDES = 3;
const MOST_SIDES = 12;
/** More than any border has: a slip of the pen in a number is not laid out. */
const MOST_PLACES = 20_000;
const BLOCK = /\b(?:block|tile)$/i;

/** Null for a round that is told in any other way. */
export function statedBorder(
  worker: Worker,
  steps: readonly Step[],
  stated: StatedCount | null,
  below: readonly Site[],
): Site[] | null {
  const parts = partsOf(worker, steps)?.map((step) => sideOfMany(worker, step, below)) ?? null;
  if (parts === null || !parts.every((step) => isSide(step) || isCorner(step))) return null;
  const sides = parts.filter(isSide);
  const cornered = sides.length < parts.length || chainsAtCorners(steps);
  if (sides.length < FEWEST_SIDES || !cornered) return null;
  const lengths = sideLengths(worker, sides, parts.filter(isCorner), stated, below);
  if (lengths === null || lengths.reduce((sum, n) => sum + n, 0) > MOST_PLACES) return null;
  const place = plainSite('unknown', NONE, '');
  let nth = -1;
  return parts.flatMap((step) => {
    if (!isSide(step)) return [{ ...place, corner: true }];
    nth += 1;
    return Array.from({ length: lengths[nth] ?? 0 }, () => place);
  });
}

/** Whether a repeat goes along sides of so many stitches each. */
export function tellsSides(steps: readonly Step[]): boolean {
  return steps.some((step) => (step.kind === 'repeat' || step.kind === 'bracket') && step.body.some(isSide));
}

/** Round something that is not crocheted, a tray cloth or any blanket: its sides are as long as they are told. */
export function standRound(worker: Worker, steps: readonly Step[], stated: StatedCount | null): void {
  const around = statedBorder(worker, steps, stated, []);
  if (around === null) return;
  worker.sites = around;
  worker.round = true;
  worker.next = 0;
  worker.last = 0;
}

const BESIDE: ReadonlySet<Step['kind']> = new Set(['yarn', 'note', 'chain', 'join', 'turn', 'fasten off']);

/** Sides and corners in the order they come, each pass of the repeat written out; null where nothing is repeated. */
function partsOf(worker: Worker, steps: readonly Step[]): Step[] | null {
  const parts: Step[] = [];
  let repeats = 0;
  for (const step of steps) {
    if (BESIDE.has(step.kind)) continue;
    if (step.kind !== 'repeat' && step.kind !== 'bracket') {
      parts.push(step);
      continue;
    }
    if (step.stop.kind !== 'times' || (step.kind === 'repeat' && step.lastPassEnds !== null)) return null;
    const passes = howMany(worker, step.stop.n) + (step.stop.more ? 1 : 0);
    if (passes > MOST_SIDES) return null;
    // `120 sc evenly along the side, ch 2` round blocks: nothing goes into a corner, the chain goes round it.
    const body = blocksAlong(worker) === null ? step.body : step.body.filter(({ kind }) => kind !== 'chain');
    for (let n = 0; n < passes; n += 1) parts.push(...body);
    repeats += 1;
  }
  return repeats === 1 ? parts : null;
}

function chainsAtCorners(steps: readonly Step[]): boolean {
  return steps.some(
    (step) =>
      (step.kind === 'repeat' || step.kind === 'bracket') && step.body.some(({ kind }) => kind === 'chain'),
  );
}

function isSide(step: Step): step is EvenlyStep {
  return step.kind === 'evenly' && step.edge === 'row ends';
}

/** Fewer pieces are no square of them. */
const FEWEST_PIECES = 4;
/** Fewer are no side of a square. */
const SHORTEST_SIDE = 4;

/** `sc in next 67 sts` round squares laid out together, of which one has no such side: it goes along several of them. */
function sideOfMany({ layout, pieces, sizeIndex }: Worker, step: Step, below: readonly Site[]): Step {
  if (layout === null && pieces < FEWEST_PIECES) return step;
  if (step.kind !== 'work' || step.place?.kind !== 'next' || step.times !== null) return step;
  const { n, what } = step.place;
  const told = n === null ? null : numberForSize(n, sizeIndex);
  if (n === null || told === null || told < SHORTEST_SIDE || told * FEWEST_SIDES <= below.length) return step;
  if (what.kind !== 'st' && what.kind !== 'stitch') return step;
  const { stitch, span } = step;
  return { kind: 'evenly', stitch, n, edge: 'row ends', span };
}

function isCorner(step: Step): step is WorkStep | GroupStep {
  if (step.kind !== 'work' && step.kind !== 'group') return false;
  const { place } = step;
  // `(3 ch, 1 tr, 2 ch, 2 tr) into same sp`: the corner that the yarn was joined in.
  if (step.kind === 'group' && place?.kind === 'same') return true;
  if (place?.kind !== 'next' || place.n !== null) return false;
  return place.what.kind === 'corner' || (place.what.kind === 'space' && place.what.corner);
}

/** How many stitches go along each side; null where nothing says so. */
function sideLengths(
  worker: Worker,
  sides: readonly EvenlyStep[],
  corners: readonly (WorkStep | GroupStep)[],
  stated: StatedCount | null,
  below: readonly Site[],
): number[] | null {
  const each = sides[0]?.side?.each ?? 'counted';
  if (sides.some(({ side }) => (side?.each ?? 'counted') !== each)) return null;
  const n = sides.map((step) => valueFor(worker, step.n.values) ?? 0);
  if (each === 'counted') return inBlocksAsSaid(worker, sides, n) ? n : null;
  if (each === 'block') {
    const blocks = blocksAlong(worker);
    return blocks === null || sides.length !== 4
      ? null
      : n.map((one, i) => one * (blocks[i % 2 === 0 ? 0 : 1] ?? 0));
  }
  const lengths = sides.map(({ side }, i) => side?.lengths?.[i % 2 === 0 ? 0 : 1]);
  if (lengths.every((length) => length !== undefined) && sides.length === 4)
    return lengths.map((length) => valueFor(worker, length.values) ?? 0);
  if (each === 'square') return onSquares(worker, n, inAll(corners, worker.sizeIndex), stated);
  const told = stated === null ? null : toldLengths(worker, sides.length, corners, stated);
  return told ?? sidesOfSquares(worker, sides, below);
}

/** Of squares laid out in so many rows of so many: the stitches of each along a side, and what goes into the joins between. */
function sidesOfSquares(
  { layout }: Worker,
  sides: readonly EvenlyStep[],
  below: readonly Site[],
): number[] | null {
  const each = sideOfSquare(below);
  if (layout === null || each === null || sides.length !== 4) return null;
  return sides.map(({ side }, i) => {
    const squares = layout[i % 2] ?? 0;
    return each * squares + (side?.atJoin ?? 0) * (squares - 1);
  });
}

/**
 * So many stitches on each square: as often as the layout has squares along the side. Where it is not known, the count
 * says how many there are in all, two and two sides alike; null where they do not come out whole.
 */
function onSquares(
  { layout, sizeIndex }: Worker,
  n: readonly number[],
  inCorners: number,
  stated: StatedCount | null,
): number[] | null {
  if (n.length !== 4) return null;
  if (layout !== null) return n.map((one, i) => one * (layout[i % 2] ?? 0));
  const [only] = stated?.entries ?? [];
  const [each = 0] = n;
  const whole = only === undefined ? null : numberForSize(only.n, sizeIndex);
  if (whole === null || each < 1 || n.some((one) => one !== each)) return null;
  const half = (whole - inCorners) / (2 * each);
  if (!Number.isInteger(half) || half < 2) return null;
  const short = Math.floor(half / 2);
  return [short, half - short, short, half - short].map((squares) => squares * each);
}

/** The stitches of all corners together. */
function inAll(corners: readonly (WorkStep | GroupStep)[], size: number): number {
  return corners.reduce((sum, corner) => sum + stitchesOf(corner, size), 0);
}

/** The stitches between two corner spaces of a square's last round; null where its sides are not all alike. */
function sideOfSquare(below: readonly Site[]): number | null {
  const runs: number[] = [];
  let run = 0;
  let space = NONE;
  for (const site of below) {
    if (site.space === NONE) run += 1;
    else if (site.corner && site.space !== space) {
      runs.push(run);
      run = 0;
      space = site.space;
    } else if (!site.corner) return null;
  }
  // The round begins and ends within one side.
  const [first = 0, ...others] = runs;
  const all = [...others, first + run];
  const [one] = all;
  return all.length === 4 && one !== undefined && one > 0 && all.every((n) => n === one) ? one : null;
}

/** `120 sc evenly along the side (3 sc in each block)`: as many as its blocks make, where that is said. */
function inBlocksAsSaid(worker: Worker, sides: readonly EvenlyStep[], n: readonly number[]): boolean {
  if (!sides.some(({ side }) => side?.inBlock !== undefined)) return true;
  const blocks = blocksAlong(worker);
  if (blocks === null || sides.length !== 4) return false;
  return sides.every(({ side }, i) => {
    const each = side?.inBlock;
    return each === undefined || n[i] === each * (blocks[i % 2 === 0 ? 0 : 1] ?? 0);
  });
}

/** The blocks along two neighbouring sides of a piece worked from corner to corner, by its rows. */
function blocksAlong({ builder, rowRanges, pieceFirst }: Worker): readonly [number, number] | null {
  const rows = rowRanges.slice(pieceFirst).map(({ first, end }) => {
    const blocks = new Set<Group>();
    for (let i = first; i < end; i += 1) {
      const group = groupOf(builder, i);
      if (group?.special != null && BLOCK.test(group.special)) blocks.add(group);
    }
    return blocks.size;
  });
  const counts = rows.filter((n) => n > 0);
  const widest = Math.max(0, ...counts);
  const first = counts[0];
  const last = counts[counts.length - 1];
  return first === 1 && last === 1 ? [widest, counts.length + 1 - widest] : null;
}

/** The sides that a count tells: `116 on each short side and 154 on each long side`, `135 on each side`. */
function toldLengths(
  { sizeIndex }: Worker,
  sides: number,
  corners: readonly (WorkStep | GroupStep)[],
  { entries }: StatedCount,
): number[] | null {
  const said = (find: (entry: StatedEntry) => boolean): number | null => {
    const entry = entries.find(find);
    return entry === undefined ? null : numberForSize(entry.n, sizeIndex);
  };
  const even = said(({ perSide, what }) => perSide === true && (what === null || !isThing(what)));
  const [short, long] = [said((entry) => entry.sides === 'short'), said((entry) => entry.sides === 'long')];
  const told =
    even !== null
      ? Array.from({ length: sides }, () => even)
      : short !== null && long !== null && sides === 4
        ? [short, long, short, long]
        : null;
  const total = said((entry) => entry.perSide !== true && entry.sides === undefined);
  if (told === null || total === null) return null;
  const [corner] = corners.slice(-1);
  const inCorner = corner === undefined ? 0 : stitchesOf(corner, sizeIndex);
  const sum = told.reduce((all, n) => all + n, 0);
  // Half of each corner is told with either side of it, unless only the other way makes up what there is in all.
  const between = sum !== total && sum + inCorner * corners.length === total;
  const lengths = between ? told : told.map((n) => n - inCorner);
  return lengths.every((n) => n > 0) ? lengths : null;
}

function stitchesOf(step: WorkStep | GroupStep, size: number): number {
  if (step.kind === 'group')
    return step.body.reduce((n, each) => n + (each.kind === 'work' ? stitchesOf(each, size) : 0), 0);
  return step.times === null ? 1 : (numberForSize(step.times, size) ?? 0);
}

/** How many stitches go along the blocks of the side come to, where chains go round the corners and no place is at one. */
function sideInBlocks(worker: Worker, step: EvenlyStep): number | null {
  const { sites, next } = worker;
  const blocks = sites?.some(({ corner }) => corner) === false ? blocksAlong(worker) : null;
  if (blocks === null) return null;
  const each = valueFor(worker, step.n.values) ?? 0;
  for (let side = 0, from = 0; side < 4; side += 1) {
    const length = each * (blocks[side % 2 === 0 ? 0 : 1] ?? 0);
    if (from === next) return length;
    from += length;
  }
  return null;
}

/** One stitch in each of the places of a side; null where the places are those of a real edge. */
export function workStatedSide(worker: Worker, step: EvenlyStep): boolean | null {
  if (worker.sites?.[worker.next]?.kind !== 'unknown') return null;
  // Joined at a corner, with the side worked before it: the corner comes last.
  if (worker.sites[0]?.corner === true && worker.next === 0) worker.sites.push(...worker.sites.splice(0, 1));
  // A side that is not counted by its step goes up to the next corner.
  const inBlocks = step.side?.each === 'block' ? sideInBlocks(worker, step) : null;
  const counted = inBlocks !== null || (step.side?.each ?? 'counted') === 'counted';
  const most = inBlocks ?? (counted ? (valueFor(worker, step.n.values) ?? 0) : MOST_PLACES);
  for (let made = 0; made < most; made += 1) {
    const site = worker.sites[worker.next];
    if (site === undefined || site.corner) return !counted && made > 0 ? true : null;
    if (!makeNamed(worker, step.stitch, site, step.span)) return false;
    passPlace(worker, worker.next);
  }
  return true;
}
