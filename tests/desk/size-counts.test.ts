import { expect, test } from 'vitest';
import { starterPattern } from '../../src/commands/starter-pattern.ts';
import { compilePattern } from '../../src/compile.ts';
import { sizeCounts } from '../../src/desk/size-counts.ts';

const counted = (text: string) => {
  const { sizes } = compilePattern({ file: 'pattern.yaml', text }, 'one');
  return sizeCounts(sizes).map(({ from, to, counts }) => [
    from === to ? from : `${from} to ${to}`,
    ...counts.map((count) => (count === null ? null : count.stitches || `${count.chains} ch`)),
  ]);
};

test('rows that only larger sizes have stand behind those they follow, and those that count the same stand together', () => {
  expect(counted(starterPattern('One', { terms: 'US', shape: 'flat', sizes: ['a', 'b'] }))).toEqual([
    ['Foundation', '17 ch', '25 ch'],
    ['Row 1 to Row 18', 16, 24],
    ['Row 19 to Row 27', null, 24],
  ]);
  expect(counted(starterPattern('One', { terms: 'US', shape: 'round', sizes: ['a', 'b'] }))).toEqual([
    ['Rnd 1', 12, 12],
    ['Rnd 2', 28, 28],
    ['Rnd 3', 44, 44],
    ['Rnd 4', 60, 60],
    ['Rnd 5', null, 76],
    ['Rnd 6', null, 92],
  ]);
});

test('a border that comes after more rows in a larger size stands at the end of both', () => {
  const text = starterPattern('One', { terms: 'US', shape: 'flat', sizes: ['a', 'b'] }).replace(
    '      Fasten off.',
    '      Row 19 (28): Ch 1, 2 sc in each st across. (32 (48) sts)\n      Fasten off.',
  );
  expect(counted(text).map(([label]) => label)).toEqual([
    'Foundation',
    'Row 1 to Row 18',
    'Row 19',
    'Row 20 to Row 27',
    'Row 28',
  ]);
});
