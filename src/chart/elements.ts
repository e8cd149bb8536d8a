/** A row of stitches in, the elements its chart is made of out: what stands, what is laid, what arches over, what is a dot. */

import { type Fabric, FLAG, INTO, NONE, targets } from '../fabric/fabric.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { stitchById } from '../stitches/table.ts';

export type RowElement =
  /** A stitch that takes a place in the row. */
  | { readonly kind: 'stitch'; readonly stitch: number }
  | Post
  /** A chain of the foundation, a place to work into. */
  | { readonly kind: 'laid'; readonly stitch: number }
  /** Chains between two stitches. */
  | { readonly kind: 'arch'; readonly first: number; readonly end: number }
  /** Chains closed into a loop on the stitch before them, by stitch `end`. */
  | { readonly kind: 'picot'; readonly first: number; readonly end: number }
  /** A slip stitch that joins or moves along. */
  | { readonly kind: 'dot'; readonly stitch: number }
  /** The ring or the first chain in the middle of a round piece. */
  | { readonly kind: 'centre'; readonly first: number; readonly end: number };

/** Chains standing upright at the start of a row. */
export interface Post {
  readonly kind: 'post';
  readonly first: number;
  readonly end: number;
  /** The chain that counts as a stitch, which later rows are worked into as the top of the post; NONE for none. */
  readonly counted: number;
  /** Stands on the foundation chain before it rather than beside it. */
  readonly onLaid: boolean;
}

export type RowColumn = Extract<RowElement, { kind: 'stitch' | 'post' | 'laid' }>;

/** Rows of the stitch table by the fabric's own numbering. */
export function stitchRows(fabric: Fabric): readonly StitchRow[] {
  return fabric.stitches.map((id) => stitchById(id));
}

export function hasFlag(fabric: Fabric, i: number, flag: number): boolean {
  return ((fabric.flags[i] ?? 0) & flag) !== 0;
}

/** `centreEnd` is just past the stitches that lie in the middle of a round piece. */
export function rowElements(
  fabric: Fabric,
  rows: readonly StitchRow[],
  row: number,
  centreEnd: number,
): RowElement[] {
  const { first, end, onto } = fabric.rows[row] ?? { first: 0, end: 0, onto: null };
  const isChain = (i: number): boolean => rows[fabric.kind[i] ?? 0]?.lies === true;
  const elements: RowElement[] = [];
  const beginsHere = onto === null || !someStitch(first, end, (i) => !isChain(i));
  let i = first;
  if (i < centreEnd) {
    i = Math.min(end, centreEnd);
    elements.push({ kind: 'centre', first, end: i });
  }
  while (i < end) {
    if (!isChain(i)) {
      const slip = rows[fabric.kind[i] ?? 0]?.family === 'slip';
      const dot = slip && hasFlag(fabric, i, FLAG.join | FLAG.travel);
      elements.push({ kind: dot ? 'dot' : 'stitch', stitch: i });
      i += 1;
      continue;
    }
    const upright = hasFlag(fabric, i, FLAG.turningChain);
    let next = i + 1;
    while (next < end && isChain(next) && hasFlag(fabric, next, FLAG.turningChain) === upright) next += 1;
    const atStart = !elements.some((element) => element.kind === 'stitch' || element.kind === 'post');
    if (upright) {
      // Of a chain that counts as a stitch and more, only the stitch stands upright.
      let top = i;
      while (top < next && fabric.countsAs[top] === NONE) top += 1;
      const counted = top < next ? top : NONE;
      const postEnd = counted === NONE ? next : top + 1;
      const tall = counted === NONE ? 0 : (rows[fabric.countsAs[top] ?? 0]?.heightChains ?? 0);
      const onFoundation = elements.at(-1)?.kind === 'laid';
      elements.push(
        ...(onFoundation && counted !== NONE
          ? skippedChains(i, postEnd, tall, postEnd < next)
          : [post(i, postEnd, counted)]),
      );
      if (postEnd < next) elements.push({ kind: 'arch', first: postEnd, end: next });
    } else if (atStart && first < centreEnd) {
      elements.push(post(i, next, NONE));
    } else if (next < end && !(beginsHere && atStart) && closesLoop(fabric, i, next)) {
      elements.push({ kind: 'picot', first: i, end: next });
      next += 1;
    } else if (beginsHere && atStart && next < end && rows[fabric.kind[next] ?? 0]?.enters === 'own chain') {
      // Foundation stitches make their own chain: the ones before them stand as high as they do.
      elements.push(post(i, next, NONE));
    } else if ((beginsHere && atStart) || (next === end && fabric.rows[row]?.closing === 'flat')) {
      for (let k = i; k < next; k += 1) elements.push({ kind: 'laid', stitch: k });
    } else {
      elements.push({ kind: 'arch', first: i, end: next });
    }
    i = next;
  }
  return elements;
}

function post(first: number, end: number, counted: number): Post {
  return { kind: 'post', first, end, counted, onLaid: false };
}

/**
 * Chains skipped at the end of a foundation that count as a stitch. Of those beyond the stitch's height half lie along
 * the foundation and half make a space at the top: 5 skipped for a dc and ch 1 are 1 along, 3 up and 1 across.
 */
function skippedChains(first: number, end: number, tall: number, spaceFollows: boolean): RowElement[] {
  const over = Math.max(0, end - first - tall);
  // Where the chains of the space come after the stitch, none of those before it lie across.
  const across = spaceFollows ? 0 : Math.floor(over / 2);
  const along = over - across;
  const laid = Array.from({ length: along }, (_, k) => ({ kind: 'laid' as const, stitch: first + k }));
  const upright = {
    kind: 'post' as const,
    first: first + along,
    end: end - across,
    counted: end - 1,
    onLaid: along > across,
  };
  return [...laid, upright, ...(across > 0 ? [{ kind: 'arch' as const, first: end - across, end }] : [])];
}

function someStitch(first: number, end: number, test: (i: number) => boolean): boolean {
  for (let i = first; i < end; i += 1) if (test(i)) return true;
  return false;
}

/** Whether stitch `close` goes back into the chains from `first` or the stitch before them. */
function closesLoop(fabric: Fabric, first: number, close: number): boolean {
  // An arm half way up the stitch before leaves its chains between two heads.
  if (fabric.where[close] === INTO.stem) return false;
  const into = targets(fabric, close);
  const target = into[0];
  if (into.length !== 1 || target === undefined) return false;
  return target >= first - 1 && target < close && fabric.row[target] === fabric.row[close];
}
