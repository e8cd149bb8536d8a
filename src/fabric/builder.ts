/** Grows the arrays of a fabric stitch by stitch, and can go back to an earlier state when a reading did not fit. */

import type { Group, Space } from './fabric.ts';
import { FLAG, NONE } from './fabric.ts';

/** The most stitches one size may have; a fault says so beyond it. */
export const MOST_STITCHES = 500_000;

/** The most stitches that may go into one place: more than any hoop or ring holds. */
export const MOST_IN_PLACE = 1_000;

export interface Builder {
  readonly stitchIds: string[];
  readonly idIndex: Map<string, number>;
  readonly yarns: string[];
  readonly kind: number[];
  readonly countsAs: number[];
  readonly row: number[];
  readonly yarn: number[];
  readonly where: number[];
  readonly loop: number[];
  readonly flags: number[];
  readonly group: number[];
  readonly intoStart: number[];
  readonly into: number[];
  readonly groups: { special: string | null; first: number; end: number }[];
  readonly spaces: Space[];
}

/** What one stitch is, as it is made. */
export interface Made {
  readonly id: string;
  /** What it is counted as; null for what is not counted. */
  readonly countsAs: string | null;
  readonly row: number;
  readonly yarn: number;
  readonly where: number;
  readonly loop: number;
  readonly flags: number;
  readonly group: number;
  readonly into: readonly number[];
}

export interface BuilderMark {
  readonly count: number;
  readonly into: number;
  readonly groups: number;
  readonly spaces: number;
}

export function emptyBuilder(): Builder {
  return {
    stitchIds: [],
    idIndex: new Map(),
    yarns: [],
    kind: [],
    countsAs: [],
    row: [],
    yarn: [],
    where: [],
    loop: [],
    flags: [],
    group: [],
    intoStart: [],
    into: [],
    groups: [],
    spaces: [],
  };
}

/** Adds a stitch and gives its index. */
export function addStitch(builder: Builder, made: Made): number {
  const index = builder.kind.length;
  builder.kind.push(idIndex(builder, made.id));
  builder.countsAs.push(made.countsAs === null ? NONE : idIndex(builder, made.countsAs));
  builder.row.push(made.row);
  builder.yarn.push(made.yarn);
  builder.where.push(made.where);
  builder.loop.push(made.loop);
  builder.flags.push(made.flags | (made.countsAs === null ? 0 : FLAG.counted));
  builder.group.push(made.group);
  builder.intoStart.push(builder.into.length);
  for (const target of made.into) if (target >= 0) builder.into.push(target);
  return index;
}

/** The last chain of a turning chain comes to count as a stitch. */
export function countChainAs(builder: Builder, index: number, id: string): void {
  builder.countsAs[index] = idIndex(builder, id);
  builder.flags[index] = (builder.flags[index] ?? 0) | FLAG.counted;
}

export function addFlag(builder: Builder, index: number, flag: number): void {
  builder.flags[index] = (builder.flags[index] ?? 0) | flag;
}

export function hasFlag(builder: Builder, index: number, flag: number): boolean {
  return ((builder.flags[index] ?? 0) & flag) !== 0;
}

/** The id a stitch is counted as, or null. */
export function countedId(builder: Builder, index: number): string | null {
  const counted = builder.countsAs[index] ?? NONE;
  return counted === NONE ? null : (builder.stitchIds[counted] ?? null);
}

export function kindId(builder: Builder, index: number): string {
  return builder.stitchIds[builder.kind[index] ?? 0] ?? '';
}

/** The first stitch that stitch i is worked into, or -1. */
export function firstTarget(builder: Builder, index: number): number {
  const start = builder.intoStart[index] ?? 0;
  const end = builder.intoStart[index + 1] ?? builder.into.length;
  return start < end ? (builder.into[start] ?? -1) : -1;
}

export function openGroup(builder: Builder, special: string | null): number {
  builder.groups.push({ special, first: builder.kind.length, end: builder.kind.length });
  return builder.groups.length - 1;
}

export function closeGroup(builder: Builder, group: number): void {
  const open = builder.groups[group];
  if (open !== undefined) open.end = builder.kind.length;
}

export function groupOf(builder: Builder, index: number): Group | null {
  const group = builder.group[index] ?? NONE;
  return group === NONE ? null : (builder.groups[group] ?? null);
}

export function markBuilder(builder: Builder): BuilderMark {
  return {
    count: builder.kind.length,
    into: builder.into.length,
    groups: builder.groups.length,
    spaces: builder.spaces.length,
  };
}

/** Forgets everything made since the mark. Flags set on earlier stitches since then stay, which no reading depends on. */
export function backToMark(builder: Builder, mark: BuilderMark): void {
  const { kind, countsAs, row, yarn, where, loop, flags, group, intoStart } = builder;
  for (const column of [kind, countsAs, row, yarn, where, loop, flags, group, intoStart])
    column.length = mark.count;
  builder.into.length = mark.into;
  builder.groups.length = mark.groups;
  builder.spaces.length = mark.spaces;
}

function idIndex(builder: Builder, id: string): number {
  const known = builder.idIndex.get(id);
  if (known !== undefined) return known;
  builder.stitchIds.push(id);
  builder.idIndex.set(id, builder.stitchIds.length - 1);
  return builder.stitchIds.length - 1;
}
