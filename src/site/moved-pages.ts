/**
 * Old addresses and where they lead, `moved:` of `site.yaml` -> a page at each old address, and at each below it, that leads
 * on to the new one: on any host that serves files, for nothing of it is a server's setting.
 */

import { nearest } from '../diagnostics/nearest.ts';
import { escaped } from '../escaped.ts';
import { FILES_FOLDER, linkTo, pagePlace, STITCHES_FOLDER } from './addresses.ts';
import type { SiteFile } from './site-file.ts';

/** From the top of the site, without strokes at the ends: `old-square` -> `lantern-square`, `old/small` -> `new/small`. */
export type Moved = Readonly<Record<string, string>>;

export type MovedPages =
  | { readonly kind: 'made'; readonly pages: readonly SiteFile[] }
  | { readonly kind: 'wrong'; readonly old: string; readonly why: string };

const OWN_FOLDERS: readonly string[] = [FILES_FOLDER, STITCHES_FOLDER];

/** `files` are those of the site's pages: `lantern-square/small/index.html`. */
export function movedPages(moved: Moved, files: readonly string[]): MovedPages {
  const folders = files.flatMap((file) =>
    file.endsWith('/index.html') ? [file.slice(0, -'/index.html'.length)] : [],
  );
  const pages = new Map<string, string>();
  for (const [old, to] of Object.entries(moved)) {
    const clash = whyNot(old, to, folders, moved);
    if (clash !== null) return { kind: 'wrong', old, why: clash };
    const below = folders.filter((folder) => folder === to || folder.startsWith(`${to}/`));
    for (const folder of below) pages.set(`${old}${folder.slice(to.length)}`, folder);
  }
  // An old size that has an address of its own in the list leads there, not where its pattern leads.
  for (const [old, to] of Object.entries(moved)) pages.set(old, to);
  return { kind: 'made', pages: [...pages].map(([old, to]) => movedPage(old, to)) };
}

function whyNot(old: string, to: string, folders: readonly string[], moved: Moved): string | null {
  if (!folders.includes(to)) {
    const near = nearest(to, folders);
    return `there is no page at ${to}/ to lead to${near === null ? '' : `; did you mean ${near}?`}`;
  }
  if (folders.includes(old)) return `${old}/ is a page of the site as it is, so it cannot lead elsewhere`;
  if (OWN_FOLDERS.includes(old.split('/')[0] ?? '')) return `${old}/ is a folder of the site's own files`;
  if (to in moved) return `${to}/ leads on to another page itself; name the last of them`;
  return null;
}

/** Leads on at once (WCAG 2.2, technique H76), and says where to for whoever's browser does not. */
function movedPage(old: string, to: string): SiteFile {
  const place = pagePlace(old.split('/'));
  const href = escaped(linkTo(place, to.split('/')));
  const content = [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'; img-src 'self'; font-src 'self'; base-uri 'none'; form-action 'none'">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta http-equiv="refresh" content="0; url=${href}">`,
    '<meta name="robots" content="noindex">',
    '<title>This page has moved</title>',
    `<link rel="canonical" href="${href}">`,
    `<link rel="stylesheet" href="${place.root}${FILES_FOLDER}/site.css">`,
    '</head>',
    '<body>',
    '<main>',
    '<h1>This page has moved</h1>',
    `<p><a href="${href}">To where it is now</a></p>`,
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
  return { file: place.file, content };
}
