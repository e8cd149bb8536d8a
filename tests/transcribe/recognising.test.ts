/** Single lines as they are pasted, and what each is taken for. */

import { describe, expect, test } from 'vitest';
import { plainText } from '../../src/source/mapped-text.ts';
import { deriveWork } from '../../src/transcribe/derive-work.ts';
import { readDate } from '../../src/transcribe/read-front.ts';
import { readHook } from '../../src/transcribe/read-hook.ts';
import { rowLabel } from '../../src/transcribe/row-labels.ts';
import { transcribe } from '../../src/transcribe/transcribe.ts';

const read = (text: string) => transcribe({ file: 'pasted.txt', text });
const front = (line: string) => read(`A Title\n\n${line}\n\nRow 1: Ch 3, turn.`);

describe('the label of a row', () => {
  test.each([
    ['Row 1: Ch 1, sc across.', 'Row 1: '],
    ['ROW 12 (WS) Ch 1, sc across.', 'ROW 12 (WS)'],
    ['Rnds 4-6 (8, 10): sc around', 'Rnds 4-6 (8, 10): '],
    ['Rnd 3 – sc around', 'Rnd 3 – '],
    ['10th round (eyelets): 4 ch, miss 1 st', '10th round (eyelets): '],
    ['R5 (Color B): Join in any ch-1 sp', 'R5 (Color B): '],
    ['R4. sc around', 'R4. '],
    ['Rows 3 to 30(40:50): As Row 2.', 'Rows 3 to 30(40:50): '],
    ['2nd row: 3 ch, 1 tr in each st', '2nd row: '],
    ['Next row (RS): sc across', 'Next row (RS): '],
    ['3) 2 ch, turn.', '3)'],
    ['Foundation: Ch 26.', 'Foundation'],
  ])('of "%s" is "%s"', (line, label) => {
    const found = rowLabel(line);
    expect(line.slice(0, found?.end).replace(/:$/, '')).toBe(
      label.replace(/:$/, '').replace('Foundation', 'Foundation: '),
    );
  });

  test.each([
    'Rnds 1-3 = 8 cm across',
    'Row 1 is the right side.',
    'Rows 2 and 3 form the pattern.',
    '1. Work loosely.',
    '16 rows to 10 cm',
    'Round yarn needle',
    'R is the right side',
  ])('is not seen in "%s"', (line) => expect(rowLabel(line)).toBe(null));
});

describe('a hook', () => {
  test.each([
    ['5 mm', '5 mm'],
    ['US size H-8 (5.0 mm) crochet hook', '5 mm'],
    ['I/9 hook', '5.5 mm'],
    ['size J', '6 mm'],
    ['3,5 mm hook', '3.5 mm'],
    ['5 mm hook (US G-6)', '5 mm (G-6)'],
    ['5 mm hook (H/9)', '5 mm (H-9)'],
  ])('"%s" is %s', (line, hook) => expect(readHook(line)).toEqual({ hook }));

  test('without a size is none', () => expect(readHook('a hook that suits the yarn')).toBe(null));
});

describe('the terms', () => {
  const terms = (rows: string) => read(`Mat\n\n${rows}`).terms;

  test.each([
    ['Row 1: Ch 1, sc in each st across.', 'US', 'words', 'sc'],
    ['Row 1: 2 ch, 1 htr in each st.', 'UK', 'words', 'htr'],
    ['Row 1: 3 ch, miss 1 st, 1 tr in next st.', 'UK', 'words', 'miss'],
    ['Row 1: Ch 3 (counts as dc), dc in each st.', 'US', 'heights', 'Ch 3 (counts as dc'],
    ['Row 1: Ch 3 (counts as tr), tr in each st.', 'UK', 'heights', 'Ch 3 (counts as tr'],
    ['Row 1: Dc in 2nd ch from hook and in each ch.', 'UK', 'heights', 'Dc in 2nd ch'],
    ['Row 1: Dc in 4th ch from hook and in each ch.', 'US', 'heights', 'Dc in 4th ch'],
  ])('of "%s" are %s', (rows, value, told, by) => expect(terms(rows)).toMatchObject({ value, told, by }));

  test.each([
    ['Written in US terms.', 'US'],
    ['This pattern uses UK crochet terminology', 'UK'],
    ['(American terms)', 'US'],
    ['Terms: UK', 'UK'],
    ['US terms (UK in brackets)', 'US'],
    ['Difficulty: Easy/Intermediate (US terms)', 'US'],
    ['Skill level: beginner, UK terms', 'UK'],
  ])('"%s" states %s, whatever the words', (line, value) => {
    expect(front(line).terms).toMatchObject({ value, told: 'stated' });
  });

  test('are not told by where something is from', () => {
    const from = (line: string) => read(`Mat\n\n${line}\n\nRow 1: Ch 3 (counts as dc), dc in each st.`).terms;
    expect(from('Notes: I found this lovely yarn in the UK.').value).toBe('US');
    expect(from('Materials: a ball of British wool').value).toBe('US');
    expect(from('Notes: written in UK terms.').value).toBe('UK');
  });

  test('that nothing tells are asked for', () => {
    const { terms: untold, questions } = read('Mat\n\nRow 1: Dc in each ch across.');
    expect(untold).toMatchObject({ told: 'not told', span: null });
    expect(questions.map(({ code }) => code)).toEqual(['text/terms-untold']);
  });

  test('told in words of both are asked for', () => {
    const { questions } = read('Mat\n\nRow 1: Ch 1, sc in next st, miss 1 st, sc in next st.');
    expect(questions.map(({ code }) => code)).toEqual(['text/terms-mixed']);
  });
});

describe("a stitch of the designer's own", () => {
  const work = (words: string, terms: 'US' | 'UK' = 'US') =>
    deriveWork(plainText(words), { terms, sizes: 1, specials: [] })?.work.text ?? null;

  test.each([
    ['5 dc in same st', '5 dc in same st'],
    ['Work 5 dc in the next st or sp indicated.', '5 dc in same st'],
    ['(Dc, ch 1, dc) in next st', '(Dc, ch 1, dc) in same st'],
    ['increase (2 sc in one stitch)', '2 sc in same st'],
    ['2 sc', '2 sc in same st'],
    [
      '(Yo, insert hook in next st, yo, pull up lp, yo, draw through 2 lps) twice, yo, draw through 3 lps',
      'dc2tog',
    ],
    ['Yo, insert hook, *yo, pull up lp', null],
    [
      '*Yo, insert hook in same st, yo, pull up lp, yo, draw through 2 lps; rep from * 2 more times, yo, draw through 4 lps',
      'dc3tog in same st',
    ],
    ['sc2tog', 'sc2tog'],
    ['Ch 3, sl st in 3rd ch from hook', 'Ch 3, sl st in 3rd ch from hook'],
    [
      '(Yo, insert hook in st, yo, pull up lp, yo, draw through 2 lps) 3 times in same st, yo, draw through 4 lps. Counts as 1 st.',
      'dc3tog in same st',
    ],
    ['Yo, *insert hook in st, yo, pull up lp', null],
    [
      '(Yo twice, insert hook, yo, pull up a loop, [yo, draw through 2 loops] twice) 3 times, yo, draw through all 4 loops',
      'tr3tog in same st',
    ],
    [
      '(Yo, insert hook, yo and pull up a loop) 3 times in the same st, yo, draw through all 7 loops',
      'hdc3tog in same st',
    ],
    [
      'Ch 2, (yo, insert hook, yo, pull up a loop, yo, draw through 2 loops) twice, yo, draw through 3 loops',
      'ch 2, dc2tog in same st',
    ],
    ['cross the next four loops as the photograph shows', null],
    ['as you like it', null],
  ])('"%s" is %s', (words, stitches) => expect(work(words)).toBe(stitches));

  test('is told in the terms of its text', () => {
    expect(
      work(
        '(Yrh, insert hook, yrh, pull up lp, yrh, draw through 2 lps) 3 times, yrh, draw through 4 lps',
        'UK',
      ),
    ).toBe('tr3tog in same st');
  });
});

describe('the materials', () => {
  test('give letter, weight, fibre and ball of each yarn', () => {
    const { yarns } = front(
      'Materials\nColor A: DK cotton, 125 m / 50 g, in shell, 2 balls\nColor B: the same in slate',
    );
    expect(
      yarns.map(({ letter, colour, weight, fibre, ballLength, ballMass }) => [
        letter,
        colour,
        weight,
        fibre,
        ballLength,
        ballMass,
      ]),
    ).toEqual([
      ['A', 'shell', 3, 'cotton', '125 m', '50 g'],
      ['B', 'slate', null, null, null, null],
    ]);
  });

  test('take the length of all the yarn for no ball', () => {
    const { yarns } = front('Yarn: about 300 m of aran wool');
    expect(yarns[0]).toMatchObject({ letter: 'A', weight: 4, fibre: 'wool', ballLength: null });
  });

  test('with a second hook ask which it is', () => {
    const { hook, questions } = front('Materials\n5 mm hook\n5.5 mm hook for the border');
    expect(hook?.value).toBe('5 mm');
    expect(questions.map(({ code }) => code)).toContain('text/hook');
  });
});

describe('the gauge', () => {
  test.each([
    ['Gauge: 14 sc and 16 rows = 4 in / 10 cm with 5.5 mm hook.', 14, 16, '10 cm', 'single crochet', false],
    ['Gauge: 20 sts x 24 rows = 4" in single crochet', 20, 24, '4 in', 'single crochet', false],
    ['Gauge\n16 sts = 10 cm\n9 rows = 10 cm', 16, 9, '10 cm', null, false],
    [
      'Gauge: 17 sts and 8½ rows to 10 cm over shell pattern, after blocking',
      17,
      8.5,
      '10 cm',
      'shell pattern',
      true,
    ],
  ])('%s', (line, stitches, rows, over, of, afterBlocking) => {
    const { gauge } = read(`Mat\nUS terms\n\n${line}\n\nRow 1: Ch 3, turn.`);
    expect(gauge).toMatchObject({ stitches, rows, over, of, afterBlocking });
  });

  test('that counts no stitches is kept as a note', () => {
    const { gauge, notes, hook } = front('Gauge: Rnds 1-3 = 8 cm across');
    expect([gauge, hook]).toEqual([null, null]);
    expect(notes.map(({ text }) => text)).toEqual(['Gauge: Rnds 1-3 = 8 cm across']);
  });
});

describe('sizes', () => {
  test.each([
    ['Sizes: S (M, L)', ['S', 'M', 'L']],
    ['Sizes: small(medium:large)', ['small', 'medium', 'large']],
    ['Size: Small, Medium and Large', ['Small', 'Medium', 'Large']],
    ['Sizes: 6 (8, 10) years', ['6', '8', '10']],
    ['Sizes Child (Woman, Man)', ['Child', 'Woman', 'Man']],
    ['Sizes: 0-3 (3-6, 6-12) months', ['0-3 months', '3-6 months', '6-12 months']],
    ['Finished size: about as wide as it is long', []],
    ['Finished size: fits head 56 cm / 22 in around', []],
    ['Size US H (5 mm) hook', []],
  ])('%s', (line, names) => expect(front(line).sizes.map(({ name }) => name)).toEqual(names));

  test.each([
    ['20 inches wide and 60 inches long', '20 in', '60 in'],
    ['36" x 38" [91.5 x 96.5 cm]', '36 in', '38 in'],
    ['Approx 20cm wide and 150cm long', '20 cm', '150 cm'],
    ['60 in (152 cm) long, 20 in (51 cm) wide', '20 in', '60 in'],
    ['91 cm / 36 in wide x 96 cm / 38 in long', '91 cm', '96 cm'],
    ['30 x 40 cm (12 x 16 in)', '30 cm', '40 cm'],
    ['15 cm square', '15 cm', '15 cm'],
  ])('Finished size: %s', (words, width, height) => {
    const { sizes } = front(`Finished size: ${words}`);
    expect(sizes.map((size) => [size.width, size.height])).toEqual([[width, height]]);
  });

  test('that only the rows have are counted, and asked for', () => {
    const { sizes, questions } = read('Mat\n\nCh 12 (16, 20).\nRow 1: Sc across. (11 (15, 19) sc)');
    expect(sizes).toHaveLength(3);
    expect(questions.map(({ code }) => code)).toEqual(['text/sizes-unnamed']);
  });
});

test('days are read where they read one way', () => {
  expect(readDate('3 May 2026')).toBe('2026-05-03');
  expect(readDate('May 3rd, 2026')).toBe('2026-05-03');
  expect(readDate('2026-02-30')).toBe(null);
  expect(readDate('03/05/2026')).toBe(null);
});

test('an abbreviation that means another stitch here is asked about', () => {
  const { questions, notes } = front('Abbreviations\ndc = treble crochet\nsc = single crochet');
  expect(questions.map(({ code }) => code)).toEqual(['text/abbreviation']);
  expect(notes.map(({ text }) => text)).toEqual(['dc = treble crochet']);
});

test('a list of abbreviations is held against the rows, in both ways', () => {
  const list =
    'Abbreviations\nch = chain\nsc = single crochet\nhdc = half double crochet\nst(s) = stitch(es)\nsk = skip';
  const rows =
    'Ch 11.\nRow 1 (RS): Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 3, dc in each st across.';
  const { questions } = read(`Mat\nUS terms\n\n${list}\n\n${rows}`);
  expect(questions.map(({ code, severity, message }) => [code, severity, message.split(',')[0]])).toEqual([
    ['text/abbreviation-unused', 'note', 'hdc is in the list of abbreviations'],
    ['text/abbreviation-unused', 'note', 'sk is in the list of abbreviations'],
    ['text/abbreviation-unlisted', 'warning', 'the rows use dc and RS'],
  ]);
  const used = list
    .replace('hdc = half double crochet\n', '')
    .replace('sk = skip', 'dc = double crochet, RS = right side');
  expect(read(`Mat\nUS terms\n\n${used}\n\n${rows}`).questions).toEqual([]);
});

test('a decrease counts as a use of its stitch, a space of its chain, and a list of two is no list', () => {
  const list =
    'Abbreviations\nsc = single crochet\nch-sp = chain space\ntog = together\nFP = front post\nst = stitch';
  const rows = 'Rnd 1: Sc2tog over next 2 sts, sc in next ch-2 sp, FPdc around next st.';
  const codes = (text: string) => read(text).questions.map(({ code }) => code);
  expect(codes(`Mat\nUS terms\n\n${list}\n\n${rows}`)).not.toContain('text/abbreviation-unused');
  expect(
    codes('Mat\nUS terms\n\nAbbreviations\nhdc = half double crochet\n\nRnd 1: 6 sc in magic ring.'),
  ).toEqual([]);
});

test.each([
  ['A: reed, 2 balls', [2]],
  ['DK cotton, 50 g / 125 m balls, in sand, 3(4:5) balls', [3, 4, 5]],
  ['Yarn: 1 (1, 2) x 50 g ball of DK merino in teal', [1, 1, 2]],
  ['Worsted wool, 180 m / 100 g balls, in driftwood', null],
])('the balls of "%s" are read', (line, balls) => {
  const yarns = read(`Mat\nUS terms\nSizes: S (M, L)\n\nMaterials\n${line}\n\nCh 5 (6, 7).`).yarns;
  const one = read(`Mat\nUS terms\n\nMaterials\n${line}\n\nCh 5.`).yarns;
  expect(yarns[0]?.balls ?? null).toEqual(balls);
  // Of three numbers nobody could tell which is that of the one size.
  expect(one[0]?.balls ?? null).toEqual(balls !== null && balls.length > 1 ? null : balls);
});

test('of two names for a stitch the one the rows use is its name', () => {
  const { specials } = read(
    'Mat\nUS terms\n\nAbbreviations\nsh = shell\n\nSpecial stitches\nShell: 5 dc in same st.\n\nCh 10.\nRow 1: Sh in 4th ch from hook, sh in next ch.',
  );
  expect(specials.map(({ name, fullName, work }) => [name, fullName, work?.text])).toEqual([
    ['sh', 'shell', '5 dc in same st'],
  ]);
});
