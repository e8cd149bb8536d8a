/** How rows came to their numbers and over which widths parts come out in, the repeat each chart marks out. */

import type { Repeat } from './chart/repeat-bracket.ts';
import type { RowAccount } from './explain/row-account.ts';
import type { Fabric } from './fabric/fabric.ts';
import type { PartMultiple } from './proof/part-multiple.ts';

/** Only repeats that are proved for every width: a bracket promises that the work goes on so. */
export function partRepeats(
  fabric: Fabric,
  accounts: readonly RowAccount[],
  multiples: readonly PartMultiple[],
  size: string,
): Repeat[] {
  return fabric.parts.flatMap((part, index): Repeat[] => {
    const multiple = multiples.find(
      (each) => each.part === part.name && (each.size === null || each.size === size),
    );
    const first = accounts.find(
      (account) => account.part === index && account.onto !== null && account.unit === 'row',
    );
    if (!multiple?.found?.proved || first === undefined || first.onto !== part.firstRow) return [];
    const at = first.steps.findIndex(({ runs }) => runs.length > 0);
    const [run] = first.steps[at]?.runs ?? [];
    if (run?.used == null || run.used.spaces > 0) return [];
    const { of } = multiple.found;
    const used = run.used.stitches;
    // One repeat of the work may be several passes of its first row.
    if (used === 0 || of % used !== 0) return [];
    const passes = of / used;
    const before = first.steps.slice(0, at).reduce((sum, step) => sum + (step.used?.stitches ?? 0), 0);
    return [
      {
        part: part.name,
        from: (first.skippedChains?.chains ?? 0) + before,
        chains: of,
        times: Math.floor(run.times / passes),
      },
    ];
  });
}
