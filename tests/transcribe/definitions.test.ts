/** Stitches and abbreviations explained outside of the lists where they belong, and in more forms within them. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const cosy = (lines: string, row2: string) =>
  `Reed Cosy\nUS terms\n\n${lines}\n\nCh 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (19)\nRow 2: ${row2}\n`;
const specials = (text: string) =>
  transcribe({ file: 'cosy.txt', text }).specials.map(({ name, work }) => [name, work?.text]);

describe('a stitch explained in a sentence', () => {
  const row2 =
    'Ch 1, sc in first st, *skip 2 sts, shell in next st, skip 2 sts, sc in next st; rep from * across, turn. (3 shells, 4 sc)';

  test('is told in stitches', () => {
    const text = cosy('A shell is 2 d c, 2 ch, 2 d c, all in the same place.', row2);
    expect(specials(text)).toEqual([['shell', '(2 d c, 2 ch, 2 d c) in same st']]);
    expect(workedText(text).rows).toEqual([['Foundation: 0', 'Row 1: 19', 'Row 2: 16']]);
    expect(workedText(text.replace('3 shells', '4 shells')).codes).toContain('count/mismatch');
  });

  test('may stand in brackets already', () => {
    const text = cosy('A shell is (2 dc, ch 2, 2 dc), all in the same place.', row2);
    expect(specials(text)).toEqual([['shell', '(2 dc, ch 2, 2 dc) in same st']]);
    expect(workedText(text).rows[0]?.at(-1)).toBe('Row 2: 16');
    expect(workedText(text.replace('3 shells', '2 shells')).codes).toContain('count/mismatch');
  });

  test('has to be one that the rows use, and say where it goes', () => {
    expect(specials(cosy('A shell is 5 dc in the same st.', 'Ch 1, sc in each st across. (19)'))).toEqual([]);
    expect(workedText(cosy('A shell is 4 cm wide.', row2)).codes).toContain('special/undefined');
  });
});

describe('a stitch told in two halves', () => {
  const SPECIAL = 'Special stitches\n';
  const cable = (words: string): string => `${SPECIAL}C4F: ${words}`;
  const crossed =
    'skip 2 sts, FPtr around each of the next 2 sts, then working in front of the sts just made, FPtr around each of the 2 skipped sts.';
  const row2 = 'Ch 1, sc in next 7 sts, C4F over next 4 sts, sc in next 8 sts, turn. (19 sts)';

  test('keeps both, and what is said of the hand between them', () => {
    expect(specials(cosy(cable(crossed), row2))).toEqual([['C4F', crossed.slice(0, -1)]]);
    expect(workedText(cosy(cable(crossed), row2)).rows).toEqual([
      ['Foundation: 0', 'Row 1: 19', 'Row 2: 19'],
    ]);
    expect(workedText(cosy(cable(crossed), row2.replace('19', '17'))).codes).toContain('count/mismatch');
    const short = crossed.replace('each of the 2 skipped', 'the 1st skipped');
    expect(workedText(cosy(cable(short), row2)).codes).toContain('count/mismatch');
  });

  test('is not its second half alone', () => {
    const block = `${SPECIAL}blk: 1 dc in each of next 2 sts (or 3 dc in a space), 1 dc in next dc`;
    const row = 'Ch 1, sc in next 7 sts, blk, sc in next 11 sts, turn. (19 sts)';
    expect(specials(cosy(block, row))).toEqual([['blk', undefined]]);
    expect(workedText(cosy(block, row)).codes).toContain('text/special-unread');
  });
});

describe('a stitch explained under no heading', () => {
  test.each([
    ['dec = sc2tog', 'Ch 1, sc in next 5 sts, dec, sc in next 12 sts, turn. (18)', 'dec', 'sc2tog'],
    [
      'V-st: (dc, ch 1, dc) in same st',
      'Ch 1, sc in first st, *skip 1 st, V-st in next st, skip 1 st; rep from * across, turn. (6 V-sts, 1 sc)',
      'V-st',
      '(dc, ch 1, dc) in same st',
    ],
    [
      'Picot: ch 3, sl st in 1st ch',
      'Ch 1, *sc in next st, picot; rep from * across, turn. (19 sc)',
      'picot',
      'ch 3, sl st in first of these ch',
    ],
    [
      'MB (make bobble): 5 dctog in same st.',
      'Ch 1, sc in next 9 sts, MB in next st, sc in next 9 sts, turn. (18 sc, 1 MB)',
      'MB',
      'dc5tog in same st',
    ],
    [
      'With Shell (sh): 5 dc in same st',
      'Ch 1, sc in first st, *skip 2 sts, sh in next st, skip 2 sts, sc in next st; rep from * across, turn. (3 shells, 4 sc)',
      'sh',
      '5 dc in same st',
    ],
  ])('%s', (line, row, name, work) => {
    const text = cosy(line, row);
    expect(specials(text)).toEqual([[name, work]]);
    expect(workedText(text).codes).toEqual([]);
    expect(workedText(text.replace(/\((\d+)(?=[^()]*\)\n$)/, '(9')).codes).toContain('count/mismatch');
  });

  test('goes by its name in full words in the rows as well', () => {
    const row =
      'Ch 1, sc in first st, *skip 2 sts, shell in next st, skip 2 sts, sc in next st, skip 2 sts, sh in next st, skip 2 sts, sc in next st; rep from * to last 6 sts, skip 2 sts, sh in next st, skip 2 sts, sc in last st, turn. (3 sh, 4 sc)';
    expect(workedText(cosy('Shell (sh): 5 dc in same st', row)).codes).toEqual([]);
  });

  test.each([
    ['a piece of the work', 'Centre: 6 sc in 2nd ch from hook'],
    ['a row of its own', 'Border: Ch 1, sc in each st across, turn.'],
    ['a measure', 'Width: 10 cm'],
  ])('is not %s', (_, line) => expect(specials(cosy(line, 'Ch 1, sc in each st across. (19)'))).toEqual([]));
});

describe('a list of abbreviations', () => {
  const row = 'Ch 1, *sc in next st; rep from * in each stitch across, turn.';

  test.each([
    ['st(s) - stitch(es)\nsc - single crochet\nch(s) - chain(s)'],
    ['st/s- stitch/es\nsc- single crochet\nch- chain'],
    ['sts – stitches\nsc – single crochet\nch – chain'],
    ['st stitch; sc single crochet; ch chain'],
    ['st, stitch; sc, single crochet; ch, chain'],
  ])('%s', (list) => {
    const text = cosy(`Abbreviations\n${list}`, row);
    const { pieces } = transcribe({ file: 'cosy.txt', text });
    expect(pieces.filter(({ kind }) => kind === 'kept')).toEqual([]);
    expect(pieces.filter(({ kind }) => kind === 'abbreviation')).toHaveLength(3);
    expect(workedText(text).codes).not.toContain('text/abbreviation-unused');
  });

  test('still has what nothing uses told', () => {
    const { codes } = workedText(
      cosy('Abbreviations\nst - stitch\nsc - single crochet\nhdc - half double crochet', row),
    );
    expect(codes).toContain('text/abbreviation-unused');
  });

  test('with no heading is one as well', () => {
    const { pieces } = transcribe({
      file: 'cosy.txt',
      text: cosy('st = stitch\nsc = single crochet\nch = chain', row),
    });
    expect(pieces.filter(({ kind }) => kind === 'abbreviation')).toHaveLength(3);
  });

  test('under a heading in small letters is one as well', () => {
    const { pieces } = transcribe({
      file: 'cosy.txt',
      text: cosy('abbreviations (US)\nst = stitch\nsc = single crochet\nch = chain', row),
    });
    expect(pieces.filter(({ kind }) => kind === 'abbreviation')).toHaveLength(3);
  });
});

describe('an abbreviation of the trade that is told by its name and more', () => {
  const list = (fpdc: string) =>
    workedText(
      cosy(
        `Abbreviations\nch: chain\nsc: single crochet\ndc: double crochet\n${fpdc}`,
        'Ch 2, *FPdc around next st, BPdc around next st; rep from * to last st, dc in last st. (19)',
      ),
    ).codes;
  test.each([
    'FPdc: front post double crochet - work the dc around the post of the st, going in from the front\nBPdc: back post double crochet - the same from the back',
    'FPdc, BPdc = front/back post double crochet: work the dc around the post of the stitch below, from the front/from the back',
    'FPdc = front post double crochet (from the front, around the post)\nBPdc = back post double crochet (from the back, around the post)',
  ])('%s', (told) => {
    expect(list(told)).not.toContain('text/abbreviation');
  });
  test.each([
    [
      'FPdc: front post double crochet - work 3 dc around the post of the st\nBPdc: back post double crochet',
      'count/mismatch',
    ],
    ['FPdc: back post double crochet - from the back\nBPdc: back post double crochet', 'text/abbreviation'],
  ])('is told of where that is another stitch: %s', (told, code) => {
    expect(list(told)).toContain(code);
  });

  test('a list with plurals in brackets is a list', () => {
    const told =
      'Abbreviations: ch chain; sl st slip stitch; sc single crochet; st(s) stitch(es); rep repeat';
    expect(workedText(cosy(told, 'Ch 1, sc in each st across. (19)')).codes).not.toContain(
      'text/abbreviation',
    );
  });
});
