/** Films and one size of a pattern in; for each line of the instructions the links that show it being made out. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Line } from '../notation/line.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { RepeatRowsStep } from '../notation/tree.ts';
import { clockTime, type Film } from '../pattern/film.ts';
import type { Part } from '../pattern/pattern.ts';
import { rowTitle } from './row-title.ts';
import type { ShownFilm, ShownRow } from './shown-films.ts';

export interface WatchLink {
  /** Says by itself where it leads: `Watch round 3`. */
  readonly text: string;
  readonly href: string;
  /** `4:10`. */
  readonly time: string;
}

/** The links of a line, by its part and the rows of the fabric that it made. */
export type WatchOf = (part: string, rows: readonly number[]) => readonly WatchLink[];

/** `size` may be one of a maker's own; `index` is its place in the numbers of the instructions. */
export function watchLinks(
  parts: readonly Part[],
  { fabric, index }: { readonly fabric: Fabric; readonly index: number },
  films: readonly ShownFilm[],
): WatchOf {
  return (part, rows) => {
    const at = fabric.rows[rows[0] ?? -1]?.line;
    const line = parts.find(({ name }) => name === part)?.instructions.lines[at ?? -1];
    if (line === undefined) return [];
    return films.flatMap((film) => {
      const ofPart = film.rows.filter((row) => row.part === part);
      const own = ofPart.filter(({ lineStart }) => lineStart === line.span.start);
      if (own.length > 0) return own.map((row) => linkTo(film, row, ownWords(row, film, fabric, rows)));
      return repeatedIn(line, ofPart, index).map((row) =>
        linkTo(film, row, `${lowered(row.title)}, which is repeated here`),
      );
    });
  };
}

/** A film's row under its number here, or under that in the film where it is another. */
function ownWords(row: ShownRow, film: ShownFilm, fabric: Fabric, rows: readonly number[]): string {
  const at = rows[row.nth];
  const own = at === undefined ? null : rowTitle(fabric, at, row.whole);
  if (own === row.title) return lowered(own);
  return `${lowered(row.title)} ${film.size === null ? 'in the film' : `of the size “${film.size}”`}, made the same way`;
}

/** The address of a film at a time. */
export function addressAt({ address, at }: Pick<Film, 'address' | 'at'>, seconds: number): string {
  return `${address}${at.replaceAll('{seconds}', String(seconds))}`;
}

/** `films.example.org`: where a link leads to, said before it is followed. */
export function hostOf({ address }: Pick<Film, 'address'>): string {
  return address.replace(/^https?:\/\//i, '').replace(/[/?].*$/, '');
}

/** Said before any link to it. */
export function whereWords(film: Pick<Film, 'address'>): string {
  return `The film stands at ${hostOf(film)}, not on this page, and nothing of it is fetched before you follow a link.`;
}

function linkTo(film: ShownFilm, row: ShownRow, what: string): WatchLink {
  const which = [film.name, film.hand === null ? null : `${film.hand}-handed`].filter(
    (word) => word !== null,
  );
  const text = `Watch ${what}${which.length === 0 ? '' : ` (${which.join(', ')})`}`;
  return { text, href: addressAt(film, row.seconds), time: clockTime(row.seconds) };
}

/** `Rep Rows 2 and 3`: the rows named, where they have times. */
function repeatedIn({ steps }: Line, rows: readonly ShownRow[], size: number): readonly ShownRow[] {
  const repeats = steps.find((step): step is RepeatRowsStep => step.kind === 'repeat rows');
  if (repeats === undefined) return [];
  const named = repeats.rows.map((row) => numberForSize(row, size));
  return rows.filter(
    ({ number, unit }) => unit === repeats.unit && number !== null && named.includes(number),
  );
}

/** `round 3`, `the foundation`. */
function lowered(title: string): string {
  return `${/\d/.test(title) ? '' : 'the '}${title.charAt(0).toLowerCase()}${title.slice(1)}`;
}
