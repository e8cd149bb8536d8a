/** The along's pages as HTML: valid, every link and picture there, nothing asked of another host, no script in a page itself. */

import path from 'node:path';
import { HtmlValidate } from 'html-validate';
import { beforeAll, expect, test } from 'vitest';
import { alongFiles } from '../../src/site/along-files.ts';
import { alongsAt } from '../../src/site/along-site.ts';
import { pageFiles } from '../../src/site/page-files.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readAlongs } from '../../src/site/read-alongs.ts';
import { runEleventy } from '../../src/site/run-eleventy.ts';
import { sitePages } from '../../src/site/site-pages.ts';
import { USUAL_SETTINGS } from '../../src/site/site-settings.ts';

const pages = new Map<string, string>();
const files = new Set<string>();

beforeAll(async () => {
  const { sites } = alongsAt(await readAlongs(path.join(PROJECT_FOLDER, 'alongs')), () =>
    Date.UTC(2027, 0, 1),
  );
  for (const { file, content } of await runEleventy(sitePages([], USUAL_SETTINGS, sites)))
    if (typeof content === 'string') pages.set(file, content);
  for (const { file } of [
    ...(await pageFiles()),
    ...sites.flatMap((site) => alongFiles(site, USUAL_SETTINGS)),
  ])
    files.add(file);
});

test('are valid', async () => {
  const validator = new HtmlValidate({
    root: true,
    extends: ['html-validate:standard', 'html-validate:a11y'],
    rules: { 'long-title': 'off', 'no-trailing-whitespace': 'off', 'attr-quotes': 'off' },
  });
  const own = [...pages].filter(
    ([file]) => file.startsWith('salt-marsh-blanket/') && !file.includes('one-size'),
  );
  expect(own.map(([file]) => file).sort()).toEqual([
    'salt-marsh-blanket/index.html',
    'salt-marsh-blanket/joining-and-border/index.html',
    'salt-marsh-blanket/planner/index.html',
    ...[1, 2, 3, 4, 5, 6].map((n) => `salt-marsh-blanket/week-${n}/index.html`),
  ]);
  for (const [file, html] of own) {
    const { results } = await validator.validateString(html, file);
    expect(
      results.flatMap(({ messages }) =>
        messages.map(({ line, message, ruleId }) => `${file}:${line} ${ruleId}: ${message}`),
      ),
    ).toEqual([]);
  }
});

test('every address leads to a page or a file of the site, but for the films', () => {
  const lost: string[] = [];
  for (const [file, html] of pages)
    for (const [, address = ''] of html.matchAll(/\s(?:href|src)="([^"]*)"/g)) {
      if (address.startsWith('#') || address.startsWith('https://video.example/')) continue;
      const way = decodeURI(address.replace(/[?#].*$/, ''));
      const to = path.posix.join(path.posix.dirname(file), way);
      const there = way.endsWith('/') || way === '' ? path.posix.join(to, 'index.html') : to;
      if (!pages.has(there) && !files.has(there)) lost.push(`${file} -> ${address}`);
    }
  // The page for what is missing knows no way to the top.
  expect(lost.filter((one) => !one.startsWith('404.html'))).toEqual([]);
});

test('no script and no style stands in a page, and only pages with a script of the site’s own allow one', () => {
  for (const [file, html] of pages) {
    if (file === '404.html') continue;
    expect(html, file).not.toMatch(
      /<script(?! type="application\/(?:ld\+)?json")(?![^>]*\bsrc=)|<style|\sstyle="|\son\w+="/,
    );
    const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html)?.[1] ?? '';
    expect(policy.includes('script-src'), file).toBe(html.includes('<script'));
    expect(policy).not.toMatch(/unsafe|https:|\*/);
  }
});
