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
  });
});

test('abbreviations stay as they are but for those that end in st', () => {
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
