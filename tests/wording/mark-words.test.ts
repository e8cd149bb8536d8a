/** Abbreviations and repeats are marked where they stand, and nothing of the words is lost. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type MarkedPiece, markerFor } from '../../src/wording/mark-words.ts';

const marker = markerFor({
  abbreviations: [
    { abbr: 'ch', meaning: 'chain' },
    { abbr: 'dc', meaning: 'double crochet' },
    { abbr: 'dc2tog', meaning: 'double crochet 2 together' },
    { abbr: 'sk', meaning: 'skip' },
    { abbr: 'st', meaning: 'stitch' },
  ],
  specials: [{ name: 'beginning cluster (beg cl)', called: 'beg cl', how: 'Ch 2, dc2tog.' }],
});

/** Repeats in angle brackets, abbreviations in curly ones. */
function shown(pieces: readonly MarkedPiece[]): string {
  return pieces
    .map((piece) => {
      if (piece.kind === 'words') return piece.text;
      return piece.kind === 'repeat' ? `<${shown(piece.inside)}>` : `{${piece.text}}`;
    })
    .join('');
}

function plain(pieces: readonly MarkedPiece[]): string {
  return pieces.map((piece) => (piece.kind === 'repeat' ? plain(piece.inside) : piece.text)).join('');
}

describe('what is marked', () => {
  test.each([
    ['Dc in next 2 sts, dc2tog.', '{Dc} in next 2 {sts}, {dc2tog}.'],
    ['Beg cl in first st.', '{Beg cl} in first {st}.'],
    [
      '*Dc in next st, ch 1; rep from * across, turn.',
      '<*{Dc} in next {st}, {ch} 1;> rep from * across, turn.',
    ],
    ['[Ch 1, sk next st] 6 times, dc.', '<[{Ch} 1, {sk} next {st}]> 6 times, {dc}.'],
    ['*Dc, [ch 1, dc] twice; rep from * to end.', '<*{Dc}, <[{ch} 1, {dc}]> twice;> rep from * to end.'],
    [
      '*Ch 1, †dc, sk 1; rep from † once; repeat from * twice.',
      '<*{Ch} 1, <†{dc}, {sk} 1;> rep from † once;> repeat from * twice.',
    ],
    [
      '*Dc; rep from * twice, *ch 1; rep from * 3 times.',
      '<*{Dc};> rep from * twice, <*{ch} 1;> rep from * 3 times.',
    ],
    [
      '*Dc**, ch 1; rep from * across, ending last rep at **.',
      '<*{Dc}**, {ch} 1;> rep from * across, ending last rep at **.',
    ],
    ['(Dc, ch 1, dc) in next st.', '({Dc}, {ch} 1, {dc}) in next {st}.'],
    // Nothing takes it up again, or closes it: it is a maker's own sign.
    ['Dc in each st*, turn [see notes.', '{Dc} in each {st}*, turn [see notes.'],
  ])('%s', (text, expected) => expect(shown(marker(text).pieces)).toBe(expected));
});

test('each word is explained once, in the order of the row', () => {
  expect(marker('Ch 3, beg cl, *dc, ch 1; rep from * across.').meanings).toEqual([
    { word: 'ch', meaning: 'chain' },
    { word: 'beg cl', meaning: 'Ch 2, dc2tog.' },
    { word: 'dc', meaning: 'double crochet' },
  ]);
});

test('whatever a row says, its words come out as they went in', () => {
  const words = fc.constantFrom(
    'dc',
    'ch 1',
    '*',
    '; rep from * across',
    '[',
    ']',
    '†',
    '**',
    ' from ',
    '<b>',
    'st',
  );
  fc.assert(
    fc.property(fc.array(words, { maxLength: 20 }), (some) => {
      const text = some.join(' ');
      expect(plain(marker(text).pieces)).toBe(text);
    }),
  );
});
