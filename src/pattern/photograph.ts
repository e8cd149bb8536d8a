/** A photograph as a pattern file names it, and what stands on the disk under that name as whoever looked there tells it. */

export interface Photograph {
  /** As written, from the pattern's own folder: `on-the-chair.jpg`. */
  readonly file: string;
  /** What it shows, for those who do not see it. */
  readonly shows: string;
  /** Who took it. */
  readonly by: string | null;
  /** The part it belongs to, by name; null for the piece as a whole. */
  readonly part: string | null;
}

/** Measures as it is looked at, turned the way the camera was held. */
export interface PictureFacts {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Of its bytes: what is made of it is named after them. */
  readonly hash: string;
}

export type PhotographLook =
  | ({ readonly kind: 'picture' } & PictureFacts)
  /** `near` is a file of the folder with almost that name. */
  | { readonly kind: 'missing'; readonly near: string | null }
  /** A link on the disk that leads out of the pattern's folder. */
  | { readonly kind: 'outside' }
  /** `given` is what it is as far as its first bytes tell: `HEIC, as phones save it`. */
  | { readonly kind: 'no picture'; readonly given: string | null }
  | { readonly kind: 'broken' }
  | { readonly kind: 'too large'; readonly megapixels: number | null; readonly megabytes: number };

/** By the name that stands in the file. */
export type PhotographLooks = ReadonlyMap<string, PhotographLook>;

export const NOBODY_LOOKED: PhotographLooks = new Map();

/** A photograph that is there and can be shown. */
export type SeenPhotograph = Photograph & PictureFacts;

export function seenPhotographs(
  photographs: readonly Photograph[],
  looks: PhotographLooks,
): readonly SeenPhotograph[] {
  return photographs.flatMap((photograph) => {
    const look = looks.get(photograph.file);
    if (look?.kind !== 'picture' || leadsOut(photograph.file)) return [];
    const { widthPx, heightPx, hash } = look;
    return [{ ...photograph, widthPx, heightPx, hash }];
  });
}

/** Up and out of the folder, to another place on the disk, or to the web. */
export function leadsOut(file: string): boolean {
  return /^(?:[a-z][a-z0-9+.-]*:|[\\/~])/i.test(file) || file.split(/[\\/]/).includes('..');
}
