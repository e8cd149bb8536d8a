/** A photograph that was found -> the files made of it, in several widths and two formats, and what a page says of them. */

import { ownName } from '../pattern/own-name.ts';
import type { SeenPhotograph } from '../pattern/photograph.ts';
import { linkTo, type PagePlace } from './addresses.ts';
import type { PictureSet } from './page-data.ts';

/** A phone in two columns, a phone across or a page's column, and that on a screen of double fineness. */
const WIDTHS_PX = [480, 960, 1600] as const;

/** The width of the one JPEG, for browsers that know no WebP and for those who save it. */
const PLAIN_PX = 960;

export interface PictureFile {
  readonly file: string;
  readonly widthPx: number;
  readonly format: 'webp' | 'jpeg';
}

/** Where a picture stands on its page, and so how wide it is shown. */
export type Standing = 'cover' | 'listed' | 'among others' | 'portrait';

/** In the words of the `sizes` attribute; they follow the style sheet at its usual letters (a `rem` in them would be the browser's). */
const SHOWN: Readonly<Record<Standing, string>> = {
  cover: '(min-width: 44rem) 340px, min(340px, 92vw)',
  portrait: '187px',
  listed: '(min-width: 44rem) 204px, min(340px, 92vw)',
  'among others': '(min-width: 60rem) 374px, (min-width: 44rem) 45vw, 92vw',
};

/** Named after what is in it, so that a changed photograph is never taken for an old one. Never wider than it came. */
export function pictureFiles(slug: string, photograph: SeenPhotograph): readonly PictureFile[] {
  const name = (widthPx: number, ending: string): string =>
    `${ownName(slug)}-${photograph.hash}-${widthPx}.${ending}`;
  const plain = Math.min(PLAIN_PX, photograph.widthPx);
  return [
    ...widthsOf(photograph).map((widthPx) => ({
      file: name(widthPx, 'webp'),
      widthPx,
      format: 'webp' as const,
    })),
    { file: name(plain, 'jpg'), widthPx: plain, format: 'jpeg' },
  ];
}

function widthsOf({ widthPx }: SeenPhotograph): number[] {
  const narrower = WIDTHS_PX.filter((width) => width < widthPx);
  return narrower.length < WIDTHS_PX.length ? [...narrower, widthPx] : narrower;
}

export function pictureSet(
  slug: string,
  photograph: SeenPhotograph,
  place: PagePlace,
  standing: Standing,
): PictureSet {
  const files = pictureFiles(slug, photograph);
  const plain = files.find(({ format }) => format === 'jpeg');
  const { widthPx, heightPx } = photograph;
  const width = plain?.widthPx ?? widthPx;
  return {
    webp: files
      .filter(({ format }) => format === 'webp')
      .map((made) => `${linkTo(place, [slug], made.file)} ${made.widthPx}w`)
      .join(', '),
    sizes: SHOWN[standing],
    src: linkTo(place, [slug], plain?.file),
    width: String(width),
    height: String(Math.round((heightPx * width) / widthPx)),
    tall: heightPx > widthPx,
    shows: photograph.shows,
    by: photograph.by,
    lazy: standing !== 'cover',
  };
}

/** The first is the cover's; null where there is none. */
export function coverPhotograph(
  { slug, photographs: [first] }: { readonly slug: string; readonly photographs: readonly SeenPhotograph[] },
  place: PagePlace,
  standing: Standing,
): PictureSet | null {
  return first === undefined ? null : pictureSet(slug, first, place, standing);
}

/** Those of a part, or where no part is named, those that stand with none; the cover's is not shown a second time. */
export function photographsOf(
  { slug, photographs }: { readonly slug: string; readonly photographs: readonly SeenPhotograph[] },
  part: string | null,
  place: PagePlace,
): PictureSet[] {
  return photographs
    .filter((photograph, index) => index > 0 && photograph.part === part)
    .map((photograph) => pictureSet(slug, photograph, place, 'among others'));
}
