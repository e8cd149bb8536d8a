/**
 * Charts as pictures, compared with those in `pictures/`, which were looked at before they were kept. Drawn anew with
 * `ROWFOLD_PICTURES=new npx vitest run --config tests/vitest.config.ts tests/chart/pictures.test.ts`; then look at them.
 */

import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { chartParts } from '../../src/chart/chart-parts.ts';
import { compilePattern } from '../../src/compile.ts';
import { paintSvg } from '../../src/paint/svg.ts';
import { kept, type Picture, pictured, shareDiffering, TOLERANCE } from './compare-pictures.ts';

const ROOT = join(import.meta.dirname, '../..');
/** One of each shape that charts are drawn in. */
const PICTURES = [
  'patterns/lantern-square',
  'patterns/quarry-hexagon',
  'patterns/sandbar-square',
  'tests/patterns/ball',
  'tests/patterns/basketweave',
  'tests/patterns/chevron',
  'tests/patterns/corner-to-corner',
  'tests/patterns/filet-mesh',
  'tests/patterns/flat-circle',
  'tests/patterns/flat-oval',
  'tests/patterns/mitred-square',
  'tests/patterns/pineapple',
  'tests/patterns/ribbing',
  'tests/patterns/shells-spikes',
  'tests/patterns/triangle-shawl',
  'tests/patterns/turned-tube',
];
function chartOf(folder: string, leftHanded: boolean): Picture {
  const text = readFileSync(join(ROOT, folder, 'pattern.yaml'), 'utf8');
  const fabric = compilePattern({ file: folder, text }, 'picture').sizes[0]?.fabric;
  const [chart] = fabric ? chartParts(fabric, { terms: 'US', title: 'x', key: false, leftHanded }) : [];
  if (chart === undefined) throw new Error(`${folder} has no chart`);
  return pictured(paintSvg(chart.scene, { idPrefix: 'c', colours: 'plain' }));
}

describe.each(PICTURES)('the picture of %s', (folder) => {
  const file = join(import.meta.dirname, 'pictures', `${folder.split('/').at(-1)}.png`);

  test('is the one that was looked at', () => {
    const picture = chartOf(folder, false);
    if (process.env.ROWFOLD_PICTURES === 'new') writeFileSync(file, picture.png);
    expect(existsSync(file)).toBe(true);
    expect(shareDiffering(picture, kept(file))).toBeLessThan(TOLERANCE);
  });
});

test('a chart turned over is another picture, so the comparison can fail', () => {
  const folder = 'tests/patterns/ribbing';
  expect(shareDiffering(chartOf(folder, false), chartOf(folder, true))).toBeGreaterThan(TOLERANCE);
});
