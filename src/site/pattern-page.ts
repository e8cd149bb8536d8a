/** A compiled pattern -> its own page: all sizes compared, and the instructions with the numbers of all sizes. */

import type { CompiledPattern } from '../compiled.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { printFinishedSize } from '../wording/finished-size.ts';
import { linkTo, type PagePlace, pagePlace } from './addresses.ts';
import { coverLink } from './cover-picture.ts';
import { ownDialect } from './dialect-names.ts';
import { changeLines, colophonLines, patternFacts, wholeNumber, yarnCell } from './facts.ts';
import { offeredBooklets } from './offered-booklets.ts';
import type { Download, PatternPage, SizeTable } from './page-data.ts';
import { partTexts } from './part-text.ts';
import { type SiteSettings, USUAL_SETTINGS } from './site-settings.ts';
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
    sizeTable: sizeTable(compiled, pattern, place),
    sizesNote: sizesNote(compiled.sizes.map(({ size }) => size.name)),
    materials: materials(pattern, null, pattern.terms),
    ...pageCautions(pattern),
    notes: pattern.notes,
    glossary: words ?? { abbreviations: [], specials: [] },
    parts: partTexts(words?.parts ?? [], () => null),
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

function sizeTable(compiled: CompiledPattern, pattern: Pattern, place: PagePlace): SizeTable {
  const columns: { name: string; cell: (size: (typeof compiled.sizes)[number]) => string }[] = [
    { name: 'Finished size', cell: ({ measures }) => printFinishedSize(measures) ?? 'not given' },
    ...pattern.yarns.map((yarn) => ({
      name: `Yarn ${yarn.letter}, ${yarn.colour}`,
      cell: ({ measures }: (typeof compiled.sizes)[number]) => yarnCell(measures, yarn.letter),
    })),
    { name: 'Stitches to work', cell: ({ measures }) => wholeNumber(measures.stitches) },
  ];
  return {
    caption: compiled.sizes.length === 1 ? 'The size and what it takes' : 'The sizes and what each takes',
    columns: columns.map(({ name }) => name),
    rows: compiled.sizes.map((size) => ({
      name: size.size.name,
      href: linkTo(place, [compiled.slug, size.slug]),
      cells: columns.map((column) => ({ column: column.name, text: column.cell(size) })),
    })),
  };
}

/** How the trade's `35 (44, 53)` is read. */
function sizesNote(names: readonly string[]): string | null {
  const [first, ...others] = names;
  if (first === undefined || others.length === 0) return null;
  return `Where numbers differ, the first is for ${first}, those in brackets for ${others.join(', ')}.`;
}
