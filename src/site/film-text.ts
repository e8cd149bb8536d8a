/** One size of a pattern that was filmed -> what its page tells of the films, and the links beside its rows. */

import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import { chaptersOf } from '../film/chapters.ts';
import { shownFilms } from '../film/shown-films.ts';
import { addressAt, hostOf, type WatchOf, watchLinks, whereWords } from '../film/watch-links.ts';
import { clockTime, type Film } from '../pattern/film.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { FilmText } from './page-data.ts';

export function filmTexts(compiled: CompiledPattern, pattern: Pattern, size: CompiledSize): FilmText[] {
  const fabrics = compiled.sizes.map(({ fabric }) => fabric);
  return pattern.films.map((film) => ({
    heading: headingOf(film, pattern.films.length),
    lines: toldOf(film, size.size.name),
    href: film.address,
    link: `Open the film at ${hostOf(film)}`,
    chapters: chaptersOf(film, pattern, fabrics).map(({ seconds, title }) => ({
      text: title,
      href: addressAt(film, seconds),
      time: clockTime(seconds),
    })),
  }));
}

/** The links beside the rows of a size. */
export function watchOf(
  { sizes }: CompiledPattern,
  pattern: Pattern,
  { size, fabric }: CompiledSize,
): WatchOf {
  const films = shownFilms(
    pattern,
    sizes.map((other) => other.fabric),
  );
  return watchLinks(pattern.parts, { fabric, index: pattern.sizes.indexOf(size) }, films);
}

function headingOf({ name, hand }: Film, films: number): string {
  const words = [name, hand === null ? null : `for ${hand}-handed makers`]
    .filter((word) => word !== null)
    .join(', ');
  return words === '' && films > 1 ? 'The whole pattern' : words.charAt(0).toUpperCase() + words.slice(1);
}

function toldOf(film: Film, size: string): string[] {
  const length = film.lengthSeconds === null ? '' : ` It is ${clockTime(film.lengthSeconds)} long.`;
  const made =
    film.size === null || film.size === size
      ? ''
      : ` It shows the size “${film.size}”; where its rounds or rows are numbered otherwise than yours, the links say so.`;
  const beside = film.times.length === 0 ? '' : ' The links beside the rows open it where the row begins.';
  return [`${whereWords(film)}${length}${made}${beside}`];
}
