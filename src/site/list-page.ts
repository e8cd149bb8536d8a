/** All compiled patterns -> the page that lists them. */

import type { CompiledPattern } from '../compiled.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { FILES_FOLDER, linkTo, pagePlace, STITCHES_FOLDER } from './addresses.ts';
import type { AlongSite } from './along-site.ts';
import { alongEntry, alongFound } from './along-squares.ts';
import { coverLink } from './cover-picture.ts';
import { patternFound } from './facets.ts';
import { patternFacts } from './facts.ts';
import { findersFor, foundAttributes } from './finder.ts';
import type { ListPage } from './page-data.ts';
import { FINDING_SCRIPT } from './page-scripts.ts';
import { coverPhotograph } from './picture-set.ts';
import { type SiteSettings, USUAL_SETTINGS } from './site-settings.ts';

export interface Listed {
  readonly compiled: CompiledPattern;
  readonly pattern: Pattern;
}

export function listPage(
  listed: readonly Listed[],
  alongs: readonly AlongSite[] = [],
  { name, line }: SiteSettings = USUAL_SETTINGS,
): ListPage {
  const place = pagePlace([]);
  const patterns = listed.map(({ compiled, pattern }) => patternFound(compiled, pattern));
  const together = alongs.map(alongFound);
  const finders = findersFor([...together, ...patterns]);
  return {
    ...place,
    heading: name ?? 'Crochet patterns',
    title: name === null ? 'Crochet patterns' : `${name} – crochet patterns`,
    description:
      line ?? 'Crochet patterns in several sizes, in US and UK terms, with stitch charts and booklets.',
    trail: [],
    canonical: null,
    stitchesHref: linkTo(place, [STITCHES_FOLDER]),
    script: finders.length === 0 ? null : `${place.root}${FILES_FOLDER}/${FINDING_SCRIPT}`,
    finders,
    alongs: alongs.map((along, i) => ({
      ...alongEntry(along, place),
      found: foundAttributes(together[i] ?? {}),
    })),
    entries: listed.map(({ compiled, pattern }, i) => ({
      title: pattern.title,
      href: linkTo(place, [compiled.slug]),
      about: pattern.about,
      facts: patternFacts(pattern),
      cover: coverLink(compiled, pattern, compiled.sizes[0], place),
      photograph: coverPhotograph(compiled, place, 'listed'),
      found: foundAttributes(patterns[i] ?? {}),
    })),
  };
}
