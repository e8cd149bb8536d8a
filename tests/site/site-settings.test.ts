/** Which booklets a site offers: the quiet usual ones, those that `site.yaml` asks for, and what is told of a fault in it. */

import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { compilePatterns } from '../../src/site/compile-patterns.ts';
import { bookletsForPage, offeredBooklets } from '../../src/site/offered-booklets.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readPatterns } from '../../src/site/read-patterns.ts';
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
    ['booklets: {paper: A4}\n', /line 1: "booklets" is a list of kinds of booklet/],
    ['booklets: [\n', /this is not YAML/],
    ['- A4\n', /line 1/],
  ])('%s', (text, told) => {
    const read = readSettings(text);
    expect(read.kind === 'wrong' ? read.why : 'nothing').toMatch(told);
  });
});

describe("the designer's own", () => {
  const given = settings(`
name: The  Salt Shed
line: Squares to crochet
about: |
  First paragraph
  goes on.

  Second paragraph.
links:
  - {text: My shop, to: "https://example.org/shop"}
  - {text: Write to me, to: "mailto:me@example.org"}
footer: Made by hand.
colours: {accent: "#1d5b4f"}
`);

  test('name, words and links are read, paragraph by paragraph', () => {
    expect(given).toMatchObject({
      name: 'The Salt Shed',
      line: 'Squares to crochet',
      about: ['First paragraph goes on.', 'Second paragraph.'],
      links: [
        { text: 'My shop', to: 'https://example.org/shop' },
        { text: 'Write to me', to: 'mailto:me@example.org' },
      ],
      footer: ['Made by hand.'],
      palette: { light: { madder: '#1d5b4f' } },
    });
  });

  test.each([
    ['name: ""', 1, '"name" is what the site is called'],
    ['name: [a, b]', 1, '"name" is what the site is called'],
    ['\nlinks:\n  - {text: Shop, to: "javascript:alert(1)"}', 3, '"links to" is a whole address'],
    ['links:\n  - {to: "https://example.org"}', 2, '"links text" is what the link says'],
    ['portrait: {file: me.jpg}', 1, '"portrait shows" is what the picture shows'],
    ['portrait: {file: me.jpg, show: Me}', 1, 'there is no "show" here; did you mean "shows"?'],
    ['colours:\n  accent: green', 2, '"colours accent" is a colour code in quotes'],
    ['colours:\n  accent: "#e08a8a"', 2, 'the nearest that would do is "#'],
    ['colours:\n  dark:\n    acent: "#fff"', 3, 'did you mean "accent"?'],
    ['colors: {accent: "#1d5b4f"}', 1, 'did you mean "colours"?'],
  ])('%j is told', (file, line, words) => {
    const read = readSettings(file);
    if (read.kind === 'read') throw new Error('it was taken');
    expect(read.why).toContain(`site.yaml, line ${line}: `);
    expect(read.why).toContain(words);
  });
});
