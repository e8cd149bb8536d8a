/** Eleventy's settings: where the layouts are and how they are set. `src/site/run-eleventy.ts` gives the page data. */

import type { EleventyConfig } from './src/site/run-eleventy.ts';

export default function configure(config: EleventyConfig): void {
  config.setTemplateFormats(['njk']);
  config.setIncludesDirectory('../parts');
  config.setQuietMode(true);
  // While it serves, one process sets the pages again and again, and a changed layout has to be seen.
  config.setUseTemplateCache(false);
  // A layout that names something the page data does not have is a mistake, so the build stops there.
  config.setNunjucksEnvironmentOptions({
    autoescape: true,
    throwOnUndefined: true,
    trimBlocks: true,
    lstripBlocks: true,
  });
}
