/** The library that reads and scales pictures, loaded when the first one has to be opened. */

import type Sharp from 'sharp';
import { MOST_MEGAPIXELS } from '../diagnostics/catalogue/photographs.ts';

let loaded: Promise<typeof Sharp> | null = null;

export function loadSharp(): Promise<typeof Sharp> {
  loaded ??= import('sharp').then(({ default: sharp }) => {
    // It would go on giving a picture that has been changed on the disk, and keep large ones in memory.
    sharp.cache(false);
    return sharp;
  });
  return loaded;
}

/** Read from top to bottom and never kept whole; what is missing at its end is a fault and not grey. */
export const OPENED = {
  sequentialRead: true,
  failOn: 'error',
  limitInputPixels: MOST_MEGAPIXELS * 1_000_000 * 1.02,
} as const;
