/** The patterns of this test, right as they stand: nothing is said of them, and every row makes what was worked by hand. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { HELD_OUT, readOriginals } from './collections.ts';

interface HandRow {
  readonly label: string;
  readonly stitches: number;
  readonly spaces: number;
}

const heldOut = readOriginals().filter(({ lot }) => lot === 'held-out');

const told = ({ label, stitches, spaces }: HandRow): string =>
  `${/\d+/.exec(label)?.[0]}: ${stitches} sts, ${spaces} sps`;

test('there are at least twelve, three of them in UK terms, and every row of theirs states its count', () => {
  expect(heldOut.length).toBeGreaterThanOrEqual(12);
  expect(heldOut.filter(({ pattern }) => pattern.terms === 'UK').length).toBeGreaterThanOrEqual(3);
  const untold = heldOut.flatMap(({ name, lines }) =>
    lines.filter(({ label, stated }) => label?.kind === 'numbered' && stated === null).map(() => name),
  );
  expect(untold).toEqual([]);
});

describe.each(heldOut.map((one) => [one.name, one] as const))('%s', (name, { compiled }) => {
  test('is right: neither an error nor a warning', () => {
    expect(compiled.diagnostics.map(({ code, message }) => `${code}: ${message}`)).toEqual([]);
  });

  test('makes in every row of every size what was worked by hand', () => {
    const byHand: Readonly<Record<string, readonly HandRow[]>> = JSON.parse(
      readFileSync(join(HELD_OUT, name, 'hand-counts.json'), 'utf8'),
    );
    const worked = compiled.sizes.map(({ size, fabric }) => [
      size.name,
      fabric.rows.filter(({ unit }) => unit !== null).map(told),
    ]);
    expect(Object.fromEntries(worked)).toEqual(
      Object.fromEntries(Object.entries(byHand).map(([size, rows]) => [size, rows.map(told)])),
    );
  });
});
