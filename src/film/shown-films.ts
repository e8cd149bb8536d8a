/** The films of a pattern and its worked sizes in; what links beside rows need of them, as plain data, out. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Unit } from '../notation/line.ts';
import type { Film } from '../pattern/film.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { filmedRows } from './filmed-rows.ts';

/** A row that has a time. The line is found by where it stands in the file, since a size of a maker's own may have fewer. */
export interface ShownRow {
  readonly part: string;
  readonly lineStart: number;
  /** Which of the rows of its line it is, the first being 0. */
  readonly nth: number;
  /** Stands for all rows of its line. */
  readonly whole: boolean;
  /** As the film's size has it. */
  readonly title: string;
  readonly unit: Unit | null;
  readonly number: number | null;
  readonly seconds: number;
}

export interface ShownFilm extends Pick<Film, 'name' | 'hand' | 'address' | 'at' | 'size'> {
  readonly rows: readonly ShownRow[];
}

/** `fabrics` are of the pattern's own sizes. */
export function shownFilms(pattern: Pattern, fabrics: readonly Fabric[]): ShownFilm[] {
  return pattern.films.map((film) => {
    const { name, hand, address, at, size } = film;
    const { rows, shown } = filmedRows(film, pattern, fabrics);
    return {
      name,
      hand,
      address,
      at,
      size,
      rows: rows.flatMap(({ part, line, nth, whole, title, row, time }): ShownRow[] => {
        const said = pattern.parts.find((one) => one.name === part)?.instructions.lines[line];
        const { unit, number } = shown?.rows[row] ?? { unit: null, number: null };
        if (said === undefined) return [];
        const lineStart = said.span.start;
        return [{ part, lineStart, nth, whole, title, unit, number, seconds: time.seconds }];
      }),
    };
  });
}
