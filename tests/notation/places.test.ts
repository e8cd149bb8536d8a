import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readInstructions } from '../../src/notation/read.ts';
import type { MappedText } from '../../src/source/mapped-text.ts';
import { readYaml } from '../../src/source/yaml.ts';
import { yamlAt } from '../../src/source/yaml-tree.ts';
import { GOOD_LINES } from './good-lines.ts';
import { contextOf, lineOf } from './read-lines.ts';

/** The words of a text that each part of its tree is about, in the order of the tree. */
function words(text: string): string[] {
  const found: string[] = [];
  const walk = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if ('span' in value && isSpan(value.span)) found.push(text.slice(value.span.start, value.span.end));
    for (const inner of Object.values(value)) walk(inner);
  };
  walk(lineOf(text, 'US', { sizes: 3 }));
  return found;
}

function isSpan(value: unknown): value is { start: number; end: number } {
  return typeof value === 'object' && value !== null && 'start' in value && 'end' in value;
}

describe('every word keeps its place', () => {
  test.each([
    [
      'Row 2 (RS): Ch 3 (counts as dc), 2 dc in first sc. (37 (49, 61) sts)',
      [
        'Ch 3 (counts as dc)',
        '3',
        '(counts as dc)',
        '2 dc in first sc',
        'dc',
        '2',
        'in first sc',
        'Row 2',
        '2',
        '(37 (49, 61) sts)',
        '37 (49, 61) sts',
        '37 (49, 61)',
      ],
    ],
    [
      'Sc in 2nd ch from hook and in each ch to last 2 ch, turn.',
      [
        'Sc in 2nd ch from hook',
        'Sc',
        'in 2nd ch from hook',
        '2nd',
        'in each ch to last 2 ch',
        'Sc',
        'in each ch to last 2 ch',
        'to last 2 ch',
        '2',
        'turn',
      ],
    ],
    [
      '*Sk next 2 ch, (dc, ch 1) in next ch; rep from * 5 more times.',
      [
        '*Sk next 2 ch, (dc, ch 1) in next ch; rep from * 5 more times',
        'Sk next 2 ch',
        '2',
        '(dc, ch 1) in next ch',
        'dc',
        'dc',
        'ch 1',
        '1',
        'in next ch',
        '5 more times',
        '5',
      ],
    ],
    [
      'Join B with sc in any ch-2 sp, fasten off A.',
      ['Join B with sc in any ch-2 sp', 'sc', 'in any ch-2 sp', 'fasten off A'],
    ],
    ['Rows 4 on: Rep Rows 2 and 3 to height.', ['Rep Rows 2 and 3 to height', '2', '3', 'Rows 4 on', '4']],
  ])('%s', (text, expected) => {
    const found = words(text);
    expect(found.filter((each) => !expected.includes(each) && each !== text)).toEqual([]);
    expect(expected.filter((each) => !found.includes(each))).toEqual([]);
  });

  test('a fault inside a YAML block lies where the word stands in the file', () => {
    const file = 'title: Test\nwork: |\n    Row 1: Sc in next st,\n      sc in nxet st.\n';
    const at = file.indexOf('nxet');
    const { diagnostics } = readInstructions(textOf(file), contextOf('US'));
    expect(diagnostics.map(({ code, span }) => [code, span])).toEqual([
      ['word/unknown', { start: at, end: at + 4 }],
    ]);
  });

  test('of any line, steps lie inside the line, one after the other, and what is in them inside them', () => {
    fc.assert(
      fc.property(fc.constantFrom(...GOOD_LINES), (text) => {
        const walk = (value: unknown, outer: { start: number; end: number }): void => {
          if (typeof value !== 'object' || value === null) return;
          const own = 'span' in value && isSpan(value.span) ? value.span : outer;
          expect(own.start).toBeGreaterThanOrEqual(outer.start);
          expect(own.end).toBeLessThanOrEqual(outer.end);
          for (const [key, inner] of Object.entries(value)) if (key !== 'stitch') walk(inner, own);
        };
        const line = lineOf(text, 'US', { sizes: 3 });
        walk(line, { start: 0, end: text.length });
        line.steps.slice(1).forEach(({ span }, i) => {
          expect(span.start).toBeGreaterThanOrEqual(line.steps[i]?.span.start ?? 0);
        });
      }),
    );
  });
});

/** The block under `work:` with its way back to the file. */
function textOf(file: string): MappedText {
  const block = yamlAt(readYaml(file).root, ['work']);
  if (block?.kind !== 'text') throw new Error('no text under work:');
  return block.text;
}
