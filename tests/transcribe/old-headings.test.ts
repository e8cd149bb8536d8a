/** Old leaflets whose headings are capitals and a full stop, with stitches told among the abbreviations. */

import { expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const lace = (shell: string, count = 13) =>
  [
    'A NARROW LACE',
    '',
    'English terms are used.',
    '',
    'MATERIALS. 2 balls of crochet cotton No. 20, white. A steel crochet hook, 1.25 mm.',
    '',
    'TENSION. 1 shell to 7/8 in.',
    '',
    `ABBREVIATIONS. ch, chain; dc, double crochet; st, stitch; tr, treble; ${shell}`,
    '',
    'Commence with 12 ch.',
    '1st row. 1 dc into 2nd ch from hook, 1 dc into each ch to end, turn. (11 dc)',
    `2nd row. 3 ch (to stand for 1 tr), miss first dc, 1 tr into each of next 8 dc, miss 1 dc, shell into last dc, turn. (${count} tr)`,
    '',
    'TO MAKE UP. Damp and pin out to shape.',
  ].join('\n');
const SHELL = 'shell, 2 tr, 2 ch and 2 tr all into the same place.';

test('a stitch is told in a list behind a comma', () => {
  const { specials, gauge } = transcribe({ file: 'lace.txt', text: lace(SHELL) });
  expect(specials.map(({ name, work }) => [name, work?.text])).toEqual([
    ['shell', '(2 tr, 2 ch and 2 tr) in same st'],
  ]);
  expect(gauge).toBeDefined();
  expect(workedText(lace(SHELL)).codes.filter((code) => !code.startsWith('text/'))).toEqual([]);
  expect(workedText(lace(SHELL, 14)).codes).toContain('count/mismatch');
  expect(workedText(lace('shell, a pretty one.')).codes).toContain('special/undefined');
});
