import { describe, expect, test } from 'vitest';
import { checkPattern } from '../../src/compile.ts';

/** Whether a code is among what is said of these rows on a chain. */
function tells(code: string, ...lines: readonly string[]): boolean {
  const rows = ['Ch 13.', ...lines].map((line) => `      ${line}`).join('\n');
  const text = `title: Trial\nterms: US\nyarn:\n  A: {colour: reed, weight: 4, fibre: wool}\nparts:\n  - name: Piece\n    work: |\n${rows}\n`;
  return checkPattern({ file: 'trial', text }, 'trial').some((diagnostic) => diagnostic.code === code);
}

const FIRST = 'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (12 sc)';
const row = (label: string, end = ', turn'): string => `${label}: Ch 1, sc in each st across${end}. (12 sc)`;

describe('the face that a row is said to show', () => {
  test.each([
    ['follows from the turn', [FIRST, row('Row 2 (WS)'), row('Row 3 (RS)')], false],
    ['does not follow from the turn', [FIRST, row('Row 2 (RS)')], true],
    ['follows over rows that name none', [FIRST, row('Row 2'), row('Row 3 (RS)')], false],
    ['does not follow over rows that name none', [FIRST, row('Row 2'), row('Row 3 (WS)')], true],
    ['follows behind an even range', [FIRST, row('Rows 2-5'), row('Row 6 (WS)')], false],
    ['does not follow behind an even range', [FIRST, row('Rows 2-5'), row('Row 6 (RS)')], true],
    [
      'is the same where the work is not turned',
      [FIRST, row('Row 2 (WS)', ', do not turn'), row('Row 3 (WS)')],
      false,
    ],
    [
      'changes though the work is not turned',
      [FIRST, row('Row 2 (WS)', ', do not turn'), row('Row 3 (RS)')],
      true,
    ],
    [
      'is anew where yarn is joined',
      [FIRST, 'Row 2 (RS): Join A with sl st in first st, ch 1, sc in each st across. (12 sc)'],
      false,
    ],
    ['is anew where the yarn was cut', [`${FIRST} Fasten off.`, row('Row 2 (RS)')], false],
    [
      'is anew where the work is turned in words of their own',
      [row('Row 1 (RS)', ''), 'Turn.', row('Row 2 (RS)')],
      false,
    ],
    ['cannot be told where no turn is said', [FIRST.replace(', turn', ''), row('Row 2 (RS)', '')], false],
  ])('%s', (_what, lines, told) => {
    expect(tells('row/faces', ...lines)).toBe(told);
  });
});

describe('a piece that never turns', () => {
  const plain = [
    'Row 1: Sc in 2nd ch from hook and in each ch across. (12 sc)',
    ...[2, 3, 4].map((n) => row(`Row ${n}`, '')),
  ];
  test.each([
    ['is told of', plain, true],
    ['is not where a row says it', [...plain.slice(0, 3), row('Row 4')], false],
    ['is not where rows say that they do not', [...plain.slice(0, 3), row('Row 4', ', do not turn')], false],
    [
      'is not where faces are named',
      ['Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (12 sc)', ...plain.slice(1)],
      false,
    ],
    ['is not while it is a few rows', plain.slice(0, 3), false],
  ])('%s', (_what, lines, told) => {
    expect(tells('row/never-turns', ...lines)).toBe(told);
  });
});

describe('a chain that counts as nothing', () => {
  const first = FIRST.replace(' (RS)', '');
  test.each([
    ['Ch 3, sc in each st across', true],
    ['Ch 3 (does not count as a st), sc in first st, sc in next 11 sts', true],
    ['Ch 1, sc in each st across', false],
    // A habit for a firm edge.
    ['Ch 2, sc in each st across', false],
    ['Ch 3 (does not count as a st), dc in each st across', false],
    ['Ch 3 (counts as dc), sc in next 11 sts', false],
    ['Ch 5 (does not count as a st), hdc in each st across', true],
    // Loops to be worked into.
    ['Ch 3, *sk next st, sc in next st, ch 3; rep from * across', false],
    ['Ch 3, sc in first st, *ch 3, sk next st, sc in next st; rep from * to last st, sc in last st', false],
  ])('%s', (work, told) => {
    expect(tells('chain/too-tall', first, `Row 2: ${work}, turn.`)).toBe(told);
  });
});
