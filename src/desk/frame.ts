/** What stands on a page of the desk -> the whole page, with its masthead and its script. */

import { escaped } from '../escaped.ts';
import { DESK_ADDRESS } from './desk-view.ts';

export const PASTE_ADDRESS = `${DESK_ADDRESS}paste/`;

export interface DeskFrame {
  readonly title: string;
  /** Of the places in the masthead, the one that this page is. */
  readonly here: 'desk' | 'paste';
  readonly main: string;
  /** How far things were when the page was made, where its script is told what comes after. */
  readonly news: string | null;
}

/** Nothing but what this computer serves, and nothing written in the page itself but the photographs of a booklet's pages. */
export const DESK_POLICY =
  "default-src 'none'; script-src 'self'; connect-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

export function deskFrame({ title, here, main, news }: DeskFrame): string {
  const places = [
    ['desk', 'Your desk', DESK_ADDRESS],
    ['paste', 'Paste instructions', PASTE_ADDRESS],
    ['site', 'The site', '/'],
  ].map(
    ([key, name, href]) =>
      `<li><a href="${href}"${key === here ? ' aria-current="page"' : ''}>${name}</a></li>`,
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="same-origin">
<meta name="color-scheme" content="light dark">
<title>${escaped(title)}</title>
<link rel="icon" href="${DESK_ADDRESS}icon.svg" type="image/svg+xml">
<link rel="stylesheet" href="${DESK_ADDRESS}site.css">
<link rel="stylesheet" href="${DESK_ADDRESS}desk.css">
</head>
<body class="desk">
<a class="skip" href="#main">Skip to the text</a>
<header class="masthead">
<nav aria-label="Your desk and the site">
<ol class="trail">
${places.join('\n')}
</ol>
</nav>
</header>
<main id="main" tabindex="-1">
<p id="said" class="unseen" role="status"></p>
<p id="gone" class="unsaved" hidden>The desk is not answered: Rowfold has ended in the terminal. Start it again there, and this page goes on by itself.</p>
${main}
</main>
<script src="${DESK_ADDRESS}${here}.js"${news === null ? '' : ` data-news="${escaped(news)}"`}></script>
</body>
</html>
`;
}

/** What the script of the page puts in anew when the server has something newer. */
export function fresh(id: string, inside: string): string {
  return `<div id="${id}" data-fresh>${inside}</div>`;
}
