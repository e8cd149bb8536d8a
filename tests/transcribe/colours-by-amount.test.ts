/** Colours named by how much of each is needed or by what they are for, and counts that tell the stitches of each. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const coloursOf = (line: string) =>
  transcribe({
    file: 'mat.txt',
    text: `Mat\nUS terms\n\n${line}\n\nCh 5.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n`,
  }).yarns.map(({ colour }) => colour);

describe('colours of a list', () => {
  test.each([
    ['YARN: DK acrylic, 100 yds each of Rust, Teal and 220 yds of Cream', ['Rust', 'Teal', 'Cream']],
    ['Yarn: 40 g of navy, 20 g of mustard', ['navy', 'mustard']],
    ['Yarn: fine cotton in Pink, about 18 m, and Leaf Green, about 7 m', ['Pink', 'Leaf Green']],
  ])('%s', (line, colours) => expect(coloursOf(line)).toEqual(colours));

  test('is none where one amount is told', () => {
    expect(coloursOf('Yarn: 200 m of worsted wool')).toHaveLength(1);
  });
});

describe('the main colour and the contrast', () => {
  const mat = (second: string) =>
    workedText(
      `Mat\nUK terms\n\nMAT\nWith the main colour make 6 ch and join into a ring with a ss in the first ch.\nRound 1 – 3 ch (counts as tr), 11 tr into ring, ss into top of 3 ch. Fasten off the main colour. (12 tr)\nRound 2 – ${second}\n`,
    ).codes;
  test('need no list', () => {
    expect(
      mat('Join the contrast colour in any tr with a ss, 1 ch, 1 dc in each tr, ss into first dc. (12 dc)'),
    ).toEqual([]);
    expect(
      mat('Join the contrast colour in any tr with a ss, 1 ch, 1 dc in each tr, ss into first dc. (14 dc)'),
    ).toEqual(['count/mismatch']);
  });

  test('are no others', () => {
    expect(
      mat('Join the rusty colour in any tr with a ss, 1 ch, 1 dc in each tr, ss into first dc. (12 dc)'),
    ).toContain('phrase/unread');
  });
});

describe('a count tells the stitches of each colour', () => {
  const cosy = (stated: string) =>
    workedText(
      `Cosy\nUS terms\nYarn: worsted wool\nA: navy\nB: mustard\n\nCOSY\nRnd 1) With A, make a magic ring, 8 sc in ring, join with sl st in first sc. (8)\nRnd 2) Ch 1, *with A sc in next 3 sts, with B sc in next st; rep from * around, join with sl st in first sc. (${stated})\n`,
    );
  test.each(['6 A, 2 B', '6 navy, 2 mustard', '8 sc: 6 A, 2 B'])('%s', (stated) =>
    expect(cosy(stated).codes).toEqual([]),
  );
  test.each(['5 A, 2 B', '6 A, 3 B', '6 B, 2 A'])('%s', (stated) =>
    expect(cosy(stated).codes).toEqual(['count/mismatch']),
  );
  test('of a colour that is not there is no count', () => {
    expect(cosy('6 A, 2 C').codes).not.toEqual([]);
  });
});

test('a half of a motif is another motif, with corners and spaces of its own', () => {
  const half = (stated: string) =>
    workedText(
      `Hexagon\nUK terms\n4 ch at the beginning of a row counts as 1 tr and 1 ch.\n\nHEXAGON\nMake 6 ch and join into a ring with a ss in the first ch.\nRound 1 – 3 ch (counts as tr), 11 tr into ring, ss into top of 3 ch. Fasten off. (12 tr)\n\nHalf hexagon, for straight edges\n\nMake 6 ch and join into a ring with a ss in the first ch.\nRow 1 – 4 ch, 2 tr into ring, (2 ch, 2 tr into ring) twice, 1 ch, 1 tr into ring. (${stated})\n`,
    ).codes;
  expect(half('8 tr, 2 corner sps, 2 1-ch sps')).toEqual([]);
  expect(half('8 tr, 3 corner sps, 2 1-ch sps')).toContain('count/mismatch');
  expect(half('8 tr, 2 corner sps, 3 1-ch sps')).toContain('count/mismatch');
});
