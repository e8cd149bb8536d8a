/** One worked size and a width -> how its rows come to their numbers, as a table for people. */

import type { CompiledSize } from '../compiled.ts';
import { cellsOf } from '../diagnostics/display-width.ts';
import { explainRows } from '../row-table/explain-rows.ts';
import { type FoldedRows, foldRows } from '../row-table/fold-rows.ts';
import { howWords, leftWords, madeWords, takenWords } from '../row-table/place-figures.ts';
import type { Terms } from '../stitches/stitch-row.ts';

/** Below this many characters beside the figures, the sums go under them. */
const LEAST_BESIDE = 44;
const UNDER = '    ';
const GAP = '  ';

interface Entry {
  readonly part: string;
  readonly label: string;
  /** Takes, leaves and makes; each a line or more. */
  readonly figures: readonly (readonly string[])[];
  readonly how: readonly string[];
}

/** `named` where the pattern has more sizes than this one. */
export function explainTable(size: CompiledSize, terms: Terms, width: number, named: boolean): string {
  const entries = foldRows(explainRows(size, terms)).map(entryOf);
  const heads = ['Row', 'Takes', 'Leaves', 'Makes'];
  const stacked = columnWidths(heads, entries);
  const room = width - tableWidth(stacked);
  const beside = room >= LEAST_BESIDE;
  const flat = entries.map(onOneLine);
  const shown = beside || tableWidth(columnWidths(heads, flat)) > width ? entries : flat;
  const widths = columnWidths(heads, shown);
  const set = (cells: readonly string[]): string =>
    cells
      .map((cell, i) => padded(cell, widths[i] ?? 0))
      .join(GAP)
      .trimEnd();
  const lines = [set(beside ? [...heads, 'How'] : heads)];
  const several = new Set(shown.map(({ part }) => part)).size > 1;
  let part: string | null = null;
  for (const entry of shown) {
    if (several && entry.part !== part) lines.push(...(part === null ? [] : ['']), entry.part);
    part = entry.part;
    const how = entry.how.flatMap((words) => wrap(words, beside ? room : width - UNDER.length));
    const height = Math.max(1, ...entry.figures.map(({ length }) => length), beside ? how.length : 0);
    for (let i = 0; i < height; i += 1) {
      const figures = [i === 0 ? entry.label : '', ...entry.figures.map((cell) => cell[i] ?? '')];
      lines.push(set(beside ? [...figures, how[i] ?? ''] : figures));
    }
    if (!beside) lines.push(...how.map((words) => UNDER + words));
  }
  return [...(named ? [`Size ${size.size.name}`, ''] : []), ...lines].join('\n');
}

function tableWidth(widths: readonly number[]): number {
  return sum(widths.map((each) => each + GAP.length));
}

function columnWidths(heads: readonly string[], entries: readonly Entry[]): readonly number[] {
  return heads.map((head, i) => {
    const cells = entries.flatMap(({ label, figures }) => (i === 0 ? [label] : (figures[i - 1] ?? [])));
    return cells.reduce((widest, cell) => Math.max(widest, displayWidth(cell)), head.length);
  });
}

function onOneLine(entry: Entry): Entry {
  return { ...entry, figures: entry.figures.map((cell) => (cell.length === 0 ? [] : [cell.join(', ')])) };
}

function entryOf({ label, row, as, level }: FoldedRows): Entry {
  return {
    part: row.part,
    label,
    figures: level ? [takenWords(row.takes), leftWords(row), madeWords(row)] : [[], [], []],
    how: as === null ? howWords(row) : [`as ${as}`],
  };
}

/** Broken between words, further lines set in a little. */
export function wrap(words: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of words.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (displayWidth(longer) > width && line.trim() !== '') {
      lines.push(line);
      line = `  ${word}`;
    } else line = longer;
  }
  return [...lines, line];
}

function displayWidth(words: string): number {
  return cellsOf(words).reduce((sum, { columns }) => sum + columns, 0);
}

function padded(cell: string, width: number): string {
  return cell + ' '.repeat(Math.max(0, width - displayWidth(cell)));
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, n) => total + n, 0);
}
