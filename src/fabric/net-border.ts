/**
 * A border that goes from space to space round a piece of net: the squares along its edges in, those of the last row, of
 * the row ends and of the first row from below, the places it goes into out, with the four at the corners marked as such.
 */

import type { Step } from '../notation/tree.ts';
import type { Builder } from './builder.ts';
import { countedId, firstTarget, hasFlag, kindId } from './builder.ts';
import { FLAG, NONE } from './fabric.ts';
import type { Site } from './site.ts';
import { plainSite } from './site.ts';
import { skippedAtHook } from './work-edge.ts';
import type { RowRange, Worker } from './worker.ts';

/** Null where the steps go round in any other way, or the piece is no net. */
export function netBorder(worker: Worker, steps: readonly Step[], top: readonly Site[]): Site[] | null {
  if (!worker.edging || !goesBySpaces(steps)) return null;
  const rows = worker.rowRanges
    .slice(worker.pieceFirst)
    .filter(({ flat, first, end, number }) => flat && first < end && number !== null);
  const [bottom] = rows;
  const chains = top.find(({ space }) => space !== NONE)?.spaceChains ?? 0;
  const below = bottom === undefined || chains === 0 ? [] : squaresBelow(worker, bottom);
  if (bottom === undefined || rows.length < 3 || below.length === 0) return null;
  const far = worker.direction;
  const near = far === 'left' ? 'right' : 'left';
  const between = rows.slice(1, -1);
  const { builder } = worker;
  const side = (row: RowRange, at: RowRange['direction']): Site[] =>
    spaceOf(builder, { ...sideOf(builder, row, at), corner: false, chains });
  const foundation = bottom.direction === far ? below : [...below].reverse();
  return [
    ...cornered(top),
    ...[...between].reverse().flatMap((row) => side(row, far)),
    ...foundation.flatMap((square, i) =>
      spaceOf(builder, { ...square, corner: i === 0 || i === below.length - 1, chains }),
    ),
    ...between.flatMap((row) => side(row, near)),
  ];
}

/** Something goes into the spaces at corners, something into each of the others, and nothing into row ends or stitches. */
function goesBySpaces(steps: readonly Step[]): boolean {
  let corners = false;
  let others = false;
  for (const step of steps.flatMap((one) => (one.kind === 'repeat' ? one.body : [one]))) {
    if (step.kind === 'along' || step.kind === 'evenly') return false;
    if (step.kind !== 'work') continue;
    const what = step.place !== null && 'what' in step.place ? step.place.what : null;
    if (step.corners?.what.kind === 'space' && step.corners.what.corner) corners = true;
    if (what?.kind === 'space' && what.corner) corners = true;
    else if (what?.kind === 'space' && step.place?.kind === 'each') others = true;
  }
  return corners && others;
}

/** The last row, its first and its last space at the corners. */
function cornered(top: readonly Site[]): Site[] {
  const spaces = top.filter(({ space }) => space !== NONE).map(({ space }) => space);
  const ends = new Set([spaces[0], spaces[spaces.length - 1]]);
  return top.map((site) => (ends.has(site.space) ? { ...site, corner: true } : site));
}

interface Nodes {
  readonly first: number;
  readonly end: number;
  readonly row: number;
}

/** What a row has at one of its sides: its turning chain, or the post at its end. */
function sideOf(builder: Builder, row: RowRange, at: RowRange['direction']): Nodes {
  let node = row.direction === at ? row.end - 1 : row.first;
  while (row.direction === at && node > row.first && countedId(builder, node) === null) node -= 1;
  let end = node + 1;
  if (kindId(builder, node) === 'ch')
    while (end < row.end && hasFlag(builder, end, FLAG.turningChain)) end += 1;
  return { first: node, end, row: builder.row[node] ?? 0 };
}

/** The chains of the foundation between one post of the first row and the next, in the order they were made. */
function squaresBelow(worker: Worker, row: RowRange): Nodes[] {
  const { builder, foundation } = worker;
  if (foundation === null) return [];
  const posts = new Set<number>();
  for (let i = row.first; i < row.end; i += 1)
    if (countedId(builder, i) !== null) posts.add(firstTarget(builder, i));
  // Of the chains skipped at the hook as many lie under a space as go over it, and the next is the foot of the post.
  if (row.countedStart >= 0) posts.add(2 * foundation.end - skippedAtHook(worker) - row.countedStart - 1);
  const feet = [...posts].filter((node) => node >= foundation.first).sort((a, b) => a - b);
  return feet.slice(1).flatMap((foot, i) => {
    const first = (feet[i] ?? foot) + 1;
    return foot > first ? [{ first, end: foot, row: builder.row[first] ?? 0 }] : [];
  });
}

interface Square extends Nodes {
  readonly corner: boolean;
  readonly chains: number;
}

/** A space of the border, which is as long as those of the net whatever it lies beside. */
function spaceOf(builder: Builder, { first, end, row, corner, chains }: Square): Site[] {
  builder.spaces.push({ row, first, end, corner });
  const space = builder.spaces.length - 1;
  return Array.from({ length: end - first }, (_, i) => ({
    ...plainSite('row end', first + i, 'ch'),
    space,
    spaceChains: chains,
    corner,
  }));
}
