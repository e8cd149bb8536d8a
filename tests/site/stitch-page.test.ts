import { describe, expect, test } from 'vitest';
import { stitchPage } from '../../src/site/stitch-page.ts';
import { STITCHES } from '../../src/stitches/table.ts';

const page = stitchPage();
const shown = page.families.flatMap(({ stitches }) => stitches);

describe('the page of stitches', () => {
  test('has every kind of the table, each once', () => {
    const kinds = new Set(STITCHES.map(({ family }) => family));
    const there = new Set(shown.map(({ id }) => STITCHES.find((row) => row.id === id)?.family));
    expect(there).toEqual(kinds);
    expect(new Set(shown.map(({ id }) => id)).size).toBe(shown.length);
  });

  test('has every stitch that is worked in one place of its own', () => {
    const plain = STITCHES.filter(({ uses, legs }) => uses <= 1 && legs === undefined).map(({ id }) => id);
    expect(plain.length).toBeGreaterThan(30);
    for (const id of plain) expect(shown.map((one) => one.id)).toContain(id);
  });

  // Common practice: the table of US and UK terms, as it stands in books of either country.
  test.each([
    ['sc', 'single crochet', 'double crochet', 'As tall as 1 chain.'],
    ['hdc', 'half double crochet', 'half treble crochet', 'As tall as 2 chains.'],
    ['dc', 'double crochet', 'treble crochet', 'As tall as 3 chains.'],
    ['tr', 'treble crochet', 'double treble crochet', 'As tall as 4 chains.'],
  ])('says of %s what it is in both terms and how tall', (id, us, uk, height) => {
    const one = shown.find((entry) => entry.id === id);
    expect([one?.us.name, one?.uk.name, one?.height]).toEqual([us, uk, height]);
  });

  test('draws each with strokes, and no two stitches of a kind alike unless the trade draws them so', () => {
    for (const { id, svg } of shown) expect(svg, id).toMatch(/<(?:path|circle|use) /);
    const plain = shown.filter(({ id }) => ['sc', 'hdc', 'dc', 'tr', 'dtr', 'ch', 'sl-st'].includes(id));
    const drawings = plain.map(({ id, svg }) => svg.replaceAll(id, ''));
    expect(new Set(drawings).size).toBe(plain.length);
  });
});
