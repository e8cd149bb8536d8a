/** What is read aloud: whole scripts as files that are read before they are kept, and what holds of every sentence. */

import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { wrap } from '../../src/commands/explain-table.ts';
import { ABBREVIATIONS, abbreviationTerms } from '../../src/stitches/abbreviations.ts';
import { STITCHES, termsOf } from '../../src/stitches/table.ts';
import { pausesOf } from '../../src/teach/pauses.ts';
import { type Script, scriptOf } from '../../src/teach/script.ts';
import { scriptText } from '../../src/teach/script-text.ts';
import { compiledFile, lessonFrom, lessonOf, ROOT } from './lesson.ts';

const DEMOS = [
  ['lantern-square', 1, 'US'],
  ['pebble-basket', 0, 'UK'],
  ['quarry-hexagon', 0, 'UK'],
  ['sandbar-square', 0, 'US'],
  ['two-tides-square', 0, 'US'],
] as const;

test.each(DEMOS)('the whole script of %s', async (slug, size, terms) => {
  const lesson = lessonOf(compiledFile(`patterns/${slug}/pattern.yaml`), size, terms);
  const text = scriptText(scriptOf(lesson), pausesOf(lesson), wrap, 90);
  await expect(`${text}\n`).toMatchFileSnapshot(`scripts/${slug}-${terms.toLowerCase()}.txt`);
});

/** Counted by hand from the instructions, size by size. */
const COUNTED: readonly (readonly [string, number, readonly string[]])[] = [
  [
    // 8 round the ring; 4 corners of 2 and 1 on each side; one more on each side every round; 28 + 24 x 2 + 4 x 4.
    'lantern-square',
    1,
    [
      'That gives you eight clusters and eight chain-two spaces.',
      'That gives you twelve clusters, four chain-three spaces and eight chain-two spaces.',
      'That gives you sixteen clusters, four chain-three spaces and twelve chain-two spaces.',
      'Stitches alone, round by round, come to twenty, twenty-four and twenty-eight.',
      'The last round has twenty-eight clusters, four chain-three spaces and twenty-four chain-two spaces.',
      'That gives you ninety-two single crochet and four chain-two spaces.',
    ],
  ],
  [
    // 6 more each round up to 48.
    'pebble-basket',
    1,
    [
      'That gives you six double crochet.',
      'That gives you twelve double crochet.',
      'That gives you eighteen double crochet.',
      'That gives you twenty-four double crochet.',
      'That gives you thirty double crochet.',
      'That gives you thirty-six double crochet.',
      'That gives you forty-two double crochet.',
      'That gives you forty-eight double crochet.',
      'That gives you forty-eight double crochet.',
      'Each round has forty-eight double crochet.',
      'That gives you forty-eight slip stitches.',
    ],
  ],
  [
    // 27 across; 2 x 25 + 2 x 25 along the edges and 4 x 3 in the corners.
    'two-tides-square',
    0,
    [
      ...Array(6).fill('That gives you twenty-seven stitches.'),
      'Each row has twenty-seven stitches.',
      'That gives you one hundred twelve stitches.',
    ],
  ],
];

test.each(COUNTED)('the counts of %s are those counted by hand', (slug, size, counts) => {
  const { blocks } = scriptOf(lessonOf(compiledFile(`patterns/${slug}/pattern.yaml`), size));
  expect(blocks.flatMap(({ after }) => after)).toEqual(counts);
});

function saidIn({ opening, blocks, closing }: Script): string[] {
  return [
    ...opening,
    ...blocks.flatMap(({ before, stitches, work, after }) => [...before, ...stitches, ...work, ...after]),
    ...closing,
  ];
}

/** Every short form of either terms, but words and single letters. */
const SHORT = new Set(
  (['US', 'UK'] as const).flatMap((terms) => [
    ...ABBREVIATIONS.map((row) => abbreviationTerms(row, terms).abbr),
    ...STITCHES.map((row) => termsOf(row, terms).abbr),
  ]),
);
for (const word of ['skip', 'miss', 'bullion', 'A', 'B', 'C', 'cross', 'puff', 'popcorn', 'bobble', 'work'])
  SHORT.delete(word);

describe('of every pattern there is', () => {
  const files = ['patterns', 'tests/patterns', 'tests/mistakes/held-out'].flatMap((folder) =>
    readdirSync(path.join(ROOT, folder))
      .map((name) => `${folder}/${name}/pattern.yaml`)
      .filter((file) => existsSync(path.join(ROOT, file))),
  );

  test('there are enough of them', () => expect(files.length).toBeGreaterThan(40));

  test.each(files)('%s is said in whole words, every row once', (file) => {
    const compiled = compiledFile(file);
    const names = [
      ...(compiled.pattern?.sizes ?? []).map(({ name }) => name),
      ...(compiled.pattern?.yarns ?? []).map(({ letter }) => letter),
    ];
    for (const [index, { fabric }] of compiled.sizes.entries())
      for (const terms of ['US', 'UK'] as const) {
        const script = scriptOf(lessonOf(compiled, index, terms));
        for (const sentence of saidIn(script)) {
          expect(sentence).toMatch(/^[“"]?\p{Lu}[^\n]*[.!?”]$/u);
          expect(sentence).not.toMatch(
            /[\d*†‡[\]()_=/+–]|\s[.,;:]|[,;:]{2}|\.\.|\bundefined\b|\bnull\b| {2}/,
          );
          const short = sentence
            .split(/[^\p{L}\d-]+/u)
            .filter((word) => SHORT.has(word) && !names.includes(word));
          expect(short, sentence).toEqual([]);
        }
        const told = script.blocks.flatMap(({ rows }) => rows);
        expect(told).toEqual(fabric.rows.map((_, row) => row));
        expect(script.opening[1]).toBe(`All stitches have their ${terms} names.`);
      }
  });
});

describe('a repeat', () => {
  const work = (line: string, row = 'Row 1: Sc in 2nd ch from hook and in each ch across, turn.') =>
    scriptOf(lessonFrom(`Ch 14.\n${row}\nRow 2: ${line}`))
      .blocks.at(-1)
      ?.work.join(' ') ?? '';

  test('says where it begins, how far it goes and how often that is', () => {
    expect(work('Ch 1, *sc in next st, ch 1, sk next st; rep from * to last st, sc in last st, turn.')).toBe(
      'Chain one. The repeat begins here: single crochet in the next stitch, chain one, then skip the next stitch. Now repeat that all the way to the last stitch, which makes six times in all. Single crochet in the last stitch. Turn your work.',
    );
    expect(
      work('Ch 1, sc in first st, *2 sc in next st, sc in next st; rep from * 5 more times, turn.'),
    ).toContain('Now repeat that five more times.');
  });

  test('whose last time stops early says what is left out', () => {
    expect(
      work(
        'Ch 1, sc in first st, *sk next st, sc in next st**, ch 2; rep from * across, ending last rep at **, turn.',
      ),
    ).toContain('The last time, leave out the end: chain two.');
  });

  test('within a repeat is told from it', () => {
    const said = work(
      'Ch 1, *sc in next st, †ch 1, sk next st, sc in next st; rep from † twice more, ch 2; rep from * across, turn.',
      'Row 1: Sc in 2nd ch from hook and in each of next 12 ch, sc in same ch as last sc, turn.',
    );
    expect(said).toContain(
      'An inner repeat begins here: chain one, skip the next stitch, then single crochet',
    );
    expect(said).toContain('Now repeat that twice more.');
    expect(said).toContain('Now repeat all of that, from where the repeat began, all the way across');
  });

  test('worked more often in each of several rounds is not given a number', () => {
    const { blocks } = scriptOf(
      lessonFrom('Rnd 1: 6 sc in magic ring.\nRnds 2-4: *2 sc in next st; rep from * around.'),
    );
    expect(blocks.at(-1)?.work.join(' ')).toBe(
      'The repeat begins here: work two single crochet in the next stitch. Now repeat that all the way around.',
    );
    expect(blocks.at(-1)?.after).toEqual(['The rounds have twelve, twenty-four and forty-eight stitches.']);
  });

  test('that fits once is not said to be repeated', () => {
    expect(work('Ch 1, sc in first 11 sts, *sc in next 2 sts; rep from * across, turn.')).toContain(
      'It fits once, so there is nothing to repeat.',
    );
  });

  test('in brackets is announced before it comes', () => {
    expect(work('Ch 1, sc in first st, [ch 1, sk next st, sc in next st] 6 times, turn.')).toContain(
      'Do this six times: chain one, skip the next stitch, then single crochet in the next stitch.',
    );
  });
});

test('an aside becomes a sentence, and a group says its place first', () => {
  const { blocks } = scriptOf(
    lessonFrom(`Ch 10.
      Row 1: Dc in 4th ch from hook (skipped 3 ch count as dc), dc in each ch across, turn.
      Row 2: Ch 3 (counts as dc here and throughout), (dc, ch 1, dc) in next st, dc in each st across, turn.`),
  );
  expect(blocks.map(({ work }) => work.join(' ')).slice(1)).toEqual([
    'Double crochet in the fourth chain from the hook. The skipped three chains count as a double crochet. Double crochet in each chain across. Turn your work.',
    'Chain three. That counts as a double crochet here and throughout. In the next stitch, work a double crochet, chain one and a double crochet. Double crochet in each stitch across. Turn your work.',
  ]);
});

test('a special stitch is explained where it is met first, and nowhere else', () => {
  const { blocks } = scriptOf(
    lessonFrom(
      `Ch 14.
      Row 1: Sc in 2nd ch from hook and in each ch across, turn.
      Row 2: Ch 1, sc in first st, [sk next 2 sts, shell in next st, sk next 2 sts, sc in next st] twice, turn.
      Row 3: Ch 1, sc in each st across, turn.
      Row 4: Ch 1, sc in first st, [sk next 2 sts, shell in next st, sk next 2 sts, sc in next st] twice, turn.`,
      'special: {shell: 5 dc in same st}\n',
    ),
  );
  const explained = blocks.map(({ stitches }) => stitches.length > 0);
  expect(explained).toEqual([false, false, true, false, false]);
  expect(blocks[2]?.stitches).toEqual([
    'Here is a new stitch, a shell. This is how it is made. Work five double crochet in the same stitch.',
  ]);
});

test('a bare count is one of stitches, and a tail belongs to the yarn it is left of', () => {
  const { blocks } = scriptOf(
    lessonFrom(
      'Rnd 1: 6 sc in magic ring. (6)\nRnd 2: [Sc2tog] 3 times. (3)\nFasten off, leaving a long tail.',
    ),
  );
  expect(blocks.map(({ after }) => after.join(' '))).toEqual([
    'That gives you six stitches.',
    'That gives you three stitches.',
    '',
  ]);
  expect(blocks.at(-1)?.work).toEqual(['Fasten off, leaving a long tail.']);
});

test('a special stitch over several stitches is not said to go into each of them', () => {
  const said = saidIn(scriptOf(lessonOf(compiledFile('tests/patterns/crossed-dc/pattern.yaml'), 0))).join(
    ' ',
  );
  expect(said).toContain('work a crossed double crochet in the next two stitches');
});
