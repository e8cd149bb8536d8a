/** Which booklets a site offers: the quiet usual ones, those that `site.yaml` asks for, and what is told of a fault in it. */

import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { compilePatterns } from '../../src/site/compile-patterns.ts';
import { bookletsForPage, offeredBooklets } from '../../src/site/offered-booklets.ts';
import { readPatterns } from '../../src/site/read-patterns.ts';
import { PROJECT_FOLDER } from '../../src/site/run-eleventy.ts';
import { readSettings, type SiteSettings, USUAL_SETTINGS } from '../../src/site/site-settings.ts';

const [file] = compilePatterns(
  await readPatterns([path.join(PROJECT_FOLDER, 'patterns/sandbar-square/pattern.yaml')]),
);
const compiled = file?.compiled;
const pattern = compiled?.pattern;
if (compiled === undefined || !pattern) throw new Error('no pattern');

function settings(text: string): SiteSettings {
  const read = readSettings(text);
  if (read.kind === 'wrong') throw new Error(read.why);
  return read.settings;
}

function files(given: SiteSettings): string[] {
  if (compiled === undefined || !pattern) return [];
  return offeredBooklets(compiled, pattern, given).map(({ folder, file: name }) =>
    [...folder, name].join('/'),
  );
}

describe('the booklets a site offers', () => {
  test('are each size on both papers where nothing is said', () => {
    expect(files(USUAL_SETTINGS)).toEqual(
      ['small', 'medium', 'large'].flatMap((size) =>
        ['a4', 'letter'].map((paper) => `sandbar-square/${size}/sandbar-square-${size}-${paper}.pdf`),
      ),
    );
    expect(files(settings(''))).toEqual(files(USUAL_SETTINGS));
  });

  test('are none where the list is empty', () => {
    expect(files(settings('booklets: []'))).toEqual([]);
  });

  test('are every one of the editions asked for, each once', () => {
    const asked = settings(`
booklets:
  - paper: [A4, Letter]
    terms: [own, us, uk]
  - {form: folded, ink: low, charts: left-handed}
  - {form: large print, holds: words, sizes: all}
`);
    const made = files(asked).filter((name) => /small|all-sizes/.test(name));
    expect(made.sort()).toEqual([
      'sandbar-square/sandbar-square-all-sizes-a4-large-print-words-only.pdf',
      'sandbar-square/small/sandbar-square-small-a4-left-handed-folded-low-ink.pdf',
      'sandbar-square/small/sandbar-square-small-a4.pdf',
      'sandbar-square/small/sandbar-square-small-letter.pdf',
      'sandbar-square/small/sandbar-square-small-uk-a4.pdf',
      'sandbar-square/small/sandbar-square-small-uk-letter.pdf',
    ]);
  });

  test('on a page are those in its terms, and the own ones where there are none', () => {
    const [small] = compiled.sizes;
    if (small === undefined) throw new Error('no size');
    const both = offeredBooklets(compiled, pattern, settings('booklets: [{terms: [us, uk]}]'));
    expect(bookletsForPage(both, small, 'uk', 'us').map(({ text }) => text)).toEqual([
      'Booklet on A4 paper, UK terms (PDF)',
    ]);
    const own = offeredBooklets(compiled, pattern, USUAL_SETTINGS);
    expect(bookletsForPage(own, small, 'uk-full', 'us').map(({ text }) => text)).toEqual([
      'Booklet on A4 paper, US terms (PDF)',
      'Booklet on US Letter paper, US terms (PDF)',
    ]);
  });
});

describe('the address of the site', () => {
  test('ends in a stroke, however it is written', () => {
    expect(settings('address: https://example.org/patterns').address).toBe('https://example.org/patterns/');
    expect(settings('address: https://example.org//').address).toBe('https://example.org/');
  });
});

describe('a fault in the settings is told with its line', () => {
  test.each([
    ['booklets:\n  - paper: A5\n', /line 2: "booklets paper" may be A4, Letter/],
    ['booklets:\n  - paper: A4\n    from: folded\n', /there is no "from" here; did you mean "form"\?/],
    ['adress: https://example.org\n', /line 1: there is no "adress" here; did you mean "address"\?/],
    ['address: example.org\n', /line 1: "address" is the address of the site/],
    ['booklets: {paper: A4}\n', /line 1: "booklets" is not what it should be/],
    ['booklets: [\n', /this is not YAML/],
    ['- A4\n', /line 1/],
  ])('%s', (text, told) => {
    const read = readSettings(text);
    expect(read.kind === 'wrong' ? read.why : 'nothing').toMatch(told);
  });
});
