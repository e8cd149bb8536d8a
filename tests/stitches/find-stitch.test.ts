/** Words of either dialect find the stitch they mean, and no other. */

import { describe, expect, test } from 'vitest';
import type { Terms } from '../../src/stitches/stitch-row.ts';
import { findStitch, stitchNames } from '../../src/stitches/table.ts';

const found = (words: string, terms: Terms): string | null => findStitch(words, terms)?.id ?? null;

describe('finding a stitch by its words', () => {
  test.each([
    ['sl st', 'sl-st'],
    ['ss', 'sl-st'],
    ['slst', 'sl-st'],
    ['sl-st', 'sl-st'],
    ['Slip Stitch', 'sl-st'],
    ['slip stitches', 'sl-st'],
    ['sl sts', 'sl-st'],
    ['chains', 'ch'],
    ['chs', 'ch'],
    ['Sc', 'sc'],
    ['s c', 'sc'],
    ['single crochet', 'sc'],
    ['single crochets', 'sc'],
    ['half-double crochet', 'hdc'],
    ['dcs', 'dc'],
    ['trc', 'tr'],
    ['triple crochet', 'tr'],
    ['dc 2 tog', 'dc2tog'],
    ['dc2 tog', 'dc2tog'],
    ['Sc2tog', 'sc2tog'],
    ['single crochet two together', 'sc2tog'],
    ['sc next 3 sts tog', 'sc3tog'],
    ['treble 2 together', 'tr2tog'],
    ['magic circle', 'mr'],
    ['MR', 'mr'],
  ])('in US terms "%s" is %s', (words, id) => {
    expect(found(words, 'US')).toBe(id);
  });

  test.each([
    ['ss', 'sl-st'],
    ['sl st', 'sl-st'],
    ['double crochet', 'sc'],
    ['half treble', 'hdc'],
    ['htr', 'hdc'],
    ['trebles', 'dc'],
    ['ttr', 'dtr'],
    ['quadtr', 'trtr'],
    ['exdc', 'esc'],
    ['exhtr', 'ehdc'],
    ['extr', 'edc'],
    ['edtr', 'etr'],
    ['htr3tog', 'hdc3tog'],
    ['triple treble 4 together', 'dtr4tog'],
  ])('in UK terms "%s" is the stitch the US calls %s', (words, id) => {
    expect(found(words, 'UK')).toBe(id);
  });

  // The pairs of the published charts of terms; esc, edc and the tallest from memory.
  test.each([
    ['dc', 'dc', 'sc'],
    ['tr', 'tr', 'dc'],
    ['dtr', 'dtr', 'tr'],
    ['trtr', 'trtr', 'dtr'],
    ['qtr', 'quadtr', 'trtr'],
    ['edc', 'edc', 'esc'],
    ['etr', 'etr', 'edc'],
    ['dc2tog', 'dc2tog', 'sc2tog'],
    ['tr5tog', 'tr5tog', 'dc5tog'],
    ['double crochet', 'dc', 'sc'],
    ['double treble crochet', 'dtr', 'tr'],
  ])('%s means US %s in US terms and US %s in UK terms', (words, us, uk) => {
    expect([found(words, 'US'), found(words, 'UK')]).toEqual([us, uk]);
  });

  test.each(['sc', 'single crochet', 'hdc', 'esc', 'ehdc', 'trc', 'sc2tog', 'hdc2tog'])(
    '"%s" is no stitch in UK terms',
    (words) => {
      expect(found(words, 'US')).not.toBeNull();
      expect(found(words, 'UK')).toBeNull();
    },
  );

  test.each(['htr', 'half treble crochet', 'quintr', 'edtr', 'htr2tog'])(
    '"%s" is no stitch in US terms',
    (words) => {
      expect(found(words, 'UK')).not.toBeNull();
      expect(found(words, 'US')).toBeNull();
    },
  );

  test('words that name their own dialect are read in it', () => {
    expect(found('tr (UK)', 'US')).toBe('dc');
    expect(found('tr (US)', 'UK')).toBe('tr');
    expect(found('shell (UK)', 'US')).toBeNull();
    expect(found('tr)', 'US')).toBeNull();
  });

  test.each(['miss', 'sk', 'st', 'next', '', ' ', 'sc in', 'sc1tog', 'sc8tog', 'xdc', 'tog', '2'])(
    '"%s" is no stitch',
    (words) => {
      expect(found(words, 'US')).toBeNull();
      expect(found(words, 'UK')).toBeNull();
    },
  );

  test.each(['US', 'UK'] as const)(
    'every spelling in %s terms finds its own stitch, also in capitals, hyphened and in the plural',
    (terms) => {
      for (const { words, row } of stitchNames(terms)) {
        for (const form of [
          words,
          words.toUpperCase(),
          words.replaceAll(' ', '-'),
          words.endsWith('stitch') ? `${words}es` : `${words}s`,
        ]) {
          expect(found(form, terms), form).toBe(row.id);
        }
      }
    },
  );
});
