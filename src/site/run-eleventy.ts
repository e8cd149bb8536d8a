/** Page data -> every page's HTML, set by Eleventy with the layouts. */

import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import configure from '../../eleventy.config.ts';
import { coloured } from './palette.ts';
import { PROJECT_FOLDER } from './project-folder.ts';
import type { SiteFile } from './site-file.ts';
import type { SitePages } from './site-page-data.ts';

/** The part of Eleventy's configuration object that is used here and in `eleventy.config.ts`. */
export interface EleventyConfig {
  addGlobalData(name: string, data: unknown): void;
  setNunjucksEnvironmentOptions(options: Readonly<Record<string, boolean>>): void;
  setQuietMode(quiet: boolean): void;
  setIncludesDirectory(folder: string): void;
  setUseTemplateCache(use: boolean): void;
  setTemplateFormats(formats: readonly string[]): void;
}

export async function runEleventy(
  pages: SitePages,
  layouts = path.join(PROJECT_FOLDER, 'layouts'),
): Promise<SiteFile[]> {
  const { Eleventy } = await import('@11ty/eleventy');
  const plain = await readFile(path.join(layouts, 'assets/not-found.css'), 'utf8');
  const style = coloured(plain, pages.site.palette);
  const outputFolder = '_site';
  const eleventy = new Eleventy(path.join(layouts, 'pages'), outputFolder, {
    // The settings are handed over rather than looked for, so that they are the project's from any folder.
    configPath: false,
    quietMode: true,
    config: (config: EleventyConfig) => {
      configure(config);
      config.addGlobalData('site', pages.site);
      config.addGlobalData('listPages', [pages.list]);
      config.addGlobalData('stitchPages', [pages.stitches]);
      config.addGlobalData('patternPages', pages.patterns);
      config.addGlobalData('sizePages', pages.sizes);
      config.addGlobalData('alongPages', pages.alongs.alongs);
      config.addGlobalData('weekPages', pages.alongs.weeks);
      config.addGlobalData('joiningPages', pages.alongs.joining);
      config.addGlobalData('plannerPages', pages.alongs.planners);
      config.addGlobalData('ownPages', pages.own);
      config.addGlobalData('notFound', { style, styleHash: sha256(style) });
    },
  });
  const results = await eleventy.toJSON();
  return results.flatMap(({ outputPath, content }) =>
    outputPath === false ? [] : [{ file: path.relative(outputFolder, outputPath), content }],
  );
}

/** A style element's hash as a content security policy gives it (CSP Level 3). */
function sha256(text: string): string {
  return `sha256-${createHash('sha256').update(text).digest('base64')}`;
}
