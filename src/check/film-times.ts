/** The times of a film against the rows there are, one another, and the film's length. */

import { diagnose, type Where } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { listed } from '../diagnostics/listed.ts';
import { nearest } from '../diagnostics/nearest.ts';
import type { Fabric } from '../fabric/fabric.ts';
import { type Astray, type FilmedRow, filmedRows } from '../film/filmed-rows.ts';
import { clockTime, type Film } from '../pattern/film.ts';
import { type Publication, placeOf } from './publication.ts';

export function filmTimes(publication: Publication): Diagnostic[] {
  return publication.pattern.films.flatMap((film) => ofFilm(film, publication));
}

function ofFilm(film: Film, { pattern, sizes }: Publication): Diagnostic[] {
  const at = (...paths: string[]): Where => ({ file: pattern.source.file, span: placeOf(pattern, ...paths) });
  const names = pattern.sizes.map(({ name }) => name);
  if (film.size !== null && !names.includes(film.size)) {
    const facts = { given: film.size, names, near: nearest(film.size, names) };
    return [diagnose('film/size', at(`${film.path}.size`), facts)];
  }
  const fabrics = sizes.map(({ fabric }) => fabric);
  const { rows, astray, shown } = filmedRows(film, pattern, fabrics);
  if (shown === null) return [];
  const parts = pattern.parts.map(({ name }) => name);
  return [
    ...withoutRepeats(astray).map((one) => astrayFault(one, film, { parts, names, shown, at })),
    ...inOrder(rows, at),
    ...pastEnd(film, at),
  ];
}

/** A part that is not there is told once, however many rows stand under it. */
function withoutRepeats(astray: readonly Astray[]): readonly Astray[] {
  const told = new Set<string | null>();
  return astray.filter(({ kind, time }) => {
    if (kind !== 'no part') return true;
    const again = told.has(time.part);
    told.add(time.part);
    return !again;
  });
}

interface Known {
  readonly parts: readonly string[];
  readonly names: readonly string[];
  readonly shown: Fabric;
  readonly at: (...paths: string[]) => Where;
}

function astrayFault(astray: Astray, film: Film, { parts, names, shown, at }: Known): Diagnostic {
  const { time } = astray;
  switch (astray.kind) {
    case 'no part': {
      const near = time.part === null ? null : nearest(time.part, parts);
      return diagnose('film/no-part', at(time.path), { given: time.part, names: parts, near });
    }
    case 'no row': {
      const own = shown.parts.find(({ name }) => name === astray.part);
      const facts = {
        given: time.row,
        part: astray.part,
        size: film.size,
        first: shown.rows[own?.firstRow ?? -1]?.label ?? null,
        last: shown.rows[(own?.endRow ?? 0) - 1]?.label ?? null,
      };
      return diagnose('film/no-row', at(time.path), facts);
    }
    case 'sizes part': {
      const { without } = astray;
      const where =
        without.length === 0
          ? 'in some sizes the number belongs to another row'
          : `${without.length === 1 ? 'size' : 'sizes'} ${listed(without, 'and')} ${without.length === 1 ? 'has' : 'have'} no such row`;
      const having = names.filter((name) => !without.includes(name));
      return diagnose('film/sizes-part', at(time.path), { row: time.row, where, sizes: having });
    }
  }
}

/** Of each part: a maker may film the border before the square. */
function inOrder(rows: readonly FilmedRow[], at: Known['at']): Diagnostic[] {
  const faults: Diagnostic[] = [];
  const worked = rows.toSorted((a, b) => a.row - b.row);
  for (const [i, { part, time }] of worked.entries()) {
    const before = worked[i - 1];
    if (before === undefined || before.part !== part || before.time.seconds < time.seconds) continue;
    const facts = {
      row: time.row,
      time: clockTime(time.seconds),
      before: before.time.row,
      beforeTime: clockTime(before.time.seconds),
    };
    faults.push(diagnose('film/order', at(time.path), facts));
  }
  return faults;
}

function pastEnd({ lengthSeconds, times, topics }: Film, at: Known['at']): Diagnostic[] {
  if (lengthSeconds === null) return [];
  const length = clockTime(lengthSeconds);
  const all = [
    ...times.map(({ row, seconds, path }) => ({ row, seconds, path })),
    ...topics.map(({ title, seconds, path }) => ({ row: `"${title}"`, seconds, path })),
  ];
  return all
    .filter(({ seconds }) => seconds >= lengthSeconds)
    .map(({ row, seconds, path }) =>
      diagnose('film/past-end', at(path), { row, time: clockTime(seconds), length }),
    );
}
