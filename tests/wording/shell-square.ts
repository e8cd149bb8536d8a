/** A square in shell pattern, with the fabric of a size of it: what `src/fabric/` would make, stitch by stitch. */

import type { Fabric } from '../../src/fabric/fabric.ts';
import { buildFabric, chainRow, times, type Worked } from '../measure/build-fabric.ts';
import { readPattern } from './read-pattern.ts';

export const SHELL_SQUARE = readPattern({
  sizes: ['small', 'large'],
  specials: [{ name: 'shell', steps: '5 dc in same st' }],
  work: `Foundation: With A, ch a multiple of 6 plus 2.
Row 1 (RS): Sc in 2nd ch from hook, *sk next 2 ch, shell in next ch, sk next 2 ch, sc in next ch; rep from * across, turn.
Row 2: Ch 3 (counts as dc), 2 dc in first sc, *sk next 2 dc, sc in next dc, sk next 2 dc, shell in next sc; rep from * to last 6 sts, sk next 2 dc, sc in next dc, sk next 2 dc, 3 dc in last sc, turn.
Row 3: Ch 1, sc in first dc, *sk next 2 dc, shell in next sc, sk next 2 dc, sc in next dc; rep from * across, turn.
Rows 4 on: Rep Rows 2 and 3 to height, ending with a Row 3.
Fasten off.`,
});

/** `repeats` shells across, `rows` rows in all. */
export function shellFabric(size: string, repeats: number, rows: number): Fabric {
  const shells = (row: number): Worked[] => {
    // Odd rows: sc, then shell and sc; even rows: half a shell at each end, the first dc a turning chain.
    if (row % 2 === 1)
      return [
        { id: 'sc' },
        ...times(repeats, () => ({ id: 'dc' })).flatMap(() => [...times(5, { id: 'dc' }), { id: 'sc' }]),
      ];
    const first: Worked[] = [
      ...times(2, { id: 'ch', flags: 1 }),
      { id: 'ch', flags: 1, countsAs: 'dc' },
      ...times(2, { id: 'dc' }),
    ];
    const middle = times(repeats - 1, { id: 'dc' }).flatMap(() => [{ id: 'sc' }, ...times(5, { id: 'dc' })]);
    return [...first, ...middle, { id: 'sc' }, ...times(3, { id: 'dc' })];
  };
  const worked = Array.from({ length: rows }, (_, i) => ({
    label: `Row ${i + 1}`,
    number: i + 1,
    line: Math.min(i + 1, 4),
    work: shells(i + 1),
  }));
  return buildFabric([{ ...chainRow(6 * repeats + 2), line: 0 }, ...worked], [{ name: 'Square' }], size);
}
