/** What each pattern is found under: judged by hand from its words, as a maker would. */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import { FACET_WORDS, FACETS, type Found, patternFound } from '../../src/site/facets.ts';
import { finderSheet, findersFor } from '../../src/site/finder.ts';

function foundOf(text: string): Found {
  const compiled = compilePattern({ file: 'pattern.yaml', text }, 'some-pattern');
  const faults = compiled.diagnostics.filter(({ severity }) => severity === 'error');
  expect(faults.map(({ message }) => message)).toEqual([]);
  if (compiled.pattern === null) throw new Error('not read');
  return patternFound(compiled, compiled.pattern);
}

describe('the patterns of the demo', () => {
  test.each([
    [
      'patterns/lantern-square',
      'square | intermediate | weight-3 | to-15-cm to-30-cm | rounds gathered | two-colours',
    ],
    [
      'patterns/pebble-basket',
      'hollow | easy | weight-5 | to-60-cm | spiral magic-ring one-loop | one-colour',
    ],
    [
      'patterns/quarry-hexagon',
      'hexagon | easy | weight-4 | to-15-cm to-30-cm | rounds magic-ring | two-colours',
    ],
    ['patterns/sandbar-square', 'square | easy | weight-4 | to-30-cm to-60-cm | rows shells | two-colours'],
    ['patterns/two-tides-square', 'square | easy | weight-4 | to-30-cm | rows long | two-colours'],
    // Mitred, with its edging all round.
    [
      'alongs/salt-marsh-blanket/lapwing',
      'square | easy | weight-4 | to-15-cm | rows one-loop | two-colours',
    ],
    ['alongs/salt-marsh-blanket/long-creek', 'rectangle | easy | weight-4 | to-30-cm | rows | two-colours'],
  ])('%s', (folder, expected) => {
    const found = foundOf(readFileSync(`${folder}/pattern.yaml`, 'utf8'));
    const shown = (['shape', 'skill', 'weight', 'size', 'technique', 'colours'] as const)
      .map((name) => found[name]?.join(' '))
      .join(' | ');
    expect(shown).toBe(expected);
  });
});

describe('what is read off the stitches', () => {
  const HEAD =
    'title: Some Piece\nterms: US\nskill: easy\ngauge: {stitches: 16, rows: 18, over: 10 cm}\nhook: 5 mm\nyarn:\n  A: {colour: grey, weight: 4, fibre: wool}\n';
  const piece = (rows: string, yarn = ''): Found =>
    foundOf(`${HEAD}${yarn}parts:\n  - name: Piece\n    work: |\n${rows.replace(/^/gm, '      ')}\n`);

  test('a triangle grown from a point is shaped', () => {
    const found = piece(
      [
        'Foundation: Ch 2.',
        'Row 1: 3 sc in 2nd ch from hook, turn. (3 sc)',
        'Row 2: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. (5 sc)',
        'Row 3: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. (7 sc)',
      ].join('\n'),
    );
    expect(found.shape).toEqual(['shaped']);
  });

  test('a round of increases without corners is a circle, in a spiral where it is not joined', () => {
    const found = piece(
      ['Rnd 1: 6 sc in magic ring, do not join. (6 sc)', 'Rnd 2: 2 sc in each st around. (12 sc)'].join('\n'),
    );
    expect([found.shape, found.technique]).toEqual([['circle'], ['spiral', 'magic-ring']]);
  });

  test('an edging says nothing of how the piece is made, also where it is written below its rows', () => {
    const sandbar = readFileSync('patterns/sandbar-square/pattern.yaml', 'utf8');
    const inOne = sandbar.replace(/ {2}- name: Edging\n(?: {4}onto: .*\n)? {4}work: \|\n/, '');
    expect(inOne).not.toBe(sandbar);
    expect(foundOf(inOne).technique).toEqual(['rows', 'shells']);
  });

  test('a row with two yarns is colourwork, a row that begins in a new one is not', () => {
    const rows = (second: string): string =>
      [
        'Foundation: With A, ch 11.',
        'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)',
        second,
      ].join('\n');
    const B = '  B: {colour: red, weight: 4, fibre: wool}\n';
    expect(
      piece(rows('Row 2: Ch 1, sc in next 5 sts, change to B in last yo, sc in last 5 sts, turn. (10 sc)'), B)
        .technique,
    ).toEqual(['rows', 'colourwork']);
    expect(piece(rows('Row 2: With B, ch 1, sc in each st across, turn. (10 sc)'), B).technique).toEqual([
      'rows',
    ]);
  });

  test('post stitches are found by the stitches themselves', () => {
    const found = piece(
      [
        'Foundation: Ch 12.',
        'Row 1: Dc in 4th ch from hook and in each ch across, turn. (10 dc)',
        'Row 2: Ch 3 (counts as dc), [FPdc around next st, BPdc around next st] 4 times, dc in last st, turn. (10 dc)',
      ].join('\n'),
    );
    expect(found.technique).toEqual(['rows', 'post']);
  });
});

describe('what is offered', () => {
  test('is only what tells the patterns of the list apart', () => {
    const finders = findersFor([
      { shape: ['square'], skill: ['easy'], technique: ['rows'] },
      { shape: ['hexagon'], skill: ['easy'], technique: ['rows', 'post'] },
    ]);
    expect(finders.map(({ name, options }) => [name, options.map(({ value }) => value)])).toEqual([
      ['shape', ['square', 'hexagon']],
      ['technique', ['rows', 'post']],
    ]);
  });

  test('is hidden by a rule for each value, whose words can stand in a style sheet', () => {
    const { content } = finderSheet();
    const values = FACETS.flatMap((name) => [...FACET_WORDS[name].options.keys()]);
    expect(String(content).match(/:has\(/g)).toHaveLength(values.length);
    for (const value of values) expect(value).toMatch(/^[a-z0-9-]+$/);
  });
});
