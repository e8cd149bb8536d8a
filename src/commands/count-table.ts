/** One worked size -> its counts as a table for people, columns aligned. */

import type { CompiledSize } from '../compiled.ts';
import { placesByRow } from '../fabric/row-places.ts';
import { takenM } from '../measure/measures.ts';
import { leftWords, takenWords } from '../row-table/place-figures.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { stitchById, termsOf } from '../stitches/table.ts';
import { printCm, printM } from '../units.ts';

/** `terms` are the pattern's own, so that its stitches are called what it calls them. */
export function countTable({ size, fabric, measures, accounts }: CompiledSize, terms: Terms): string {
  const placesOf = placesByRow(fabric, accounts);
  const several = fabric.parts.length > 1;
  const rows = fabric.rows.map((row) => [
    ...(several ? [fabric.parts[row.part]?.name ?? ''] : []),
    row.label,
    takenWords(placesOf(row).takes).join(', '),
    leftWords(placesOf(row)).join(', '),
    String(row.stitches),
    row.spaces === 0 ? '' : String(row.spaces),
    tally(inTerms(row.byStitch, terms)),
    tally(row.groups),
    row.stated ?? '',
  ]);
  const heads = [
    ...(several ? ['Part'] : []),
    'Row',
    'Takes',
    'Leaves',
    'Stitches',
    'Spaces',
    'Of them',
    'In groups',
    'Stated',
  ];
  const figures = new Set(['Stitches', 'Spaces']);
  // A column that no row fills is left out.
  const kept = heads.map((_, i) => rows.some((row) => row[i] !== ''));
  const widths = heads.map((head, i) => Math.max(head.length, ...rows.map((row) => row[i]?.length ?? 0)));
  const set = (cells: readonly string[]) =>
    heads
      .map((head, i) => {
        const cell = cells[i] ?? '';
        return figures.has(head) ? cell.padStart(widths[i] ?? 0) : cell.padEnd(widths[i] ?? 0);
      })
      .filter((_, i) => kept[i])
      .join('  ')
      .trimEnd();
  return [`Size ${size.name}${measured(measures)}`, '', set(heads), ...rows.map(set)].join('\n');
}

function inTerms(byStitch: Readonly<Record<string, number>>, terms: Terms): Record<string, number> {
  return Object.fromEntries(
    Object.entries(byStitch).map(([id, n]) => [termsOf(stitchById(id), terms).abbr, n]),
  );
}

function tally(counts: Readonly<Record<string, number>>): string {
  return Object.entries(counts)
    .map(([name, n]) => `${n} ${name}`)
    .join(', ');
}

function measured({ widthMm, heightMm, yarn }: CompiledSize['measures']): string {
  const size = [widthMm, heightMm].flatMap((mm) => (mm === null ? [] : [printCm(mm)])).join(' by ');
  const taken = yarn.map((use) => `${use.letter} ${printM(takenM(use))}`).join(', ');
  return [size, taken === '' ? '' : `yarn ${taken}`]
    .filter((words) => words !== '')
    .map((words) => `, ${words}`)
    .join('');
}
