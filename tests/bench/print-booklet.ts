/**
 * Twelve pages printed by us and, side by side in one run, by whatever else is there: Chromium's print to PDF, LibreOffice,
 * groff. Cold is a process of its own from start to end, warm a process that has printed before. Wall time in the middle of
 * several passes, and the size of the file, as ratios to our own. The same words; charts as the same vectors where there are
 * any; tagged where the program tags.
 */

import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { buildSync } from 'esbuild';
import { chromium } from 'playwright-core';
import { printTwelve } from './print-twelve.ts';
import { asHtml, asMs } from './twelve-elsewhere.ts';
import { PAGES, twelvePages } from './twelve-pages.ts';

const COLD_PASSES = 5;
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
    tell(`${PAGES} pages, cold: a process from start to end`, coldRuns(folder, page, ms));
    tell(`${PAGES} pages, warm: printed again in the same process`, await warmRuns(page));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function coldRuns(folder: string, page: string, ms: string): Printed[] {
  const out = (name: string): string => path.join(folder, name);
  // Made as `rowfold.mjs` makes what a designer starts.
  const own = path.join(import.meta.dirname, '../../.cache/bench/print-once.mjs');
  buildSync({
    entryPoints: [path.join(import.meta.dirname, 'print-once.ts')],
    outfile: own,
    bundle: true,
    format: 'esm',
    platform: 'node',
    packages: 'external',
    define: { 'import.meta.dirname': JSON.stringify(import.meta.dirname) },
  });
  const runs: (Printed | null)[] = [
    cold('own', out('own.pdf'), 'node', [own, out('own.pdf')]),
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

/** Null where the program is not there, or makes no file. */
function cold(name: string, file: string, program: string, words: readonly string[]): Printed | null {
  const taken: number[] = [];
  for (let pass = 0; pass < COLD_PASSES; pass += 1) {
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
  let bytes = (await print()).length;
  await print();
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
