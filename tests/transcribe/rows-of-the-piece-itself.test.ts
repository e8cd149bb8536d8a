/** Rows worked once more at a piece's other end, named as those of the piece itself; and what the last stitch of a row of fans is. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { faultsOf, workedText } from './worked-text.ts';

const SCARF = readFileSync(join(import.meta.dirname, '../pages/eighth/fan-scarf.txt'), 'utf8');

function changed(from: string, to: string): string {
  expect(SCARF).toContain(from);
  return SCARF.replace(from, to);
}

const faults = (text: string) => faultsOf(text, 'row/open-length');

test('a scarf with the same edging at both ends comes out', () => {
  expect(faults(SCARF)).toEqual([]);
  expect(workedText(SCARF).rows[0]?.slice(-2)).toEqual([': 37', 'Row 3: 37']);
});

describe('rows of the piece in hand', () => {
  test.each([
    ['2nd row of the picot end once more', '2nd row of picot ends again'],
    ['work 2nd row of the picot end once more', 'repeat 2nd row of the picot end once more'],
    ['2nd row of the picot end once more', '2nd row once more'],
  ])('"%s" may be "%s"', (from, to) => expect(faults(changed(from, to))).toEqual([]));

  test('another piece is not taken for it', () => {
    expect(faults(changed('of the picot end once', 'of the fan end once')).join()).toContain(
      'could not be read',
    );
  });

  test('the count before the turn is of the row before it', () => {
    expect(faults(changed('each ch (37 dc)', 'each ch (36 dc)')).join()).toContain('makes 37 dc, but 36');
    expect(faults(changed('2nd row of the picot', '4th row of the picot')).join()).not.toEqual('');
  });
});

describe('the last stitch of a row of fans', () => {
  const SAID = 'but work only 3 tr into the last dc';
  test.each([
    'working only 3 tr into the last dc',
    'but make just 3 tr in last dc',
    'but working only 3 tr in the last dc',
    'ending with 3 tr into the last dc',
  ])('%s', (said) => {
    expect(faults(changed(SAID, said))).toEqual([]);
    expect(faults(changed(SAID, said.replace('3', '2'))).join()).toMatch(/Row 2 (?:makes 1 group|does not)/);
    expect(faults(changed(SAID, said.replace('3', '5'))).join()).toMatch(/Row 2 (?:makes|does not)/);
  });

  test('of another stitch is not read as that', () => {
    expect(faults(changed(SAID, 'but work only 3 htr into the last dc'))).not.toEqual([]);
  });
});
