/** Headings set off by signs before and behind, and what may stand under them: half shells, a gauge of two measures. */

import { expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const scarf = (changes: Readonly<Record<string, string>> = {}): string => {
  const text = `Sea Scarf

~ gauge ~
2 repeats (12 sts) = 3" and 8 rows = 4" in pattern

~ stitches (US) ~
ch: chain
dc: double crochet
sc: single crochet
sk: skip
st(s): stitch(es)
rep: repeat
Shell: 5 dc in same st
Half shell: 3 dc in same st (at the start of the row this is the ch 3 and 2 dc)

~ notes ~
Ch 3 counts as a dc.

~ scarf ~
Ch 20.
Row 1: Sc in 2nd ch from hook, *sk 2 ch, shell in next ch, sk 2 ch, sc in next ch; rep from * across. Turn. — 3 shells, 4 sc
Row 2: Ch 3, 2 dc in first sc, *sk 2 dc, sc in next dc, sk 2 dc, shell in next sc; rep from * to last shell, sk 2 dc, sc in next dc, sk 2 dc, half shell in last sc. Turn. — 2 shells, 2 half shells, 3 sc
`;
  return Object.entries(changes).reduce((changed, [from, to]) => changed.replaceAll(from, to), text);
};

test.each(['~ X ~', '== X ==', '- X -', '— X —', '--- X ---'])('%s heads what follows', (form) => {
  const headed = (words: string): [string, string] => [`~ ${words} ~`, form.replace('X', words)];
  const changes = Object.fromEntries(['gauge', 'stitches (US)', 'notes', 'scarf'].map(headed));
  expect(workedText(scarf(changes)).codes).toEqual([]);
  const { parts, gauge } = transcribe({ file: 'scarf.txt', text: scarf(changes) });
  expect(parts.map(({ name }) => name)).toEqual(['Scarf']);
  expect(gauge).toMatchObject({ stitches: 12, rows: 6, over: '3 in' });
});

test.each([
  ['2 half shells', '3 half shells'],
  ['2 half shells', '1 half shell, 1 sc, 1 shell'],
  ['2 dc in first sc', 'dc in first sc'],
  ['half shell in last sc', 'dc in last sc'],
])('a half shell written out at the start is counted with the other: %s, %s', (right, wrong) => {
  expect(workedText(scarf({ [right]: wrong })).codes).toContain('count/mismatch');
});
