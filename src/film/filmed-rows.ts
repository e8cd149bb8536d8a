/** A film's times and the pattern's worked sizes in; the row each time is of, and the times that are of none, out. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Film, FilmTime } from '../pattern/film.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { findRow } from './find-row.ts';
import { rowTitle } from './row-title.ts';

/** A row that has a time. Rows of other sizes are the same where they are of the same line of the instructions. */
export interface FilmedRow {
  readonly time: FilmTime;
  readonly part: string;
  /** Index of its line in the part's instructions. */
  readonly line: number;
  /** Which of the rows of its line it is, the first being 0. */
  readonly nth: number;
  /** Index of `rows` of the fabric that is shown. */
  readonly row: number;
  /** It is the first of its line, and no other of them has a time: it stands for all. */
  readonly whole: boolean;
  /** `Rounds 8 to 14`. */
  readonly title: string;
}

/** A time that belongs to no row, and why. */
export type Astray =
  | { readonly kind: 'no part'; readonly time: FilmTime }
  | { readonly kind: 'no row'; readonly time: FilmTime; readonly part: string }
  /** `without` names the sizes that have no such row; where all have one, it is not the same. */
  | { readonly kind: 'sizes part'; readonly time: FilmTime; readonly without: readonly string[] };

export interface FilmedRows {
  /** In the order of the file. */
  readonly rows: readonly FilmedRow[];
  readonly astray: readonly Astray[];
  /** The size the rows are those of; null when there is none of that name. */
  readonly shown: Fabric | null;
}

/** `fabrics` are of the sizes that could be worked. */
export function filmedRows(
  film: Film,
  { parts }: Pick<Pattern, 'parts'>,
  fabrics: readonly Fabric[],
): FilmedRows {
  const shown = film.size === null ? fabrics[0] : fabrics.find(({ size }) => size === film.size);
  if (shown === undefined) return { rows: [], astray: [], shown: null };
  const rows: FoundRow[] = [];
  const astray: Astray[] = [];
  for (const time of film.times) {
    const [first, second] = parts;
    const part =
      time.part === null
        ? second === undefined
          ? first
          : undefined
        : parts.find(({ name }) => name === time.part);
    if (part === undefined) {
      astray.push({ kind: 'no part', time });
      continue;
    }
    const row = rowOf(shown, part.name, time);
    const others = film.size === null ? fabrics : [];
    const lines = others.map((fabric) => rowOf(fabric, part.name, time)?.line ?? null);
    if (row === null && lines.every((line) => line === null))
      astray.push({ kind: 'no row', time, part: part.name });
    else if (row === null || lines.some((line) => line !== row.line)) {
      const without = others.filter((_, i) => lines[i] === null).map(({ size }) => size);
      astray.push({ kind: 'sizes part', time, without });
    } else rows.push(row);
  }
  return { rows: rows.map((row) => titled(row, rows, shown)), astray, shown };
}

type FoundRow = Omit<FilmedRow, 'whole' | 'title'>;

function titled(row: FoundRow, all: readonly FoundRow[], shown: Fabric): FilmedRow {
  const alone = all.every((other) => other === row || other.part !== row.part || other.line !== row.line);
  const whole = alone && row.nth === 0;
  return { ...row, whole, title: rowTitle(shown, row.row, whole) };
}

function rowOf(fabric: Fabric, part: string, time: FilmTime): FoundRow | null {
  const row = findRow(fabric, part, time.row);
  const found = row === null ? undefined : fabric.rows[row];
  if (row === null || found === undefined) return null;
  let first = row;
  while (fabric.rows[first - 1]?.line === found.line && fabric.rows[first - 1]?.part === found.part)
    first -= 1;
  return { time, part, line: found.line, nth: row - first, row };
}
