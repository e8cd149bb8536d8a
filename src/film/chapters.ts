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
  const { rows } = filmedRows(film, pattern, fabrics);
  const several = pattern.parts.length > 1;
  const marks = [
    ...film.topics.map(({ seconds, title }) => ({ seconds, title, row: null })),
    ...rows.map((row) => ({
      seconds: row.time.seconds,
      title: `${several ? `${row.part}: ` : ''}${row.title}`,
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
