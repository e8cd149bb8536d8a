/** A fabric and the accounts of its rows in, what each row is worked into and what of the row below it leaves out. */

import type { RowAccount, Tally } from '../explain/row-account.ts';
import type { Step } from '../notation/tree.ts';
import type { Fabric, FabricRow } from './fabric.ts';
import { FLAG, INTO, NONE, stitchId, targets } from './fabric.ts';

/** The places a row is worked into, each once however much goes into it. */
export interface Taken extends Tally {
  /** Of a foundation, or of a space one by one. */
  readonly chains: number;
  /** Of a foundation, from its other side. */
  readonly otherSide: number;
  readonly rings: number;
  readonly rowEnds: number;
  /** Between two stitches. */
  readonly gaps: number;
  /** Stitches of rows further down. */
  readonly rowsBelow: number;
}

/** Places of the row below without anything in them; `chains` those of a foundation. */
export interface Unworked extends Tally {
  readonly chains: number;
}

export interface RowPlaces {
  /** Null for a row worked into one that is known by its stated count only. */
  readonly takes: Taken | null;
  /** Passed on the way, said or not. */
  readonly skips: Unworked;
  /** Whether the row says that it skips any; otherwise they are merely passed over. */
  readonly saysSkip: boolean;
  /** Still there behind the last place. */
  readonly leaves: Unworked;
}

const NOTHING: Unworked = { stitches: 0, spaces: 0, chains: 0 };

/** In the order of the accounts. */
export function rowPlaces(fabric: Fabric, accounts: readonly RowAccount[]): readonly RowPlaces[] {
  const spaces = new Map<number, Set<number>[]>();
  for (const { row, first, end } of fabric.spaces) {
    const chains = new Set(Array.from({ length: end - first }, (_, i) => first + i));
    spaces.set(row, [...(spaces.get(row) ?? []), chains]);
  }
  const byFirst = new Map(accounts.map((account) => [account.first, account]));
  return accounts.map((account) => {
    const saysSkip = account.steps.some(({ step }) => skipsIn(step));
    if (account.below === 'stated') return { takes: null, skips: NOTHING, leaves: NOTHING, saysSkip };
    const row = account.onto ?? -1;
    const onto = byFirst.get(fabric.rows[row]?.first ?? -1) ?? null;
    return { ...placesOf(fabric, account, onto, row, spaces.get(row) ?? []), saysSkip };
  });
}

/** The same, asked for row by row; of a row that could not be worked nothing is told. */
export function placesByRow(fabric: Fabric, accounts: readonly RowAccount[]): (row: FabricRow) => RowPlaces {
  const places = rowPlaces(fabric, accounts);
  const byFirst = new Map(accounts.map(({ first, broken }, i) => [broken ? NONE : first, places[i]]));
  const none = { takes: null, skips: NOTHING, leaves: NOTHING, saysSkip: false };
  return ({ first, end }) => (first < end ? byFirst.get(first) : undefined) ?? none;
}

function placesOf(
  fabric: Fabric,
  account: RowAccount,
  onto: RowAccount | null,
  row: number,
  spaces: readonly Set<number>[],
): Omit<RowPlaces, 'saysSkip'> {
  const spaceOf = new Map(spaces.flatMap((chains) => [...chains].map((chain) => [chain, chains] as const)));
  const found = {
    stitches: new Set<number>(),
    spaces: new Set<Set<number>>(),
    chains: new Set<number>(),
    otherSide: new Set<number>(),
    rings: new Set<number>(),
    rowEnds: new Set<number>(),
    gaps: new Set<number>(),
    rowsBelow: new Set<number>(),
  };
  for (let i = account.first; i < account.end; i += 1) {
    // Slip stitches that join or move the yarn along take up nothing.
    if (((fabric.flags[i] ?? 0) & (FLAG.join | FLAG.travel)) !== 0 || onlyLifts(fabric, i)) continue;
    const where = fabric.where[i];
    for (const target of targets(fabric, i)) {
      const space = spaceOf.get(target);
      if (where === INTO.ring) found.rings.add(0);
      else if (target >= account.first) continue;
      else if (where === INTO.rowEnd) found.rowEnds.add(target);
      else if (where === INTO.underside) found.otherSide.add(target);
      else if (where === INTO.between) found.gaps.add(target);
      else if (space !== undefined) found.spaces.add(space);
      else if (fabric.row[target] !== row && target !== onto?.countedStart) found.rowsBelow.add(target);
      else if (isCounted(fabric, target)) found.stitches.add(target);
      else found.chains.add(target);
    }
  }
  const takes: Taken = {
    stitches: found.stitches.size,
    spaces: found.spaces.size,
    chains: found.chains.size,
    otherSide: found.otherSide.size,
    rings: found.rings.size,
    rowEnds: found.rowEnds.size,
    gaps: found.gaps.size,
    rowsBelow: found.rowsBelow.size,
  };
  const onEdges = takes.rowEnds + takes.otherSide > 0 && takes.stitches + takes.spaces === 0;
  if (onto === null || takes.rings > 0 || onEdges) return { takes, skips: NOTHING, leaves: NOTHING };
  const unworked: Unworked = {
    stitches: onto.made.stitches - takes.stitches,
    spaces: onto.made.spaces - takes.spaces,
    chains: onto.foundation ? standingChains(fabric, onto) - takes.chains : 0,
  };
  const { left } = account;
  const leaves: Unworked = {
    stitches: Math.min(unworked.stitches, left.stitches),
    spaces: Math.min(unworked.spaces, left.spaces),
    chains: Math.min(unworked.chains, left.stitches),
  };
  const skips: Unworked = {
    stitches: unworked.stitches - leaves.stitches,
    spaces: unworked.spaces - leaves.spaces,
    chains: unworked.chains - leaves.chains,
  };
  return { takes, skips, leaves };
}

function skipsIn(step: Step): boolean {
  return step.kind === 'skip' || ('body' in step && step.body.some(skipsIn));
}

/** The chains of a foundation but for those that stand up at the side of the first row. */
function standingChains(fabric: Fabric, { first, end }: RowAccount): number {
  let chains = 0;
  for (let i = first; i < end; i += 1)
    if (stitchId(fabric, i) === 'ch' && ((fabric.flags[i] ?? 0) & FLAG.turningChain) === 0) chains += 1;
  return chains;
}

/** A turning chain that does not count takes up no place, though it stands on one. */
function onlyLifts(fabric: Fabric, chain: number): boolean {
  let i = chain;
  const turning = (at: number): boolean => ((fabric.flags[at] ?? 0) & FLAG.turningChain) !== 0;
  if (!turning(i)) return false;
  while (turning(i) && !isCounted(fabric, i)) i += 1;
  return !turning(i);
}

function isCounted(fabric: Fabric, stitch: number): boolean {
  return (fabric.countsAs[stitch] ?? NONE) !== NONE;
}
