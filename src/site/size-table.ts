/** A compiled pattern -> its sizes side by side, each with the way to its page. */

import { keepNumbersTogether } from '../booklet/no-break.ts';
import type { CompiledPattern } from '../compiled.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { printFinishedSize } from '../wording/finished-size.ts';
import { linkTo, type PagePlace } from './addresses.ts';
import { wholeNumber, yarnCell } from './facts.ts';
import type { SizeTable } from './page-data.ts';

export function sizeTable(compiled: CompiledPattern, pattern: Pattern, place: PagePlace): SizeTable {
  const columns: { name: string; cell: (size: (typeof compiled.sizes)[number]) => string }[] = [
    { name: 'Finished size', cell: ({ measures }) => printFinishedSize(measures) ?? 'not given' },
    ...pattern.yarns.map((yarn) => ({
      name: `Yarn ${yarn.letter}, ${yarn.colour}`,
      cell: ({ measures }: (typeof compiled.sizes)[number]) => yarnCell(measures, yarn.letter),
    })),
    { name: 'Stitches to work', cell: ({ measures }) => wholeNumber(measures.stitches) },
  ];
  return {
    caption: compiled.sizes.length === 1 ? 'The size and what it takes' : 'The sizes and what each takes',
    columns: columns.map(({ name }) => name),
    rows: compiled.sizes.map((size) => ({
      name: size.size.name,
      href: linkTo(place, [compiled.slug, size.slug]),
      cells: columns.map((column) => ({ column: column.name, text: keepNumbersTogether(column.cell(size)) })),
    })),
  };
}
