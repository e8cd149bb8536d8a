/** A compiled pattern -> all its sizes side by side as a table in HTML: finished size, yarn, and the count of every row. */

import { keepNumbersTogether } from '../booklet/no-break.ts';
import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import { escaped } from '../escaped.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { wholeNumber, yarnCell } from '../site/facts.ts';
import { printFinishedSize } from '../wording/finished-size.ts';
import { type CountedRow, type RowCount, sizeCounts } from './size-counts.ts';

/** `chosen` is the size that the other sheets show. */
export function sizeSheet({ sizes }: CompiledPattern, pattern: Pattern, chosen: number): string {
  const facts: readonly (readonly [string, (size: CompiledSize) => string])[] = [
    ['Finished size', ({ measures }) => printFinishedSize(measures) ?? 'not known without a gauge'],
    ...pattern.yarns.map(
      ({ letter, colour }) =>
        [
          `Yarn ${letter}${colour === '' ? '' : `, ${colour}`}`,
          ({ measures }: CompiledSize) => yarnCell(measures, letter),
        ] as const,
    ),
    ['Stitches to work', ({ measures }) => wholeNumber(measures.stitches)],
  ];
  const heads = sizes.map(
    ({ size }, i) => `<th scope="col"${i === chosen ? ' class="chosen"' : ''}>${escaped(size.name)}</th>`,
  );
  const counted = sizeCounts(sizes);
  const several = new Set(counted.map(({ part }) => part)).size > 1;
  let part: string | null = null;
  const rows = counted.flatMap((row) => {
    const head =
      several && row.part !== part
        ? [
            `<tr><th class="part-name" colspan="${sizes.length + 1}" scope="colgroup">${escaped(row.part)}</th></tr>`,
          ]
        : [];
    part = row.part;
    return [...head, bodyRow(rowName(row), row.counts.map(countCell), 'figure')];
  });
  return `<table class="figures">
<caption>${sizes.length === 1 ? 'The one size' : 'All sizes side by side'}: what each measures and takes, and the stitches of every row</caption>
<thead><tr><td></td>${heads.join('')}</tr></thead>
<tbody>
${facts.map(([name, cell]) => bodyRow(name, sizes.map(cell), 'fact')).join('\n')}
</tbody>
<tbody>
${rows.join('\n')}
</tbody>
</table>`;
}

function bodyRow(name: string, cells: readonly string[], kind: string): string {
  const set = cells.map((cell) => `<td class="${kind}">${escaped(keepNumbersTogether(cell))}</td>`);
  return `<tr><th scope="row">${escaped(name)}</th>${set.join('')}</tr>`;
}

function rowName({ from, to }: CountedRow): string {
  if (from === '') return 'Without a number';
  return from === to ? from : `${from} to ${to}`;
}

function countCell(count: RowCount | null): string {
  if (count === null) return 'none';
  const { stitches, spaces, chains } = count;
  if (stitches === 0 && chains > 0) return `${chains} ch`;
  return spaces === 0 ? String(stitches) : `${stitches} + ${spaces} sp`;
}
