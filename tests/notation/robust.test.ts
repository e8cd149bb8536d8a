import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readInstructions, readPhrase } from '../../src/notation/read.ts';
import { plainText } from '../../src/source/mapped-text.ts';
import { GOOD_LINES } from './good-lines.ts';
import { contextOf } from './read-lines.ts';

const three = contextOf('US', { sizes: 3 });

/** Pieces of the trade's language, in any order. */
const PIECES = [
  ...new Set(GOOD_LINES.flatMap((line) => line.match(/[A-Za-z]+|\d+|[^\sA-Za-z\d]/g) ?? [])),
  '**',
  '‡',
  '\n',
  '\n\n',
  '2nd',
  '3rd',
  '100001',
  '99999999999999999999',
  'sc2tog',
  '½',
  '😀',
  '(((((',
  ')))',
];

/** Every fault has a place in the text, and a line is worked only when all of its words were read. */
function soundlyRead(text: string): void {
  const { instructions, diagnostics } = readInstructions(plainText(text), three);
  for (const { span, message, try: attempt } of diagnostics) {
    expect(span.start).toBeGreaterThanOrEqual(0);
    expect(span.end).toBeLessThanOrEqual(text.length);
    expect(span.end).toBeGreaterThanOrEqual(span.start);
    expect(`${message} ${attempt}`).not.toMatch(/undefined|NaN|\[object/);
  }
  const unread = instructions.lines.filter(({ readable }) => !readable);
  expect(unread.length === 0).toBe(diagnostics.length === 0);
}

describe('any text at all is read to its end, with a place for every fault', () => {
  test('characters of any sort', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        soundlyRead(text);
        readPhrase(plainText(text), three);
      }),
      { numRuns: 400 },
    );
  });

  test('words of the trade in any order', () => {
    const text = fc.array(fc.constantFrom(...PIECES), { maxLength: 60 }).map((pieces) => pieces.join(' '));
    fc.assert(fc.property(text, soundlyRead), { numRuns: 1500 });
  });

  test('good lines with a piece left out, put in or swapped', () => {
    const edited = fc
      .tuple(
        fc.constantFrom(...GOOD_LINES),
        fc.array(fc.tuple(fc.nat(200), fc.nat(6), fc.constantFrom('', ...PIECES)), {
          minLength: 1,
          maxLength: 3,
        }),
      )
      .map(([line, edits]) =>
        edits.reduce((text, [at, length, piece]) => {
          const from = at % (text.length + 1);
          return text.slice(0, from) + piece + text.slice(from + length);
        }, line),
      );
    fc.assert(fc.property(edited, soundlyRead), { numRuns: 2000 });
  });

  test('brackets and asterisks nested without end, and a line of a hundred thousand words', () => {
    for (const hostile of [
      '('.repeat(20_000),
      '*'.repeat(20_000),
      '* '.repeat(5_000),
      '[sc in next st, '.repeat(5_000),
      `${'('.repeat(500)}sc${') twice'.repeat(500)}`,
      'sc in next st, '.repeat(30_000),
      'Row 1: '.repeat(5_000),
      `Rep Rows ${'1-99999, '.repeat(50)}3.`,
      `(${'1, '.repeat(20_000)}1)`,
    ]) {
      soundlyRead(hostile);
    }
  });
});
