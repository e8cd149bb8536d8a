/** The `film:` of a pattern file, known to be of the right kinds, in; films with their times in seconds out. */

import { type Film, type FilmTime, MEDIA_FRAGMENT, secondsOf } from './film.ts';
import type { PatternFile } from './schema.ts';

export function filmsOf(given: PatternFile['film']): Film[] {
  if (given === undefined) return [];
  const many = Array.isArray(given);
  return (many ? given : [given]).map((film, index) => {
    const path = many ? `film.${index}` : 'film';
    return {
      name: film.name ?? null,
      address: film.address,
      lengthSeconds: film.length === undefined ? null : secondsOf(film.length),
      at: film.at ?? MEDIA_FRAGMENT,
      size: film.size ?? null,
      hand: film.hand ?? null,
      times: Object.entries(film.times ?? {}).flatMap(([key, value]) =>
        typeof value === 'string'
          ? [timeOf(null, key, value, `${path}.times.${key}`)]
          : Object.entries(value).map(([row, time]) => timeOf(key, row, time, `${path}.times.${key}.${row}`)),
      ),
      topics: Object.entries(film.topics ?? {}).map(([title, time]) => ({
        title: title.trim().replace(/\s+/g, ' '),
        seconds: secondsOf(time),
        path: `${path}.topics.${title}`,
      })),
      path,
    };
  });
}

function timeOf(part: string | null, row: string, time: string, path: string): FilmTime {
  return { part, row: row.trim().replace(/\s+/g, ' '), seconds: secondsOf(time), path };
}
