/**
 * Twelve pages printed by us and, side by side in one run, by whatever else is there: Chromium's print to PDF, LibreOffice,
 * groff. Cold is a process of its own from start to end, warm a process that has printed before. Wall time in the middle of
 * several passes, and the size of the file, as ratios to our own. The same words; charts as the same vectors where there are
 * any; tagged where the program tags. Programs keep things between runs: ours keeps shaped words, here those of a booklet of
 * another pattern, and it is said as well how long the very first booklet on a computer takes.
 */

import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { bundle } from '../../bundle.mjs';
import { printBooklet } from '../../src/print-booklet.ts';
import { compilePatterns } from '../../src/site/compile-patterns.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { keepWords } from '../../src/site/kept-words.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readPatterns } from '../../src/site/read-patterns.ts';
import { printTwelve } from './print-twelve.ts';
import { asHtml, asMs } from './twelve-elsewhere.ts';
import { PAGES, twelvePages } from './twelve-pages.ts';

const COLD_PASSES = 5;
/** Printed before it is measured: a site has dozens of booklets, and a browser is started for many pages. */
const PRINTED_BEFORE = 20;
const WARM_PASSES = 9;
const CHROMIUM = '/usr/bin/chromium';
const require = createRequire(import.meta.url);

interface Printed {
  readonly name: string;
  readonly ms: number;
  readonly bytes: number;
}

export async function printBooklets(): Promise<void> {
  const folder = mkdtempSync(path.join(tmpdir(), 'print-'));
  try {
    const input = twelvePages();
    const font = require.resolve('@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf');
    const page = path.join(folder, 'twelve.html');
    const ms = path.join(folder, 'twelve.ms');
    writeFileSync(page, asHtml(input, font));
    writeFileSync(ms, asMs(input));
    tell(`${PAGES} pages, cold: a process from start to end`, await coldRuns(folder, page, ms));
    tell(
      `${PAGES} pages, warm: printed again in the same process, after ${PRINTED_BEFORE} times`,
      await warmRuns(page),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function coldRuns(folder: string, page: string, ms: string): Promise<Printed[]> {
  const out = (name: string): string => path.join(folder, name);
  // Made as `rowfold.mjs` makes what a designer starts.
  const made = path.join(import.meta.dirname, '../../.cache/bench');
  await bundle('tests/bench/print-once.ts', made);
  const own = (name: string, prepare: (store: string) => void): Printed | null => {
    const store = out('words');
    const words = [path.join(made, 'print-once.js'), out('own.pdf'), store];
    return cold(name, out('own.pdf'), 'node', words, () => {
      rmSync(store, { recursive: true, force: true });
      prepare(store);
    });
  };
  const another = await wordsOfAnother(out('words of another'));
  const runs: (Printed | null)[] = [
    own('own', (store) => cpSync(another, store, { recursive: true })),
    own('own, the first booklet on a computer', () => undefined),
    cold('Chromium', out('chromium.pdf'), CHROMIUM, [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--no-pdf-header-footer',
      `--print-to-pdf=${out('chromium.pdf')}`,
      `file://${page}`,
    ]),
    cold('LibreOffice', out('twelve.pdf'), 'soffice', [
      '--headless',
      '--convert-to',
      'pdf:writer_web_pdf_Export',
      '--outdir',
      folder,
      page,
    ]),
    groff(ms, out('groff.pdf')),
  ];
  return runs.filter((run) => run !== null);
}

/** What a booklet of a pattern with other words leaves behind: the folder it is kept in. */
async function wordsOfAnother(store: string): Promise<string> {
  const [file] = compilePatterns(await readPatterns([path.join(PROJECT_FOLDER, 'patterns/sandbar-square')]));
  const size = file?.compiled.sizes[0];
  if (file === undefined || size === undefined) throw new Error('The other pattern is not there.');
  const fonts = readFontFiles();
  await printBooklet(file.compiled, size, { dialect: 'us', paper: 'A4' }, fonts);
  keepWords(fonts, store);
  return store;
}

/** Null where the program is not there, or makes no file. */
function cold(
  name: string,
  file: string,
  program: string,
  words: readonly string[],
  prepare: () => void = () => undefined,
): Printed | null {
  const taken: number[] = [];
  for (let pass = 0; pass < COLD_PASSES; pass += 1) {
    prepare();
    const began = performance.now();
    const { error, status } = spawnSync(program, words, { stdio: 'ignore' });
    taken.push(performance.now() - began);
    if (error !== undefined || status !== 0) return null;
  }
  const bytes = statSync(file, { throwIfNoEntry: false })?.size;
  return bytes === undefined ? null : { name, ms: middle(taken), bytes };
}

/** Its words without the charts. */
function groff(source: string, file: string): Printed | null {
  const taken: number[] = [];
  for (let pass = 0; pass < COLD_PASSES; pass += 1) {
    const began = performance.now();
    try {
      writeFileSync(
        file,
        execFileSync('groff', ['-k', '-ms', '-Tpdf', source], { stdio: ['ignore', 'pipe', 'ignore'] }),
      );
    } catch {
      return null;
    }
    taken.push(performance.now() - began);
  }
  return { name: 'groff, words only', ms: middle(taken), bytes: statSync(file).size };
}

async function warmRuns(file: string): Promise<Printed[]> {
  const own = await warm('own', printTwelve);
  const browser = await chromium
    .launch({ executablePath: CHROMIUM, args: ['--no-sandbox'] })
    .catch(() => null);
  if (browser === null) return [own];
  try {
    const page = await browser.newPage();
    const printed = await warm('Chromium', async () => {
      await page.goto(`file://${file}`);
      return page.pdf({ format: 'A4', tagged: true, outline: true, preferCSSPageSize: true });
    });
    return [own, printed];
  } finally {
    await browser.close();
  }
}

async function warm(name: string, print: () => Promise<Uint8Array>): Promise<Printed> {
  let bytes = 0;
  for (let pass = 0; pass < PRINTED_BEFORE; pass += 1) bytes = (await print()).length;
  const taken: number[] = [];
  for (let pass = 0; pass < WARM_PASSES; pass += 1) {
    const began = performance.now();
    bytes = (await print()).length;
    taken.push(performance.now() - began);
  }
  return { name, ms: middle(taken), bytes };
}

function middle(taken: readonly number[]): number {
  return taken.toSorted((a, b) => a - b)[Math.floor(taken.length / 2)] ?? Number.NaN;
}

function tell(heading: string, runs: readonly Printed[]): void {
  const [own] = runs;
  if (own === undefined) return;
  const lines = runs.map(
    ({ name, ms, bytes }) =>
      `  ${name}: ${ms.toFixed(0)} ms (${(ms / PAGES).toFixed(1)} a page, ${(ms / own.ms).toFixed(1)} times own), ` +
      `${(bytes / 1000).toFixed(0)} kB (${(bytes / own.bytes).toFixed(1)} times own)`,
  );
  process.stdout.write(`${[heading, ...lines].join('\n')}\n`);
}

if (process.argv[1] === import.meta.filename) await printBooklets();
