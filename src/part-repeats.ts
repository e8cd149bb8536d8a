/** How rows came to their numbers and over which widths parts come out in, the repeat each chart marks out. */

import type { Repeat } from './chart/repeat-bracket.ts';
import type { RowAccount } from './explain/row-account.ts';
import type { Fabric } from './fabric/fabric.ts';
import type { PartMultiple } from './proof/part-multiple.ts';

/**
 * Only repeats that are proved for every width: a bracket promises that the work goes on so. It is that of the first row
 * whose own repeat is as wide: a row of plain stitches below it has none.
 */
export function partRepeats(
  fabric: Fabric,
  accounts: readonly RowAccount[],
  multiples: readonly PartMultiple[],
  size: string,
): Repeat[] {
  return fabric.parts.flatMap((part, index): Repeat[] => {
    const found = multiples.find(
      (each) => each.part === part.name && (each.size === null || each.size === size),
    )?.found;
    if (!found?.proved) return [];
    for (const account of accounts) {
      if (account.part !== index || account.onto === null || account.unit !== 'row') continue;
      const repeat = repeatIn(account, found.of);
      if (repeat === null) continue;
      const first = account.onto === part.firstRow;
      return [{ part: part.name, row: account.onto, label: first ? null : account.label, ...repeat }];
    }
    return [];
  });
}

/** Where the row's own repeat of so many stitches begins, and how often it is worked. */
function repeatIn(
  { steps, first }: RowAccount,
  of: number,
): Pick<Repeat, 'worked' | 'from' | 'places' | 'times'> | null {
  const at = steps.findIndex(({ runs }) => runs.some(({ used }) => used?.stitches === of));
  const [run] = steps[at]?.runs ?? [];
  if (run?.used?.stitches !== of || run.used.spaces > 0) return null;
  const before = steps.slice(0, at);
  if (before.some(({ used }) => used === null || used.spaces > 0)) return null;
  // What the first step uses includes the chains skipped before it.
  const from = before.reduce((sum, { used }) => sum + (used?.stitches ?? 0), 0);
  return { worked: first, from, places: of, times: run.times };
}
