/** The multiple of traditional stitch patterns, as reckoned by hand, and worked again at widths nobody tried. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { foundationOf, workTrial } from '../../src/proof/trial.ts';
import { multipleOf, patternOf } from './multiples.ts';

const entry = z.strictObject({
  name: z.string(),
  terms: z.enum(['US', 'UK']).default('US'),
  special: z.record(z.string(), z.string()).default({}),
  work: z.string(),
  of: z.int(),
  plus: z.int(),
  /** How the multiple comes about, for the reader of the list. */
  because: z.string(),
});

const SETTING = {
  sizeIndex: 0,
  rows: null,
  readings: { settled: new Map(), throughout: new Map() },
} as const;

const ENTRIES = z
  .array(entry)
  .parse(parse(readFileSync(join(import.meta.dirname, 'traditional.yaml'), 'utf8')));

test('there are more than twenty', () => {
  expect(ENTRIES.length).toBeGreaterThan(20);
  expect(new Set(ENTRIES.map(({ name }) => name)).size).toBe(ENTRIES.length);
});

describe.each(ENTRIES)('$name', ({ work, terms, special, of, plus }) => {
  const pattern = patternOf({
    work,
    terms,
    special: Object.entries(special).map(([name, steps]) => `${name}: "${steps}"`),
  });
  const { found } = multipleOf(pattern);

  test(`comes out over a multiple of ${of} plus ${plus}`, () => {
    expect(found).toMatchObject({ of, plus, proved: true });
  });

  test('comes out at wider ones too, each row growing by the same with each repeat', () => {
    const part = pattern.parts[0];
    const foundation = part === undefined ? null : foundationOf(part);
    if (part === undefined || foundation === null || found === null) throw new Error('nothing to work');
    const at = (chains: number) => workTrial(pattern, part, foundation, chains, SETTING, new Map());
    const from = found.from + 4 * of;
    const counts = (repeats: number) => at(from + repeats * of).rows.map(({ counted }) => counted);
    const [first, second] = [counts(0), counts(1)];
    for (const repeats of [2, 17, 38]) {
      const linear = first.map((n, i) => n + repeats * ((second[i] ?? 0) - n));
      expect(counts(repeats)).toEqual(linear);
    }
  });

  test('comes out at no width between, as far as tried', () => {
    const part = pattern.parts[0];
    const foundation = part === undefined ? null : foundationOf(part);
    if (part === undefined || foundation === null || found === null) throw new Error('nothing to work');
    const from = found.from + 3 * of;
    for (let chains = from; chains < from + of; chains += 1) {
      const { fault } = workTrial(pattern, part, foundation, chains, SETTING, new Map());
      expect({ chains, comesOut: fault === null }).toEqual({ chains, comesOut: chains === from });
    }
  });
});
