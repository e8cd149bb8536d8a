/** A line of a file and what is to be pointed out in it in, the line and its underlines to print out. */

import { type Cell, cellsOf } from './display-width.ts';

/** Something to underline, in offsets of the line. */
export interface Mark {
  readonly start: number;
  readonly end: number;
  readonly stroke: '^' | '~';
  readonly text: string;
}

export interface Snippet {
  readonly line: string;
  /** One for each mark, in the order given. */
  readonly underlines: readonly string[];
}

/** A longer line is cut round its marks, so that no terminal breaks it and sets the underlines adrift. */
const MOST_COLUMNS = 100;
/** Letters of a line that are looked at. */
const LONGEST_LINE = 500;
/** What is kept to the left of the first mark in a line that is cut. */
const LEAD_COLUMNS = 30;

export function snippet(line: string, marks: readonly Mark[]): Snippet {
  if (line.length > LONGEST_LINE) return snippetOfPart(line, marks);
  const cells = cellsOf(line);
  const from = firstShown(cells, marks);
  const shown = lastShown(cells, from);
  const before = from > 0 ? '…' : '';
  const after = from + shown.length < cells.length ? '…' : '';
  return {
    line: `${before}${shown.map((cell) => cell.text).join('')}${after}`,
    underlines: marks.map((mark) => underline(shown, mark, before.length, line.length)),
  };
}

/** Of a line as long as a book only the part about its first mark is looked at. */
function snippetOfPart(line: string, marks: readonly Mark[]): Snippet {
  const first = Math.min(...marks.map((mark) => mark.start));
  const from = Math.max(0, Math.min(first - MOST_COLUMNS, line.length - LONGEST_LINE));
  const within = marks.map((mark) => ({ ...mark, start: mark.start - from, end: mark.end - from }));
  return snippet(line.slice(from, from + LONGEST_LINE), within);
}

function firstShown(cells: readonly Cell[], marks: readonly Mark[]): number {
  if (width(cells) <= MOST_COLUMNS) return 0;
  const first = Math.min(...marks.map((mark) => mark.start));
  let index = cells.findLastIndex((cell) => cell.at <= first);
  for (let columns = 0; index > 0 && columns < LEAD_COLUMNS; index--) columns += cells[index]?.columns ?? 0;
  // No more is cut on the left than leaves the line full.
  const room = cells.length - 1;
  let last = room;
  for (let columns = 0; last > 0 && columns + (cells[last]?.columns ?? 0) < MOST_COLUMNS; last--)
    columns += cells[last]?.columns ?? 0;
  return Math.max(0, Math.min(index, last));
}

function lastShown(cells: readonly Cell[], from: number): readonly Cell[] {
  let columns = 0;
  let end = from;
  while (end < cells.length && columns + (cells[end]?.columns ?? 0) <= MOST_COLUMNS) {
    columns += cells[end]?.columns ?? 0;
    end++;
  }
  return cells.slice(from, end);
}

function underline(shown: readonly Cell[], mark: Mark, indent: number, lineLength: number): string {
  const isUnder = (cell: Cell, index: number): boolean => {
    const next = shown[index + 1]?.at ?? lineLength;
    return next > mark.start && cell.at < mark.end;
  };
  const before = shown.filter((cell) => cell.at < mark.start && !isUnder(cell, shown.indexOf(cell)));
  const under = shown.filter(isUnder);
  const stroke = mark.stroke.repeat(Math.max(1, width(under)));
  return `${' '.repeat(indent + width(before))}${stroke}${mark.text === '' ? '' : ` ${mark.text}`}`;
}

function width(cells: readonly Cell[]): number {
  return cells.reduce((sum, cell) => sum + cell.columns, 0);
}
