/** An along on the disk, all its weeks out -> its pages in a browser, opened from a folder on the disk: no server has a part in them. */

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { expect } from 'vitest';
import { alongFiles } from '../../src/site/along-files.ts';
import { alongsAt } from '../../src/site/along-site.ts';
import { pageFiles } from '../../src/site/page-files.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readAlongs } from '../../src/site/read-alongs.ts';
import { runEleventy } from '../../src/site/run-eleventy.ts';
import { sitePages } from '../../src/site/site-pages.ts';
import { USUAL_SETTINGS } from '../../src/site/site-settings.ts';

export interface OpenAlong {
  readonly folder: string;
  /** A page of its own, by its folder in that of the along; no script of it may fail. */
  readonly visit: <T>(
    page: string,
    options: BrowserContextOptions,
    look: (page: Page) => Promise<T>,
    hash?: string,
  ) => Promise<T>;
  readonly close: () => Promise<void>;
}

/** `source` is where alongs are looked for, in the project; `slug` the one to open. */
export async function openAlong(source: string, slug: string): Promise<OpenAlong> {
  const folder = mkdtempSync(path.join(tmpdir(), 'rowfold-along-'));
  const { sites } = alongsAt(await readAlongs(path.join(PROJECT_FOLDER, source)), () => Date.UTC(2027, 0, 1));
  const files = [...(await runEleventy(sitePages([], USUAL_SETTINGS, sites))), ...(await pageFiles())];
  // Booklets are looked at elsewhere.
  for (const site of sites)
    for (const { file, content } of alongFiles(site, USUAL_SETTINGS))
      if (!file.endsWith('.pdf')) files.push({ file, content: await content() });
  for (const { file, content } of files) {
    mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
    writeFileSync(path.join(folder, file), content);
  }
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium' });
  return {
    folder,
    visit: async (page, options, look, hash = '') => {
      const context = await browser.newContext(options);
      try {
        const opened = await context.newPage();
        const faults: string[] = [];
        opened.on('pageerror', ({ message }) => faults.push(message));
        await opened.goto(`${pathToFileURL(path.join(folder, slug, page, 'index.html'))}${hash}`);
        const seen = await look(opened);
        expect(faults).toEqual([]);
        return seen;
      } finally {
        await context.close();
      }
    },
    close: async () => {
      await browser.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** What the command line says in JSON of the yarn of a blanket, as the planner's table shows it. */
export function yarnRows(yarns: readonly Record<string, number | string>[]): unknown[][] {
  return yarns.map(({ letter, squaresM, joiningM, borderM, allM, balls }) => [
    letter,
    `${squaresM} m`,
    `${joiningM} m`,
    `${borderM} m`,
    `${allM} m`,
    String(balls),
  ]);
}
