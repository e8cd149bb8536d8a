import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planSize } from '../../src/check/plan-size.ts';
import { targets } from '../../src/fabric/fabric.ts';
import { workSize } from '../../src/fabric/work.ts';
import { readPattern } from '../../src/pattern/read-pattern.ts';
import { DEMO_NAMES, demoText } from '../demo/demo-patterns.ts';

const TEXTS = DEMO_NAMES.map(demoText);

/** The words and marks that rows are made of. */
const PIECES = [
  ...[
    'sc',
    'dc',
    'shell',
    'cl',
    'inc',
    'sc2tog',
    'sk',
    'ch',
    'next',
    'each',
    'same',
    'first',
    'last',
    'st',
    'sts',
    'sp',
    'ch-2 sp',
  ],
  ...[
    'across',
    'around',
    'to next corner',
    'rep from *',
    'turn',
    'join',
    'in',
    '*',
    '**',
    '(',
    ')',
    '[',
    ']',
    ',',
    ';',
    '.',
    '0',
    '1',
    '2',
    '9999',
  ],
  ...[
    '2 more times',
    '3 times',
    'twice',
    'Rep Rows 2 and 3',
    'to height',
    'working along row ends',
    '2 rows below',
    'top of beg ch-3',
    '',
  ],
];

/** One word of the rows taken out, and another put in its place. */
const edited = fc
  .tuple(
    fc.constantFrom(...TEXTS),
    fc.array(fc.tuple(fc.nat(), fc.constantFrom(...PIECES)), { minLength: 1, maxLength: 3 }),
  )
  .map(([text, edits]) =>
    edits.reduce((whole, [at, piece]) => {
      const from = whole.indexOf('work: |');
      const words = [...whole.slice(from).matchAll(/[^\s,;()[\]*]+|[,;()[\]*]/g)];
      const word = words[2 + (at % (words.length - 2))];
      if (word === undefined) return whole;
      const start = from + word.index;
      return whole.slice(0, start) + piece + whole.slice(start + word[0].length);
    }, text),
  );

describe('a pattern with a word or three changed', () => {
  test('is worked to its end or told what is wrong, and every fault has its place in the file', () => {
    fc.assert(
      fc.property(edited, (text) => {
        const { pattern, diagnostics } = readPattern({ file: 'test', text }, 'test');
        const all = [...diagnostics];
        for (const index of pattern?.sizes.keys() ?? []) {
          if (pattern === null) break;
          const { plan, faults } = planSize(pattern, index);
          all.push(...faults);
          if (plan === null) continue;
          const worked = workSize(pattern, index, plan);
          all.push(...worked.diagnostics);
          const { fabric } = worked;
          for (let i = 0; i < fabric.count; i += 1)
            for (const target of targets(fabric, i))
              if (target >= i) throw new Error(`${i} goes into ${target}`);
          const errors = all.filter(({ severity }) => severity === 'error');
          // What could not be worked says so.
          if (!worked.whole) expect(errors.length, text).toBeGreaterThan(0);
        }
        for (const { span, message, why, try: attempt } of all) {
          expect(span.start).toBeGreaterThanOrEqual(0);
          expect(span.end).toBeLessThanOrEqual(text.length);
          expect(`${message} ${why} ${attempt}`).not.toMatch(/undefined|NaN|\bnull\b|\[object/);
        }
      }),
      { numRuns: 60 },
    );
  });
});
