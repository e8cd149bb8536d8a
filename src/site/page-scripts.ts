/**
 * The scripts in `src/reader/` -> the files that pages load: one for each page that has one, and the parts that are loaded
 * only when they are asked for. Nothing of it is fetched from elsewhere, and nothing stands in a page itself.
 */

import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { build, type Plugin } from 'esbuild';
import { FILES_FOLDER, OFFLINE_SCRIPT } from './addresses.ts';
import { CLOCK_SCRIPT, PLANNER_SCRIPT } from './along-pages.ts';
import { PROJECT_FOLDER } from './project-folder.ts';
import type { SiteFile } from './site-file.ts';

/** Files of `src/reader/` that a page loads, without their ending. */
export const PAGE_SCRIPTS = ['own-page'] as const;
export type PageScript = (typeof PAGE_SCRIPTS)[number];

/** Where a page finds its script, from the top of the site. */
export function scriptFile(script: PageScript): string {
  return `${FILES_FOLDER}/${script}.js`;
}

/** On the page of a size. */
export const READING_SCRIPT = 'reading.js';
/** On the list of patterns. */
export const FINDING_SCRIPT = 'finding.js';
/** On every page; `layouts/parts/frame.njk` asks for it. */
const LOOKS_SCRIPT = 'looks.js';

const SETTINGS = {
  bundle: true,
  platform: 'browser',
  target: 'es2022',
  minify: true,
  // As the pages are, in UTF-8.
  charset: 'utf8',
  write: false,
  logLevel: 'silent',
} as const;

let made: Promise<readonly SiteFile[]> | null = null;

/** The same for every site that one process builds. */
export function pageScripts(): Promise<readonly SiteFile[]> {
  made ??= Promise.all([bundle(), ...CLOSED_SCRIPTS.map(closed)]).then((files) => files.flat());
  return made;
}

/** One closed script each, so that it runs from a folder on the disk as well, where browsers load no modules. */
const CLOSED_SCRIPTS = [
  { file: LOOKS_SCRIPT, from: 'src/reader/looks.ts' },
  { file: FINDING_SCRIPT, from: 'src/reader/finding.ts' },
  { file: READING_SCRIPT, from: 'src/reader/reading.ts' },
  { file: `../${OFFLINE_SCRIPT}`, from: 'src/reader/offline.ts' },
  { file: CLOCK_SCRIPT, from: 'src/along/page/clock.ts' },
  { file: PLANNER_SCRIPT, from: 'src/along/page/planner.ts' },
] as const;

async function closed({ file, from }: (typeof CLOSED_SCRIPTS)[number]): Promise<SiteFile[]> {
  return [{ file: path.posix.join(FILES_FOLDER, file), content: await closedScript(from) }];
}

/** A script of ours with all it needs, as one text. */
export async function closedScript(from: string): Promise<string> {
  const { outputFiles } = await build({
    ...SETTINGS,
    entryPoints: [path.join(PROJECT_FOLDER, from)],
    format: 'iife',
  });
  return outputFiles[0]?.text ?? '';
}

async function bundle(): Promise<readonly SiteFile[]> {
  const folder = path.join(PROJECT_FOLDER, 'src/reader');
  const { outputFiles } = await build({
    entryPoints: PAGE_SCRIPTS.map((script) => path.join(folder, `${script}.ts`)),
    ...SETTINGS,
    outdir: FILES_FOLDER,
    splitting: true,
    format: 'esm',
    absWorkingDir: PROJECT_FOLDER,
    chunkNames: 'part-[hash]',
    legalComments: 'linked',
    plugins: [inBrowser, withoutEvidence],
  });
  return outputFiles
    .map(({ path: file, contents }) => ({
      file: `${FILES_FOLDER}/${path.basename(file)}`,
      content: Buffer.from(contents),
    }))
    .sort((a, b) => a.file.localeCompare(b.file, 'en'));
}

/**
 * Files that a browser has something of its own for. Faults are worded when there is one to tell, by a part that is loaded
 * then: few readers ever meet one.
 */
const STANDS_IN: readonly { readonly for: RegExp; readonly file: string; readonly butFor?: string }[] = [
  { for: /\/diagnostics\/catalogue\.ts$/, file: 'src/own/fault-later.ts', butFor: 'tell-faults.ts' },
  { for: /\/svg-document\.ts$/, file: 'src/reader/svg-document.ts' },
];

const inBrowser: Plugin = {
  name: 'in a browser',
  setup: ({ onResolve }) => {
    for (const one of STANDS_IN)
      onResolve({ filter: one.for }, ({ importer }) =>
        one.butFor !== undefined && importer.endsWith(one.butFor)
          ? undefined
          : { path: path.join(PROJECT_FOLDER, one.file) },
      );
  },
};

/** Columns of the tables in `shared/` that say where a figure is from. */
const EVIDENCE = new Set([
  'about',
  'councilList',
  'known',
  'listings',
  'note',
  'source',
  'usElsewhere',
  'usKnown',
]);

const withoutEvidence: Plugin = {
  name: 'without evidence',
  setup: ({ onLoad }) => {
    onLoad({ filter: /[/\\]shared[/\\][a-z-]+\.json$/ }, async ({ path: file }) => ({
      contents: JSON.stringify(JSON.parse(await readFile(file, 'utf8')), (key, value) =>
        EVIDENCE.has(key) ? undefined : value,
      ),
      loader: 'json',
    }));
  },
};
