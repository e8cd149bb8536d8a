/** SVG in, its pixels out; two pictures in, how much of them differs out. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Resvg } from '@resvg/resvg-js';

const ROOT = join(import.meta.dirname, '../..');
/** In pixels, unless another is asked for. */
const WIDTH = 480;
/** Of a pixel's three channels together; edges differ a little between machines. */
const SAME = 120;
/** Share of the pixels that may differ. */
export const TOLERANCE = 0.002;

const FONTS = {
  fontFiles: ['400Regular/SourceSans3_400Regular.ttf', '600SemiBold/SourceSans3_600SemiBold.ttf'].map(
    (file) => join(ROOT, 'node_modules/@expo-google-fonts/source-sans-3', file),
  ),
  loadSystemFonts: false,
  defaultFontFamily: 'Source Sans 3',
};

export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
  readonly png: Buffer;
}

export function pictured(svg: string, widthPx = WIDTH): Picture {
  const drawn = new Resvg(svg, {
    background: 'white',
    fitTo: { mode: 'width', value: widthPx },
    font: FONTS,
  }).render();
  return { width: drawn.width, height: drawn.height, pixels: drawn.pixels, png: drawn.asPng() };
}

/** A kept picture's pixels: the rasteriser reads it as well as it writes it. */
export function kept(file: string): Picture {
  const png = readFileSync(file);
  const width = png.readUInt32BE(16);
  const height = png.readUInt32BE(20);
  return pictured(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><image width="${width}" height="${height}" href="data:image/png;base64,${png.toString('base64')}"/></svg>`,
    width,
  );
}

export function shareDiffering(a: Picture, b: Picture): number {
  if (a.width !== b.width || a.height !== b.height) return 1;
  let differing = 0;
  for (let i = 0; i < a.pixels.length; i += 4) {
    let away = 0;
    for (let k = 0; k < 3; k += 1) away += Math.abs((a.pixels[i + k] ?? 0) - (b.pixels[i + k] ?? 0));
    if (away > SAME) differing += 1;
  }
  return (differing * 4) / a.pixels.length;
}
