/** Rounds told by how they grow, and colours changed by name in a line of their own. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const MAT = `Oval Mat

Size: about 22 cm long and 19 cm wide
Yarn: cotton DK, 50 g in Pewter and White
Hook: 4 mm
Tension: 18 dc and 20 rounds to 10 cm.
Pattern uses UK terms

With Pewter make 7 ch.

R1. 1 dc in 2nd ch from hook, 1 dc in each of next 4 ch, 3 dc in last ch. Do not turn, work along the other side of the chain: 1 dc in each of next 4 ch, 2 dc in last ch. (14)
R2. 2 dc in first dc, 1 dc in each of next 4 dc, 2 dc in each of next 3 dc, 1 dc in each of next 4 dc, 2 dc in each of last 2 dc. (20)
R3. (2 dc in next dc, 1 dc in each of next 2 dc) 6 times, 1 dc in each of last 2 dc. (26)
R4. (2 dc in next dc, 1 dc in each of next 3 dc) 6 times, 1 dc in each of last 2 dc. (32)
R5-R7. Carry on like this, working 1 more dc after every increase in each round, 6 more dc per round. (38, 44, 50)
Change to White.
R8. 1 dc in each dc to end. (50)
Fasten off.
`;

const codesOf = (text: string) => workedText(text).codes.filter((code) => !code.startsWith('size/'));

test('each is worked as the last two were, and one more', () => {
  const { rows, codes } = workedText(MAT);
  expect(codes.filter((code) => !code.startsWith('size/'))).toEqual([]);
  expect(rows[0]?.slice(-4)).toEqual(['R5: 38', 'R6: 44', 'R7: 50', 'R8: 50']);
});

test('the colour is changed, not noted', () => {
  const [part] = transcribe({ file: 'mat.txt', text: MAT }).parts;
  expect(part?.lines.map(({ text }) => text)).toContain('Change to White.');
  const black = transcribe({ file: 'mat.txt', text: MAT.replace('Change to White', 'Change to Black') });
  expect(black.parts[0]?.lines.map(({ text }) => text)).toContain('Note: Change to Black.');
});

describe('told where', () => {
  test.each([
    ['the counts do not grow so', '(38, 44, 50)', '(38, 45, 50)', 'count/mismatch'],
    ['a count is missing', '(38, 44, 50)', '(38, 50)', 'phrase/unread'],
    ['the rounds above grew by another number', '1 more dc', '2 more dc', 'phrase/unread'],
    ['it is another stitch', '1 more dc after', '1 more tr after', 'phrase/unread'],
    [
      'the rounds above are of different shapes',
      '(2 dc in next dc, 1 dc in each of next 2 dc) 6',
      '(1 dc in each of next 2 dc, 2 dc in next dc) 6',
      'phrase/unread',
    ],
    ['it is not said how many rounds', 'R5-R7. Carry', 'Carry', 'phrase/unread'],
  ])('%s', (_, right, wrong, code) => {
    expect(codesOf(MAT.replace(right, wrong))).toContain(code);
  });
});
