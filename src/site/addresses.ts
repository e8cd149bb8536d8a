/** Names of patterns, sizes and dialects -> where their pages and files stand, and relative links between them. */

import type { Edition } from '../booklet/edition.ts';
import type { PaperName } from '../booklet/paper.ts';
import { ownName } from '../pattern/own-name.ts';
import type { DialectKey } from '../wording/words.ts';

/** A page's place: its file under the site's folder, and the way from it back to the site's top. */
export interface PagePlace {
  readonly file: string;
  /** `./` at the top, `../../` two folders down: links work in any subfolder of any host. */
  readonly root: string;
}

/** Folder of the style sheet, the fonts and the ornament. */
export const FILES_FOLDER = 'site-files';

/** Folder of the page of stitches. */
export const STITCHES_FOLDER = 'site-stitches';

/** The feed of all that is published, at the top of the site. */
export const ALL_FEED = 'feed.xml';

/** At the top of the site: a browser lets it answer for the folder it stands in and those below. */
export const OFFLINE_SCRIPT = 'offline.js';

/** A folder may lie in another: the squares of an along, `salt-marsh/reed-square`, in that of the along. */
export function pagePlace(folders: readonly string[]): PagePlace {
  const deep = folders.flatMap((folder) => folder.split('/')).length;
  return {
    file: [...folders, 'index.html'].join('/'),
    root: deep === 0 ? './' : '../'.repeat(deep),
  };
}

/** The relative address, from a page, of another page's folder or of a file in it. */
export function linkTo(from: PagePlace, folders: readonly string[], file = ''): string {
  const way = folders
    .flatMap((folder) => folder.split('/'))
    .map((folder) => `${encodeURIComponent(folder)}/`)
    .join('');
  return `${from.root}${way}${encodeURIComponent(file)}`;
}

/** The whole address of a page of a site that stands at `top`, which ends in a stroke; null where that is not known. */
export function wholeAddress(top: string | null, folders: readonly string[]): string | null {
  return top === null ? null : `${top}${folders.map((folder) => `${encodeURIComponent(folder)}/`).join('')}`;
}

/** What stands for all sizes in the names of files. */
export const ALL_SIZES = 'all-sizes';

/** What tells a booklet's file from the others of its pattern. */
export interface NamedBooklet extends Partial<Edition> {
  /** The size's slug. */
  readonly size: string;
  readonly paper: PaperName;
  /** Named where it is not the pattern's own. */
  readonly dialect: DialectKey | null;
  readonly leftHanded?: boolean;
}

export function bookletFileName(
  pattern: string,
  { size, paper, dialect, leftHanded, form = 'flat', holds = 'all', lowInk }: NamedBooklet,
): string {
  return [
    ownName(pattern),
    size,
    dialect,
    paper.toLowerCase(),
    leftHanded ? 'left-handed' : null,
    form === 'flat' ? null : form.replace(' ', '-'),
    lowInk ? 'low-ink' : null,
    holds === 'all' ? null : `${holds}-only`,
  ]
    .filter((word) => word !== null)
    .join('-')
    .concat('.pdf');
}

export function chartFileName(
  pattern: string,
  size: string,
  part: number,
  terms: 'US' | 'UK',
  leftHanded = false,
): string {
  return `${ownName(pattern)}-${size}-chart-${part + 1}-${terms.toLowerCase()}${leftHanded ? '-left-handed' : ''}.svg`;
}

/** A word or two as part of a fragment: `Row 2 (WS)` -> `row-2-ws`. */
export function fragment(words: string): string {
  return words
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}

/** Gives each wanted fragment a form that no earlier one on the page has. */
export function uniqueFragments(): (wanted: string) => string {
  const taken = new Map<string, number>();
  return (wanted) => {
    const base = wanted === '' ? 'part' : wanted;
    const times = (taken.get(base) ?? 0) + 1;
    taken.set(base, times);
    return times === 1 ? base : `${base}-no-${times}`;
  };
}
