/** Patterns in a folder of the test's own -> `serve` run on them as its users run it, and a browser to look at the desk. */

import type { ChildProcess } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { removeFolder, scratchFolder, startRowfold, writePattern } from '../commands/run-rowfold.ts';
import { openBrowser } from './open-site.ts';

export interface ServedDesk {
  readonly folder: string;
  /** `http://127.0.0.1:8080/` */
  readonly address: string;
  /** Writes a pattern's file as an editor does, beside the page. */
  readonly write: (name: string, text: string) => void;
  readonly read: (name: string) => string;
  /** What the terminal shows, once it shows it. */
  readonly printed: (words: RegExp) => Promise<RegExpExecArray>;
  readonly visit: <T>(
    address: string,
    look: (page: Page) => Promise<T>,
    options?: BrowserContextOptions,
  ) => Promise<T>;
  /** Ends the server, as Ctrl-C does. */
  readonly end: () => void;
  readonly close: () => Promise<void>;
}

/** The first build of a site on a machine that does much else. */
const PATIENCE_MS = 90_000;

export async function serveDesk(patterns: Readonly<Record<string, string>>): Promise<ServedDesk> {
  const folder = scratchFolder();
  for (const [name, text] of Object.entries(patterns)) writePattern(folder, name, text);
  const browser: Browser = await openBrowser();
  const serving: ChildProcess = startRowfold(
    ['serve', '--port', String(20_000 + (process.pid % 20_000))],
    folder,
  );
  let out = '';
  for (const stream of [serving.stdout, serving.stderr])
    stream?.setEncoding('utf8').on('data', (text: string) => {
      out += text;
    });
  const printed = async (words: RegExp): Promise<RegExpExecArray> => {
    for (const end = Date.now() + PATIENCE_MS; ; ) {
      const found = words.exec(out);
      if (found) return found;
      if (serving.exitCode !== null) throw new Error(`serve ended early: ${out}`);
      if (Date.now() > end) throw new Error(`serve did not print ${words}, but: ${out}`);
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  };
  const address = (await printed(/Your desk is at (http:\/\/127\.0\.0\.1:\d+\/)/))[1] ?? '';
  return {
    folder,
    address,
    printed,
    write: (name, text) => void writePattern(folder, name, text),
    read: (name) => readFileSync(path.join(folder, 'patterns', name, 'pattern.yaml'), 'utf8'),
    visit: async (at, look, options = {}) => {
      const context = await browser.newContext(options);
      try {
        const page = await context.newPage();
        await page.goto(`${address}${at}`);
        return await look(page);
      } finally {
        await context.close();
      }
    },
    end: () => void serving.kill('SIGINT'),
    close: async () => {
      serving.kill('SIGINT');
      await browser.close();
      removeFolder(folder);
    },
  };
}
