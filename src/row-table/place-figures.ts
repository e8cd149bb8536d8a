/** What a row takes and leaves of the row below -> the figures of a table's cell: `24 sts`, `12 sts skipped`. */

import type { RowPlaces, Taken, Unworked } from '../fabric/row-places.ts';
import type { ExplainedRow } from './explain-rows.ts';

export function takenWords(takes: Taken | null): string[] {
  if (takes === null) return [];
  return [
    ...counted(takes.stitches, 'st'),
    ...counted(takes.spaces, 'sp'),
    ...(takes.chains > 0 ? [`${takes.chains} ch`] : []),
    ...(takes.rings > 0 ? ['the ring'] : []),
    ...counted(takes.gaps, 'gap'),
    ...counted(takes.rowEnds, 'row end'),
    ...(takes.otherSide > 0 ? [`${takes.otherSide} ch (other side)`] : []),
    ...(takes.rowsBelow > 0 ? [`${takes.rowsBelow} further down`] : []),
  ];
}

/** Stitches that no word skips, as those behind the space that is worked into, are passed over. */
export function leftWords({ skips, leaves, saysSkip }: RowPlaces): string[] {
  const of = (unworked: Unworked, word: string): string[] =>
    [
      ...counted(unworked.stitches, 'st'),
      ...counted(unworked.spaces, 'sp'),
      ...(unworked.chains > 0 ? [`${unworked.chains} ch`] : []),
    ].map((words) => `${words} ${word}`);
  return [...of(skips, saysSkip ? 'skipped' : 'passed over'), ...of(leaves, 'left')];
}

export function madeWords({ makes }: ExplainedRow): string[] {
  return [
    ...counted(makes.stitches, 'st'),
    ...counted(makes.spaces, 'sp'),
    ...(makes.chains > 0 ? [`${makes.chains} ch`] : []),
  ];
}

/** How it came to its number, with what is wrong. */
export function howWords({ how, account }: ExplainedRow): string[] {
  const { stitches, sides, spaces, uses } = how;
  return [stitches, sides, spaces, uses, ...account.faults].filter((words) => words !== null);
}

function counted(n: number, word: string): string[] {
  return n === 0 ? [] : [`${n} ${word}${n === 1 ? '' : 's'}`];
}
