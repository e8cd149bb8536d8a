/** Words of either dialect find the stitch they mean, and no other. */

import { describe, expect, test } from 'vitest';
import { pluralAbbr, pluralName } from '../../src/stitches/plural.ts';
import type { Terms } from '../../src/stitches/stitch-row.ts';
import { findStitch, STITCHES, stitchNames, termsOf } from '../../src/stitches/table.ts';

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
    ['FPdc', 'fpdc'],
    ['fp dc', 'fpdc'],
    ['front post double crochet', 'fpdc'],
    ['FPtr', 'fptr'],
    ['FPtrc', 'fptr'],
    ['BPdtr', 'bpdtr'],
    ['FPdc2tog', 'fpdc2tog'],
    ['fsc', 'fsc'],
    ['foundation half double crochet', 'fhdc'],
    ['5-dc popcorn', 'dc5-popcorn'],
    ['5 dc popcorn', 'dc5-popcorn'],
    ['5-dc pc', 'dc5-popcorn'],
    ['5-dc popcorns', 'dc5-popcorn'],
    ['3-dc cl', 'dc3-cl'],
    ['3-dc cluster', 'dc3-cl'],
    ['3 double crochet cluster', 'dc3-cl'],
    ['5-dc bo', 'dc5-bobble'],
    ['3-hdc puff', 'hdc3-puff'],
    ['3-hdc puff st', 'hdc3-puff'],
    ['ldc', 'linked-dc'],
    ['standing dc', 'standing-dc'],
    ['stdg sc', 'standing-sc'],
    ['crab stitch', 'rev-sc'],
    ['spike sc', 'spike-sc'],
    ['long sc', 'spike-sc'],
    ['long dc', 'long-dc'],
    ['inv dec', 'inv-dec'],
    ['LK', 'love-knot'],
    ['Solomon’s knot', 'love-knot'],
    ['fur stitch', 'loop-st'],
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
    ['RtrF', 'fpdc'],
    ['FPtr', 'fpdc'],
    ['front post treble', 'fpdc'],
    ['raised treble front', 'fpdc'],
    ['raised front treble', 'fpdc'],
    ['FPdc', 'fpsc'],
    ['RdtrB', 'bptr'],
    ['BPtrtr', 'bpdtr'],
    ['RtrF2tog', 'fpdc2tog'],
    ['FPtr2tog', 'fpdc2tog'],
    ['fdc', 'fsc'],
    ['ftr', 'fdc'],
    ['5-tr popcorn', 'dc5-popcorn'],
    ['3-tr cl', 'dc3-cl'],
    ['3-htr puff', 'hdc3-puff'],
    ['ltr', 'linked-dc'],
    ['standing treble', 'standing-dc'],
    ['rev dc', 'rev-sc'],
    ['spdc', 'spike-sc'],
    ['long dc', 'spike-sc'],
    ['long tr', 'long-dc'],
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

  // Words without one meaning: a pattern has to define them.
  test.each([
    'shell',
    'cl',
    'cluster',
    'puff',
    'popcorn',
    'pc',
    'bobble',
    'bo',
    'picot',
    'fan',
    'V-st',
    'inc',
    'spike',
    '8-dc cl',
  ])('"%s" alone is no stitch', (words) => {
    expect(found(words, 'US')).toBeNull();
    expect(found(words, 'UK')).toBeNull();
  });

  test.each(['US', 'UK'] as const)('what is printed in %s terms is read back as the same stitch', (terms) => {
    for (const row of STITCHES) {
      const { abbr, name } = termsOf(row, terms);
      for (const words of [abbr, name, pluralAbbr(abbr), pluralName(name)])
        expect(found(words, terms), words).toBe(row.id);
    }
  });

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
