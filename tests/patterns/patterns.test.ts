/** Whole patterns, one for each kind of fabric, checked row by row against counts worked by hand. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { countJson } from '../../src/commands/count-json.ts';
import { compilePattern } from '../../src/compile.ts';
import type { CompiledPattern } from '../../src/compiled.ts';
import { renderDiagnostics } from '../../src/diagnostics/render.ts';
import { DIALECTS, type DialectKey } from '../../src/wording/words.ts';

interface HandRow {
  readonly label: string;
  readonly stitches: number;
  readonly spaces: number;
}

const KINDS = readdirSync(import.meta.dirname, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name)
  .sort();
const DIALECT_KEYS = Object.keys(DIALECTS) as DialectKey[];

const fileOf = (kind: string, file: string): string => join(import.meta.dirname, kind, file);

interface Compiled {
  readonly text: string;
  readonly whole: CompiledPattern;
}

const done = new Map<string, Compiled>();

/** Compiled when a test first asks, so that a pattern that cannot be compiled at all fails its own tests only. */
function compiled(kind: string): Compiled {
  const known = done.get(kind);
  if (known !== undefined) return known;
  const text = readFileSync(fileOf(kind, 'pattern.yaml'), 'utf8');
  const made = { text, whole: compilePattern({ file: `${kind}/pattern.yaml`, text }, kind) };
  done.set(kind, made);
  return made;
}

function handCounts(kind: string): Readonly<Record<string, readonly HandRow[]>> {
  return JSON.parse(readFileSync(fileOf(kind, 'hand-counts.json'), 'utf8'));
}

/** `Row 4` and `4th row` are both row 4; `Next row` has no number to compare. */
function numberIn(label: string): string | null {
  return label.match(/\d+/)?.[0] ?? null;
}

/** One line a row, so that a difference shows which row it is. */
function told(rows: readonly HandRow[], byHand: readonly HandRow[]): string[] {
  return rows.map(({ label, stitches, spaces }, i) => {
    const hand = byHand[i]?.label ?? label;
    const sameRow = numberIn(label) === null || numberIn(label) === numberIn(hand);
    return `${sameRow ? hand : label}: ${stitches} sts, ${spaces} sps`;
  });
}

test('there is a pattern for each of at least 24 kinds of fabric, in both terms, half of them in sizes', () => {
  const patterns = KINDS.map((kind) => compiled(kind).whole.pattern);
  expect(KINDS.length).toBeGreaterThanOrEqual(24);
  expect(patterns.filter((pattern) => pattern?.terms === 'UK').length).toBeGreaterThanOrEqual(6);
  const sized = patterns.filter((pattern) => pattern !== null && pattern.sizes.length > 1);
  expect(sized.length).toBeGreaterThanOrEqual(KINDS.length / 2);
  const unexplained = KINDS.filter((kind) => !existsSync(fileOf(kind, 'working.md')));
  expect(unexplained).toEqual([]);
});

describe.each(KINDS)('%s', (kind) => {
  test('is read and worked without an error', () => {
    const { text, whole } = compiled(kind);
    const errors = whole.diagnostics.filter(({ severity }) => severity === 'error');
    expect(
      errors.length === 0 ? '' : renderDiagnostics(errors, new Map([[`${kind}/pattern.yaml`, text]])),
    ).toBe('');
  });

  test('makes in every row of every size what was worked by hand', () => {
    const { text, whole } = compiled(kind);
    const byHand = handCounts(kind);
    const { sizes } = countJson(whole, text, whole.sizes);
    const worked = Object.fromEntries(sizes.map(({ name, rows }) => [name, told(rows, byHand[name] ?? [])]));
    const expected = Object.fromEntries(
      Object.entries(byHand).map(([name, rows]) => [name, told(rows, rows)]),
    );
    expect(worked).toEqual(expected);
  });

  test('has words for every part in all four dialects, in one size and in all together', () => {
    const { whole } = compiled(kind);
    const parts = whole.pattern?.parts.map(({ name }) => name);
    expect(whole.sizes.length).toBeGreaterThan(0);
    for (const dialect of DIALECT_KEYS) {
      for (const words of [...whole.sizes.map((size) => size.words), whole.allSizes]) {
        const worded = words?.[dialect].parts ?? [];
        expect(worded.map(({ name }) => name)).toEqual(parts);
        expect(worded.filter(({ lines }) => lines.length === 0)).toEqual([]);
      }
    }
  });

  test('has charts in both terms, and a length of yarn, in every size', () => {
    const { whole } = compiled(kind);
    for (const { charts, measures } of whole.sizes) {
      expect(charts.US.length).toBeGreaterThan(0);
      expect(charts.UK.length).toBe(charts.US.length);
      expect(measures.stitches).toBeGreaterThan(0);
      for (const { lengthM } of measures.yarn) expect(lengthM).toBeGreaterThan(0);
      expect(measures.yarn.length).toBeGreaterThan(0);
    }
    expect(whole.sizes.length).toBe(Object.keys(handCounts(kind)).length);
  });
});
