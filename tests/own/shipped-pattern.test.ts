/** What a page ships is enough: worked from its plain data, a size of a maker's own is the one the whole house makes. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import { compileOwnSize } from '../../src/compile-own.ts';
import { makeOwn } from '../../src/own/make-own.ts';
import { type ShippedPattern, shipPattern, unshipPattern } from '../../src/own/shipped-pattern.ts';
import type { OwnSize } from '../../src/pattern/own-size.ts';
import { NOTHING_ASKED } from '../../src/pattern/own-size.ts';
import { wordPattern } from '../../src/wording/word-pattern.ts';
import { DIALECTS, type DialectKey } from '../../src/wording/words.ts';

const ROOT = join(import.meta.dirname, '../..');
const FILES = ['patterns', 'tests/patterns'].flatMap((folder) =>
  readdirSync(join(ROOT, folder))
    .map((name) => ({ name, file: join(ROOT, folder, name, 'pattern.yaml') }))
    .filter(({ file }) => existsSync(file)),
);
const GAUGE = { stitches: 17, rows: 11, overMm: 100, upMm: 100 };
const WISHES: readonly [string, Partial<OwnSize>][] = [
  ['nothing', {}],
  ['a gauge', { gauge: GAUGE }],
  ['a width', { gauge: GAUGE, widthMm: 310 }],
  [
    'a height and a ball',
    { gauge: GAUGE, heightMm: 280, balls: new Map([['A', { lengthM: 90, massG: 50 }]]) },
  ],
];
const keys = Object.keys(DIALECTS) as DialectKey[];

let made = 0;

/** A pattern with a fault is never published, so nothing is shipped of it. */
const SOUND = FILES.flatMap(({ name, file }) => {
  const compiled = compilePattern({ file: name, text: readFileSync(file, 'utf8') }, name);
  const { pattern, diagnostics } = compiled;
  const faulty = pattern === null || diagnostics.some(({ severity }) => severity === 'error');
  return faulty ? [] : [{ name, compiled, pattern }];
});

test('there is hardly a pattern among them that is not sound', () => {
  expect(SOUND.length).toBeGreaterThan(FILES.length * 0.9);
});

describe.each(SOUND)('$name, asked for', ({ compiled, pattern }) => {
  const shipped: ShippedPattern = JSON.parse(
    JSON.stringify(shipPattern({ ...compiled, pattern, multiples: compiled.multiples })),
  );
  const { from, scaleOf } = unshipPattern(shipped);

  test.each(WISHES)('%s, is the same from the page as from the file', (_, wish) => {
    const own = { ...NOTHING_ASKED, ...wish };
    const outcome = makeOwn(from(0), own, scaleOf);
    const whole = compileOwnSize(compiled, own).sizes[0];
    if (outcome.kind !== 'made') {
      // Only what the pattern's own rules do not leave open is refused.
      expect(outcome.kind).toBe('cannot');
      return;
    }
    made += 1;
    if (whole === undefined) throw new Error('the whole house made nothing');
    const { worked, measures, index } = outcome.made;
    expect(worked.fabric.rows).toEqual(whole.fabric.rows);
    expect(measures).toEqual(whole.measures);
    for (const key of keys) {
      const words = wordPattern(outcome.made.pattern, worked.fabric, key, index);
      expect(words).toEqual(whole.words[key]);
    }
  });
});

test('most of them could be made', () => {
  expect(made).toBeGreaterThan(FILES.length * 2);
});
