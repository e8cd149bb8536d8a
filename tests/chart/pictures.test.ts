/**
 * Charts as pictures, compared with those in `pictures/`, which were looked at before they were kept. Drawn anew with
 * `ROWFOLD_PICTURES=new npx vitest run --config tests/vitest.config.ts tests/chart/pictures.test.ts`; then look at them.
 */

import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { chartParts } from '../../src/chart/chart-parts.ts';
import { compilePattern } from '../../src/compile.ts';
import { paintSvg } from '../../src/paint/svg.ts';

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
const WIDTH = 480;
/** Of a pixel's three channels together; edges differ a little between machines. */
const SAME = 120;
/** Share of the pixels that may differ. */
const TOLERANCE = 0.002;

const FONTS = {
  fontFiles: ['400Regular/SourceSans3_400Regular.ttf', '600SemiBold/SourceSans3_600SemiBold.ttf'].map(
    (file) => join(ROOT, 'node_modules/@expo-google-fonts/source-sans-3', file),
  ),
  loadSystemFonts: false,
  defaultFontFamily: 'Source Sans 3',
};

interface Picture {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
  readonly png: Buffer;
}

function pictured(svg: string): Picture {
  const drawn = new Resvg(svg, {
    background: 'white',
    fitTo: { mode: 'width', value: WIDTH },
    font: FONTS,
  }).render();
  return { width: drawn.width, height: drawn.height, pixels: drawn.pixels, png: drawn.asPng() };
}

/** A kept picture's pixels: the rasteriser reads it as well as it writes it. */
function kept(file: string): Picture {
  const png = readFileSync(file);
  const width = png.readUInt32BE(16);
  const height = png.readUInt32BE(20);
  return pictured(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><image width="${width}" height="${height}" href="data:image/png;base64,${png.toString('base64')}"/></svg>`,
  );
}

function shareDiffering(a: Picture, b: Picture): number {
  if (a.width !== b.width || a.height !== b.height) return 1;
  let differing = 0;
  for (let i = 0; i < a.pixels.length; i += 4) {
    let away = 0;
    for (let k = 0; k < 3; k += 1) away += Math.abs((a.pixels[i + k] ?? 0) - (b.pixels[i + k] ?? 0));
    if (away > SAME) differing += 1;
  }
  return (differing * 4) / a.pixels.length;
}

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
