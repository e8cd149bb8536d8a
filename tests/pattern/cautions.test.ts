/** Cautions follow from what a pattern is for and from its yarn. */

import { describe, expect, test } from 'vitest';
import shared from '../../shared/cautions.json' with { type: 'json' };
import { cautionGroups, cautionsFor } from '../../src/pattern/cautions.ts';
import { USES } from '../../src/pattern/pattern.ts';

describe('cautions', () => {
  test('a plain wool blanket carries the general ones alone, and says whose rules come first', () => {
    expect(cautionGroups([], ['wool']).map((group) => group.of)).toEqual(['general']);
    expect(cautionsFor([], ['wool']).at(-1)).toBe('Rules differ by country; yours come first.');
  });

  test('acrylic in any yarn adds the caution on heat', () => {
    const texts = cautionsFor([], ['wool', '80% Acrylic, 20% wool']);
    expect(texts.some((text) => text.includes('Never set an iron on acrylic'))).toBe(true);
    expect(cautionsFor([], ['wool', 'cotton']).some((text) => text.includes('acrylic'))).toBe(false);
  });

  test('something for a baby names the US and the UK advice and keeps to the stricter', () => {
    const text = cautionsFor(['infant'], ['cotton']).join(' ');
    for (const words of ['CPSC', 'AAP', 'NHS', 'stricter', 'never in the cot']) expect(text).toContain(words);
  });

  test('groups come in one order however the file lists the uses', () => {
    const order = cautionGroups(['cords', 'toy', 'infant'], ['acrylic']).map((group) => group.of);
    expect(order).toEqual(['infant', 'toy', 'cords', 'acrylic', 'general']);
  });

  test.each([
    ['toy', '16 CFR 1501'],
    ['child clothing', 'EN 14682'],
    ['child clothing', '16 CFR 1120'],
    ['cords', '220 mm'],
    ['heat', 'cotton or wool'],
    ['nightwear', 'Keep away from fire'],
  ] as const)('%s speaks of %s', (use, words) => {
    expect(cautionsFor([use], []).join(' ')).toContain(words);
  });

  test('every use a pattern file may name has cautions, and no others stand in the table', () => {
    expect(Object.keys(shared.cautions)).toEqual([...USES, 'acrylic', 'general']);
  });

  test('every sentence that claims to be published names its authority, and remembered ones are marked', () => {
    for (const { texts } of Object.values(shared.cautions)) {
      for (const { text, authority, known } of texts) {
        expect(['published', 'second hand', 'memory']).toContain(known);
        if (known !== 'memory') expect(authority, text).not.toBeNull();
      }
    }
  });
});
