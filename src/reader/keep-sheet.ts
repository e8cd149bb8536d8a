/** The section in which a reader prints what stands in the page, or has a booklet of it set, and which edition she wants. */

import type { Holds } from '../booklet/edition.ts';
import type { Form, PaperName } from '../booklet/paper.ts';
import { element } from './markup.ts';
import { sheet } from './own-sections.ts';

/** What the fields of the section say. */
export interface WantedEdition {
  readonly form: Form;
  readonly holds: Holds;
  readonly lowInk: boolean;
}

export type Wanted = 'print' | PaperName;

const FORMS: readonly (readonly [Form, string])[] = [
  ['flat', 'whole pages'],
  ['large print', 'whole pages in large print'],
  ['folded', 'half pages, to fold and staple'],
];
const HELD: readonly (readonly [Holds, string])[] = [
  ['all', 'words and charts'],
  ['words', 'words alone'],
  ['charts', 'charts alone'],
];

export function keepSheet(): HTMLElement {
  const button = (keep: Wanted, text: string): HTMLElement =>
    element('button', { type: 'button', class: 'plainer', 'data-keep': keep }, text);
  const keep = sheet(
    'downloads',
    'To print and keep',
    element(
      'div',
      { class: 'own' },
      element(
        'div',
        { class: 'fields' },
        choose('keep-form', 'A booklet of', FORMS),
        choose('keep-holds', 'With', HELD),
        choose('keep-ink', 'In', [
          ['full', 'its inks and pictures'],
          ['low', 'black, to save ink'],
        ]),
      ),
    ),
    element(
      'div',
      { class: 'buttons' },
      button('A4', 'Booklet on A4 paper (PDF)'),
      button('Letter', 'Booklet on US Letter paper (PDF)'),
      button('print', 'Print this page'),
    ),
    element('p', { class: 'quiet', role: 'status', id: 'own-kept' }),
    element(
      'p',
      { class: 'quiet' },
      'The address of this page holds what you filled in: keep it, or pass it on.',
    ),
  );
  keep.classList.add('downloads');
  return keep;
}

export function readEdition(): WantedEdition {
  return {
    form: FORMS.find(([form]) => form === chosen('keep-form'))?.[0] ?? 'flat',
    holds: HELD.find(([holds]) => holds === chosen('keep-holds'))?.[0] ?? 'all',
    lowInk: chosen('keep-ink') === 'low',
  };
}

function chosen(id: string): string {
  return document.querySelector<HTMLSelectElement>(`#${id}`)?.value ?? '';
}

function choose(id: string, label: string, choices: readonly (readonly [string, string])[]): HTMLElement {
  return element(
    'div',
    { class: 'field' },
    element('label', { for: id }, label),
    element('select', { id }, ...choices.map(([value, text]) => element('option', { value }, text))),
  );
}
