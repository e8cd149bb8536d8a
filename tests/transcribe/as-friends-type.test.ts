/** Forms that bloggers, forums and old leaflets use, each beside one that does not come out. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

describe('lists of abbreviations', () => {
  const specials = (list: string) =>
    transcribe({
      file: 'hat.txt',
      text: `Hat\n\n${list}\n\nRnd 1. Ch 1, 8 hdc in a magic ring, join with sl st in first hdc. (8)\nRnd 2. Ch 1, FPhdc around each st, join. (8)\n`,
    }).specials.map(({ name }) => name);
  test('whose first names stand by themselves explain no stitch', () => {
    expect(
      specials(
        'Stitches (US): ch, sl st, hdc, FPhdc = front post half double crochet, BPhdc = back post half double crochet',
      ),
    ).toEqual([]);
  });
  test('set apart by nothing but blanks are lists', () => {
    expect(
      workedText(
        'Stole\nUK abbreviations\nch = chain   dc = double crochet   tr = treble   st(s) = stitch(es)\n\nMake 11 ch.\nRow 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (10 dc)\n',
      ).codes,
    ).not.toContain('text/abbreviation');
  });
});

describe('rows kept on with', () => {
  const band = (keep: string, round: string) =>
    workedText(
      `ear warmer\nUS terms\nhook: 5 mm\n\nch 12\n\nrow 1: sc in 2nd ch from hook and in each ch across, turn (11)\nrow 2: ch 1, sc blo in each st across, turn (11)\n\n${keep}\n\nhold the two short ends together and sl st through both, 11 sl sts. dont cut the yarn\n\nedge: ch 1, 1 sc in the end of each row all the way around, sl st in first sc (${round} sc). cut yarn & do the same on the other edge\n`,
    ).codes;
  test.each([
    "keep going with row 2 till you've got 80 rows.",
    'keep repeating row 2 until you have 80 rows.',
    "Keep on with row 2 until you've got 80 rows",
  ])('%s', (keep) => {
    expect(band(keep, '80').filter((code) => code !== 'text/assembly')).toEqual([]);
    expect(band(keep, '81')).toContain('count/mismatch');
  });
});

describe('a border of a thing that is no crochet', () => {
  const cloth = (round: string, second = '268') =>
    workedText(
      `Tray cloth edging\nUK terms\nHook: 1.25 mm\n\nRound 1: With right side of linen facing, join cotton to any corner, 1 ch, *${round}; repeat from * 3 times more, ss to first dc. (252 dc)\nRound 2: 1 ch, 1 dc in each dc, working 5 dc in centre dc of each corner, ss to first dc. (${second} dc)\n`,
    ).codes;
  test('has as many stitches as it is told', () => {
    expect(cloth('3 dc in the corner, 60 dc along the side')).toEqual([]);
    expect(cloth('3 dc in the corner, 61 dc along the side')).toContain('count/mismatch');
    expect(cloth('3 dc in the corner, 60 dc along the side', '266')).toContain('count/mismatch');
  });
  test('a round of stitches that stand on nothing is told', () => {
    expect(
      workedText('Round\nUK terms\n\nRound 1: 1 ch, 1 dc in each of next 60 sts, ss to first dc. (60 dc)\n')
        .codes,
    ).not.toEqual([]);
  });
});

test('a border goes round the piece that its heading names', () => {
  const caddy = (heading: string) =>
    transcribe({
      file: 'c.txt',
      text: `Caddy\nUS terms\n\nTHE PANEL\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRows 2-30: Ch 1, turn, sc in each st across. (20 sc)\nFasten off.\n\nTHE POCKET\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRows 2-20: Ch 1, turn, sc in each st across. (20 sc)\nFasten off.\n\n${heading}\nWith RS facing, join yarn in the top right corner. Ch 1, *3 sc in the corner, 18 sc across to the next corner, 3 sc in the corner, 30 sc evenly down the side; rep from * once more, join with a sl st in the first sc. (108 sc)\n`,
    }).parts.map(({ onto }) => onto);
  expect(caddy('THE BORDER (on the panel only)')).toEqual([null, null, 'The Panel']);
  expect(caddy('THE BORDER')).toEqual([null, null, 'The Pocket']);
});

describe('a granny stripe', () => {
  const stripes = (changes: Readonly<Record<string, string>> = {}) => {
    const text = `Lapghan\nUS terms\nHook: 5 mm\n\nTo start, ch 20 with your first colour.\n\nRow 1: sc in the 2nd ch from the hook, sc in each ch along, turn. (19 sc)\n\nRow 2: ch 3 (counts as a dc, here and all the way through), dc in the same st, *sk 2 sts, 3 dc in the next st; repeat from * to the last 3 sts, sk 2 sts, 2 dc in the last st, turn. (5 groups of 3 dc, and 2 dc at each end)\n\nRow 3: ch 3, 3 dc in each sp between the groups, all the way across, dc in top of the tch, turn. (6 groups of 3 dc, and a dc at each end)\n\nRow 4: ch 3, dc in the sp between the first dc and the first group, 3 dc in each sp between the groups across, 2 dc in the sp between the last group and the tch, turn. (5 groups of 3 dc, and 2 dc at each end)\n`;
    return workedText(
      Object.entries(changes).reduce((changed, [from, to]) => changed.replace(from, to), text),
    );
  };
  test('comes out', () => {
    const { codes, rows } = stripes();
    expect(codes).toEqual([]);
    expect(rows[0]?.slice(1)).toEqual(['Row 1: 19', 'Row 2: 19', 'Row 3: 20', 'Row 4: 19']);
  });
  test.each([
    ['ch 20 with', 'ch 21 with'],
    ['(6 groups', '(7 groups'],
    ['2 dc in the sp between the last group', '3 dc in the sp between the last group'],
    ['dc in the sp between the first dc and the first group, ', ''],
  ])('not with %s as %s', (from, to) => expect(stripes({ [from]: to }).codes).not.toEqual([]));
});

describe('half loops at the ends', () => {
  const net = (count: string) =>
    workedText(
      `Stole\nUK terms\nHook: 4 mm\n\nMake 22 ch.\nRow 1: 1 dc in 2nd ch from hook, *5 ch, miss 3 ch, 1 dc in next ch; rep from * to end, turn. (5 loops)\nRow 2: 6 ch (counts as 1 tr and 3 ch), 1 dc in first loop, *5 ch, 1 dc in next loop; rep from * to end, 3 ch, 1 tr in last dc, turn. (${count})\n`,
    ).codes;
  test('are spaces of the row as well', () => {
    expect(net('4 loops and a half loop at each end')).toEqual([]);
    expect(net('5 loops and a half loop at each end')).toContain('count/mismatch');
    expect(net('4 loops and a half loop')).toContain('count/mismatch');
  });
});

describe('a pennant with its edging', () => {
  const flag = (edging: string, last = 9) =>
    workedText(
      `Bunting\nUK terms\nHook: 4 mm\n\nFLAG\nMake 4 ch.\nRow 1: 2 tr into the 4th ch from the hook, turn. (3 tr, the missed 3 ch being the first of them)\nRow 2: 3 ch (this is your first treble, now and on every row), 1 tr into the same place, 1 tr in the next tr, 2 tr in top of the 3 ch, turn. (5 tr)\nRow 3: 3 ch, 1 tr into the same place, 1 tr in each tr to the end, 2 tr in top of the 3 ch, turn. (7 tr)\nRow 4: As Row 3. Each row has 2 more tr than the last, and Row 4 has ${last} tr.\nDo not fasten off.\nEdging: 1 ch, work ${edging}, ss to the top corner. (19 dc) Fasten off.\n`,
    ).codes.filter((code) => code !== 'count/not-checked');
  const EDGING =
    '2 dc in the end of each row down the side, 3 dc in the point, 2 dc in the end of each row up the other side';
  test('comes out', () => expect(flag(EDGING)).toEqual([]));
  test.each([
    [EDGING.replace('3 dc in the point', '2 dc in the point'), 9],
    [EDGING.replace('2 dc in the end of each row up', '3 dc in the end of each row up'), 9],
    [EDGING, 10],
  ])('not so: %s, %s', (edging, last) => expect(flag(edging, last)).toContain('count/mismatch'));
});

describe('words to the maker', () => {
  const ball = (words: string) =>
    workedText(
      `Potholder\nUK terms\nHook: 4 mm\n\nMake 4 chain and join them into a ring with a slip stitch.\n\nRound 1: 6 double crochet into the ring. ${words}\n\nRound 2: 2 double crochet in every stitch, which makes 12.\n\nFor the loop make 14 chain, slip stitch into the same stitch, and fasten off.\n`,
    ).codes;
  test.each([
    'From here on you go round and round without joining, so put a bit of coloured thread at the start of the round and move it up as you go.',
    'From now on work in a spiral without joining.',
    'From this point on work round and round without joining, so place a marker in the first stitch.',
  ])('%s', (words) => {
    expect(ball(words)).toEqual([]);
    expect(ball(words.replace('without joining', 'in every other stitch'))).not.toEqual([]);
  });
  test('a count is one, however it is led to', () => {
    expect(ball('').length).toBe(0);
  });
});
