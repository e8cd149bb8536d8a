/** On the page of a size: ticks and place are kept, the row at hand stands out in words and chart, terms are remembered. */

import type { FollowedLine, FollowedRow } from '../site/following.ts';
import { keep, readKept } from './kept.ts';
import { markChart } from './mark-chart.ts';
import { element, found } from './markup.ts';
import { keepPagesForOffline } from './offline-pages.ts';
import { openMeanings } from './open-meaning.ts';
import {
  fromKept,
  isKeptPlace,
  lineAtHand,
  passAtHand,
  type RowPlace,
  rowBack,
  rowDone,
  toKeep,
  withTick,
} from './row-place.ts';
import { keepScreenOn } from './screen-on.ts';

const bar = found('#at-hand');
const label = found('#at-hand-label');
const done = found<HTMLButtonElement>('#at-hand-done');
const back = found<HTMLButtonElement>('#at-hand-back');
const pass = found<HTMLButtonElement>('#at-hand-pass');
const follow = found<HTMLButtonElement>('#follow');
const lines = JSON.parse(found('#following').textContent ?? '[]') as readonly FollowedLine[];
const boxes = [...document.querySelectorAll<HTMLInputElement>('.rows.ticked input[type="checkbox"]')];
const items = boxes.map((box) => box.closest('li'));
const kept = `rowfold rows ${bar.dataset.keep ?? ''}`;
const rowsOf = (line: number): number => lines[line]?.rows.length ?? 0;

let place = fromKept(readKept(kept, isKeptPlace), boxes.length);
/** Nothing is shown before the first tick: whoever only reads is not followed about. */
let following = place.ticked.some(Boolean) || place.rowsDone > 0;
for (const [i, box] of boxes.entries())
  box.addEventListener('change', () => go(withTick(place, i, box.checked)));

done.addEventListener('click', () => {
  const over = lineAtHand(place) < 0;
  go(rowDone(place, rowsOf));
  if (over) following = false;
  show();
  bringToView();
});
back.addEventListener('click', () => {
  go(rowBack(place, rowsOf));
  bringToView();
});
pass.addEventListener('click', () => go({ ...place, passesDone: place.passesDone + 1 }));
follow.addEventListener('click', () => {
  following = true;
  show();
  bringToView();
  done.focus({ preventScroll: true });
});

function go(to: RowPlace): void {
  place = to;
  following = true;
  keep(kept, toKeep(place));
  show();
}

function show(): void {
  const at = lineAtHand(place);
  const row = rowAtHand(at);
  bar.hidden = !following;
  follow.hidden = following;
  document.body.classList.toggle('follows', following);
  for (const [i, box] of boxes.entries()) box.checked = place.ticked[i] ?? false;
  for (const [i, item] of items.entries()) {
    if (following && i === at) item?.setAttribute('aria-current', 'step');
    else item?.removeAttribute('aria-current');
  }
  label.textContent = at < 0 ? 'All rows are done.' : `${nameOf(at, row)}, ${countOfDone()}`;
  done.textContent = at < 0 ? 'Start over' : 'Done, next row';
  showWordsOf(following ? row : null, at);
  showPass(row, at);
  void markChart(following && row !== null ? (lines[at]?.chart ?? null) : null, row?.row ?? -1);
}

function rowAtHand(line: number): FollowedRow | null {
  return lines[line]?.rows[place.rowsDone] ?? null;
}

function countOfDone(): string {
  return `${place.ticked.filter(Boolean).length} of ${place.ticked.length} done`;
}

/** `Row 7`, `Row 6 of Rows 4–27, worked as Row 2`; of a sentence without a label its first words. */
function nameOf(line: number, row: FollowedRow | null): string {
  const words = items[line]?.querySelector('.label, .tick span')?.textContent?.trim() ?? '';
  if (row === null || rowsOf(line) < 2)
    return words.length > LONGEST_NAME ? `${words.slice(0, LONGEST_NAME)}…` : words;
  return `${row.name} of ${words}${row.as === null ? '' : `, worked as ${row.as.name}`}`;
}

const LONGEST_NAME = 30;

/** `Rows 4–27: Rep Rows 2 and 3` is no help with Row 6 in the hand: the words of Row 2 are set there as well. */
function showWordsOf(row: FollowedRow | null, line: number): void {
  for (const one of document.querySelectorAll('.as-row')) one.remove();
  const as = row?.as ?? null;
  const model = as === null ? null : (items[as.line]?.querySelector('p, .sentence > span') ?? null);
  if (row === null || model === null) return;
  const words = element('p', {}, element('span', { class: 'label' }, `${row.name}:`), ' ', ...copies(model));
  // Its own number is told in the row it is of.
  words.querySelector('.count')?.remove();
  const meanings = items[as?.line ?? -1]?.querySelector('.meanings')?.cloneNode(true) ?? null;
  items[line]
    ?.querySelector('p, .sentence')
    ?.insertAdjacentElement('afterend', element('div', { class: 'as-row' }, words, meanings));
}

function copies(of: Node): Node[] {
  return [...of.childNodes].map((one) => one.cloneNode(true));
}

/** A counter for the passes of a repeat, where there is more than one to lose count of. */
function showPass(row: FollowedRow | null, line: number): void {
  const passes = row?.passes.some((times) => times > 1) ? row.passes : [];
  const at = passAtHand(place.passesDone, passes);
  pass.hidden = passes.length === 0;
  pass.disabled = at === null;
  const item = items[line];
  const words = [...(item?.querySelectorAll(row?.as === null ? '.again' : '.as-row .again') ?? [])].filter(
    (one) => one.parentElement?.closest('.again') === null,
  );
  for (const one of document.querySelectorAll('.again.now')) one.classList.remove('now');
  // Where the words have other repeats than were worked one by one, which of them is meant is not said.
  const told = words.length === passes.length;
  if (at !== null && told && following) words[at.repeat]?.classList.add('now');
  const which = told && passes.length > 1 ? `${ORDINALS[at?.repeat ?? 0] ?? ''} repeat` : 'Repeat';
  pass.textContent = at === null ? 'Repeats done' : `${which} ${at.pass} of ${at.of}`;
}

const ORDINALS = ['1st', '2nd', '3rd', '4th', '5th', '6th', '7th', '8th', '9th'];

function bringToView(): void {
  const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
  items[lineAtHand(place)]?.scrollIntoView({ block: 'center', behavior: calm ? 'auto' : 'smooth' });
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

show();
openMeanings();
keepScreenOn(found<HTMLButtonElement>('#at-hand-awake'));
keepPagesForOffline(bar.dataset.root ?? './');
