/** A folder of patterns -> the whole published site; the old site stays untouched unless the new one is complete. */

import { rm } from 'node:fs/promises';
import { patternJsonSchema } from '../pattern/json-schema.ts';
import { type CompiledFile, compilePatterns, hasErrors } from './compile-patterns.ts';
import { pageFiles } from './page-files.ts';
import { readPatterns } from './read-patterns.ts';
import { settingsOf } from './read-settings.ts';
import { runEleventy } from './run-eleventy.ts';
import type { SiteFile } from './site-file.ts';
import { sitePages } from './site-pages.ts';
import type { SiteSettings } from './site-settings.ts';
import { sizeFiles } from './size-files.ts';
import { startFolder, swapFolder, whyNotReplace, writeFiles } from './swap-folder.ts';

export interface BuildSettings {
  readonly patterns: string;
  readonly out: string;
  /** Told what is being done, for a build that takes long. */
  readonly progress: (words: string) => void;
}

export interface BuildCounts {
  readonly patterns: number;
  readonly sizes: number;
  readonly pages: number;
  readonly booklets: number;
  readonly charts: number;
}

export type BuildResult =
  | { readonly kind: 'built'; readonly files: readonly CompiledFile[]; readonly counts: BuildCounts }
  | { readonly kind: 'faults'; readonly files: readonly CompiledFile[] }
  /** The folder to publish into holds something else. */
  | { readonly kind: 'refused'; readonly why: string }
  /** The file of the site's settings has a fault. */
  | { readonly kind: 'settings'; readonly why: string }
  /** The layouts could not be set. */
  | { readonly kind: 'stopped'; readonly why: string };

export async function buildSite(settings: BuildSettings): Promise<BuildResult> {
  const why = whyNotReplace(settings.out);
  if (why !== null) return { kind: 'refused', why };
  const read = await settingsOf(settings.patterns);
  if (read.kind === 'wrong') return { kind: 'settings', why: read.why };
  const files = compilePatterns(await readPatterns([settings.patterns]));
  if (hasErrors(files)) return { kind: 'faults', files };

  settings.progress('setting the pages');
  let pages: readonly SiteFile[];
  try {
    pages = await runEleventy(
      sitePages(
        files.map(({ compiled }) => compiled),
        read.settings,
      ),
    );
  } catch (fault) {
    // A layout with a mistake in it: whoever mends it needs the words, and a server has to go on.
    return { kind: 'stopped', why: reasons(fault).join(': ') };
  }
  const folder = await startFolder(settings.out);
  try {
    const counts = await writeSite(folder, files, pages, read.settings, settings.progress);
    await swapFolder(folder, settings.out);
    return { kind: 'built', files, counts };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function writeSite(
  folder: string,
  files: readonly CompiledFile[],
  pages: readonly SiteFile[],
  settings: SiteSettings,
  progress: (words: string) => void,
): Promise<BuildCounts> {
  const collection = files.map(({ compiled }) => compiled);
  await writeFiles(folder, [...pages, ...(await pageFiles()), schemaFile()]);
  let booklets = 0;
  let charts = 0;
  for (const [i, compiled] of collection.entries()) {
    if (compiled.pattern === null) continue;
    progress(`${compiled.pattern.title}: charts and booklets (${i + 1} of ${collection.length})`);
    for (const { file, content } of sizeFiles(compiled, compiled.pattern, settings)) {
      await writeFiles(folder, [{ file, content: await content() }]);
      if (file.endsWith('.pdf')) booklets++;
      else if (!file.endsWith('-cover.svg')) charts++;
    }
  }
  return {
    patterns: collection.length,
    sizes: collection.reduce((sum, { sizes }) => sum + sizes.length, 0),
    pages: pages.length,
    booklets,
    charts,
  };
}

/** For editors, which complete and check a pattern file by it. */
function schemaFile(): SiteFile {
  return { file: 'pattern.schema.json', content: `${JSON.stringify(patternJsonSchema, null, 2)}\n` };
}

/** Eleventy wraps a fault in one that says which layout it stands in. */
function reasons(fault: unknown): string[] {
  if (!(fault instanceof Error)) return [String(fault)];
  return [
    fault.message,
    ...('originalError' in fault && fault.originalError ? reasons(fault.originalError) : []),
  ];
}
