import fc from 'fast-check';
import { expect, test } from 'vitest';
import { editDistance, nearest } from '../../src/diagnostics/nearest.ts';

test.each([
  ['colr', ['hex', 'colour', 'weight'], 'colour'],
  ['license', ['licence', 'title'], 'licence'],
  ['Skill', ['skill'], 'skill'],
  ['gague', ['gauge', 'hook'], 'gauge'],
  ['eazy', ['easy', 'basic'], 'easy'],
  ['bobble', ['double', 'picot'], 'double'],
  ['zebra', ['title', 'terms'], null],
  ['q', ['A', 'B'], null],
  ['ab', ['cd'], null],
  ['', ['A'], null],
  ['sc', ['dc', 'hdc'], 'dc'],
])('"%s" among %j is taken for %j', (word, candidates, expected) => {
  expect(nearest(word, candidates)).toBe(expected);
});

test('of two as near, the first listed is offered', () => {
  expect(nearest('hat', ['cat', 'bat'])).toBe('cat');
});

test('two letters swapped are one slip', () => {
  expect(editDistance('rnosd', 'rnods')).toBe(1);
  expect(editDistance('kitten', 'sitting')).toBe(3);
});

test('distance is none for the same word, the same both ways, and never more than the longer word', () => {
  const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c', '½'), maxLength: 8 });
  fc.assert(
    fc.property(word, word, (a, b) => {
      expect(editDistance(a, a)).toBe(0);
      expect(editDistance(a, b)).toBe(editDistance(b, a));
      expect(editDistance(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length));
      expect(editDistance(a, b)).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
    }),
  );
});
