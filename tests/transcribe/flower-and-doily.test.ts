/** Rounds that end in the stitch they began in, a leaf round its chain, and a count of what is not described. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const page = (name: string) => readFileSync(join(import.meta.dirname, `../pages/fifth/${name}.txt`), 'utf8');
const FLOWER = page('flower-brooch');
const DOILY = page('starlight-doily');

const changed = (text: string, from: string, to: string): string => {
  expect(text).toContain(from);
  return text.replace(from, to);
};

const errorsOf = (text: string): readonly string[] => {
  const { codes, messages } = workedText(text);
  return messages.filter((_, i) => !/^(?:text|row\/hangs|gauge|size)/.test(codes[i] ?? ''));
};

test('the petals and the leaf come out', () => {
  expect(errorsOf(FLOWER)).toEqual([]);
  const { rows } = workedText(FLOWER);
  expect(rows[0]?.at(-1)).toBe('Rnd 1: 16');
});

const ENDS = 'working the last ss in the same place as the ss of round 1';

test.each([
  'working last ss in same place as ss',
  'working the last ss into the same st as the joining ss',
  'working the last ss in same st as ss of the last round',
  'with last ss in the same place as the ss at the end of round 1',
])('the last slip stitch goes into the join: "%s"', (to) =>
  expect(errorsOf(changed(FLOWER, ENDS, to))).toEqual([]),
);

describe('what is wrong is told', () => {
  test.each([
    ['of round 1. (5', 'of round 4. (5', 'could not be read'],
    ['4 more times, working the last', '3 more times, working the last', 'last ss in the st of the join'],
    ['working the last ss in the same', 'working the last dc in the same', 'last dc in the st of the join'],
    ['(16 sts, 1 2ch-sp)', '(15 sts, 1 2ch-sp)', 'makes 16 sts, but 15'],
    ['1htr in next ch, 1dc in last ch', '1htr in next ch, 1dc in next 2 ch', 'Rnd 1'],
  ])('"%s", not "%s"', (right, wrong, message) =>
    expect(errorsOf(changed(FLOWER, right, wrong)).join('\n')).toContain(message),
  );
});

test('a stitch that is not described is told once, and its count is no second fault', () => {
  const told = ['"cl" is used but not described'];
  expect(errorsOf(DOILY)).toEqual(told);
  expect(errorsOf(changed(DOILY, '(24 cl, 12 ch-4 sps,', '(12 ch-4 sps, 24 cl,'))).toEqual(told);
  expect(errorsOf(changed(DOILY, '(24 cl, 12', '(24 pf, 12')).length).toBeGreaterThan(1);
});

describe('a beginning cluster without a place', () => {
  const cluster =
    'Cluster (cl): (yo, insert hook in same sp, yo, pull up lp, yo, draw through 2 lps) 3 times, yo, draw through all 4 lps.\nPicot:';
  const described = changed(DOILY, 'Picot:', cluster);
  const ofRound = (text: string) => errorsOf(text).filter((message) => message.includes('Rnd 6'));

  test('stands where the slip stitches came to', () => {
    expect(ofRound(described)).toEqual([]);
    expect(ofRound(changed(described, 'Sl st in next 2 dc and in next', 'Sl st in next'))).toEqual([]);
    expect(workedText(described).rows[0]).toContain('Rnd 6: 24');
  });

  test.each([
    ['(24 cl,', '(23 cl,', 'Rnd 6 makes 24'],
    ['cl in same sp, ch 3', 'cl in next sp, ch 3', 'Rnd 6'],
  ])('"%s", not "%s", is told', (right, wrong, message) =>
    expect(ofRound(changed(described, right, wrong)).join('\n')).toContain(message),
  );
});
