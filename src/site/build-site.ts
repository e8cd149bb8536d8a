/** A folder of patterns -> the whole published site; the old site stays untouched unless the new one is complete. */

import { realpath, rm } from 'node:fs/promises';
import path from 'node:path';
import { alongJsonSchema } from '../along/schema.ts';
import { patternJsonSchema } from '../pattern/json-schema.ts';
import { alongFiles } from './along-files.ts';
import { type AlongSite, type AsOf, alongsAt, PREVIEW_MARK } from './along-site.ts';
import { type CompiledFile, compilePatterns, hasErrors, type ToldFile } from './compile-patterns.ts';
import { clearKept } from './kept-files.ts';
import { type LinkPicture, linkPictureFile, linkPictures } from './link-pictures.ts';
import { PhotographLost, portraitFiles } from './make-pictures.ts';
import { movedPages } from './moved-pages.ts';
import { pageFiles } from './page-files.ts';
import { readAlongs } from './read-alongs.ts';
import { type ReadPattern, readPatterns } from './read-patterns.ts';
import { settingsOf } from './read-settings.ts';
import { runEleventy } from './run-eleventy.ts';
import { siteFeed } from './site-feed.ts';
import type { FileToMake, SiteFile } from './site-file.ts';
import { sitePages } from './site-pages.ts';
import { SETTINGS_FILE, type SiteSettings } from './site-settings.ts';
import { sizeFiles } from './size-files.ts';
import { keepFile, startFolder, swapFolder, whyNotReplace, writeFiles } from './swap-folder.ts';
import { siteMap, withWholeAddresses } from './whole-addresses.ts';

export interface BuildSettings {
  readonly patterns: string;
  /** Where the alongs are; the folder need not be there. */
  readonly alongs: string;
  /** What is due of the alongs by then is published; null for a preview of everything. */
  readonly asOf: AsOf | null;
  readonly out: string;
  /** Told what is being done, for a build that takes long. */
  readonly progress: (words: string) => void;
  /** Filled and read by builds one after another into the same folder: what did not change is not made again. */
  readonly madeBefore?: Map<string, string>;
}

export interface BuildCounts {
  readonly patterns: number;
  readonly sizes: number;
  readonly pages: number;
  readonly booklets: number;
  readonly charts: number;
  readonly alongs: number;
}

export type BuildResult =
  | {
      readonly kind: 'built';
      readonly files: readonly ToldFile[];
      /** Faults that keep back a week that is due. */
      readonly late: readonly ToldFile[];
      readonly counts: BuildCounts;
    }
  | { readonly kind: 'faults'; readonly files: readonly ToldFile[] }
  /** The folder to publish into holds something else. */
  | { readonly kind: 'refused'; readonly why: string }
  /** The file of the site's settings has a fault, or a photograph went while it was read. */
  | { readonly kind: 'settings'; readonly why: string }
  /** The layouts could not be set. */
  | { readonly kind: 'stopped'; readonly why: string };

export async function buildSite(settings: BuildSettings): Promise<BuildResult> {
  const why = whyNotReplace(settings.out);
  if (why !== null) return { kind: 'refused', why };
  const read = await settingsOf(settings.patterns);
  if (read.kind === 'wrong') return { kind: 'settings', why: read.why };
  settings.progress('reading the patterns');
  const alongs = alongsAt(await readAlongs(settings.alongs), settings.asOf);
  const unheld = await withoutWithheld(await readPatterns([settings.patterns]), alongs.withheld);
  const files = compilePatterns(unheld, ({ slug }, i) =>
    settings.progress(`${slug}: working every stitch (${i + 1} of ${unheld.length})`),
  );
  const told = [...files, ...alongs.faults, ...alongs.told];
  if (hasErrors([...files, ...alongs.faults])) return { kind: 'faults', files: told };

  settings.progress('setting the pages');
  let pages: readonly SiteFile[];
  let pictures: readonly LinkPicture[] = [];
  try {
    const { address } = read.settings;
    const collection = files.map(({ compiled }) => compiled);
    // A preview is for the organiser's eyes: nobody is to be led to it.
    const toldOf = settings.asOf === null ? null : address;
    const feed = toldOf === null ? null : siteFeed(collection, alongs.sites, read.settings, toldOf);
    if (toldOf !== null) pictures = linkPictures(collection, alongs.sites, read.settings);
    const plain = sitePages(collection, read.settings, alongs.sites);
    const data = withWholeAddresses(
      { ...plain, site: { ...plain.site, hasFeed: feed !== null } },
      address,
      pictures,
    );
    const set = await runEleventy(data);
    const moved = movedPages(
      read.settings.moved,
      set.map(({ file }) => file),
    );
    if (moved.kind === 'wrong')
      return { kind: 'settings', why: `${SETTINGS_FILE}, moved, ${moved.old}: ${moved.why}` };
    const led = address === null ? [] : [siteMap(data, address), ...(feed === null ? [] : [feed])];
    pages = settings.asOf === null ? set.map(previewPage) : [...set, ...moved.pages, ...led];
  } catch (fault) {
    // A layout with a mistake in it: whoever mends it needs the words, and a server has to go on.
    return { kind: 'stopped', why: reasons(fault).join(': ') };
  }
  const folder = await startFolder(settings.out);
  try {
    const published = { files, alongs: alongs.sites, pages, pictures };
    const { counts, madeNow } = await writeSite(folder, published, read.settings, settings);
    await swapFolder(folder, settings.out);
    settings.madeBefore?.clear();
    for (const [file, madeOf] of madeNow) settings.madeBefore?.set(file, madeOf);
    await clearKept();
    return { kind: 'built', files: told, late: alongs.late, counts };
  } catch (fault) {
    if (fault instanceof PhotographLost) return { kind: 'settings', why: fault.message };
    throw fault;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

interface Published {
  readonly files: readonly CompiledFile[];
  readonly alongs: readonly AlongSite[];
  readonly pages: readonly SiteFile[];
  readonly pictures: readonly LinkPicture[];
}

async function writeSite(
  folder: string,
  { files, alongs, pages, pictures }: Published,
  offered: SiteSettings,
  { patterns, progress, asOf, out, madeBefore }: BuildSettings,
): Promise<{ readonly counts: BuildCounts; readonly madeNow: ReadonlyMap<string, string> }> {
  const collection = files.map(({ compiled }) => compiled);
  await writeFiles(folder, [...pages, ...(await pageFiles(offered.palette)), ...schemaFiles()]);
  let booklets = 0;
  let charts = 0;
  const madeNow = new Map<string, string>();
  const make = async (toMake: readonly FileToMake[]): Promise<void> => {
    for (const { file, content, madeOf } of toMake) {
      const same = madeOf !== undefined && madeBefore?.get(file) === madeOf;
      if (!(same && (await keepFile(out, folder, file))))
        await writeFiles(folder, [{ file, content: await content() }]);
      if (madeOf !== undefined) madeNow.set(file, madeOf);
      if (file.endsWith('.pdf')) booklets++;
      else if (file.endsWith('.svg') && !file.endsWith('-cover.svg')) charts++;
    }
  };
  await make(portraitFiles(offered, patterns));
  for (const picture of pictures) await writeFiles(folder, [await linkPictureFile(picture, offered)]);
  for (const [i, compiled] of collection.entries()) {
    if (compiled.pattern === null) continue;
    progress(`${compiled.pattern.title}: charts and booklets (${i + 1} of ${collection.length})`);
    await make(sizeFiles(compiled, compiled.pattern, offered, asOf === null ? PREVIEW_MARK : undefined));
  }
  for (const along of alongs) {
    progress(`${along.released.along.title}: squares, books, calendar and feed`);
    await make(alongFiles(along, offered));
  }
  const counts = {
    patterns: collection.length,
    sizes: collection.reduce((sum, { sizes }) => sum + sizes.length, 0),
    pages: pages.length,
    booklets,
    charts,
    alongs: alongs.length,
  };
  return { counts, madeNow };
}

/** For editors, which complete and check a pattern file by it. */
function schemaFiles(): SiteFile[] {
  const schemas = { 'pattern.schema.json': patternJsonSchema, 'along.schema.json': alongJsonSchema };
  return Object.entries(schemas).map(([file, schema]) => ({
    file,
    content: `${JSON.stringify(schema, null, 2)}\n`,
  }));
}

/** What weeks to come call for is no part of the collection yet, wherever its file lies. */
async function withoutWithheld(
  read: readonly ReadPattern[],
  withheld: ReadonlySet<string>,
): Promise<ReadPattern[]> {
  const places = await Promise.all(
    read.map((one) => {
      const file = one.kind === 'read' ? one.source.file : one.file;
      return realpath(file).catch(() => path.resolve(file));
    }),
  );
  return read.filter((_, i) => !withheld.has(places[i] ?? ''));
}

/** A page that says of itself that it is not published. */
function previewPage({ file, content }: SiteFile): SiteFile {
  if (typeof content !== 'string') return { file, content };
  return { file, content: content.replace('<main', `<p class="preview-mark">${PREVIEW_MARK}</p>\n<main`) };
}

/** Eleventy wraps a fault in one that says which layout it stands in. */
function reasons(fault: unknown): string[] {
  if (!(fault instanceof Error)) return [String(fault)];
  return [
    fault.message,
    ...('originalError' in fault && fault.originalError ? reasons(fault.originalError) : []),
  ];
}
