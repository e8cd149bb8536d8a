/** A foundation or a rule that stands right under other words, with no blank line between, is taken for what it is. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const ROWS =
  'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (21)\nRow 2: Ch 1, sc in each st across, turn. (21)';

describe('the chain begins the work right under', () => {
  test.each([
    ['a note', 'Notes: Turn at the end of every row.', 'Ch 22.'],
    ['a list of notes', 'Notes\nTurn at the end of every row.\nWork loosely.', 'With A, ch 22.'],
    ['the gauge', 'Gauge: 14 sc and 16 rows = 10 cm', 'Chain 22, turn.'],
    ['the materials', 'Materials\nWorsted cotton, 50 g\n5 mm hook', 'Ch 22.'],
    ['a note', 'Notes: Turn at the end of every row.', 'Commence with 22 ch.'],
    ['a rule of its chains', 'Ch 1 does not count as a st.', '22 ch.'],
  ])('%s', (_, above, chain) => {
    const { codes, rows } = workedText(`Reed Cloth\nUS terms\n\n${above}\n${chain}\n${ROWS}\n`);
    expect(codes.filter((code) => code !== 'gauge/missing')).toEqual([]);
    expect(rows).toEqual([['Foundation: 0', 'Row 1: 21', 'Row 2: 21']]);
    const short = chain.replace('22', '21');
    expect(workedText(`Reed Cloth\nUS terms\n\n${above}\n${short}\n${ROWS}\n`).codes).toContain(
      'count/mismatch',
    );
  });

  test('the sizes, with a number for each', () => {
    const rows = ROWS.replaceAll('(21)', '21 (25)');
    const text = `Rushes Headband\nUS terms\nSizes: S (M)\nCh 22 (26).\n${rows}\n`;
    expect(workedText(text)).toMatchObject({
      codes: [],
      rows: [
        ['Foundation: 0', 'Row 1: 21', 'Row 2: 21'],
        ['Foundation: 0', 'Row 1: 25', 'Row 2: 25'],
      ],
    });
    expect(workedText(text.replace('(26)', '(27)')).codes).toContain('count/mismatch');
  });
});

test('a chain told of within a special stitch begins no work', () => {
  const text = `Picot Cloth\nUS terms\n\nSpecial stitches\nPicot:\nCh 3, sl st in 3rd ch from hook.\n\nCh 22.\n${ROWS}\nRow 3: Ch 1, sc in each st across, picot. (21)\n`;
  expect(workedText(text).codes).toEqual([]);
});

describe('what turning chains count as is a rule wherever it stands before the rows', () => {
  const scarf = (rule: string, count: number) =>
    `Trellis Scarf\nUS terms\nHook: 4 mm\n${rule}\nCh 18.\nRow 1: Dc in 4th ch from hook and in each ch across, turn.\nRow 2: Ch 3, dc in each st across, turn. (${count})\n`;

  test.each([
    ['Beginning ch-3 counts as a dc throughout.', 16],
    ['Ch 3 at beg of row counts as dc', 16],
    ['Turning chains count as a stitch.', 16],
    ['The turning chain does not count as a stitch.', 15],
    ['Ch 3 never counts as a st.', 15],
    ['Turning chains are not counted as stitches.', 15],
    ['Turning chains aren’t included in the stitch count.', 15],
    ['The turning chain is counted as a stitch.', 16],
    ['Ch 3 is not counted as a stitch.', 15],
    ['Ch 3 is counted as a dc.', 16],
  ])('%s', (rule, count) => {
    expect(workedText(scarf(rule, count))).toMatchObject({ codes: [] });
    expect(workedText(scarf(`Instructions\n${rule}`, count))).toMatchObject({ codes: [] });
    expect(workedText(scarf(rule, 31 - count)).codes).toEqual(['count/mismatch']);
  });

  test('a stitch and a chain may be told together in brackets', () => {
    const net = (spaces: number) =>
      workedText(
        `Net\nUS terms\nCh 4 at beginning of row counts as (dc, ch 1).\nCh 19.\nRow 1: Dc in 4th ch from hook (skipped 3 ch count as dc) and in each ch across, turn. (17 dc)\nRow 2: Ch 4, sk next dc, dc in next dc, *ch 1, sk next dc, dc in next dc; rep from * across. (9 dc, ${spaces} ch-1 sps)\n`,
      ).codes;
    expect(net(8)).toEqual([]);
    expect(net(7)).toEqual(['count/mismatch']);
  });

  test('nothing said is asked for', () => {
    expect(workedText(scarf('', 16)).codes).toContain('chain/unstated');
  });

  test('that of single crochet counts only where it is said of ch 1', () => {
    const cloth = (rule: string) =>
      workedText(`Reed Cloth\nUS terms\n${rule}\nCh 22.\n${ROWS.replace('each st across', 'next 21 sts')}\n`)
        .codes;
    expect(cloth('Turning chains count as a stitch.')).toEqual([]);
    expect(cloth('Ch 1 counts as a sc throughout.')).toContain('row/used-up');
  });

  test('among the rows it holds from there on', () => {
    const text = `${scarf('Turning chains count as a stitch.', 16)}Turning chains do not count from here on.\nRow 3: Ch 3, dc in each st across, turn. (16)\nRow 4: Ch 3, dc in each st across. (16)\n`;
    expect(workedText(text).codes).toEqual([]);
    expect(workedText(text.replace(/\(16\)\n$/, '(17)\n')).codes).toEqual(['count/mismatch']);
  });
});

describe('a heading with the foundation of its piece on the same line', () => {
  const named = (line: string, rows = ROWS) => `Reed Blanket\nUS terms\nHook: 4 mm\n\n${line}\n${rows}\n`;
  const parts = (text: string) =>
    transcribe({ file: 'reed.txt', text }).parts.map(({ name, lines }) => [name, lines.length]);

  test.each(['AFGHAN: With A, ch 22.', 'Front Panel: Chain 22.'])('%s', (line) => {
    expect(workedText(named(line)).codes.filter((code) => code !== 'gauge/missing')).toEqual([]);
    expect(parts(named(line))).toEqual([[line.startsWith('A') ? 'Afghan' : 'Front Panel', 3]]);
    expect(workedText(named(line.replace('22', '21'))).codes).toContain('count/mismatch');
  });

  test('a strap in one line behind work that is fastened off is a piece of its own', () => {
    const strap =
      'Strap (A): ch 41, sl st in 2nd ch from hook and in each ch to end = 40 sl sts. Fasten off.';
    const text = named('Ch 22.', `${ROWS}\nFasten off.\n\n${strap}`);
    expect(workedText(text).codes.filter((code) => code !== 'gauge/missing')).toEqual([]);
    expect(parts(text).map(([name]) => name)).toContain('Strap (A)');
    expect(workedText(text.replace('ch 41', 'ch 40')).codes).toContain('count/mismatch');
  });

  test('a loop within the work is none', () => {
    const text = named('Ch 22.', `${ROWS}\nLoop: ch 10, sl st in 2nd ch from hook and in each ch to end.`);
    expect(parts(text)).toHaveLength(1);
  });
});

describe('what is said of other widths is no work', () => {
  const cloth = (said: string): readonly string[] =>
    workedText(`Reed Cloth\nUS terms\nGauge: 14 sc and 16 rows = 10 cm\n\n${said}\n\nCh 22.\n${ROWS}\n`)
      .codes;

  test.each([
    'For a different width, make a multiple of 12 ch, then add 3.',
    'For another width, chain any number.',
    'For a wider cloth, chain more stitches.',
  ])('%s', (said) => expect(cloth(said)).toEqual([]));

  test('but for one of the sizes it is', () =>
    expect(cloth('For size Large, make 4 ch more, then turn.')).not.toEqual([]));
});

describe('the last stitch of every row', () => {
  const band = (said: string, last = 'in each of the next 9 sts'): readonly string[] =>
    workedText(
      `Reed Band\nUS terms\nGauge: 14 dc and 8 rows = 10 cm\n\nThe ch 3 at the beginning of a row counts as a dc.\n\nCh 12.\nRow 1: Dc in 4th ch from hook (skipped chs count as dc) and in each ch across. Turn. (10 dc)\nRows 2-6: Ch 3, dc ${last}. Turn. (10 dc)\n${said}\n`,
    ).codes;

  test.each([
    'The last dc of every row goes into the top of the ch 3.',
    'The last dc of each row is worked in the top of the ch 3.',
  ])('%s', (said) => {
    expect(band(said)).toEqual([]);
    expect(band(said, 'in each of the next 8 sts')).toContain('count/mismatch');
  });
});
