/** The demo collection compiled -> its pages as files, made once a test file; the writers are left out. */

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { compilePatterns } from '../../src/site/compile-patterns.ts';
import { portraitFiles } from '../../src/site/make-pictures.ts';
import { pageFiles } from '../../src/site/page-files.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readPatterns } from '../../src/site/read-patterns.ts';
import { settingsOf } from '../../src/site/read-settings.ts';
import { runEleventy } from '../../src/site/run-eleventy.ts';
import type { FileToMake, SiteFile } from '../../src/site/site-file.ts';
import { sitePages } from '../../src/site/site-pages.ts';
import { sizeFiles } from '../../src/site/size-files.ts';

export interface DemoSite {
  /** HTML by file: `eelgrass/small/index.html`. */
  readonly pages: ReadonlyMap<string, string>;
  /** Style sheet, fonts and ornaments, as the pages ask for them. */
  readonly files: ReadonlyMap<string, SiteFile['content']>;
  /** Booklets and pictures, made when they are asked for. */
  readonly sizeFiles: ReadonlyMap<string, FileToMake['content']>;
  readonly collection: ReturnType<typeof compilePatterns>;
}

export async function demoSite(): Promise<DemoSite> {
  const patterns = path.join(PROJECT_FOLDER, 'patterns');
  const collection = compilePatterns(await readPatterns([patterns]));
  const read = await settingsOf(patterns);
  if (read.kind === 'wrong') throw new Error(read.why);
  const { settings } = read;
  const pages = await runEleventy(
    sitePages(
      collection.map(({ compiled }) => compiled),
      settings,
    ),
  );
  return {
    pages: new Map(pages.map(({ file, content }) => [file, text(content)])),
    files: new Map((await pageFiles(settings.palette)).map(({ file, content }) => [file, content])),
    sizeFiles: new Map(
      collection
        .flatMap(({ compiled }) =>
          compiled.pattern === null ? [] : sizeFiles(compiled, compiled.pattern, settings),
        )
        .concat(portraitFiles(settings, patterns))
        .map(({ file, content }) => [file, content]),
    ),
    collection,
  };
}

export function text(content: SiteFile['content']): string {
  return typeof content === 'string' ? content : Buffer.from(content).toString('utf8');
}

export function projectFile(name: string): string {
  return readFileSync(path.join(PROJECT_FOLDER, name), 'utf8');
}
