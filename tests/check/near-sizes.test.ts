/** Sizes asked for, against a plain search through all that the patterns' own rules allow. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { nearSizes } from '../../src/check/near-sizes.ts';
import { compilePattern } from '../../src/compile.ts';
import { compileOwnSize, remakeableFrom } from '../../src/compile-own.ts';
import type { CompiledPattern } from '../../src/compiled.ts';
import { ownPattern } from '../../src/own/own-pattern.ts';
import { NOTHING_ASKED, OWN_NAME, type OwnSize } from '../../src/pattern/own-size.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { firstMultiple, rowsRepeated } from '../../src/pattern/pattern-repeat.ts';

const ROOT = join(import.meta.dirname, '../..');
const FILES = ['patterns', 'tests/patterns', 'tests/mistakes/held-out'].flatMap((folder) =>
  readdirSync(join(ROOT, folder))
    .map((name) => ({ name, file: join(ROOT, folder, name, 'pattern.yaml') }))
    .filter(({ file }) => existsSync(file)),
);

const GAUGE = { stitches: 16, rows: 12, overMm: 100, upMm: 100 };
const ASKS: OwnSize = { ...NOTHING_ASKED, gauge: GAUGE };

const compiled = new Map<string, CompiledPattern>();
for (const { name, file } of FILES)
  compiled.set(name, compilePattern({ file: name, text: readFileSync(file, 'utf8') }, name));

const asked = (of: CompiledPattern, more: Partial<OwnSize>): Pattern | null => {
  const remakeable = remakeableFrom(of, 0);
  return remakeable === null ? null : ownPattern(remakeable, { ...ASKS, ...more });
};
const repeatOf = (of: CompiledPattern): number => {
  const made = asked(of, { repeats: 1 });
  return made === null ? 0 : (firstMultiple(made)?.of ?? 0);
};
const WIDE = [...compiled].filter(([, of]) => repeatOf(of) > 0);
const cycleOf = (of: CompiledPattern): number => {
  const made = asked(of, { rows: 1 });
  return made === null ? 0 : rowsRepeated(made, 0);
};
const HIGH = [...compiled].filter(([, of]) => cycleOf(of) > 0);

test('there are enough patterns with a repeat to try', () => {
  expect(WIDE.length).toBeGreaterThanOrEqual(10);
  expect(HIGH.length).toBeGreaterThanOrEqual(6);
});

describe.each(WIDE)('the width of %s', (_, of) => {
  test.each([180, 333, 610])('asked to be %d mm is never more than half a repeat away', (widthMm) => {
    const own = compileOwnSize(of, { ...ASKS, widthMm }).sizes[0];
    const repeatMm = repeatOf(of) * (100 / 16);
    expect(own?.size.name).toBe(OWN_NAME);
    const got = own?.measures.widthMm ?? Number.NaN;
    // An edging, or stitches beside the repeats, may leave no smaller size than one repeat.
    if (got > widthMm && own?.fabric.parts[0] !== undefined && onlyOne(of, widthMm)) return;
    expect(Math.abs(got - widthMm)).toBeLessThanOrEqual(repeatMm / 2 + 0.01);
  });
});

function onlyOne(of: CompiledPattern, widthMm: number): boolean {
  const one = compileOwnSize(of, { ...ASKS, repeats: 1 }).sizes[0];
  return (one?.measures.widthMm ?? 0) > widthMm;
}

describe.each(HIGH)('the height of %s', (_, of) => {
  test.each([300, 451])('asked to be %d mm is the nearest that its rows come to', (heightMm) => {
    const trial = asked(of, { heightMm });
    if (trial === null) throw new Error('no pattern');
    const { rows } = nearSizes(trial, 0, { widthMm: null, heightMm });
    const best = rows?.find(({ nearest }) => nearest);
    const own = compileOwnSize(of, { ...ASKS, heightMm }).sizes[0];
    expect(own?.measures.heightMm).toBeCloseTo(best?.mm ?? Number.NaN, 6);
    // Every other row that may end the work is further off.
    for (const other of rows ?? [])
      expect(Math.abs(other.offMm)).toBeGreaterThanOrEqual(Math.abs(best?.offMm ?? 0));
    expect(rows?.length).toBeGreaterThan(2);
  });
});

describe('rounds', () => {
  const hexagon = compiled.get('quarry-hexagon');

  test('are listed with what the piece measures after each of them', () => {
    if (hexagon?.pattern == null) throw new Error('no hexagon');
    const { rounds, repeats, rows } = nearSizes(hexagon.pattern, 2, { widthMm: 100, heightMm: null });
    expect([repeats, rows]).toEqual([null, null]);
    const offs = (rounds ?? []).map(({ offMm }) => Math.abs(offMm));
    expect(rounds?.filter(({ nearest }) => nearest).map(({ offMm }) => Math.abs(offMm))).toEqual([
      Math.min(...offs),
    ]);
    // Round by round it is larger, by the same height twice over for each of dc.
    const steps = (rounds ?? []).slice(1).map(({ mm }, i) => mm - (rounds?.[i]?.mm ?? 0));
    expect(Math.min(...steps)).toBeGreaterThan(0);
    expect((rounds?.length ?? 0) >= 3).toBe(true);
  });
});

describe('yarn at another gauge', () => {
  test('stands to the designer’s as their stitches do', () => {
    const text = readFileSync(join(ROOT, 'patterns/sandbar-square/pattern.yaml'), 'utf8');
    const of = compilePattern({ file: 'x', text }, 'x');
    const lengthM = (stitches: number): number => {
      const own = { ...ASKS, repeats: 5, rows: 15, gauge: { ...GAUGE, stitches } };
      return compileOwnSize(of, own).sizes[0]?.measures.yarn[0]?.lengthM ?? Number.NaN;
    };
    // Half as many stitches to the measure are twice as wide, and take twice the yarn, tails aside.
    expect(lengthM(8) / lengthM(16)).toBeGreaterThan(1.9);
    expect(lengthM(8) / lengthM(16)).toBeLessThan(2);
  });
});
