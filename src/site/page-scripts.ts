/** The scripts that pages of alongs run, each bundled into one file of the site's own. */

import path from 'node:path';
import { build } from 'esbuild';
import { FILES_FOLDER } from './addresses.ts';
import { CLOCK_SCRIPT, PLANNER_SCRIPT } from './along-pages.ts';
import { PROJECT_FOLDER } from './run-eleventy.ts';
import type { SiteFile } from './site-file.ts';

const SCRIPTS = [
  { file: CLOCK_SCRIPT, from: 'src/along/page/clock.ts' },
  { file: PLANNER_SCRIPT, from: 'src/along/page/planner.ts' },
] as const;

export async function pageScripts(): Promise<SiteFile[]> {
  return Promise.all(
    SCRIPTS.map(async ({ file, from }) => {
      const { outputFiles } = await build({
        entryPoints: [path.join(PROJECT_FOLDER, from)],
        bundle: true,
        // One closed script, so that it runs from a folder on the disk as well, where browsers load no modules.
        format: 'iife',
        target: 'es2020',
        minify: true,
        // As the pages are, in UTF-8.
        charset: 'utf8',
        write: false,
        logLevel: 'silent',
      });
      return { file: `${FILES_FOLDER}/${file}`, content: outputFiles[0]?.text ?? '' };
    }),
  );
}
