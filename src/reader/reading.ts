/** On the page of a size: ticks and place are kept, the row at hand stands out and is a thumb away, terms are remembered. */

import { keep, readKept } from './kept.ts';
import { found } from './markup.ts';
import { keepPagesForOffline } from './offline-pages.ts';
import { fromKept, isKeptPlace, rowAtHand, toKeep } from './row-place.ts';
import { keepScreenOn } from './screen-on.ts';

const bar = found('#at-hand');
const label = found('#at-hand-label');
const done = found<HTMLButtonElement>('#at-hand-done');
const back = found<HTMLButtonElement>('#at-hand-back');
const boxes = [...document.querySelectorAll<HTMLInputElement>('.rows.ticked input[type="checkbox"]')];
const rows = boxes.map((box) => box.closest('li'));
const kept = `rowfold rows ${bar.dataset.keep ?? ''}`;

let place = fromKept(readKept(kept, isKeptPlace), boxes.length);
for (const [i, box] of boxes.entries()) {
  box.checked = place.ticked[i] ?? false;
  box.addEventListener('change', () => tick(i, box.checked));
}
show();

done.addEventListener('click', () => {
  const at = rowAtHand(place);
  if (at < 0) startOver();
  else tick(at, true);
  bringToView();
});
back.addEventListener('click', () => {
  const { ticked, last } = place;
  const undo = ticked[last] === true ? last : ticked.lastIndexOf(true);
  if (undo < 0) return;
  tick(undo, false);
  bringToView();
});

function tick(i: number, checked: boolean): void {
  const ticked = place.ticked.with(i, checked);
  const last = checked ? i : ticked.lastIndexOf(true, i);
  place = { ticked, last };
  keep(kept, toKeep(place));
  const box = boxes[i];
  if (box !== undefined) box.checked = checked;
  show();
}

function startOver(): void {
  place = fromKept(null, boxes.length);
  keep(kept, toKeep(place));
  for (const box of boxes) box.checked = false;
  show();
}

/** Nothing is shown before the first tick: whoever only reads is not followed about. */
function show(): void {
  const count = place.ticked.filter(Boolean).length;
  const at = rowAtHand(place);
  bar.hidden = count === 0;
  document.body.classList.toggle('follows', count > 0);
  for (const [i, row] of rows.entries()) {
    if (i === at && count > 0) row?.setAttribute('aria-current', 'step');
    else row?.removeAttribute('aria-current');
  }
  label.textContent =
    at < 0 ? 'All rows are done.' : `${nameOf(at)}, ${count} of ${place.ticked.length} done`;
  done.textContent = at < 0 ? 'Start over' : 'Done, next row';
}

/** `Row 7`; of a sentence without a label its first words. */
function nameOf(i: number): string {
  const words = rows[i]?.querySelector('.label, .tick span')?.textContent?.trim() ?? '';
  return words.length > LONGEST_NAME ? `${words.slice(0, LONGEST_NAME)}…` : words;
}

const LONGEST_NAME = 30;

function bringToView(): void {
  const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
  rows[rowAtHand(place)]?.scrollIntoView({ block: 'center', behavior: calm ? 'auto' : 'smooth' });
}

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

keepScreenOn(found<HTMLButtonElement>('#at-hand-awake'));
keepPagesForOffline(bar.dataset.root ?? './');
