/** Compiled patterns -> the data of every page of the site. */

import type { CompiledPattern } from '../compiled.ts';
import { alongPages } from './along-pages.ts';
import type { AlongSite } from './along-site.ts';
import { squarePages } from './along-squares.ts';
import { type Listed, listPage } from './list-page.ts';
import { ownPage } from './own-page.ts';
import { patternPage } from './pattern-page.ts';
import type { SitePages } from './site-page-data.ts';
import { type SiteSettings, USUAL_SETTINGS } from './site-settings.ts';
import { siteWords } from './site-words.ts';
import { sizePages } from './size-page.ts';
import { stitchPage } from './stitch-page.ts';

export function sitePages(
  collection: readonly CompiledPattern[],
  settings: SiteSettings = USUAL_SETTINGS,
  alongs: readonly AlongSite[] = [],
): SitePages {
  const listed: Listed[] = collection.flatMap((compiled) =>
    compiled.pattern === null ? [] : [{ compiled, pattern: compiled.pattern }],
  );
  return {
    site: siteWords(settings),
    list: listPage(listed, alongs, settings),
    stitches: stitchPage(),
    alongs: alongPages(alongs),
    patterns: listed.map(({ compiled, pattern }) => patternPage(compiled, pattern, settings)),
    own: listed.flatMap(({ compiled, pattern }) => ownPage(compiled, pattern) ?? []),
    sizes: [
      ...listed.flatMap(({ compiled, pattern }) => sizePages(compiled, pattern, settings)),
      ...alongs.flatMap((along) => squarePages(along, settings)),
    ],
  };
}
