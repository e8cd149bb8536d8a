/**
 * One size, worked: every stitch in the order the yarn makes it, in parallel arrays so that 40,000 stitches
 * cost a few hundred kilobytes. `src/fabric/work.ts` makes one; charts, counts, yarn and words read it.
 */

import type { Unit } from '../notation/line.ts';
import type { Span } from '../source/span.ts';

/** Where a stitch enters what it is worked into. */
export const INTO = {
  /** Into nothing: a chain, or the first loop. */
  nothing: 0,
  /** Under the top of the stitch or chain it names. */
  top: 1,
  /** Around the chains it names, into the space they leave. */
  space: 2,
  /** Into the ring: the magic ring, or the joined chains it names. */
  ring: 3,
  /** Into the end of a row, at the side of the stitch it names. */
  rowEnd: 4,
  /** Into the other side of the foundation chain it names. */
  underside: 5,
  /** Around the post of the stitch it names; the table says from the front or the back. */
  post: 6,
  /** Into the gap before the stitch it names, between it and the stitch before. */
  between: 7,
  /** Half way up the stitch it names, which is of the same row. */
  stem: 8,
} as const;
export type Into = (typeof INTO)[keyof typeof INTO];

/** Which loop the hook goes under. */
export const LOOP = { both: 0, front: 1, back: 2, third: 3 } as const;

/** Bits of `Fabric.flags`. */
export const FLAG = {
  /** A chain of a turning or starting chain, whether or not it counts as a stitch. */
  turningChain: 1,
  /** Counted in the row's stitches: a stitch, or the last chain of a turning chain that counts as one. */
  counted: 2,
  /** A slip stitch that closes a round or a ring. */
  join: 4,
  /** A slip stitch that only moves the yarn along. */
  travel: 8,
  /** Worked where a corner of the piece is. */
  corner: 16,
  /** A marker was placed in it, or moved up to it. */
  marked: 32,
  /** Said to be worked behind what was just made, or around it; in front where neither is said. */
  behind: 64,
  around: 128,
  /** The last in its yarn before that is fastened off. */
  cut: 256,
  /** The first in a yarn that is said to be joined. */
  joinsYarn: 512,
  /** Fastens a fan down at the side: no place of the next row, though that may name it. */
  fastens: 1024,
} as const;

/** `Fabric.group` of a stitch that belongs to none, and `countsAs` of a chain that counts as nothing. */
export const NONE = -1;

/** Several stitches worked as one thing: a special stitch, or `( … )` into one place. */
export interface Group {
  /** The special stitch's name as the pattern abbreviates it, or null for a bracket into one place. */
  readonly special: string | null;
  /** First stitch and just past the last, as indices of the arrays. */
  readonly first: number;
  readonly end: number;
}

/** A run of chains that leaves a space to work into. */
export interface Space {
  readonly row: number;
  /** First chain and just past the last. */
  readonly first: number;
  readonly end: number;
  /** At a corner of the piece. */
  readonly corner: boolean;
}

/** A row, a round, or an unnumbered length of work such as a foundation chain. */
export interface FabricRow {
  /** As published: `Row 2`, `Rnd 4`, `Foundation`. One row each, also of a range. */
  readonly label: string;
  readonly unit: Unit | null;
  /** The row's or round's number, null when it has none. */
  readonly number: number | null;
  /** Index into `Fabric.parts`. */
  readonly part: number;
  /** The side that faces the maker. */
  readonly side: 'RS' | 'WS' | null;
  /**
   * Which way the work goes, seen from the right side by a right-handed maker: rows `left` on RS rows and `right`
   * on WS rows; rounds `left` is anticlockwise.
   */
  readonly direction: 'left' | 'right';
  /** First stitch and just past the last, as indices of the arrays. */
  readonly first: number;
  readonly end: number;
  /** Closed into a round: by a join, as a spiral that goes on, or a flat row. */
  readonly closing: 'flat' | 'joined' | 'spiral';
  /** Worked along the edges of the piece rather than on its last row. */
  readonly edging: boolean;
  /** Index of the row whose top it is worked on, or null for the first. */
  readonly onto: number | null;
  /** Where the instruction stands in the pattern file. */
  readonly span: Span;
  /** Index of the line in its part's instructions. */
  readonly line: number;
  /** Stitches, and chains that count as one. */
  readonly stitches: number;
  /** Chain spaces. */
  readonly spaces: number;
  /** Stitches by id of the stitch table. */
  readonly byStitch: Readonly<Record<string, number>>;
  /** Special stitches by the pattern's name for them. */
  readonly groups: Readonly<Record<string, number>>;
  /** Chain spaces by length in chains. */
  readonly bySpace: Readonly<Record<number, number>>;
  /** The count as the pattern states it, without brackets, or null. */
  readonly stated: string | null;
  /** How many rows like it there are is left to the maker. */
  readonly open?: true;
}

export interface FabricPart {
  readonly name: string;
  /** First row and just past the last. */
  readonly firstRow: number;
  readonly endRow: number;
  /** Rows lie flat, or go round a centre. */
  readonly shape: 'flat' | 'round';
  /** How a round part begins: null for flat parts. */
  readonly start: 'magic ring' | 'chain ring' | 'chain' | null;
  /** Number of corners a round part has from its last round (4 for a square), 0 for a circle or a flat part. */
  readonly corners: number;
  /** Goes on from the edge of this earlier part, or null. */
  readonly onto: number | null;
}

export interface Fabric {
  readonly size: string;
  /** Stitch ids that occur; `kind` and `countsAs` hold indices into it. */
  readonly stitches: readonly string[];
  /** Yarn letters that occur; `yarn` holds indices into it. */
  readonly yarns: readonly string[];
  readonly count: number;
  readonly kind: Uint16Array;
  /** What it is counted as: its own kind, another for a turning chain, NONE for what is not counted. */
  readonly countsAs: Int16Array;
  /** Index into `rows`. */
  readonly row: Uint32Array;
  readonly yarn: Uint8Array;
  /** One of INTO. */
  readonly where: Uint8Array;
  /** One of LOOP. */
  readonly loop: Uint8Array;
  /** Sum of FLAG bits. */
  readonly flags: Uint16Array;
  /** Index into `groups`, innermost special stitch or bracket; NONE for none. */
  readonly group: Int32Array;
  /**
   * What stitch i is worked into: `into[intoStart[i]] … into[intoStart[i + 1] - 1]`, earlier stitches. One for a
   * stitch, one a leg for a decrease over several, all the chains of a space or a ring.
   */
  readonly intoStart: Uint32Array;
  readonly into: Uint32Array;
  readonly groups: readonly Group[];
  readonly spaces: readonly Space[];
  readonly rows: readonly FabricRow[];
  readonly parts: readonly FabricPart[];
}

/** The stitches that stitch i is worked into. */
export function targets(fabric: Fabric, i: number): Uint32Array {
  return fabric.into.subarray(fabric.intoStart[i], fabric.intoStart[i + 1]);
}

/** The id of stitch i's row in the stitch table. */
export function stitchId(fabric: Fabric, i: number): string {
  return fabric.stitches[fabric.kind[i] ?? 0] ?? '';
}
