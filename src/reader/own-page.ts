/** The page on which a reader has a pattern made over: what she fills in, and what stands in the address, becomes the pattern. */

import type { NearSizes } from '../check/near-sizes.ts';
import { makeOwn, type OwnMade } from '../own/make-own.ts';
import { nearTables } from '../own/near-words.ts';
import { FIELDS_OF, type OwnChoice, readChoice, tidyQuery } from '../own/own-choice.ts';
import { type AskedField, readAsked } from '../own/read-asked.ts';
import { type ShippedPattern, unshipPattern } from '../own/shipped-pattern.ts';
import { NOTHING_ASKED, type OwnSize } from '../pattern/own-size.ts';
import type { Following } from './follow-rows.ts';
import { readEdition } from './keep-sheet.ts';
import { element, found } from './markup.ts';
import { keepPagesForOffline } from './offline-pages.ts';
import { openMeanings } from './open-meaning.ts';
import { firstSheets, nearTable, rowSheets } from './own-result.ts';
import { sheet } from './own-sections.ts';
import { keepScreenOn } from './screen-on.ts';

const CALLED: Readonly<Record<AskedField, string>> = {
  width: 'Width',
  height: 'Height',
  repeats: 'Repeats',
  rows: 'Rows',
  gauge: 'Gauge',
  ball: 'Ball',
  hook: 'Hook',
};

const form = found<HTMLFormElement>('#own-form');
const told = found('#own-told');
const first = found('#own-first');
const rows = found('#own-rows');
const ready = [...first.childNodes];
const shipped: ShippedPattern = JSON.parse(found('#own-pattern').textContent ?? '');
const { from: remakeableFrom, scaleOf } = unshipPattern(shipped);
const choosable = { pattern: remakeableFrom(0).pattern, sizeSlugs: shipped.sizeSlugs };

/** Beside the script itself. */
const FONT_FOLDER = new URL('./', import.meta.url).href;

const COUNTS = [
  ['repeats', 'width'],
  ['rows', 'height'],
] as const;

/** What stands in the page. */
let following: Following | null = null;

/** What the booklet is made of. */
let shown: { readonly made: OwnMade; readonly choice: OwnChoice } | null = null;

form.addEventListener('submit', (event) => {
  event.preventDefault();
  const query = queryOfForm();
  history.pushState(null, '', `?${query}`);
  show(query);
  told.scrollIntoView({ block: 'nearest' });
});
/** What has two or three answers is answered at once; a number only when she says so. */
form.addEventListener('change', (event) => {
  if (event.target instanceof HTMLSelectElement && location.search !== '') form.requestSubmit();
});
openMeanings();
keepScreenOn(found<HTMLButtonElement>('#at-hand-awake'));
keepPagesForOffline(found('#at-hand').dataset.root ?? './');
addEventListener('popstate', () => fillAndShow());
fillAndShow();

function fillAndShow(): void {
  const query = new URLSearchParams(location.search);
  for (const field of form.elements) {
    if (field instanceof HTMLSelectElement) {
      const wanted = query.get(field.name);
      const has = [...field.options].some(({ value }) => value === wanted);
      field.value = has && wanted !== null ? wanted : (field.options[0]?.value ?? '');
    } else if (field instanceof HTMLInputElement) field.value = query.get(field.name) ?? '';
  }
  // A form that was sent without this script names all its fields.
  const asked = tidyQuery(query);
  if (asked.size < query.size) history.replaceState(null, '', asked.size === 0 ? './' : `?${asked}`);
  if (asked.size === 0) {
    first.replaceChildren(...ready);
    takeAway();
    tell('');
  } else show(asked);
}

/** What the form has no field for, `?repeats=7`, stays as long as no measure is filled in that takes its place. */
function queryOfForm(): URLSearchParams {
  const filled = new URLSearchParams();
  for (const [name, value] of new FormData(form)) if (typeof value === 'string') filled.append(name, value);
  const before = new URLSearchParams(location.search);
  for (const [count, measure] of COUNTS) {
    const kept = before.get(count);
    if (kept !== null && (filled.get(measure) ?? '').trim() === '') filled.set(count, kept);
  }
  return tidyQuery(filled);
}

function show(query: URLSearchParams): void {
  const choice = readChoice(query, choosable);
  const asked = readAsked(choice.asked, remakeableFrom(choice.from), choice.from, (field) => CALLED[field]);
  markWrong(asked.kind === 'wrong' ? asked.field : null);
  if (asked.kind === 'wrong') {
    tell(asked.message);
    return;
  }
  const own = asked.kind === 'asked' ? asked.own : { ...NOTHING_ASKED, from: choice.from };
  const outcome = makeOwn(remakeableFrom(choice.from), own, scaleOf);
  if (outcome.kind === 'faults') {
    const [fault] = outcome.faults;
    import('./tell-faults.ts').then(({ tellFault }) =>
      tell(`That size cannot be worked${fault === undefined ? '.' : `: ${tellFault(fault)}`}`),
    );
    return;
  }
  if (outcome.kind === 'cannot') {
    tell(outcome.why);
    first.replaceChildren(
      sheet(
        'your-size',
        'Your size',
        ...nearTables(outcome.near).map((table) => nearTable(table, choice.units)),
      ),
    );
    takeAway();
    return;
  }
  showMade(outcome.made, outcome.near, choice, keptAs(own));
}

rows.addEventListener('click', ({ target }) => {
  const wanted = target instanceof HTMLElement ? target.dataset.keep : undefined;
  if (wanted === 'print') print();
  if (wanted === 'A4' || wanted === 'Letter') keepBooklet(wanted);
});

/** A booklet of what stands in the page, saved as any file of the site would be. */
async function keepBooklet(paper: 'A4' | 'Letter'): Promise<void> {
  if (shown === null) return;
  const { made, choice } = shown;
  const kept = found('#own-kept');
  kept.textContent = 'Setting the booklet…';
  try {
    const { ownBooklet } = await import('./own-booklet.ts');
    const address = location.href;
    const edition = readEdition();
    const bytes = await ownBooklet({
      made,
      scaleOf,
      choice,
      paper,
      edition,
      address,
      fontFolder: FONT_FOLDER,
    });
    const href = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: 'application/pdf' }));
    const name = `${made.pattern.slug}-your-own-${choice.dialect}-${paper.toLowerCase()}.pdf`;
    const link = element('a', { href, download: name }, name);
    kept.replaceChildren('The booklet is ready: ', link);
    link.click();
  } catch {
    kept.textContent =
      'The booklet could not be set, for a part of the site could not be fetched. Try again, or print this page.';
  }
}

function showMade(made: OwnMade, near: NearSizes, choice: OwnChoice, keepAs: string): void {
  shown = { made, choice };
  const { summary, sheets } = firstSheets(made, near, choice);
  tell(summary);
  first.replaceChildren(...sheets);
  const set = rowSheets(made, choice, shipped.films);
  takeAway();
  rows.replaceChildren(...set.sheets);
  const terms = choice.dialect.startsWith('uk') ? 'UK' : 'US';
  // The words are there to be read while the rest is made; she may have asked for something else by then.
  const isStill = (): boolean => shown?.made === made && shown.choice === choice;
  import('./own-follow.ts').then(({ followOwn }) => {
    if (isStill()) following = followOwn(made, set, choice.dialect, keepAs);
  });
  import('./own-charts.ts').then(({ drawCharts }) => {
    drawCharts(made, terms, choice.leftHanded, set.charts);
    if (isStill()) following?.chartDrawn();
  });
}

/** Under one name in all terms and units: the rows are the same. */
function keptAs(own: OwnSize): string {
  return `${found('#at-hand').dataset.keep ?? ''} ${JSON.stringify(own)}`;
}

function takeAway(): void {
  following?.end();
  following = null;
  rows.replaceChildren();
}

/** Said aloud as well, for it stands in a live region. */
function tell(words: string): void {
  told.textContent = words;
}

function markWrong(field: AskedField | null): void {
  const wrong = field === null ? [] : FIELDS_OF[field];
  for (const input of form.querySelectorAll('input')) {
    if (wrong.includes(input.name)) input.setAttribute('aria-invalid', 'true');
    else input.removeAttribute('aria-invalid');
  }
  if (wrong.length > 0) form.querySelector<HTMLInputElement>('[aria-invalid="true"]')?.focus();
}
