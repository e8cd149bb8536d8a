/** A photograph on the disk -> smaller ones for pages and paper: turned upright, and with nothing in them but the picture. */

import path from 'node:path';
import type { Pattern } from '../pattern/pattern.ts';
import type { SeenPhotograph } from '../pattern/photograph.ts';
import { keptFile } from './kept-files.ts';
import { loadSharp, OPENED } from './load-sharp.ts';
import { pictureFiles } from './picture-set.ts';
import type { FileToMake } from './site-file.ts';

/** Part of the names in the store: a change here makes every picture anew. */
const RECIPE = '1';
const WEBP = { quality: 76, effort: 4 } as const;
const JPEG = { quality: 78, mozjpeg: true } as const;

/** What the pages of a pattern ask for. */
export function photographFiles(
  { slug, photographs }: { readonly slug: string; readonly photographs: readonly SeenPhotograph[] },
  pattern: Pattern,
): FileToMake[] {
  return photographs.flatMap((photograph) =>
    pictureFiles(slug, photograph).map(({ file, widthPx, format }) => ({
      file: `${slug}/${file}`,
      content: () => scaled(pattern, photograph, { width: widthPx }, format),
    })),
  );
}

/**
 * The library writes none of what a camera puts into its files (place, day, maker, a small picture of the whole) unless it
 * is asked to, and brings colours into sRGB.
 */
export function scaled(
  pattern: Pattern,
  { file, hash }: SeenPhotograph,
  room: { readonly width: number; readonly height?: number },
  format: 'webp' | 'jpeg',
): Promise<Uint8Array> {
  const name = `${hash}-${room.width}x${room.height ?? ''}-${RECIPE}.${format}`;
  return keptFile(name, async () => {
    const sharp = await loadSharp();
    const picture = sharp(path.join(path.dirname(pattern.source.file), file), OPENED)
      .autoOrient()
      .resize({ ...room, fit: 'inside', withoutEnlargement: true })
      // What was clear in a PNG would come out black as JPEG.
      .flatten({ background: '#ffffff' });
    return format === 'webp' ? picture.webp(WEBP).toBuffer() : picture.jpeg(JPEG).toBuffer();
  });
}
