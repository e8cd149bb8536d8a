/** A film and the worked sizes in; its chapters, each from a time to the next, out. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Film } from '../pattern/film.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { type FilmedRow, filmedRows } from './filmed-rows.ts';

export interface Chapter {
  readonly seconds: number;
  /** Where the next begins, or the film ends; null for the last of a film of unknown length. */
  readonly endSeconds: number | null;
  /** `Square: Rounds 8 to 14`, `What you need`. */
  readonly title: string;
  /** The rows that begin it; empty for a topic. */
  readonly rows: readonly FilmedRow[];
}

/** What the beginning is called where the film says nothing of it. */
const OPENING = 'Beginning';

/** In the order of the film, from its beginning, without what lies beyond its end. */
export function chaptersOf(film: Film, pattern: Pattern, fabrics: readonly Fabric[]): Chapter[] {
  const { rows, shown } = filmedRows(film, pattern, fabrics);
  const several = pattern.parts.length > 1;
  const marks = [
    ...film.topics.map(({ seconds, title }) => ({ seconds, title, row: null })),
    ...rows.map((row) => ({
      seconds: row.time.seconds,
      title: `${several ? `${row.part}: ` : ''}${shown === null ? row.time.row : rowsTitle(row, rows, shown, row.row)}`,
      row,
    })),
  ].filter(({ seconds }) => film.lengthSeconds === null || seconds < film.lengthSeconds);
  if (marks.length === 0) return [];
  const times = [...new Set(marks.map(({ seconds }) => seconds))].sort((a, b) => a - b);
  if (times[0] !== 0) times.unshift(0);
  return times.map((seconds, i) => {
    const here = marks.filter((mark) => mark.seconds === seconds);
    return {
      seconds,
      endSeconds: times[i + 1] ?? film.lengthSeconds,
      title: here.length === 0 ? OPENING : here.map(({ title }) => title).join(' and '),
      rows: here.flatMap(({ row }) => row ?? []),
    };
  });
}

/**
 * `Round 3`; `Rounds 8 to 14` for the first row of a line none of whose others has a time. `at` is where the row stands in
 * the fabric, whichever size that is of.
 */
export function rowsTitle(row: FilmedRow, all: readonly FilmedRow[], fabric: Fabric, at: number): string {
  const first = fabric.rows[at];
  if (first === undefined || first.number === null || first.unit === null)
    return first?.label ?? row.time.row;
  const noun = first.unit === 'row' ? 'Row' : 'Round';
  const alone = all.every((other) => other === row || other.part !== row.part || other.line !== row.line);
  let last = at;
  while (
    alone &&
    row.nth === 0 &&
    fabric.rows[last + 1]?.line === first.line &&
    fabric.rows[last + 1]?.part === first.part
  )
    last += 1;
  const to = fabric.rows[last]?.number ?? first.number;
  return to === first.number ? `${noun} ${first.number}` : `${noun}s ${first.number} to ${to}`;
}
