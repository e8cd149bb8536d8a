import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { runEleventy } from '../../src/site/run-eleventy.ts';
import { sitePages } from '../../src/site/site-pages.ts';
import { text } from './demo-site.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rowfold-layouts-'));
cpSync(path.join(PROJECT_FOLDER, 'layouts'), folder, { recursive: true });
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function edit(file: string, from: string, to: string): void {
  const layout = path.join(folder, file);
  const before = readFileSync(layout, 'utf8');
  expect(before).toContain(from);
  writeFileSync(layout, before.replace(from, to));
}

async function firstPage(): Promise<string> {
  const pages = await runEleventy(sitePages([]), folder);
  return text(pages.find(({ file }) => file === 'index.html')?.content ?? '');
}

test('a changed layout, and a changed part of one, are seen by the next build of the same process', async () => {
  expect(await firstPage()).toContain('<h1>Crochet patterns</h1>');
  edit('pages/list.njk', '<h1>{{ it.heading }}</h1>', '<h1>My own list</h1>');
  edit('parts/frame.njk', 'Skip to the text', 'On to the text');
  const page = await firstPage();
  expect(page).toContain('<h1>My own list</h1>');
  expect(page).toContain('On to the text');
});

test('a layout that names what no page has stops the build and says where', async () => {
  edit('pages/list.njk', '<h1>My own list</h1>', '<h1>{{ it.headline }}</h1>');
  await expect(firstPage()).rejects.toThrow(/list\.njk/);
});
