import { expect, test } from 'vitest';
import { printFinishedSize } from '../../src/wording/finished-size.ts';

test.each([
  [{ widthMm: 150, heightMm: 200, aroundMm: null }, '15 × 20 cm (6 × 7 3/4 in)'],
  [{ widthMm: 150, heightMm: null, aroundMm: null }, '15 cm (6 in) wide'],
  [{ widthMm: null, heightMm: 200, aroundMm: null }, '20 cm (7 3/4 in) high'],
  [{ widthMm: null, heightMm: null, aroundMm: null }, null],
])('%o lies flat: %s', (size, words) => {
  expect(printFinishedSize(size)?.replaceAll(/\s?¾/g, ' 3/4') ?? null).toBe(words);
});

test('a hat is told by its way round, which is what a head is measured by', () => {
  const words = printFinishedSize({ widthMm: 560 / Math.PI, heightMm: 200, aroundMm: 560 });
  expect(words).toMatch(/^18 cm \(7 in\) across, 56 cm \(22 in\) around, 20 cm \(.*\) high$/);
});
