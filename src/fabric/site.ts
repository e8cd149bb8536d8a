/** The places a row can be worked into, in the order the hook meets them. */

import { stitchById } from '../stitches/table.ts';
import type { Builder } from './builder.ts';
import { countedId, firstTarget, groupOf, hasFlag, kindId } from './builder.ts';
import { FLAG, NONE } from './fabric.ts';

export type SiteKind =
  /** The top of a stitch. */
  | 'stitch'
  /** One chain: of a foundation, or of a space. */
  | 'chain'
  | 'ring'
  | 'row end'
  /** The other side of a foundation chain. */
  | 'underside'
  /** The gap before a stitch. */
  | 'gap'
  /** Half way up a stitch. */
  | 'stem'
  /** A stitch known only by a stated count, where the row that should have made it could not be worked. */
  | 'unknown';

export interface Site {
  readonly kind: SiteKind;
  /** Index of the stitch or chain; -1 for an unknown one. */
  readonly node: number;
  /** What it is called: the id it counts as, `ch`, or '' where that is not known. */
  readonly id: string;
  /** Index into the builder's spaces for a chain that belongs to one, else NONE. */
  readonly space: number;
  /** Chains of that space, 0 for none. */
  readonly spaceChains: number;
  readonly corner: boolean;
  readonly marked: boolean;
  /** A turning chain that counts: `next ch` goes into it too. */
  readonly isChain: boolean;
  /** What it stands on: stitches with one foot are a group. */
  readonly foot: number;
  /** Name of the special stitch it belongs to, or null, and which one of them. */
  readonly special: string | null;
  readonly group: number;
  /** It may be worked into and need not be: it holds stitches from its other side already, or only fastened a fan down. */
  readonly full?: true;
}

/** True for a place that a row has to account for: anything but the chains of a space, and one that is full. */
export function isOwed(site: Site): boolean {
  return site.space === NONE && site.full !== true;
}

/** The sites along the top of a row's stitches, in the order they were made. */
export function sitesOfRow(builder: Builder, first: number, end: number): Site[] {
  const sites: Site[] = [];
  let runStart = -1;
  const closeRun = (at: number): void => {
    if (runStart < 0) return;
    pushSpace(builder, sites, runStart, at, first);
    runStart = -1;
  };
  for (let i = first; i < end; i += 1) {
    const counted = countedId(builder, i);
    const chain = kindId(builder, i) === 'ch' && counted === null;
    if (chain && !hasFlag(builder, i, FLAG.turningChain)) {
      if (runStart < 0) runStart = i;
      continue;
    }
    if (closesSpace(builder, i)) {
      if (runStart < 0) runStart = i;
      closeRun(i + 1);
      continue;
    }
    if (isPicotClosing(builder, i, runStart)) {
      // The chains stand closed on their own: no space to work into.
      runStart = -1;
      continue;
    }
    closeRun(i);
    if (counted === null) continue;
    const group = groupOf(builder, i);
    sites.push({
      kind: 'stitch',
      node: i,
      id: counted,
      space: NONE,
      spaceChains: 0,
      corner: hasFlag(builder, i, FLAG.corner),
      marked: hasFlag(builder, i, FLAG.marked),
      isChain: kindId(builder, i) === 'ch',
      foot: footOf(builder, i, first),
      special: group?.special ?? null,
      group: builder.group[i] ?? NONE,
      ...(hasFlag(builder, i, FLAG.fastens) ? FULL : {}),
    });
  }
  closeRun(end);
  return sites;
}

const FULL = { full: true } as const;

/** A tall stitch that joins a round: with the chains before it, it makes the round's last space. */
function closesSpace(builder: Builder, index: number): boolean {
  return hasFlag(builder, index, FLAG.join) && stitchById(kindId(builder, index)).heightChains > 1;
}

/** How many chains a space is as wide as; a stitch that closes it stands for as many as it is tall. */
export function chainsAcross(builder: Builder, { first, end }: { first: number; end: number }): number {
  const chains = end - first;
  return closesSpace(builder, end - 1)
    ? chains - 1 + stitchById(kindId(builder, end - 1)).heightChains
    : chains;
}

/** A slip stitch into one of the chains just made. */
function isPicotClosing(builder: Builder, index: number, runStart: number): boolean {
  return (
    runStart >= 0 &&
    kindId(builder, index) === 'sl-st' &&
    firstTarget(builder, index) >= runStart - 1 &&
    !hasFlag(builder, index, FLAG.join)
  );
}

function pushSpace(builder: Builder, sites: Site[], first: number, end: number, rowFirst: number): void {
  const group = builder.group[first] ?? NONE;
  const special = groupOf(builder, first)?.special ?? null;
  // A chain between two parts of one bracket worked into one place makes a corner or a V.
  const bracketed = group !== NONE && special === null;
  const corner =
    bracketed || hasFlag(builder, first, FLAG.corner) || sharesFoot(builder, first - 1, end, rowFirst);
  builder.spaces.push({ row: builder.row[first] ?? 0, first, end, corner });
  const space = builder.spaces.length - 1;
  const spaceChains = chainsAcross(builder, { first, end });
  for (let i = first; i < end; i += 1) {
    sites.push({
      kind: 'chain',
      node: i,
      id: 'ch',
      space,
      spaceChains,
      corner,
      marked: false,
      isChain: false,
      foot: NONE,
      special,
      group,
    });
  }
}

/** Whether the stitches on both sides of a space stand in one place; the last space of a round lies before its first stitch. */
function sharesFoot(builder: Builder, before: number, after: number, rowFirst: number): boolean {
  const closing = after >= builder.kind.length;
  const left = footOf(builder, before, rowFirst);
  const right = footOf(builder, closing ? firstWorked(builder, rowFirst) : after, rowFirst);
  return left >= 0 && left === right;
}

/** The first stitch of a row that is neither its ring nor a slip stitch on the way to where it starts. */
function firstWorked(builder: Builder, rowFirst: number): number {
  let at = rowFirst;
  while (kindId(builder, at) === 'mr' || hasFlag(builder, at, FLAG.travel) || hasFlag(builder, at, FLAG.join))
    at += 1;
  return at;
}

/** What a stitch stands on; of a turning chain, what its first chain stands on. */
export function footOf(builder: Builder, index: number, rowFirst: number): number {
  let at = index;
  while (
    at > rowFirst &&
    kindId(builder, at) === 'ch' &&
    firstTarget(builder, at) < 0 &&
    hasFlag(builder, at - 1, FLAG.turningChain)
  )
    at -= 1;
  return firstTarget(builder, at);
}

/** A site for each chain of a foundation, from the hook backwards. */
export function sitesOfChain(first: number, end: number): Site[] {
  const sites: Site[] = [];
  for (let i = end - 1; i >= first; i -= 1) sites.push(plainSite('chain', i, 'ch'));
  return sites;
}

export function plainSite(kind: SiteKind, node: number, id: string): Site {
  return {
    kind,
    node,
    id,
    space: NONE,
    spaceChains: 0,
    corner: false,
    marked: false,
    isChain: false,
    foot: NONE,
    special: null,
    group: NONE,
  };
}
