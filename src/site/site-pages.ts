/** Compiled patterns -> the data of every page of the site. */

import type { CompiledPattern } from '../compiled.ts';
import { type Listed, listPage } from './list-page.ts';
import type { SitePages } from './page-data.ts';
import { patternPage } from './pattern-page.ts';
import { type SiteSettings, USUAL_SETTINGS } from './site-settings.ts';
import { sizePages } from './size-page.ts';

export function sitePages(
  collection: readonly CompiledPattern[],
  settings: SiteSettings = USUAL_SETTINGS,
): SitePages {
  const listed: Listed[] = collection.flatMap((compiled) =>
    compiled.pattern === null ? [] : [{ compiled, pattern: compiled.pattern }],
  );
  return {
    list: listPage(listed),
    patterns: listed.map(({ compiled, pattern }) => patternPage(compiled, pattern, settings)),
    sizes: listed.flatMap(({ compiled, pattern }) => sizePages(compiled, pattern, settings)),
  };
}
