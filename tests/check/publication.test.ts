/** What a technical editor would and would not say of a pattern: the edges of each rule. */

import { describe, expect, test } from 'vitest';
import { checkPattern, compileText } from '../../src/compile.ts';

interface Given {
  readonly keys?: string;
  readonly yarn?: string;
  readonly work?: string;
  readonly terms?: 'US' | 'UK';
}

const PLAIN = `Ch 25.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (24 sc)
Rows 2-20: Ch 1, sc in each st across, turn. (24 sc)`;
const UK_PLAIN = `25 ch.
Row 1: Dc in 2nd ch from hook and in each ch across, turn. (24 dc)`;

function found({ keys = '', yarn = '{colour: reed, weight: 4, fibre: wool}', work, terms = 'US' }: Given) {
  const rows = (work ?? (terms === 'US' ? PLAIN : UK_PLAIN)).split('\n').map((row) => `      ${row}`);
  const text = `title: Mat
terms: ${terms}
yarn:
  A: ${yarn}
${keys}
parts:
  - name: Mat
    work: |
${rows.join('\n')}
`;
  return checkPattern({ file: 'mat.yaml', text }, 'mat').map(({ code, span, sizes, labels }) => ({
    code,
    at: text.slice(span.start, span.end),
    sizes,
    labels: labels.map((label) => text.slice(label.span.start, label.span.end)),
  }));
}

const codes = (given: Given) => found(given).map(({ code }) => code);
const SC_GAUGE = 'gauge: {stitches: 16, rows: 18, over: 10 cm, of: single crochet}';
const width = (cm: number) => `${SC_GAUGE}\nsizes: [{name: one, width: ${cm} cm}]`;
const height = (cm: number) => `${SC_GAUGE}\nsizes: [{name: one, height: ${cm} cm}]`;

describe('a finished size', () => {
  // 24 sc at 16 to 10 cm are 15 cm; a quarter inch, 0.635 cm, is less than 5 % from 12.7 cm up.
  test.each([
    [15, true],
    [15.7, true],
    [14.3, true],
    [15.9, false],
    [14.2, false],
  ])('of %d cm wide may stand: %s', (cm, stands) => {
    expect(codes({ keys: width(cm) })).toEqual(stands ? [] : ['size/otherwise']);
  });

  // 20 rows at 18 to 10 cm are 11.1 cm.
  test.each([
    [11, true],
    [11.7, true],
    [12, false],
  ])('of %d cm high may stand: %s', (cm, stands) => {
    expect(codes({ keys: height(cm) })).toEqual(stands ? [] : ['size/otherwise']);
  });

  test('found from the gauge is as near as half a repeat, and stands', () => {
    // A repeat of 12 sc is 7.5 cm: two are 15 cm, three 22.5 cm, and 18 cm is 3 cm from the nearer.
    const work = `Ch a multiple of 12 plus 1.
Row 1: Sc in 2nd ch from hook and in each ch across, turn.
Row 2: Ch 1, sc in each st across.`;
    expect(codes({ keys: width(18), work })).toEqual([]);
  });

  test('of one of several pieces is left alone', () => {
    const second = `${width(30)}\nfinishing: Sew.`;
    const text = (parts: string) => `title: Bag\nterms: US\n${second}\nparts:\n${parts}`;
    const part = (name: string) =>
      `  - name: ${name}\n    work: |\n      Ch 25.\n      Row 1: Sc in 2nd ch from hook and in each ch across.\n`;
    const all = (parts: string) =>
      checkPattern({ file: 'a', text: text(parts) }, 'a').map(({ code }) => code);
    expect(all(part('Front'))).toEqual(['size/otherwise']);
    expect(all(part('Front') + part('Back'))).toEqual([]);
  });

  test('is not weighed while the work has an error', () => {
    const work = PLAIN.replace('(24 sc)', '(23 sc)');
    expect(codes({ keys: width(30), work })).toEqual(['count/mismatch']);
  });
});

describe('sizes', () => {
  const sized = (numbers: string, sizes: string) => ({
    keys: `${SC_GAUGE}\nsizes: ${sizes}`,
    work: `Ch ${numbers}.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRows 2-20: Ch 1, sc in each st across, turn.`,
  });
  const three = '[{name: S}, {name: M}, {name: L}]';

  test('may be alike, but not fall', () => {
    expect(codes(sized('25 (25, 33)', three))).toEqual([]);
    expect(found(sized('25 (41, 33)', three))).toMatchObject([{ code: 'size/falling', at: '{name: L}' }]);
    expect(codes(sized('41 (33, 25)', three))).toEqual(['size/falling', 'size/falling']);
  });

  test('narrower and longer are in no wrong order', () => {
    const work = `Ch 41 (25).
Row 1: Sc in 2nd ch from hook and in each ch across, turn.
Rows 2-20 (60): Ch 1, sc in each st across, turn.`;
    expect(codes({ keys: `${SC_GAUGE}\nsizes: [{name: mat}, {name: runner}]`, work })).toEqual([]);
  });
});

describe('a list of numbers', () => {
  const three = 'sizes: [{name: S}, {name: M}, {name: L}]';
  const work = (chain: string, rows: string, part = '') =>
    `Ch ${chain}.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.${part}\nRows 2-${rows}: Ch 1, sc in each st across, turn.`;

  test.each([
    ['25 (41, 33)', '20 (24, 28)', ['size/numbers-fall']],
    ['25 (33, 41)', '20 (28, 24)', []],
    ['41 (33, 25)', '20 (24, 28)', []],
    ['25 (41, 33)', '20', []],
  ])('Ch %s with Rows 2-%s: %j', (chain, rows, expected) => {
    expect(codes({ keys: three, work: work(chain, rows) })).toEqual(expected);
  });

  test('is not doubted beside another that falls', () => {
    const falling = work('25 (41, 33)', '20 (24, 28)', ' (24 (40, 32) sc)');
    expect(codes({ keys: three, work: falling })).toEqual([]);
  });
});

describe('gauge and hook for a yarn weight', () => {
  const gauge = (stitches: number, of: string) =>
    `gauge: {stitches: ${stitches}, rows: 18, over: 10 cm, of: ${of}}`;

  // Weight 4: 11 to 14, with weights 3 and 5 beside it 8 to 17.
  test.each([
    [8, 'single crochet', []],
    [17, 'single crochet', []],
    [17, 'double crochet', []],
    [18, 'single crochet', ['gauge/unlikely']],
    [7, 'single crochet', ['gauge/unlikely']],
    [30, 'shell pattern', []],
  ])('%d of %s in weight 4: %j', (stitches, of, expected) => {
    expect(codes({ keys: gauge(stitches, of) })).toEqual(expected);
  });

  // Weight 4: 5.5 to 6.5 mm, with the weights beside it 4.5 to 9 mm.
  test.each([
    ['4.5 mm', []],
    ['9 mm', []],
    ['4.25 mm', ['hook/unlikely']],
    ['10 mm', ['hook/unlikely']],
  ])('a hook of %s: %j', (hook, expected) => {
    expect(codes({ keys: `hook: ${hook}` })).toEqual(expected);
  });

  test('a toy is worked tightly, but not loosely', () => {
    expect(codes({ keys: `for: toy\nhook: 2.5 mm\n${gauge(26, 'single crochet')}` })).toEqual([]);
    expect(codes({ keys: `for: toy\nhook: 10 mm\n${gauge(6, 'single crochet')}` })).toEqual([
      'hook/unlikely',
      'gauge/unlikely',
    ]);
  });

  test('two strands held together are no one weight', () => {
    expect(codes({ keys: 'hook: 10 mm\nnotes: Worked with two strands held together.' })).toEqual([]);
  });

  test('the thickest yarn has no largest hook', () => {
    expect(codes({ keys: 'hook: 30 mm', yarn: '{colour: reed, weight: 7, fibre: wool}' })).toEqual([]);
  });
});

describe('the letter of a hook', () => {
  test.each([
    ['5 mm (H-8)', []],
    ['5 mm (H)', []],
    ['4.25 mm (G)', []],
    ['4 mm (G)', []],
    ['4.5 mm (7)', []],
    ['6.5 mm (K-10 1/2)', []],
    ['9 mm (N/13)', []],
    ['5.7 mm (Z-1)', []],
    ['5 mm (J)', ['hook/letter']],
    ['4.5 mm (G-7)', []],
    ['4.5 mm (J-7)', ['hook/letter']],
    ['5 mm (H-9)', ['hook/letter']],
    ['6 mm (10½)', ['hook/letter']],
  ])('%s: %j', (hook, expected) => {
    expect(
      codes({ keys: `hook: ${hook}`, yarn: '{colour: reed, weight: 4, fibre: wool}' }).filter(
        (code) => code !== 'hook/unlikely',
      ),
    ).toEqual(expected);
  });

  test('is told of a pasted text too', () => {
    const text =
      'Mat\nUS terms\n\nMaterials\n5 mm (I-9) hook\n\nCh 5.\nRow 1: Sc in 2nd ch from hook and in each ch across. (4 sc)\n';
    const { diagnostics } = compileText({ file: 'mat.txt', text }, 'mat');
    expect(diagnostics.map(({ code }) => code)).toEqual(['hook/letter']);
  });
});

describe('balls to buy', () => {
  const yarn = (balls: string) =>
    `{colour: reed, weight: 4, fibre: wool, ball: {length: 10 m}, balls: ${balls}}`;

  // 480 sc of 6.25 mm take 480 x 10.6 x 6.25 mm = 31.8 m; with chain, tails and a tenth that is under 40 m.
  test('are enough or too few by the measured length', () => {
    expect(codes({ keys: SC_GAUGE, yarn: yarn('3') })).toEqual(['yarn/too-little']);
    expect(codes({ keys: SC_GAUGE, yarn: yarn('4') })).toEqual([]);
  });

  test('of a size that is short are told with the size, once for each yarn', () => {
    const sizes = `${SC_GAUGE}\nsizes: [{name: S}, {name: L}]`;
    const work = PLAIN.replace('Ch 25', 'Ch 25 (49)').replaceAll('(24 sc)', '(24 (48) sc)');
    expect(found({ keys: sizes, yarn: yarn('4 (5)'), work })).toMatchObject([
      { code: 'yarn/too-little', at: '4 (5)', sizes: ['L'] },
    ]);
  });

  test('are as many as the sizes', () => {
    expect(codes({ yarn: yarn('2 (3)') })).toEqual(['size/list-length']);
  });
});

describe('words of the other terms', () => {
  test.each([
    ['US', 'notes: Work 2 htr more.', 'htr'],
    ['US', 'notes: Miss 2 sts.', 'Miss'],
    ['US', 'finishing: Work straight to the end.', 'Work straight'],
    ['US', 'about: Made in half trebles.', 'half treble'],
    ['UK', 'notes: Check your gauge.', 'gauge'],
    ['UK', 'notes: Sk the last st.', 'Sk'],
    ['UK', 'finishing: [Weave in ends., Edge it in single crochet.]', 'single crochet'],
  ] as const)('in %s terms, "%s" has %s', (terms, keys, at) => {
    expect(found({ terms, keys })).toMatchObject([{ code: 'terms/mixed', at }]);
  });

  test.each([
    ['US', 'notes: Keep the tension even.'],
    ['US', 'notes: You cannot miss it. Do not miss the last chain.'],
    ['US', 'notes: A colour of your own.'],
    ['US', 'notes: In UK terms sc is dc and hdc is htr.'],
    ['UK', 'notes: Yo, and draw through both loops.'],
    ['UK', 'notes: Skip the edging if you like.'],
    ['UK', 'notes: Work 2 dc, tr or dtr in the corner.'],
    ['UK', 'about: Worked at a close tension.'],
  ] as const)('in %s terms, "%s" has none', (terms, keys) => expect(found({ terms, keys })).toEqual([]));
});

describe('a chain that counts', () => {
  const rows = (says: string) => `${PLAIN}\nRow 21: Ch 3 (${says}), dc in next 23 sts.`;
  const notCounting = 'does not count as a st';

  test.each([
    ['Ch 3 counts as a dc throughout.', true],
    ['Turning chains count as a stitch.', true],
    ['The beginning ch counts as a stitch.', true],
    ['Ch 2 counts as a dc throughout.', false],
    ['Turning chains count as a stitch unless otherwise stated.', false],
    ['The skipped chains count as a stitch.', false],
  ])('by the note "%s" is said two ways: %s', (note, twoWays) => {
    const work = `${PLAIN}\nRow 21: Ch 3 (${notCounting}), dc in each st across.`;
    expect(codes({ keys: `notes: "${note}"`, work })).toEqual(twoWays ? ['chain/two-ways'] : []);
  });

  test('is told with both places', () => {
    const given = {
      keys: 'notes: Plain. Ch 3 does not count as a st.',
      work: rows('counts as dc').replace('dc in next', 'sk first st, dc in next'),
    };
    expect(found(given)).toMatchObject([
      { code: 'chain/two-ways', at: 'Ch 3 (counts as dc)', labels: ['Ch 3 does not count as a st'] },
    ]);
  });

  test('"here and throughout" holds for later rows', () => {
    const work = `${PLAIN}
Row 21: Ch 3 (counts as dc here and throughout), sk first st, dc in next 23 sts, turn.
Row 22: Ch 3 (${notCounting}), dc in each st across.`;
    expect(found({ work })).toMatchObject([
      {
        code: 'chain/two-ways',
        at: `Ch 3 (${notCounting})`,
        labels: ['Ch 3 (counts as dc here and throughout)'],
      },
    ]);
  });

  test('is another matter where it is the ch 1 of single crochet', () => {
    const work = `${PLAIN}\nRow 21: Ch 1 (${notCounting}), sc in each st across.`;
    expect(codes({ keys: 'notes: Turning chains count as a stitch.', work })).toEqual([]);
  });
});

describe('names that are used', () => {
  test('take in special stitches within special stitches, in whatever order they are described', () => {
    const keys = `special:
  leaf: dc3tog in same st
  sprig: (leaf, ch 1, leaf) in same st
  bough: (sprig, ch 1, sprig) in same st`;
    const work =
      'Ch 25.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in first st, bough in next st, sc in next 22 sts.';
    expect(codes({ keys, work })).toEqual([]);
    const unused = work.replace('bough', 'sprig');
    expect(found({ keys, work: unused })).toMatchObject([
      { code: 'special/unused', at: expect.stringContaining('sprig, ch 1') },
    ]);
  });

  test('take in a later part that is worked onto the first', () => {
    const text = (yarn: string) => `title: Mat
terms: US
yarn:
  A: {colour: reed, weight: 4, fibre: wool}
  B: {colour: foam, weight: 4, fibre: wool}
special:
  corner: 3 sc in same st
parts:
  - name: Mat
    work: |
      With A, ch 5.
      Row 1: Sc in 2nd ch from hook and in each ch across, turn. (4 sc)
  - name: Edging
    onto: Mat
    work: |
      Row 1: ${yarn}, ch 1, corner in first st, sc in next 2 sts, corner in last st.
`;
    const all = (yarn: string) => checkPattern({ file: 'a', text: text(yarn) }, 'a').map(({ code }) => code);
    expect(all('With B')).toEqual([]);
    expect(all('With A')).toEqual(['yarn/unused']);
    expect(all('With C')).toContain('yarn/unlisted');
  });
});

describe('silencing', () => {
  const unusedYarn = (allow: string) => `title: Mat
terms: US
yarn:
  A: {colour: reed, weight: 4, fibre: wool}
  B: {colour: foam, weight: 4, fibre: wool}
parts:
  - name: Mat
    work: |
      With A, ch 5.
      Row 1: Sc in 2nd ch from hook and in each ch across.
allow: ${allow}
`;
  const all = (allow: string) =>
    checkPattern({ file: 'a', text: unusedYarn(allow) }, 'a').map(
      ({ code, severity }) => `${severity} ${code}`,
    );

  test('takes a warning with a reason, and no other', () => {
    expect(all('{}')).toEqual(['warning yarn/unused']);
    expect(all('{yarn/unused: It is for later.}')).toEqual([]);
    expect(all('{special/unused: It is for later.}')).toEqual(['warning yarn/unused', 'note allow/unneeded']);
  });

  test('needs words for a reason', () => {
    expect(all('{yarn/unused: ""}')).toEqual(['warning yarn/unused', 'error allow/no-reason']);
    expect(all('{yarn/unused: " "}')).toEqual(['warning yarn/unused', 'error allow/no-reason']);
  });

  test('never takes an error, nor what is said of the silencing', () => {
    expect(all('{count/mismatch: No.}')).toEqual(['warning yarn/unused', 'error allow/error']);
    expect(all('{allow/unneeded: No.}')).toEqual(['warning yarn/unused', 'error allow/error']);
    expect(all('{toString: No.}')).toEqual(['warning yarn/unused', 'error allow/unknown']);
  });

  test('is not called unneeded while an error may hide what it is for', () => {
    const text = unusedYarn('{yarn/unused: It is for later.}').replace('in each ch', 'in each blorp');
    const found = checkPattern({ file: 'a', text }, 'a').map(({ code }) => code);
    expect(found).not.toContain('allow/unneeded');
    expect(found.length).toBeGreaterThan(0);
  });

  test('a list of another kind is a fault of the file', () => {
    expect(all('yarn/unused')).toEqual(['warning yarn/unused', 'error file/wrong-kind']);
  });
});

describe('a finished size in a sentence of a pasted text asks for a gauge', () => {
  const said = (line: string) =>
    compileText(
      {
        file: 'mat.txt',
        text: `Mat\nUS terms\n\n${line}\n\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across. (12 sc)\n`,
      },
      'mat',
    ).diagnostics.map(({ code }) => code);

  test.each([
    ['You need: worsted cotton, a needle. The mat is around 4 and a half inches across.', true],
    ['The mat comes out about 9 inches square.', true],
    ['The mat comes out about 9 inches square. Gauge is not important.', false],
    ['One square is 13 cm across.', false],
    ['The yarn is sold in cakes 9 inches across town.', false],
    ['Rounds 1-4 = 10 cm across.', false],
  ])('%s: %s', (line, asks) => expect(said(line).includes('gauge/missing')).toBe(asks));
});

test('a round that ends in a slip stitch into the round below needs no join', () => {
  const rounds = (end: string) =>
    codes({
      work: `Rnd 1: Ch 1, 10 sc in magic ring, join with sl st in first sc. (10 sc)\nRnd 2: *Ch 3, dc in next st, ${end}; rep from * around. Fasten off.`,
    }).filter((code) => code === 'row/no-join');
  expect(rounds('sl st in next st')).toEqual([]);
  expect(rounds('sc in next st')).toEqual(['row/no-join']);
  expect(rounds('sc in next st, ch 3, sl st in 3rd ch from hook')).toEqual(['row/no-join']);
});

test('a last round of slip stitches and picots needs no join, one that rises does', () => {
  const last = (stitch: string) =>
    codes({
      work: `Rnd 1: Ch 1, 10 sc in magic ring, join with sl st in first sc. (10 sc)\nRnd 2: [${stitch} in next 2 sts, ch 3, sl st in 3rd ch from hook] 5 times. Fasten off.`,
    }).filter((code) => code === 'row/no-join');
  expect(last('Sl st')).toEqual([]);
  expect(last('Sc')).toEqual(['row/no-join']);
});
