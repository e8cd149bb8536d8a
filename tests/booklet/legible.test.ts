/**
 * On paper no symbol of a chart is smaller than can be read: all booklets of the demo patterns, and of some far larger,
 * with their charts whole and with windows of what repeats.
 */

import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { layOutBooklet } from '../../src/booklet/booklet-pages.ts';
import { LEAST_PITCH_MM } from '../../src/booklet/chart-plan.ts';
import { PAPERS } from '../../src/booklet/paper.ts';
import { walkShapes } from '../../src/booklet/walk-shapes.ts';
import { U_MM } from '../../src/chart/metrics.ts';
import { bookletInput } from '../../src/print-booklet.ts';
import type { Scene } from '../../src/scene/scene.ts';
import { joined } from '../../src/scene/transforms.ts';
import { compilePatterns } from '../../src/site/compile-patterns.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readPatterns } from '../../src/site/read-patterns.ts';
import { fixedWidth } from './fixed-width.ts';

const folders = ['patterns', 'tests/booklet/large'].map((folder) => path.join(PROJECT_FOLDER, folder));
const collection = compilePatterns(await readPatterns(folders));
const sizes = collection.flatMap(({ compiled }) =>
  compiled.sizes.map((size) => ({ compiled, size, name: `${compiled.slug}, ${size.size.name}` })),
);

/** How wide a stitch unit of each symbol is on paper; those of a cover's picture are no symbols to read. */
function pitchesOf(pages: readonly Scene[]): number[] {
  return pages.flatMap((page) =>
    walkShapes(page.shapes).flatMap(({ shape, transform }) => {
      if (shape.kind !== 'use' || !shape.symbol.startsWith('chart')) return [];
      const [a, b] = joined(transform, shape.transform);
      return [Math.hypot(a, b) * U_MM];
    }),
  );
}

describe.each(Object.values(PAPERS).map(({ name }) => name))('on %s', (paper) => {
  test.each(sizes)('$name', ({ compiled: { pattern }, size }) => {
    if (pattern === null) throw new Error('no pattern');
    const [whole, usual] = [true, false].map((wholeCharts) => {
      const input = bookletInput(pattern, size, { dialect: 'us', wholeCharts });
      return pitchesOf(layOutBooklet(input, paper, fixedWidth).pages);
    });
    expect(whole?.length).toBeGreaterThanOrEqual(size.fabric.count);
    expect(usual?.length).toBeGreaterThan(0);
    for (const pitches of [whole ?? [], usual ?? []])
      expect(Math.min(...pitches)).toBeGreaterThanOrEqual(LEAST_PITCH_MM - 1e-9);
  });
});
