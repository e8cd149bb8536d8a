import { describe, expect, test } from 'vitest';
import type { Line } from '../../src/notation/line.ts';
import { brief, faultsOf, lineOf, linesOf } from './read-lines.ts';

const three = { sizes: 3 };

describe('labels of rows and rounds', () => {
  const numbered = (word: string, unit: string, from: unknown, to?: unknown) => ({
    kind: 'numbered',
    unit,
    word,
    from,
    ...(to === undefined ? {} : { to }),
  });
  test.each([
    ['Row 3: Turn.', numbered('Row', 'row', 3), null],
    ['ROW 3: Turn.', numbered('ROW', 'row', 3), null],
    ['Rnd 3: Turn.', numbered('Rnd', 'round', 3), null],
    ['Round 3. Turn.', numbered('Round', 'round', 3), null],
    ['Row 3 – Turn.', numbered('Row', 'row', 3), null],
    ['Row 3 (RS): Turn.', numbered('Row', 'row', 3), 'RS'],
    ['Row 3 (WS facing): Turn.', numbered('Row', 'row', 3), 'WS'],
    ['Row 3 (wrong side): Turn.', numbered('Row', 'row', 3), 'WS'],
    ['Rows 3-26: Turn.', numbered('Row', 'row', 3, 26), null],
    ['Rows 3–26: Turn.', numbered('Row', 'row', 3, 26), null],
    ['Rnds 3 to 26: Turn.', numbered('Rnd', 'round', 3, 26), null],
    ['Rows 3 and 4: Turn.', numbered('Row', 'row', 3, 4), null],
    ['Rows 4 on: Turn.', numbered('Row', 'row', 4, 'on'), null],
    ['Rnds 5-6 (8, 10): Turn.', numbered('Rnd', 'round', 5, [6, 8, 10]), null],
    ['Rnd 5 (7, 9): Turn.', numbered('Rnd', 'round', [5, 7, 9]), null],
    ['Rnd - (7, 9): Turn.', numbered('Rnd', 'round', [null, 7, 9]), null],
    ['Rnds 8 (10, 12)-14 (18, 22): Turn.', numbered('Rnd', 'round', [8, 10, 12], [14, 18, 22]), null],
    ['Next row (RS): Turn.', { kind: 'next', unit: 'row', word: 'Row' }, 'RS'],
    ['Next rnd: Turn.', { kind: 'next', unit: 'round', word: 'Rnd' }, null],
    ['Foundation: Ch 3.', { kind: 'named', name: 'Foundation' }, null],
    ['Base chain (RS): Ch 3.', { kind: 'named', name: 'Base chain' }, 'RS'],
  ] as const)('%s', (text, label, side) => {
    const line = lineOf(text, 'US', three);
    expect(brief(line.label)).toEqual(label);
    expect(line.side).toBe(side);
    expect(line.steps).toHaveLength(1);
  });

  test('a sentence outside rows has none', () => {
    expect(lineOf('Fasten off.').label).toBeNull();
  });

  test('a range that runs backwards and a row without instructions are faults', () => {
    expect(faultsOf('Rows 6-3: Turn.')).toEqual(['row/number-order']);
    expect(faultsOf('Row 3:')).toEqual(['row/empty']);
  });
});

describe('which rows are repeated', () => {
  test.each([
    ['Row 6: Rep Row 2.', 'row', [2], { kind: 'label' }],
    ['Row 6: As Row 2.', 'row', [2], { kind: 'label' }],
    ['Row 6: Work as for Row 2.', 'row', [2], { kind: 'label' }],
    ['Rnds 3-26: Rep Rnd 2.', 'round', [2], { kind: 'label' }],
    ['Rows 4-27: Rep Rows 2 and 3.', 'row', [2, 3], { kind: 'label' }],
    ['Rows 6-25: Repeat Rows 2-5.', 'row', [2, 3, 4, 5], { kind: 'label' }],
    ['Rep Rows 2, 4 and 5 twice.', 'row', [2, 4, 5], { kind: 'times', n: 2 }],
    ['Rep Rows 2 and 3 12 more times.', 'row', [2, 3], { kind: 'times', n: 12, more: true }],
    ['Rep Row 2 3 (4, 5) more times.', 'row', [2], { kind: 'times', n: [3, 4, 5], more: true }],
    ['Rows 4 on: Rep Rows 2 and 3 to height.', 'row', [2, 3], { kind: 'height' }],
    [
      'Rows 4 on: Rep Rows 2 and 3 to height, ending with a Row 3.',
      'row',
      [2, 3],
      { kind: 'height', endingWith: 3 },
    ],
  ] as const)('%s', (text, unit, rows, until) => {
    expect(brief(lineOf(text, 'US', three).steps)).toEqual([{ kind: 'repeat rows', unit, rows, until }]);
  });
});

describe('counts at the ends of rows', () => {
  const sts = (n: unknown) => ({ n, what: { kind: 'st' } });
  const of = (n: unknown, id: string) => ({ n, what: { kind: 'stitch', id } });
  const spaces = (n: unknown, chains: number) => ({ n, what: { kind: 'space', chains } });
  test.each([
    ['Row 2: Sc across. (34 sts)', [sts(34)]],
    ['Row 2: Sc across (34 sts)', [sts(34)]],
    ['Row 2: Sc across. [34 sc]', [of(34, 'sc')]],
    ['Row 2: Sc across. {34}', [{ n: 34 }]],
    ['Row 2: Sc across. (34)', [{ n: 34 }]],
    ['Row 2: Sc across. — 34 sts', [sts(34)]],
    ['Row 2: Sc across – 34 sts.', [sts(34)]],
    ['Row 2: Sc across. = 34 sts', [sts(34)]],
    ['Row 2: Sc across. 34 sts', [sts(34)]],
    ['Row 2: Sc across. 34 sc.', [of(34, 'sc')]],
    ['Row 2: Sc across. (34 sts made)', [sts(34)]],
    ['Row 2: Sc across. (34 dc, 4 ch-2 sps)', [of(34, 'dc'), spaces(4, 2)]],
    ['Row 2: Sc across. (34 dc and 4 ch-2 sps)', [of(34, 'dc'), spaces(4, 2)]],
    ['Row 2: Sc across. (4 ch-2 sps, 34 dc)', [spaces(4, 2), of(34, 'dc')]],
    ['Row 2: Sc across. (8 shells, 9 sc)', [{ n: 8, what: { kind: 'special', name: 'shell' } }, of(9, 'sc')]],
    ['Row 2: Sc across. (12 dc, 4 corners)', [of(12, 'dc'), { n: 4, what: { kind: 'corner' } }]],
    ['Row 2: Sc across. (60 (66, 72) sc)', [of([60, 66, 72], 'sc')]],
    ['Row 2: Sc across. (60(66:72) sts)', [sts([60, 66, 72])]],
    ['Row 2: Sc across. (20 (28, 36) dc, 4 ch-3 sps)', [of([20, 28, 36], 'dc'), spaces(4, 3)]],
  ] as const)('%s', (text, entries) => {
    const line = lineOf(text, 'US', three);
    expect(brief(line.stated?.entries)).toEqual(entries);
    expect(line.steps).toHaveLength(1);
  });

  test.each([
    ['Row 2: 24 sc.', 'the first thing a row says is work, not a count'],
    ['Rnd 1. 6 sc in magic ring.', 'also after a label with a full stop'],
    ['Row 2: Sc in next 3 sts. Ch 1.', 'and a sentence with more in it goes on with the row'],
  ])('%s: %s', (text) => {
    expect(lineOf(text).stated).toBeNull();
  });

  test('the designer’s own words are kept for the page', () => {
    expect(lineOf('Row 2: Sc across. (34 dc, 4 ch-2 sps)').stated?.text).toBe('34 dc, 4 ch-2 sps');
  });
});

describe('where one line ends and the next begins', () => {
  const begins = (lines: readonly Line[]) =>
    lines.map(({ label }) =>
      label?.kind === 'numbered'
        ? `${label.word} ${label.from.values[0]}`
        : label?.kind === 'named'
          ? label.name
          : '-',
    );
  test.each([
    ['Ch 4.\nRow 1: Turn.\nRow 2: Turn.', ['-', 'Row 1', 'Row 2']],
    ['Ch 4. Row 1: Turn. Row 2: Turn.', ['-', 'Row 1', 'Row 2']],
    ['Row 1: Turn,\nsc in next st.\nRow 2: Turn.', ['Row 1', 'Row 2']],
    ['Row 1: Turn\nRow 2: Turn\n\nFasten off', ['Row 1', 'Row 2', '-']],
    ['Foundation: Ch 4.\nRow 1: Turn. (3 sc)\nFasten off.', ['Foundation', 'Row 1', '-']],
    ['Row 1: Turn. Rep from the start of Row 1.', null],
  ])('%j', (text, expected) => {
    if (expected === null) expect(faultsOf(text)).not.toEqual([]);
    else expect(begins(linesOf(text))).toEqual(expected);
  });

  test('a row that cannot be read keeps its place, and the others are read', () => {
    const text = 'Row 1: Turn.\nRow 2: Gibberish here.\nRow 3: Turn.';
    expect(faultsOf(text)).toEqual(['word/unknown']);
  });
});
