/** Sentences that join and finish: worked where they can be, else kept word for word and told. */

import { describe, expect, test } from 'vitest';
import { compileText } from '../../src/compile.ts';
import { workedText } from './worked-text.ts';

const SQUARE = `Granny Mat
US terms
Yarn: A: reed; B: sand

Square
With A, ch 4, join with sl st in first ch to form ring.
Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times, join with sl st in top of ch-3. (12 dc, 4 ch-2 sps)
Fasten off.
`;
const edged = (join: string, count: number) =>
  `${SQUARE}\nEdging\n${join}\nRnd 1: Ch 1, 3 sc in same sp, sc in next 3 dc, *3 sc in next ch-2 sp, sc in next 3 dc; rep from * around, join with sl st in first sc. (${count})\nFasten off.\n`;

describe('yarn joined on a line of its own', () => {
  test.each(['Join B with sl st in any corner.', 'Join B with sl st in any ch-2 sp.'])(
    '%s: the round begins there',
    (join) => {
      expect(workedText(edged(join, 24)).codes).toEqual([]);
      expect(workedText(edged(join, 23)).codes).toEqual(['count/mismatch']);
    },
  );

  test('where there is no such place is told', () => {
    expect(workedText(edged('Join B with sl st in any ch-5 sp.', 24)).codes).toContain('row/used-up');
  });
});

const finishing = (text: string) => {
  const { pattern, diagnostics } = compileText({ file: 'mat.txt', text }, 'mat');
  return { finishing: pattern?.finishing, codes: diagnostics.map(({ code }) => code) };
};

describe('what joins at the end is kept and noted', () => {
  test.each([
    'Flatten and sc through both layers.',
    'Fold in half and sl st last row to foundation ch.',
    'Hold two squares with wrong sides together and sc through both layers around.',
    'Ch 12 for hanging loop, sl st in same st.',
  ])('%s', (sentence) => {
    const text = edged('Join B with sl st in any corner.', 24);
    expect(finishing(`${text}${sentence} Weave in ends.\n`)).toEqual({
      finishing: [sentence, 'Weave in ends.'],
      codes: ['text/assembly'],
    });
  });

  test('a seam with no crochet in it is only kept', () => {
    const text = edged('Join B with sl st in any corner.', 24);
    expect(finishing(`${text}Sew the squares in rows of four.\n`)).toEqual({
      finishing: ['Sew the squares in rows of four.'],
      codes: [],
    });
  });
});

describe('what joins on the way to other rows is an error', () => {
  test.each([
    ['Work as first square to end of Rnd 1.', ''],
    [
      '',
      'Rnd 2: Ch 1, sc in next 3 dc, ss in corresponding ch-2 sp of first square, sc in next 9 dc, join with sl st in first sc.',
    ],
  ])('%s%s', (line, row) => {
    const second = `\nSecond Square\n${line}\n${row || 'Rnd 2: Ch 1, sc in each dc around, join with sl st in first sc.'}\n`;
    expect(finishing(SQUARE + second).codes).toContain('text/not-worked');
    expect(finishing(SQUARE).codes).not.toContain('text/not-worked');
  });
});

test('sentences to the maker behind the last row are none of the work', () => {
  const { codes, finishing: kept } = finishing(
    `${edged('Join B with sl st in any corner.', 24).trimEnd()} Close any gap with the yarn end. To make the mat crisp, spray it with starch and dry it flat.\n`,
  );
  expect(codes).toEqual([]);
  expect(kept).toContain('Close any gap with the yarn end.');
});
