/** On the page of a size: its rows are followed, words explained, terms remembered, and all of it kept for when there is no network. */

import { followRows } from './follow-rows.ts';
import { keep, readKept } from './kept.ts';
import { found } from './markup.ts';
import { keepPagesForOffline } from './offline-pages.ts';
import { openMeanings } from './open-meaning.ts';
import { keepScreenOn } from './screen-on.ts';

const bar = found('#at-hand');

/** She chose her terms once: a page that leaves them open leads on to them. */
const TERMS = 'rowfold terms';
const isWord = (value: unknown): value is string => typeof value === 'string';
for (const link of document.querySelectorAll<HTMLAnchorElement>('a[data-terms]'))
  link.addEventListener('click', () => keep(TERMS, link.dataset.terms));
const wanted = readKept(TERMS, isWord);
const links = [...document.querySelectorAll<HTMLAnchorElement>('a[data-terms]')];
const current = links.find((link) => link.getAttribute('aria-current') === 'page');
const toWanted = links.find((link) => link.dataset.terms === wanted);
if (bar.dataset.open === 'yes' && toWanted !== undefined && toWanted !== current)
  location.replace(toWanted.href + location.hash);

followRows(JSON.parse(found('#following').textContent ?? '[]'), bar.dataset.keep ?? '');
openMeanings();
keepScreenOn(found<HTMLButtonElement>('#at-hand-awake'));
keepPagesForOffline(bar.dataset.root ?? './');
