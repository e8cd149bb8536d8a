/** All compiled patterns -> the page that lists them. */

import type { CompiledPattern } from '../compiled.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { linkTo, pagePlace, STITCHES_FOLDER } from './addresses.ts';
import type { AlongSite } from './along-site.ts';
import { alongEntry } from './along-squares.ts';
import { coverLink } from './cover-picture.ts';
import { patternFacts } from './facts.ts';
import type { ListPage } from './page-data.ts';
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
  return {
    ...place,
    heading: name ?? 'Crochet patterns',
    title: name === null ? 'Crochet patterns' : `${name} – crochet patterns`,
    description:
      line ?? 'Crochet patterns in several sizes, in US and UK terms, with stitch charts and booklets.',
    trail: [],
    canonical: null,
    stitchesHref: linkTo(place, [STITCHES_FOLDER]),
    alongs: alongs.map((along) => alongEntry(along, place)),
    entries: listed.map(({ compiled, pattern }) => ({
      title: pattern.title,
      href: linkTo(place, [compiled.slug]),
      about: pattern.about,
      facts: patternFacts(pattern),
      cover: coverLink(compiled, pattern, compiled.sizes[0], place),
      photograph: coverPhotograph(compiled, place, 'listed'),
    })),
  };
}
