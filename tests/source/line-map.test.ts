import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lineMap, lineText, placeOf } from '../../src/source/line-map.ts';
import { lineColumn } from '../../src/source/span.ts';

const files = fc.string({ unit: fc.constantFrom('a', '\n', '\r\n', '\t', '🧶', 'é') });

test('the index of lines and the plain count agree on every place of a file', () => {
  fc.assert(
    fc.property(files, (text) => {
      const map = lineMap(text);
      for (let offset = -1; offset <= text.length + 1; offset++) {
        expect(placeOf(map, offset)).toEqual(lineColumn(text, offset));
      }
    }),
  );
});

test('a line is given without what ends it, and there is no line past the last', () => {
  const map = lineMap('one\r\ntwo\n\nfour');
  expect([1, 2, 3, 4, 5].map((line) => lineText(map, line))).toEqual(['one', 'two', '', 'four', '']);
});
