/**
 * The entries of the list -> the choices offered above it, and the style sheet that hides what is not chosen: so that a
 * reader finds a pattern without a script as well.
 */

import { FACET_WORDS, FACETS, type Found } from './facets.ts';
import type { Finder, FoundAttributes } from './page-data.ts';
import type { SiteFile } from './site-file.ts';

/** From the top of the site. */
export const FINDER_SHEET = 'site-files/finder.css';

/** Only what tells entries apart is offered: a choice that hides nothing, or all, is none. */
export function findersFor(entries: readonly Found[]): Finder[] {
  return FACETS.flatMap((name): Finder[] => {
    const { label, options } = FACET_WORDS[name];
    const there = [...options].filter(([value]) => entries.some((found) => found[name]?.includes(value)));
    const tells = there.some(([value]) => entries.some((found) => !found[name]?.includes(value)));
    return tells ? [{ name, label, options: there.map(([value, text]) => ({ value, text })) }] : [];
  });
}

export function foundAttributes(found: Found): FoundAttributes {
  return FACETS.flatMap((name) => {
    const values = found[name] ?? [];
    return values.length === 0 ? [] : [{ name, values: values.join(' ') }];
  });
}

/** Every value that there may be, so that it is the same for every site. */
export function finderSheet(): SiteFile {
  const rules = FACETS.flatMap((name) =>
    [...FACET_WORDS[name].options.keys()].map(
      (value) =>
        `.finder:has(#find-${name} option[value="${value}"]:checked) ~ .shelf > li:not([data-${name}~="${value}"])`,
    ),
  );
  return { file: FINDER_SHEET, content: `${rules.join(',\n')} {\n  display: none;\n}\n` };
}
