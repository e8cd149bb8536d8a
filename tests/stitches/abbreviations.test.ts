/** The abbreviations that name no stitch, in both dialects. */

import { describe, expect, test } from 'vitest';
import {
  ABBREVIATIONS,
  abbreviationById,
  abbreviationTerms,
  findAbbreviation,
} from '../../src/stitches/abbreviations.ts';
import { findStitch } from '../../src/stitches/table.ts';

describe('general abbreviations', () => {
  test.each([
    ['sk', 'sk', 'miss'],
    ['yo', 'yo', 'yrh'],
    ['sp', 'sp', 'sp'],
    ['rs', 'RS', 'RS'],
    ['fdn-ch', 'fdn ch', 'base ch'],
    ['mc', 'MC', 'M'],
  ])('%s is printed %s in US terms and %s in UK terms', (id, us, uk) => {
    const row = abbreviationById(id);
    expect([abbreviationTerms(row, 'US').abbr, abbreviationTerms(row, 'UK').abbr]).toEqual([us, uk]);
  });

  test('colour is spelt in each dialect’s own way', () => {
    expect(abbreviationById('mc').us.meaning).toBe('main color');
    expect(abbreviationById('mc').uk.meaning).toBe('main colour');
  });

  test.each([
    ['Sts', 'st'],
    ['rnds', 'rnd'],
    ['ws', 'ws'],
    ['ch sp', 'ch-sp'],
    ['ch-sps', 'ch-sp'],
    ['BL', 'blo'],
    ['pat', 'patt'],
    ['lps', 'lp'],
    ['t-ch', 'tch'],
  ])('"%s" is read in both dialects', (words, id) => {
    expect(findAbbreviation(words, 'US')?.id).toBe(id);
    expect(findAbbreviation(words, 'UK')?.id).toBe(id);
  });

  test('skip is US, miss is UK, and neither is read in the other', () => {
    expect(findAbbreviation('sk', 'UK')).toBeNull();
    expect(findAbbreviation('miss', 'US')).toBeNull();
    expect(findAbbreviation('miss', 'UK')?.id).toBe('sk');
  });

  test('holds what instruction lines use, each with a meaning in both dialects', () => {
    const ids = ABBREVIATIONS.map((row) => row.id);
    for (const id of [
      'approx',
      'beg',
      'blo',
      'ch-sp',
      'cont',
      'flo',
      'foll',
      'lp',
      'patt',
      'pm',
      'prev',
      'rem',
      'rep',
      'rnd',
      'rs',
      'sk',
      'sp',
      'st',
      'tch',
      'tog',
      'ws',
      'yo',
    ]) {
      expect(ids).toContain(id);
    }
    expect(new Set(ids).size).toBe(ids.length);
    for (const { id, us, uk, source } of ABBREVIATIONS) {
      for (const words of [us.abbr, us.meaning, uk.abbr, uk.meaning, source]) expect(words, id).not.toBe('');
    }
  });

  test('none of them is also the name of a stitch', () => {
    const both = ABBREVIATIONS.filter(({ us, uk }) => findStitch(us.abbr, 'US') ?? findStitch(uk.abbr, 'UK'));
    // `ch-` before a number stands for the chain itself.
    expect(both.map((row) => row.id)).toEqual(['ch-n']);
  });

  test('an unknown id is a fault of the program and is said so', () => {
    expect(() => abbreviationById('xyz')).toThrow('No abbreviation xyz in the list.');
  });
});
