/**
 * Rows with boxes to tick, and what a page knows of them -> followed row by row: ticks and place are kept, the row at hand
 * stands out in words and chart, and a bar within reach of a thumb leads on.
 */

import type { FollowedLine, FollowedRow } from '../site/following.ts';
import { keep, readKept } from './kept.ts';
import { markChart } from './mark-chart.ts';
import { element, found } from './markup.ts';
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

export interface Following {
  /** A chart was drawn since. */
  readonly chartDrawn: () => void;
  /** The rows are taken away; what is kept of them stays kept. */
  readonly end: () => void;
}

/** `keepAs` tells these rows from others in a reader's browser. */
export function followRows(lines: readonly FollowedLine[], keepAs: string): Following {
  const bar = found('#at-hand');
  const label = found('#at-hand-label');
  const done = found<HTMLButtonElement>('#at-hand-done');
  const back = found<HTMLButtonElement>('#at-hand-back');
  const pass = found<HTMLButtonElement>('#at-hand-pass');
  const follow = found<HTMLButtonElement>('#follow');
  const boxes = [...document.querySelectorAll<HTMLInputElement>('.rows.ticked input[type="checkbox"]')];
  const items = boxes.map((box) => box.closest('li'));
  const kept = `rowfold rows ${keepAs}`;
  const ended = new AbortController();
  const { signal } = ended;

  const rowsOf = (line: number): number => lines[line]?.rows.length ?? 0;

  let place = fromKept(readKept(kept, isKeptPlace), boxes.length);
  /** Nothing is shown before the first tick: whoever only reads is not followed about. */
  let following = place.ticked.some(Boolean) || place.rowsDone > 0;
  for (const [i, box] of boxes.entries())
    box.addEventListener('change', () => go(withTick(place, i, box.checked)), { signal });

  done.addEventListener(
    'click',
    () => {
      const over = lineAtHand(place) < 0;
      go(rowDone(place, rowsOf));
      if (over) following = false;
      show();
      bringToView();
    },
    { signal },
  );
  back.addEventListener(
    'click',
    () => {
      go(rowBack(place, rowsOf));
      bringToView();
    },
    { signal },
  );
  pass.addEventListener('click', () => go({ ...place, passesDone: place.passesDone + 1 }), { signal });
  follow.addEventListener(
    'click',
    () => {
      following = true;
      show();
      bringToView();
      done.focus({ preventScroll: true });
    },
    { signal },
  );

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
    void markChart(
      following && row !== null ? (lines[at]?.chart ?? null) : null,
      row?.row ?? -1,
      row?.onto ?? null,
    );
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

  /** `Rows 4–27: Rep Rows 2 and 3` is no help with Row 6 in the hand: the words of Row 2 are set there as well. */
  function showWordsOf(row: FollowedRow | null, line: number): void {
    for (const one of document.querySelectorAll('.as-row')) one.remove();
    const as = row?.as ?? null;
    const model = as === null ? null : (items[as.line]?.querySelector('p, .sentence > span') ?? null);
    if (row === null || model === null) return;
    const words = element(
      'p',
      {},
      element('span', { class: 'label' }, `${row.name}:`),
      ' ',
      ...copies(model),
    );
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

  function bringToView(): void {
    const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
    items[lineAtHand(place)]?.scrollIntoView({ block: 'center', behavior: calm ? 'auto' : 'smooth' });
  }

  show();
  return {
    chartDrawn: show,
    end: () => {
      ended.abort();
      bar.hidden = true;
      document.body.classList.remove('follows');
    },
  };
}

const LONGEST_NAME = 30;

const ORDINALS = ['1st', '2nd', '3rd', '4th', '5th', '6th', '7th', '8th', '9th'];
