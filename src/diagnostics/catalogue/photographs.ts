/** Facts about the photographs a file names in, the words of a fault out: one function per code. */

import type { Wording } from '../diagnostic.ts';
import { listed } from '../listed.ts';

export const photographFaults = {
  'photograph/missing': ({
    given,
    near,
  }: {
    readonly given: string;
    readonly near: string | null;
  }): Wording => ({
    severity: 'error',
    message: `there is no file "${given}" beside this one`,
    why: 'Page and booklet would have a hole where the photograph belongs.',
    try:
      near === null
        ? 'put the photograph into the folder of the pattern, and write its name as it is there.'
        : `write ${near}: capital and small letters count.`,
  }),
  'photograph/outside': ({ given }: { readonly given: string }): Wording => ({
    severity: 'error',
    message: `"${given}" leads out of the folder of the pattern`,
    why: 'Only what lies with the pattern is published, so that nothing else on this computer ever is.',
    try: 'copy the photograph into the folder of the pattern, and write its name alone.',
  }),
  'photograph/kind': ({ given, is }: { readonly given: string; readonly is: string | null }): Wording => ({
    severity: 'error',
    message: `"${given}" is ${is === null ? 'no photograph that can be read' : is}`,
    why: 'Photographs are read as JPEG, PNG, WebP, AVIF and TIFF, whatever the end of their name says.',
    try: 'open it in a program for pictures and save it as JPEG.',
  }),
  'photograph/broken': ({ given }: { readonly given: string }): Wording => ({
    severity: 'error',
    message: `"${given}" is broken: it cannot be read to its end`,
    why: 'Part of the photograph would be grey or missing on the page and in print.',
    try: 'copy it from the camera or phone once more, or save it anew.',
  }),
  'photograph/too-large': ({ given, megapixels, megabytes }: TooLarge): Wording => ({
    severity: 'error',
    message:
      megapixels === null
        ? `"${given}" is a file of ${megabytes} MB`
        : `"${given}" has ${megapixels} million dots`,
    why:
      megapixels === null
        ? `No photograph needs more than ${MOST_MEGABYTES} MB; this may be another file.`
        : `To scale it down takes more memory than a small computer has; up to ${MOST_MEGAPIXELS} million are read.`,
    try: 'save it again with 6000 dots along its longer side, which is more than print or screen shows.',
  }),
  'photograph/small': ({ given, widthPx, heightPx, least }: Small): Wording => ({
    severity: 'warning',
    message: `"${given}" is only ${widthPx} by ${heightPx} dots`,
    why: 'It is printed small, and is coarse on large screens.',
    try: `take the photograph as it came from the camera: ${least} dots along the longer side are enough.`,
  }),
  'photograph/says-nothing': ({ shows }: { readonly shows: string }): Wording => ({
    severity: 'error',
    message: `"${shows}" does not say what the photograph shows`,
    why: 'It is read aloud to makers who do not see the photograph, and stands in its place while it loads.',
    try: 'say it as to a friend on the telephone, like  shows: The square pinned out on a board, shells pointing up',
  }),
  'photograph/part': ({ given, nearest, names }: NoPart): Wording => ({
    severity: 'error',
    message: `no part is called "${given}"`,
    why: 'The photograph is to stand with the instructions of that part.',
    try: nearest === null ? `name one of these: ${listed(names, 'or')}.` : `write ${nearest}.`,
  }),
} as const;

/** A hundred is what the largest cameras make; beyond this it is no single photograph. */
export const MOST_MEGAPIXELS = 120;
export const MOST_MEGABYTES = 150;

interface TooLarge {
  readonly given: string;
  /** Null where it was not even opened. */
  readonly megapixels: number | null;
  readonly megabytes: number;
}

interface Small {
  readonly given: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly least: number;
}

interface NoPart {
  readonly given: string;
  readonly nearest: string | null;
  readonly names: readonly string[];
}
