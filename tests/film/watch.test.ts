/** Times of a film -> chapters and links: whose row a time is, in every size, and where a link leads. */

import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import { chaptersOf } from '../../src/film/chapters.ts';
import { shownFilms } from '../../src/film/shown-films.ts';
import { hostOf, watchLinks } from '../../src/film/watch-links.ts';
import { rowsByLine } from '../../src/wording/line-rows.ts';

function basket(film: string) {
  const text = `title: Bowl
terms: US
sizes:
  - {name: small}
  - {name: large}
${film}
parts:
  - name: Bowl
    work: |
      Rnd 1: 6 sc in magic ring. (6 sc)
      Rnd 2: 2 sc in each st around. (12 sc)
      Rnd - (3): [Sc in next st, 2 sc in next st] 6 times. (18 sc)
      Rnd 3 (4): Sc in back loop only of each st around. (12 (18) sc)
      Rnds 4 (5)-6 (8): Rep Rnd 3 (4).
      Rnd 7 (9): Sc in each st around.
      Fasten off.
`;
  const { pattern, sizes, diagnostics } = compilePattern({ file: 'bowl.yaml', text }, 'bowl');
  if (pattern === null) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  const fabrics = sizes.map(({ fabric }) => fabric);
  const linksIn = (index: number) => {
    const fabric = fabrics[index];
    if (fabric === undefined) throw new Error('no such size');
    const watchOf = watchLinks(pattern.parts, { fabric, index }, shownFilms(pattern, fabrics));
    return [...rowsByLine(fabric, 'Bowl')].flatMap(([line, rows]) =>
      watchOf('Bowl', rows).map(({ text, href }) => `${line}: ${text} -> ${href}`),
    );
  };
  const [film1] = pattern.films;
  if (film1 === undefined) throw new Error('no film');
  return { linksIn, film: film1, chapters: chaptersOf(film1, pattern, fabrics), codes: diagnostics };
}

const FILM = `film:
  address: https://films.example.org/bowl
  length: "12:00"
  size: small
  times:
    Rnd 1: "0:30"
    Rnd 2: 2:05.5
    Rnd 3: "4:10"
    Rnd 5: "6:00"
  topics: {Ends: "10:00"}`;

describe('a film of the small size', () => {
  const { linksIn, chapters, film } = basket(FILM);

  test('has a link beside each of its own rows', () => {
    expect(linksIn(0)).toEqual([
      '0: Watch round 1 -> https://films.example.org/bowl#t=30',
      '1: Watch round 2 -> https://films.example.org/bowl#t=125.5',
      '3: Watch round 3 -> https://films.example.org/bowl#t=250',
      '4: Watch round 5 -> https://films.example.org/bowl#t=360',
    ]);
  });

  test('leads a maker of the large size to the row made the same way, under its number in the film', () => {
    expect(linksIn(1)).toEqual([
      '0: Watch round 1 -> https://films.example.org/bowl#t=30',
      '1: Watch round 2 -> https://films.example.org/bowl#t=125.5',
      '3: Watch round 3 of the size “small”, made the same way -> https://films.example.org/bowl#t=250',
      '4: Watch round 5 of the size “small”, made the same way -> https://films.example.org/bowl#t=360',
    ]);
  });

  test('has a chapter from its beginning to its end, each as long as to the next', () => {
    expect(chapters.map(({ seconds, endSeconds, title }) => [seconds, endSeconds, title])).toEqual([
      [0, 30, 'Beginning'],
      [30, 125.5, 'Round 1'],
      [125.5, 250, 'Round 2'],
      [250, 360, 'Round 3'],
      [360, 600, 'Round 5'],
      [600, 720, 'Ends'],
    ]);
  });

  test('says which host its links lead to', () => expect(hostOf(film)).toBe('films.example.org'));
});

test('a row that only repeats others leads to those, and a range has one chapter for all its rows', () => {
  const repeated = basket(FILM.replace('    Rnd 5: "6:00"\n', ''));
  expect(repeated.linksIn(0)).toContain(
    '4: Watch round 3, which is repeated here -> https://films.example.org/bowl#t=250',
  );
  const range = basket(FILM.replace('Rnd 5:', 'Rnds 4-6:'));
  expect(range.chapters.map(({ title }) => title)).toContain('Rounds 4 to 6');
  expect(range.linksIn(0)).toContain('4: Watch rounds 4 to 6 -> https://films.example.org/bowl#t=360');
});

test('rows of a later part are named as they are numbered there, however long the part before is', () => {
  const text = `title: Mat
terms: US
gauge: {stitches: 16, rows: 18, over: 10 cm}
sizes:
  - {name: small, rows: 8}
  - {name: large, rows: 14}
film:
  address: https://films.example.org/mat
  times:
    Mat: {Row 2: "1:00"}
    Edging: {Rnd 1: "4:00", Rnd 2: "6:00"}
parts:
  - name: Mat
    work: |
      Ch 11.
      Row 1: Sc in 2nd ch from hook and in each ch across, turn.
      Row 2: Ch 1, sc in each st across, turn.
      Rows 3 on: Rep Row 2 to height.
  - name: Edging
    onto: Mat
    work: |
      Rnd 1: Ch 1, sc in each st across, turn.
      Rnd 2: Ch 1, sc in each st across.
`;
  const { pattern, sizes } = compilePattern({ file: 'mat.yaml', text }, 'mat');
  if (pattern === null) throw new Error('not read');
  const fabrics = sizes.map(({ fabric }) => fabric);
  for (const [index, fabric] of fabrics.entries()) {
    const watchOf = watchLinks(pattern.parts, { fabric, index }, shownFilms(pattern, fabrics));
    const words = [...rowsByLine(fabric, 'Edging').values()].flatMap((rows) =>
      watchOf('Edging', rows).map(({ text }) => text),
    );
    expect(words).toEqual(['Watch round 1', 'Watch round 2']);
  }
});

test('an address of the form that is said leads to the seconds', () => {
  const { linksIn } = basket(FILM.replace('  size:', '  at: "?from={seconds}&to=end"\n  size:'));
  expect(linksIn(0)[0]).toBe('0: Watch round 1 -> https://films.example.org/bowl?from=30&to=end');
});

test('what begins at the same time is one chapter, and what lies beyond the end is none', () => {
  const { chapters } = basket(FILM.replace('"10:00"', '"6:00"').replace('"12:00"', '"6:00"'));
  expect(chapters.map(({ title }) => title)).toEqual(['Beginning', 'Round 1', 'Round 2', 'Round 3']);
  const joined = basket(FILM.replace('"10:00"', '"6:00"'));
  expect(joined.chapters.at(-1)?.title).toBe('Ends and Round 5');
});

test.each([
  'javascript:alert(1)',
  'https://films.example.org/a"b',
  'https://films.example.org/a#t=3',
  'ftp://films.example.org/a',
])('no page ever links to %s', (address) => {
  expect(() => basket(`film:\n  address: '${address}'`)).toThrow('no film');
});
