/** The films of a pattern and one of its sizes in; for each line of the instructions the links that show it being made out. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Line } from '../notation/line.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { RepeatRowsStep } from '../notation/tree.ts';
import type { Film } from '../pattern/film.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { rowsTitle } from './chapters.ts';
import { type FilmedRow, filmedRows } from './filmed-rows.ts';

export interface WatchLink {
  /** Says by itself where it leads: `Watch round 3`. */
  readonly words: string;
  readonly address: string;
  readonly seconds: number;
}

/** By part name and index of the line; lines that no film shows are not in it. */
export type WatchLinks = ReadonlyMap<string, ReadonlyMap<number, readonly WatchLink[]>>;

export function watchLinks(
  pattern: Pattern,
  { fabric, index }: { readonly fabric: Fabric; readonly index: number },
  fabrics: readonly Fabric[],
): WatchLinks {
  const links = new Map<string, Map<number, WatchLink[]>>();
  for (const film of pattern.films) {
    const { rows, shown } = filmedRows(film, pattern, fabrics);
    if (shown === null) continue;
    for (const part of pattern.parts)
      for (const [line, said] of part.instructions.lines.entries()) {
        if (!fabric.rows.some((row) => row.line === line && fabric.parts[row.part]?.name === part.name))
          continue;
        const own = rows.filter((row) => row.part === part.name && row.line === line);
        const words = (row: FilmedRow): string => {
          const filmed = lowered(rowsTitle(row, rows, shown, row.row));
          const at = rowOf(row, fabric);
          const own = at === null ? null : lowered(rowsTitle(row, rows, fabric, at));
          if (own === filmed || film.size === null) return own ?? filmed;
          return `${filmed} of the size “${film.size}”, made the same way`;
        };
        const found =
          own.length > 0
            ? own.map((row) => linkTo(film, row, words(row)))
            : repeatedIn(said, part.name, rows, shown, index).map((row) =>
                linkTo(film, row, `${words(row)}, which is repeated here`),
              );
        if (found.length === 0) continue;
        const ofPart = links.get(part.name) ?? new Map<number, WatchLink[]>();
        links.set(part.name, ofPart.set(line, [...(ofPart.get(line) ?? []), ...found]));
      }
  }
  return links;
}

/** The address of a film at a time. */
export function addressAt({ address, at }: Film, seconds: number): string {
  return `${address}${at.replaceAll('{seconds}', String(seconds))}`;
}

/** `films.example.org`: where a link leads to, said before it is followed. */
export function hostOf({ address }: Film): string {
  return address.replace(/^https?:\/\//i, '').replace(/[/?].*$/, '');
}

function linkTo(film: Film, row: FilmedRow, what: string): WatchLink {
  const which = [film.name, film.hand === null ? null : `${film.hand}-handed`].filter(
    (word) => word !== null,
  );
  const words = `Watch ${what}${which.length === 0 ? '' : ` (${which.join(', ')})`}`;
  return { words, address: addressAt(film, row.time.seconds), seconds: row.time.seconds };
}

/** The same row of the instructions in another size; null where that size works fewer of its line. */
function rowOf({ part, line, nth }: FilmedRow, fabric: Fabric): number | null {
  let seen = 0;
  for (const [index, row] of fabric.rows.entries()) {
    if (row.line !== line || fabric.parts[row.part]?.name !== part) continue;
    if (seen === nth) return index;
    seen += 1;
  }
  return null;
}

/** `Rep Rows 2 and 3`: the rows named, where they have times. */
function repeatedIn(
  { steps }: Line,
  part: string,
  rows: readonly FilmedRow[],
  shown: Fabric,
  size: number,
): readonly FilmedRow[] {
  const repeats = steps.find((step): step is RepeatRowsStep => step.kind === 'repeat rows');
  if (repeats === undefined) return [];
  const named = repeats.rows.map((row) => numberForSize(row, size));
  return rows.filter((row) => {
    const { number, unit } = shown.rows[row.row] ?? { number: null, unit: null };
    return row.part === part && unit === repeats.unit && number !== null && named.includes(number);
  });
}

/** `round 3`, `the foundation`. */
function lowered(title: string): string {
  return `${/\d/.test(title) ? '' : 'the '}${title.charAt(0).toLowerCase()}${title.slice(1)}`;
}
