/** Every row of every size of every pattern here: the sum it prints is the number it makes, and nothing below is lost. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import { explainRows } from '../../src/row-table/explain-rows.ts';
import { evaluateSum, product } from './evaluate-sum.ts';

const FOLDERS = ['../../patterns', '../patterns'].map((folder) => `${import.meta.dirname}/${folder}`);
const FILES = FOLDERS.flatMap((folder) =>
  readdirSync(folder)
    .map((name) => `${folder}/${name}/pattern.yaml`)
    .filter((file) => existsSync(file)),
);

const slugOf = (file: string): string => file.split('/').at(-2) ?? '';

test('there are patterns to explain', () => expect(FILES.length).toBeGreaterThan(30));

describe.each(FILES.map((file) => [slugOf(file), file] as const))('%s', (slug, file) => {
  const compiled = compilePattern({ file, text: readFileSync(file, 'utf8') }, slug);
  const terms = compiled.pattern?.terms ?? 'US';
  const sizes = compiled.sizes.map((size) => ({ size, rows: explainRows(size, terms) }));

  test('has an account of every row that is counted, with the same numbers', () => {
    expect(sizes.length).toBeGreaterThan(0);
    for (const { size, rows } of sizes) {
      const told = rows.map(({ label, makes }) => [label, makes.stitches, makes.spaces]);
      const counted = size.fabric.rows.map(({ label, stitches, spaces }) => [label, stitches, spaces]);
      expect(told).toEqual(counted);
    }
  });

  test('adds up, in the words that are printed, to what each row makes', () => {
    for (const { rows } of sizes) {
      for (const { label, makes, how, account } of rows) {
        if (account.foundation) continue;
        const where = `${slug} ${label}: ${how.stitches} | ${how.spaces}`;
        if (makes.stitches > 0) {
          const { adds, claims } = evaluateSum(how.stitches ?? '');
          expect([adds, claims], where).toEqual([makes.stitches, makes.stitches]);
        } else expect(how.stitches, where).toBeNull();
        if (makes.spaces > 0) {
          const [sum = '', total = sum] = (how.spaces ?? '').split(': ');
          const numbers = [sum, total].map((words) => product(words.replace(/ sps?$/, '')));
          expect(numbers, where).toEqual([makes.spaces, makes.spaces]);
        } else expect(how.spaces, where).toBeNull();
      }
    }
  });

  test('accounts for all of the row below: worked into, skipped or left', () => {
    for (const { size, rows } of sizes) {
      for (const { label, takes, skips, leaves, account } of rows) {
        const below = account.onto === null ? undefined : size.fabric.rows[account.onto];
        if (takes === null || below === undefined) continue;
        const { stitches, spaces } = below;
        const numbers = [skips, leaves].flatMap((each) => [each.stitches, each.spaces, each.chains]);
        expect(Math.min(...numbers), `${slug} ${label}`).toBeGreaterThanOrEqual(0);
        // Into a ring or along the sides of a piece nothing of the row below is taken.
        if (takes.rings + takes.rowEnds + takes.otherSide > 0) continue;
        expect(takes.stitches + skips.stitches + leaves.stitches, `${slug} ${label}`).toBe(stitches);
        expect(takes.spaces + skips.spaces + leaves.spaces, `${slug} ${label}`).toBe(spaces);
        expect(leaves.stitches === 0 || account.steps.some(({ step }) => step.kind === 'leave')).toBe(true);
      }
    }
  });

  test('says how the row below is used up in numbers that hold', () => {
    for (const { size, rows } of sizes) {
      for (const { label, how, account, takes, leaves } of rows) {
        const uses = how.uses;
        if (uses === null) continue;
        const repeat = uses.match(/the repeat uses (\d+), (\d+ times|twice) = (\d+)/);
        if (repeat !== null) {
          const times = repeat[2] === 'twice' ? 2 : Number.parseInt(repeat[2] ?? '', 10);
          expect(Number(repeat[1]) * times, `${slug} ${label}: ${uses}`).toBe(Number(repeat[3]));
        }
        const ends = uses.match(/= (\d+); the (?:ends use|rest uses) ([\d +]+): (\d+)/);
        if (ends !== null)
          expect(Number(ends[1]) + product(ends[2] ?? ''), `${slug} ${label}: ${uses}`).toBe(Number(ends[3]));
        const several = uses.match(/^uses ([\d x+]+): (\d+)/);
        if (several !== null)
          expect(product(several[1] ?? ''), `${slug} ${label}: ${uses}`).toBe(Number(several[2]));
        const total = Number(uses.match(/(\d+)(?: sps?)?$/)?.[1]);
        const below = account.onto === null ? undefined : size.fabric.rows[account.onto];
        // A chain skipped to stand up at the side is used though nothing goes into it.
        if (below !== undefined && below.stitches > 0) {
          const all = uses.endsWith(' sps') || uses.endsWith(' sp') ? below.spaces : below.stitches;
          const left = uses.includes(' sp') ? leaves.spaces : leaves.stitches;
          // Stitches behind the last space are passed, not used.
          const behind = takes !== null && takes.spaces > 0;
          if (behind) expect(total + left, `${slug} ${label}: ${uses}`).toBeLessThanOrEqual(all);
          else expect(total + left, `${slug} ${label}: ${uses}`).toBe(all);
        }
        expect([repeat, ends, several, uses.match(/worked \d+ times|once|then/)].some(Boolean), uses).toBe(
          true,
        );
      }
    }
  });
});
