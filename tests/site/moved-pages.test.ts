/** Old addresses lead on to new ones, whole folders at once; what cannot lead anywhere is told. */

import { HtmlValidate } from 'html-validate';
import { describe, expect, test } from 'vitest';
import { movedPages } from '../../src/site/moved-pages.ts';
import { readSettings } from '../../src/site/site-settings.ts';

const FILES = [
  'index.html',
  'reed-square/index.html',
  'reed-square/small/index.html',
  'reed-square/small/uk/index.html',
  'tide-square/index.html',
  '404.html',
];

function made(moved: Record<string, string>): Map<string, string> {
  const result = movedPages(moved, FILES);
  if (result.kind === 'wrong') throw new Error(result.why);
  return new Map(result.pages.map(({ file, content }) => [file, String(content)]));
}

function why(moved: Record<string, string>): string {
  const result = movedPages(moved, FILES);
  return result.kind === 'wrong' ? `${result.old}: ${result.why}` : 'all is well';
}

test('every page below an old address leads to the one that stands for it, by a link that works in any folder', () => {
  const pages = made({ 'old square': 'reed-square' });
  const ways = [...pages].map(([file, html]) => [file, /content="0; url=([^"]*)"/.exec(html)?.[1]]);
  expect(ways).toEqual([
    ['old square/index.html', '../reed-square/'],
    ['old square/small/index.html', '../../reed-square/small/'],
    ['old square/small/uk/index.html', '../../../reed-square/small/uk/'],
  ]);
});

test('a size that has an address of its own in the list leads there', () => {
  const pages = made({ 'old/small': 'tide-square', old: 'reed-square' });
  expect(pages.get('old/small/index.html')).toContain('url=../../tide-square/');
  expect(pages.get('old/index.html')).toContain('url=../reed-square/');
});

test('such a page is valid HTML, asks for nothing from elsewhere, and is no page for search engines', async () => {
  const html = made({ 'a"b&c': 'reed-square' }).get('a"b&c/index.html') ?? '';
  const validator = new HtmlValidate({
    root: true,
    extends: ['html-validate:standard', 'html-validate:a11y'],
    rules: { 'attr-quotes': 'off', 'no-inline-style': 'off', 'meta-refresh': 'off' },
  });
  const report = await validator.validateString(html, 'moved.html');
  expect(report.results.flatMap(({ messages }) => messages.map(({ message }) => message))).toEqual([]);
  expect(html).toContain('noindex');
  expect(html).not.toMatch(/https?:|<script/);
});

describe('what cannot lead anywhere is told', () => {
  test.each([
    [{ old: 'red-square' }, 'old: there is no page at red-square/ to lead to; did you mean reed-square?'],
    [
      { 'tide-square': 'reed-square' },
      'tide-square: tide-square/ is a page of the site as it is, so it cannot lead elsewhere',
    ],
    [{ 'site-files/x': 'reed-square' }, "site-files/x: site-files/x/ is a folder of the site's own files"],
    [{ old: 'reed-square' }, 'all is well'],
  ])('%o', (moved, expected) => expect(why(moved)).toBe(expected));

  test.each([
    ['moved: {/old/: new/small}', { old: 'new/small' }],
    ['moved: {old: "https://example.org"}', null],
    ['moved: {"../up": new}', null],
    ['moved: [old]', null],
  ])('%s', (text, expected) => {
    const read = readSettings(text);
    if (expected === null)
      expect(read.kind === 'wrong' && read.why).toMatch(/old addresses and where they lead now/);
    else expect(read.kind === 'read' && read.settings.moved).toEqual(expected);
  });
});
