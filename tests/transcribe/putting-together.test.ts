/** What a toy or a shawl is finished by, in words no row is in. */

import { expect, test } from 'vitest';
import { findHeading } from '../../src/transcribe/headings.ts';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const toy = (heading: string) =>
  `Bruno\n\nUS terms\n\nHead\nR1. 6 sc in MR (6)\nR2. inc x 6 (12)\nFO.\n\n${heading}\nTie the scarf round the neck and secure with a couple of stitches. Wings go on at both sides at round 2.`;

test.each(['PUTTING BRUNO TOGETHER', 'Sewing your mouse together:', 'Assembling the fox', 'Sewing it up'])(
  '"%s" heads the finishing, which works nothing',
  (heading) => {
    expect(findHeading(heading)?.section).toBe('finishing');
    expect(workedText(toy(heading)).rows).toEqual([['R1: 6', 'R2: 12']]);
    expect(workedText(toy(heading)).codes).not.toContain('text/not-worked');
  },
);

test.each(['Working sts together', 'Sewing', 'Putting it down', 'Ch 3, putting 2 sc together'])(
  '"%s" heads no finishing',
  (heading) => expect(findHeading(heading)?.section).not.toBe('finishing'),
);

test('soaking and rinsing are finishing, with nothing worked', () => {
  const text = (last: string) =>
    `A Shawl\n\nUS terms\n\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\n${last}`;
  for (const words of ['Soak and pin out hard: one pin in each shell.', 'Rinse, and pin to shape.']) {
    expect(workedText(text(`Fasten off. ${words}`)).codes).not.toContain('word/unknown');
    expect(transcribe({ file: 'pasted.txt', text: text(`Fasten off. ${words}`) }).finishing).toHaveLength(1);
  }
});
