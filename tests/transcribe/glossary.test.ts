/** A glossary of stitches that lists the trade's own words too, and stitches told by how the hook goes. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const POPCORN =
  'Popcorn: 4 dc in next st, drop loop from hook, insert hook in first of these 4 dc, draw dropped loop through, ch 1 to close (the closing ch is not counted)';
const mat = (popcorn: string, lines = 'Rnd(s) = Round(s)\nRep = Repeat') =>
  `Heron Mat\n\nStitch Glossary (US)\nDc = Double crochet\nPc = ${popcorn}\n${lines}\nSt(s) = Stitch(es)\n\nMat\n1st rnd: 12 dc in magic ring. Join with sl st to first dc. 12 dc.\n2nd rnd: Ch 2. *1 Pc in next dc. 1 dc in each of next 2 dc. Rep from * around. Join with sl st to top of first Pc. 4 Pc, 8 dc.\n`;
const specials = (text: string) =>
  transcribe({ file: 'mat.txt', text }).specials.map(({ name, work }) => [name, work?.text]);

describe('a glossary', () => {
  test('holds the words of the trade beside its stitches', () => {
    expect(specials(mat(POPCORN))).toEqual([['Pc', '4-dc popcorn in same st']]);
    expect(workedText(mat(POPCORN)).codes).not.toContain('text/special-unread');
    expect(workedText(mat(POPCORN)).codes).not.toContain('count/mismatch');
    expect(workedText(mat(POPCORN).replace('4 Pc, 8', '5 Pc, 8')).codes).toContain('count/mismatch');
  });

  test('tells of a popcorn whose dropped loop is picked up before it is drawn through', () => {
    const picked =
      'Work 5 dc in the same st, remove hook from loop, insert hook from front to back in the top of the first dc, pick up the dropped loop and draw it through.';
    expect(specials(mat(picked))).toEqual([['Pc', '5-dc popcorn in same st']]);
    expect(workedText(mat(picked)).codes).not.toContain('count/mismatch');
    expect(workedText(mat(picked.replace('first dc', 'first hdc'))).codes).toContain('text/special-unread');
  });

  test('gives no word another meaning in silence', () => {
    const other = mat(POPCORN, 'Rep = one dc more than the last\nRnd = Round');
    expect(workedText(other).codes).toContain('text/special-unread');
    const sharing = mat(POPCORN, 'Rep = repeat the dc just made once more, with a twist\nRnd = Round');
    expect(workedText(sharing).codes).toContain('text/special-unread');
  });

  test.each([
    ['its number twice over', POPCORN.replace('these 4', 'these 5')],
    ['its stitch twice over', POPCORN.replace('these 4 dc', 'these 4 sc')],
    ['its chain', POPCORN.replace(/ to close.*/, '')],
  ])('does not guess at a popcorn that differs in %s', (_, words) => {
    expect(workedText(mat(words)).codes).toContain('text/special-unread');
  });
});

test('"miss" is no short form that a list would have to explain', () => {
  const cloth = (row: string) =>
    `Tern Cloth\nUK terms\nAbbreviations: ch - chain; dc - double crochet; st - stitch\n\nCh 12.\nRow 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (11 dc)\n${row}\n`;
  const missed = 'Row 2: 1 ch, miss first st, 1 dc in each st to end, turn. (10 dc)';
  expect(workedText(cloth(missed)).codes).not.toContain('text/abbreviation-unlisted');
  expect(workedText(cloth(missed.replace('1 ch', 'Beg with 1 ch, 1 tr'))).codes).toContain(
    'text/abbreviation-unlisted',
  );
});

test('a cluster told in full under the stitches is known by its short name, and "beg" by what begins with it', () => {
  const flower = (cluster: string) =>
    workedText(
      [
        'Flower',
        'US terms',
        'Abbreviations',
        'beg cl - beginning cluster',
        'ch - chain',
        'cl - cluster',
        'dc - double crochet',
        'sl st - slip stitch',
        'sp - space',
        'Special Stitches',
        'Beginning cluster: Ch 2, [yarn over, insert hook, pull up a loop, yarn over, pull through 2 loops] twice in same sp, yarn over and pull through all 3 loops.',
        `Cluster: ${cluster}`,
        '',
        'Round 1: Make a magic ring, ch 3 (counts as dc), 11 dc in ring, join with sl st in top of ch-3. (12 dc)',
        'Round 2: Beg cl in same dc, ch 2, [cl in next dc, ch 2] 11 times, join with sl st in top of beg cl. (12 clusters, 12 ch-2 sps)',
      ].join('\n'),
    );
  const told =
    '[Yarn over, insert hook, pull up a loop, yarn over, pull through 2 loops] 3 times in same sp, yarn over and pull through all 4 loops.';
  expect(flower(told).codes).toEqual([]);
  expect(flower('Many loops.').codes).toContain('text/special-unread');
});
