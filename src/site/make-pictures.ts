/** A photograph on the disk -> smaller ones for pages and paper: turned upright, and with nothing in them but the picture. */

import path from 'node:path';
import type { BookletPhotograph } from '../booklet/booklet-photograph.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { SeenPhotograph } from '../pattern/photograph.ts';
import { FILES_FOLDER } from './addresses.ts';
import { keptFile } from './kept-files.ts';
import { loadSharp, OPENED } from './load-sharp.ts';
import { pictureFiles } from './picture-set.ts';
import type { FileToMake } from './site-file.ts';
import type { SiteSettings } from './site-settings.ts';

/** Part of the names in the store: a change here makes every picture anew. */
const RECIPE = '1';
const WEBP = { quality: 76, effort: 4 } as const;
const JPEG = { quality: 78, mozjpeg: true } as const;
/** Print hides what a screen shows, and a booklet is sent about. */
const PAPER_JPEG = { quality: 68, mozjpeg: true } as const;

/** What pages ask for of the photographs that lie in a folder. */
export function photographFiles(
  { slug, photographs }: { readonly slug: string; readonly photographs: readonly SeenPhotograph[] },
  folder: string,
): FileToMake[] {
  return photographs.flatMap((photograph) =>
    pictureFiles(slug, photograph).map(({ file, widthPx, format }) => ({
      file: `${slug}/${file}`,
      content: () => scaled(folder, photograph, { width: widthPx }, format),
    })),
  );
}

/** It lies beside `site.yaml`, in the folder of the patterns. */
export function portraitFiles({ seenPortrait }: SiteSettings, folder: string): FileToMake[] {
  const photographs = seenPortrait === null ? [] : [seenPortrait];
  return photographFiles({ slug: FILES_FOLDER, photographs }, folder);
}

/** Where the photographs of a pattern lie. */
export function folderOf({ source }: Pattern): string {
  return path.dirname(source.file);
}

/** The middle of it, as large as it is wanted. */
export function squarePhotograph(
  photograph: SeenPhotograph,
  folder: string,
  sidePx: number,
): Promise<Uint8Array> {
  return scaled(folder, photograph, { width: sidePx, height: sidePx, fit: 'cover' }, 'jpeg');
}

/** Dots along the longer side: of the cover's, some 200 to the inch across a page; of the others at 8 cm, some 240. */
const ON_PAPER_PX = { cover: 1360, other: 780 } as const;

/** What the booklets of a pattern print, the cover's first. */
export async function paperPhotographs(
  photographs: readonly SeenPhotograph[],
  pattern: Pattern,
): Promise<BookletPhotograph[]> {
  const printed: BookletPhotograph[] = [];
  for (const [index, photograph] of photographs.entries()) {
    const room = index === 0 ? ON_PAPER_PX.cover : ON_PAPER_PX.other;
    const { shows, by, part, widthPx, heightPx } = photograph;
    const scale = Math.min(1, room / Math.max(widthPx, heightPx));
    printed.push({
      shows,
      by,
      part,
      widthPx: Math.round(widthPx * scale),
      heightPx: Math.round(heightPx * scale),
      jpeg: await scaled(folderOf(pattern), photograph, { width: room, height: room }, 'paper'),
    });
  }
  return printed;
}

/**
 * The library writes none of what a camera puts into its files (place, day, maker, a small picture of the whole) unless it
 * is asked to, and brings colours into sRGB.
 */
function scaled(
  folder: string,
  { file, hash }: SeenPhotograph,
  room: { readonly width: number; readonly height?: number; readonly fit?: 'cover' },
  format: 'webp' | 'jpeg' | 'paper',
): Promise<Uint8Array> {
  const name = `${hash}-${room.width}x${room.height ?? ''}${room.fit ?? ''}-${RECIPE}.${format}`;
  return keptFile(name, async () => {
    const sharp = await loadSharp();
    const picture = sharp(path.join(folder, file), OPENED)
      .autoOrient()
      .resize({ fit: 'inside', withoutEnlargement: room.fit === undefined, ...room });
    // What was clear in a PNG would come out black as JPEG.
    const saved =
      format === 'webp'
        ? picture.webp(WEBP)
        : picture.flatten({ background: '#ffffff' }).jpeg(format === 'paper' ? PAPER_JPEG : JPEG);
    try {
      return await saved.toBuffer();
    } catch (fault) {
      throw new PhotographLost(file, fault);
    }
  });
}

/** It was there and whole when it was looked at, and is not any more: somebody is at work on it. */
export class PhotographLost extends Error {
  constructor(file: string, cause: unknown) {
    super(`the photograph "${file}" was changed or taken away while it was read; try once more`, { cause });
  }
}
