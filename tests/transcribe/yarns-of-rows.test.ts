/** Yarns as texts list them, and as their rows name them: by letter, by MC and CC, by colour. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const mat = (supplies: string, rows: string) => `Two Tone Mat\nUS terms\n\n${supplies}\n\n${rows}\n`;
const ROWS = `With MC, ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across, change to CC, turn. (12)
Row 2: Ch 1, sc in each st across. (12)`;
const yarns = (text: string) =>
  transcribe({ file: 'mat.txt', text }).yarns.map(({ letter, colour }) => [letter, colour]);

describe('a list of yarns', () => {
  test.each([
    ['MC: 200 g cream\nCC: 50 g rust'],
    ['Materials\nMain colour (MC): worsted wool in cream\nContrast colour (CC): worsted wool in rust'],
    ['Yarn: worsted wool\nMain color: cream\nContrast color: rust'],
    ['Materials\nDK cotton, 50 g balls: 1 ball cream, 1 ball rust\n4 mm hook'],
    ['Yarn: DK cotton in two colours: cream and rust'],
  ])('%s', (supplies) => {
    const text = mat(supplies, ROWS);
    expect(yarns(text)).toEqual([
      ['MC', 'cream'],
      ['CC', 'rust'],
    ]);
    expect(workedText(text).codes).toEqual([]);
  });

  test('in one sentence of a main colour and a contrast has both, and their balls', () => {
    const supplies =
      'Materials\nWorsted wool, 180 m/100 g: 2 balls main color, a few yards of contrast for the edge';
    const text = mat(supplies, ROWS.replace('MC', 'main color').replace('CC', 'contrast'));
    const found = transcribe({ file: 'mat.txt', text }).yarns;
    expect(found.map(({ letter, colour, balls }) => [letter, colour, balls])).toEqual([
      ['MC', null, [2]],
      ['CC', null, null],
    ]);
    expect(workedText(text).codes).toEqual([]);
    const one = text.replace('2 balls main color, a few yards of contrast for the edge', '2 balls');
    expect(workedText(one).codes).not.toEqual([]);
  });

  test('with letters has all of them: another in the rows is told', () => {
    const text = mat('Yarn A: grey\nYarn B: blue', ROWS.replace('MC', 'E').replace('CC', 'A'));
    expect(workedText(text).codes).toContain('yarn/unlisted');
    expect(workedText(text.replace('With E', 'With B')).codes).toEqual([]);
  });

  test('of fewer colours than it says is told', () => {
    const text = mat('3 colours\nMC: cream\nCC: rust', ROWS);
    expect(workedText(text).codes).toEqual(['text/colours']);
    expect(workedText(text.replace('3 colours', '2 colours')).codes).toEqual([]);
  });

  test('and a hook on one line without a heading are both read', () => {
    const { hook, yarns: found } = transcribe({
      file: 'rug.txt',
      text: mat(
        'Chunky yarn, 150 g; 8 mm hook',
        ROWS.replace('With MC, c', 'C').replace(', change to CC', ''),
      ),
    });
    expect([hook?.value, found.length, found[0]?.weight]).toEqual(['8 mm', 1, 5]);
  });
});

test.each([
  [
    'Aran wool, 3 balls of A (Mustard), 2 balls of B (Teal), each 50 g',
    [
      ['A', 'Mustard'],
      ['B', 'Teal'],
    ],
  ],
  [
    'Aran wool, 2 balls each of A Charcoal and B Pebble, 1 ball C Flame',
    [
      ['A', 'Charcoal'],
      ['B', 'Pebble'],
      ['C', 'Flame'],
    ],
  ],
  [
    'DK yarn in grey (60 g), pink (small amount)',
    [
      ['A', 'grey'],
      ['B', 'pink'],
    ],
  ],
  [
    'Medium cotton: 1 ball (2.5 oz) each of aqua, coral and straw',
    [
      ['A', 'aqua'],
      ['B', 'coral'],
      ['C', 'straw'],
    ],
  ],
  ['DK wool in odds and ends', [['A', 'odds and ends']]],
  [
    'Cotton cord. 90 yds main color (MC) sand. 30 yds contrast color (CC) rust.',
    [
      ['MC', 'sand'],
      ['CC', 'rust'],
    ],
  ],
])('yarns of one line: %s', (line, expected) => {
  expect(
    yarns(mat(`Materials\n${line}`, 'Ch 5.\nRow 1: Sc in 2nd ch from hook and in each ch across. (4)')),
  ).toEqual(expected);
});

describe('rows name the yarn', () => {
  const SUPPLIES = 'MC: 200 g cream\nCC1: 50 g rust\nCC2: 50 g slate grey';
  const START = 'With MC, ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (12)\n';

  test.each([
    ['Row 2: Ch 1, sc 3 MC, sc 1 CC1, sc 4 CC2, sc 1 CC1, sc 3 MC. (12)'],
    ['Row 2: Ch 1, 3 sc in MC, 1 sc in CC1, 4 sc in CC2, 1 sc in CC1, 3 sc in MC. (12)'],
    ['Row 2: Ch 1, sc in next 3 sts with cream, sc in next 5 sts with rust, sc in next 4 sts with CC2. (12)'],
    ['Row 2: With CC1, ch 1, sc in next 6 sts, change to slate grey, sc in next 6 sts. (12)'],
    ['Row 2: With contrast color 1, ch 1, sc in next 6 sts, with contrast colour 2, sc in next 6 sts. (12)'],
  ])('%s', (row) => {
    expect(workedText(mat(SUPPLIES, START + row)).codes.filter((code) => code !== 'yarn/unused')).toEqual([]);
    expect(workedText(mat(SUPPLIES, START + row.replace('(12)', '(13)'))).codes).toContain('count/mismatch');
  });

  test('and one that is not listed is told', () => {
    const row = 'Row 2: Ch 1, sc 6 MC, sc 6 CC3. (12)';
    expect(workedText(mat(SUPPLIES, START + row)).messages).toContain('yarn CC3 is used but not listed');
    const plain = 'Row 2: Ch 1, sc in next 6 sts with cream, sc in next 6 sts with teal. (12)';
    expect(workedText(mat(SUPPLIES, START + plain)).codes).toContain('phrase/unread');
  });
});

describe("a hook's US number is held against its millimetres", () => {
  test.each([
    ['US 7 (4.5 mm)', []],
    ['US 7 (6 mm)', ['hook/letter']],
    ['H/8 (6 mm)', ['hook/letter']],
    ['5.5 mm (I/9)', []],
    ['size 7 steel (1.5 mm)', []],
  ])('%s', (hook, codes) => {
    const text = mat(
      `Hook: ${hook}\nGauge: 14 sc and 16 rows = 10 cm`,
      ROWS.replace('With MC, c', 'C').replace(', change to CC', ''),
    );
    expect(workedText(text).codes).toEqual(codes);
  });
});
