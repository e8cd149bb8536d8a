/** A compiled pattern -> its own page: all sizes compared, and the instructions with the numbers of all sizes. */

import type { CompiledPattern } from '../compiled.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { linkTo, type PagePlace, pagePlace } from './addresses.ts';
import { coverLink } from './cover-picture.ts';
import { ownDialect } from './dialect-names.ts';
import { changeLines, colophonLines, patternFacts } from './facts.ts';
import { offeredBooklets } from './offered-booklets.ts';
import { ownForm } from './own-page.ts';
import type { Download, PatternPage } from './page-data.ts';
import { partTexts } from './part-text.ts';
import { coverPhotograph, photographsOf } from './picture-set.ts';
import { type SiteSettings, USUAL_SETTINGS } from './site-settings.ts';
import { sizeTable } from './size-table.ts';
import { materials, pageCautions } from './supplies.ts';

export function patternPage(
  compiled: CompiledPattern,
  pattern: Pattern,
  settings: SiteSettings = USUAL_SETTINGS,
): PatternPage {
  const place = pagePlace([compiled.slug]);
  const own = ownDialect(pattern);
  const words = compiled.allSizes?.[own] ?? null;
  return {
    ...place,
    title: `${pattern.title} – crochet pattern`,
    description:
      pattern.about === '' ? `Crochet pattern ${pattern.title}, all sizes compared.` : pattern.about,
    trail: [{ text: 'Patterns', href: linkTo(place, []), current: false }],
    canonical: null,
    heading: pattern.title,
    about: pattern.about,
    terms: pattern.terms,
    facts: patternFacts(pattern),
    cover: coverLink(compiled, pattern, compiled.sizes[0], place),
    photograph: coverPhotograph(compiled, place, 'cover'),
    photographs: photographsOf(compiled, null, place),
    sizeTable: sizeTable(compiled, pattern, place),
    sizesNote: sizesNote(compiled.sizes.map(({ size }) => size.name)),
    ownForm: ownForm(compiled, pattern, place),
    materials: materials(pattern, null, pattern.terms),
    ...pageCautions(pattern),
    notes: pattern.notes,
    glossary: words ?? { abbreviations: [], specials: [] },
    parts:
      words === null
        ? []
        : partTexts(words, () => null, { photographsOf: (part) => photographsOf(compiled, part, place) }),
    finishing: pattern.finishing,
    changes: changeLines(pattern.changes),
    downloads: allSizesDownloads(compiled, pattern, settings, place),
    colophon: colophonLines(pattern),
  };
}

function allSizesDownloads(
  compiled: CompiledPattern,
  pattern: Pattern,
  settings: SiteSettings,
  place: PagePlace,
): Download[] {
  return offeredBooklets(compiled, pattern, settings)
    .filter(({ sizes }) => sizes === 'all')
    .map(({ text, folder, file }) => ({ text, href: linkTo(place, folder, file) }));
}

/** How the trade's `35 (44, 53)` is read. */
function sizesNote(names: readonly string[]): string | null {
  const [first, ...others] = names;
  if (first === undefined || others.length === 0) return null;
  return `Where numbers differ, the first is for ${first}, those in brackets for ${others.join(', ')}.`;
}
