/** Names and abbreviations after a number, as the trade prints them. */

import { expect, test } from 'vitest';
import { pluralAbbr, pluralName } from '../../src/stitches/plural.ts';
import { STITCHES } from '../../src/stitches/table.ts';

test('crochet and together stay as they are, chains and slip stitches do not', () => {
  const plurals = Object.fromEntries(STITCHES.map((row) => [row.us.name, pluralName(row.us.name)]));
  expect(plurals).toMatchObject({
    chain: 'chains',
    'slip stitch': 'slip stitches',
    'single crochet': 'single crochet',
    'extended half double crochet': 'extended half double crochet',
    'double crochet 3 together': 'double crochet 3 together',
    'magic ring': 'magic rings',
    'front post double crochet': 'front post double crochet',
    'love knot': 'love knots',
    'bullion stitch': 'bullion stitches',
    '5 double crochet popcorn': '5 double crochet popcorns',
  });
});

test('so do the sides that a post is worked from in UK names', () => {
  expect(pluralName('raised treble crochet front')).toBe('raised treble crochet front');
});

test('abbreviations stay as they are but for those that end in st or a whole word', () => {
  expect(['5-dc popcorn', '3-hdc puff', '3-dc cl', 'FPdc'].map(pluralAbbr)).toEqual([
    '5-dc popcorns',
    '3-hdc puffs',
    '3-dc cl',
    'FPdc',
  ]);
  expect(['sc', 'ch', 'ss', 'dc2tog', 'sl st', 'V-st'].map(pluralAbbr)).toEqual([
    'sc',
    'ch',
    'ss',
    'dc2tog',
    'sl sts',
    'V-sts',
  ]);
});

test('a pattern’s own shells, bunches and picots take s or es', () => {
  expect(['shell', 'bunch', 'picot', 'V-stitch'].map(pluralName)).toEqual([
    'shells',
    'bunches',
    'picots',
    'V-stitches',
  ]);
});
