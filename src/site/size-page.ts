/** One size of a compiled pattern -> its pages: in the pattern's own terms, and in each of the four dialects. */

import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import { paintSvg } from '../paint/svg.ts';
import { OWN_SLUG } from '../pattern/own-size.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { changesIn, ownSentences } from '../wording/own-sentences.ts';
import { DIALECTS, type DialectKey } from '../wording/words.ts';
import { chartFileName, FILES_FOLDER, linkTo, type PagePlace, pagePlace } from './addresses.ts';
import { chartFigure } from './chart-figure.ts';
import { coverLink } from './cover-picture.ts';
import { DIALECT_KEYS, DIALECT_NAMES, ownDialect } from './dialect-names.ts';
import { changeLines, colophonLines, sizeFacts } from './facts.ts';
import { filmTexts, watchOf } from './film-text.ts';
import { followedLines, followingMarkup } from './following.ts';
import { howTo } from './how-to.ts';
import { bookletsForPage, type OfferedBooklet, offeredBooklets } from './offered-booklets.ts';
import type { ChartFigure, Download, Link, SizePage } from './page-data.ts';
import { READING_SCRIPT } from './page-scripts.ts';
import { partTexts } from './part-text.ts';
import { coverPhotograph, photographsOf } from './picture-set.ts';
import { type SiteSettings, USUAL_SETTINGS } from './site-settings.ts';
import { materials, pageCautions } from './supplies.ts';

/** The parts of the page that a maker comes back to. */
const SECTIONS = [
  ['Materials', 'materials'],
  ['Abbreviations', 'abbreviations'],
  ['Measures', 'measures'],
  ['Film', 'film'],
  ['Instructions', 'instructions'],
  ['To print and keep', 'downloads'],
] as const;

export function sizePages(
  compiled: CompiledPattern,
  pattern: Pattern,
  settings: SiteSettings = USUAL_SETTINGS,
): SizePage[] {
  const offers = offeredBooklets(compiled, pattern, settings);
  return compiled.sizes.flatMap((size) =>
    [null, ...DIALECT_KEYS].map((dialect) => sizePage(compiled, pattern, size, dialect, offers)),
  );
}

/** `dialect` null is the page in the pattern's own terms, at the size's own address. */
function sizePage(
  compiled: CompiledPattern,
  pattern: Pattern,
  size: CompiledSize,
  dialect: DialectKey | null,
  offers: readonly OfferedBooklet[],
): SizePage {
  const own = ownDialect(pattern);
  const key = dialect ?? own;
  const { terms } = DIALECTS[key];
  const folder = [compiled.slug, size.slug];
  const place = pagePlace(dialect === null ? folder : [...folder, dialect]);
  const words = size.words[key];
  const parts = partTexts(words, (part, id) => partChart(compiled, size, terms, part, id, place), {
    watchOf: watchOf(compiled, pattern, size),
    photographsOf: (part) => photographsOf(compiled, part, place),
  });
  return {
    ...place,
    title: `${pattern.title}, ${size.size.name} – ${DIALECT_NAMES[key]}`,
    description: `Crochet pattern ${pattern.title}, size ${size.size.name} (${DIALECT_NAMES[key]}): every row with its count, and a stitch chart.`,
    trail: sizeTrail(place, compiled.slug, pattern, size, dialect !== null),
    canonical: dialect === own ? linkTo(place, folder) : null,
    heading: pattern.title,
    script: `${place.root}${FILES_FOLDER}/${READING_SCRIPT}`,
    keepAs: `${compiled.slug}/${size.slug}`,
    termsOpen: dialect === null,
    howTo:
      dialect === null
        ? howTo({
            pattern,
            sizeName: size.size.name,
            words,
            materials: materials(pattern, size, terms),
            language: terms === 'US' ? 'en-US' : 'en-GB',
          })
        : null,
    sizeName: size.size.name,
    about: pattern.about,
    terms,
    facts: sizeFacts(pattern, size),
    cover: coverLink(compiled, pattern, size, place),
    photograph: coverPhotograph(compiled, place, 'cover'),
    photographs: [],
    schematics: size.schematics.map(({ scene }, i) => ({
      svg: paintSvg(scene, { idPrefix: `measures-${i + 1}` }),
      title: scene.title,
      words: scene.alternative,
    })),
    films: filmTexts(compiled, pattern, size),
    sizeLinks: compiled.sizes.map((other) => ({
      text: other.size.name,
      href: linkTo(
        place,
        dialect === null || dialect === own
          ? [compiled.slug, other.slug]
          : [compiled.slug, other.slug, dialect],
      ),
      current: other === size,
    })),
    termLinks: DIALECT_KEYS.map((other) => ({
      terms: other,
      text: DIALECT_NAMES[other],
      href: linkTo(place, other === own ? folder : [...folder, other]),
      current: other === key,
    })),
    sectionLinks: SECTIONS.filter(
      ([, id]) =>
        (id !== 'abbreviations' || words.abbreviations.length > 0) &&
        (id !== 'measures' || size.schematics.length > 0) &&
        (id !== 'film' || pattern.films.length > 0),
    ).map(([text, id]) => ({ text, href: `#${id}`, current: false })),
    materials: materials(pattern, size, terms),
    ...pageCautions(pattern),
    notes: ownSentences(pattern, pattern.notes, key),
    glossary: words,
    parts,
    following: followingMarkup(
      followedLines(
        { words, accounts: size.accounts },
        parts.map(({ chart }) => chart?.id ?? null),
        key,
      ),
    ),
    finishing: ownSentences(pattern, pattern.finishing, key),
    changes: changeLines(changesIn(pattern, key)),
    downloads: downloads(compiled, size, offers, key, own, place),
    ownHref: `${linkTo(place, [compiled.slug, OWN_SLUG])}?size=${encodeURIComponent(size.slug)}`,
    colophon: colophonLines(pattern),
  };
}

function sizeTrail(
  place: PagePlace,
  slug: string,
  pattern: Pattern,
  size: CompiledSize,
  below: boolean,
): Link[] {
  const trail: Link[] = [
    { text: 'Patterns', href: linkTo(place, []), current: false },
    { text: pattern.title, href: linkTo(place, [slug]), current: false },
  ];
  if (below) trail.push({ text: size.size.name, href: linkTo(place, [slug, size.slug]), current: false });
  return trail;
}

function partChart(
  compiled: CompiledPattern,
  size: CompiledSize,
  terms: 'US' | 'UK',
  part: string,
  id: string,
  place: PagePlace,
): ChartFigure | null {
  const index = size.charts[terms].findIndex((chart) => chart.part === part);
  const chart = size.charts[terms][index];
  if (chart === undefined) return null;
  const [href = '', leftHandedHref = ''] = [false, true].map((leftHanded) =>
    linkTo(
      place,
      [compiled.slug, size.slug],
      chartFileName(compiled.slug, size.slug, index, terms, leftHanded),
    ),
  );
  return chartFigure(chart, id, { href, leftHandedHref });
}

function downloads(
  compiled: CompiledPattern,
  size: CompiledSize,
  offers: readonly OfferedBooklet[],
  key: DialectKey,
  own: DialectKey,
  place: PagePlace,
): Download[] {
  const folder = [compiled.slug, size.slug];
  const { terms } = DIALECTS[key];
  const booklets = bookletsForPage(offers, size, key, own).map(({ text, file, folder: within }) => ({
    text,
    href: linkTo(place, within, file),
  }));
  const charts = size.charts[terms].map((chart, i) => ({
    text: size.charts[terms].length === 1 ? 'Stitch chart (SVG)' : `Stitch chart of ${chart.part} (SVG)`,
    href: linkTo(place, folder, chartFileName(compiled.slug, size.slug, i, terms)),
  }));
  return [...booklets, ...charts];
}
