/** What a camera would write, made here: pictures with a place and a day in them, lying on their side, broken, or very large. */

import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';

/** What must never be found in anything that is published. */
export const TELLTALES = [
  'Secret Maker 3000',
  '2019:03:04',
  'GPSLatitude',
  'Exif',
  'exif',
  'Somewhere private',
];

/** Two fields, the upper red and the lower blue, with a grain as of wool: upright when it is wider than high. */
export async function photograph(widthPx: number, heightPx: number): Promise<Buffer> {
  const half = { width: widthPx, height: Math.round(heightPx / 2), channels: 3 as const };
  const lower = await sharp({ create: { ...half, background: '#2040a0' } })
    .png()
    .toBuffer();
  return sharp({ create: { width: widthPx, height: heightPx, channels: 3, background: '#b03028' } })
    .composite([{ input: lower, left: 0, top: heightPx - half.height }])
    .png()
    .toBuffer();
}

/** With all that a telephone writes beside the picture. */
export async function withPlace(picture: Buffer): Promise<Buffer> {
  return sharp(picture)
    .jpeg({ quality: 90 })
    .withExif({
      IFD0: { Make: 'Secret Maker 3000', ImageDescription: 'Somewhere private' },
      IFD2: { DateTimeOriginal: '2019:03:04 05:06:07' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 3230/100' },
    })
    .withXmp(
      '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:source>Somewhere private</dc:source></rdf:Description></rdf:RDF></x:xmpmeta>',
    )
    .toBuffer();
}

/** As a telephone held upright saves it: the dots lie on their side, and a number says how to turn them. */
export async function onItsSide(picture: Buffer): Promise<Buffer> {
  const turned = await sharp(picture).rotate(270).png().toBuffer();
  return sharp(turned).jpeg({ quality: 90 }).withMetadata({ orientation: 6 }).toBuffer();
}

export function savePhotographs(folder: string, files: Readonly<Record<string, Buffer | string>>): void {
  mkdirSync(folder, { recursive: true });
  for (const [name, bytes] of Object.entries(files)) writeFileSync(path.join(folder, name), bytes);
}

/** The lines of a pattern file: each photograph with what it shows. */
export function photographLines(shown: Readonly<Record<string, string>>): string {
  const entries = Object.entries(shown).map(([file, rest]) => `  - {file: ${file}, ${rest}}`);
  return `photographs:\n${entries.join('\n')}\n`;
}
