/**
 * What a size's page sets with `layouts/parts/sections.njk`, set by a script: the same elements with the same classes. A
 * test holds both against each other.
 */

import type { Fact, Glossary, Materials, PartText, RowLine } from '../site/page-data.ts';
import { drawing, element } from './markup.ts';

export function factList(facts: readonly Fact[]): HTMLElement {
  return element(
    'dl',
    { class: 'facts' },
    ...facts.map(({ name, value }) => element('div', {}, element('dt', {}, name), element('dd', {}, value))),
  );
}

/** A section with its heading in the margin. */
export function sheet(id: string, heading: string, ...inside: (Node | null)[]): HTMLElement {
  return element(
    'section',
    { class: 'sheet', 'aria-labelledby': id },
    element('h2', { id }, heading),
    element('div', { class: 'body' }, ...inside),
  );
}

export function materialsSheet({ yarns, tools, yarnNote, gauge }: Materials, terms: string): HTMLElement {
  const yarnList = yarns.map(({ letter, text, amount, swatch }) =>
    element(
      'li',
      {},
      swatch === null ? null : drawing(swatch),
      element('span', { class: 'letter' }, letter),
      element(
        'span',
        { class: 'yarn' },
        text,
        ...(amount === null ? [] : [' ', element('strong', { class: 'amount' }, amount)]),
      ),
    ),
  );
  return sheet(
    'materials',
    'Materials',
    ...(yarns.length === 0
      ? []
      : [
          element('h3', {}, 'Yarn'),
          element('ul', { class: 'yarns' }, ...yarnList),
          yarnNote === null ? null : element('p', { class: 'quiet' }, yarnNote),
        ]),
    ...(tools.length === 0 ? [] : [element('h3', {}, 'Hook and notions'), plainList(tools)]),
    ...(gauge === null
      ? []
      : [element('h3', { id: 'gauge' }, terms === 'UK' ? 'Tension' : 'Gauge'), element('p', {}, gauge)]),
  );
}

export function glossarySheets({ abbreviations, specials }: Glossary, terms: string): HTMLElement[] {
  return [
    ...(abbreviations.length === 0
      ? []
      : [
          sheet(
            'abbreviations',
            'Abbreviations',
            element('p', {}, `${terms} terms.`),
            defined(
              'abbreviations',
              abbreviations.map(({ abbr, meaning }) => [abbr, meaning]),
            ),
          ),
        ]),
    ...(specials.length === 0
      ? []
      : [
          sheet(
            'special-stitches',
            'Special stitches',
            defined(
              'specials',
              specials.map(({ name, how }) => [name, how]),
            ),
          ),
        ]),
  ];
}

/** Null when there is nothing to list. */
export function listedSheet(id: string, heading: string, lines: readonly string[]): HTMLElement | null {
  const [only, more] = lines;
  if (only === undefined) return null;
  return sheet(id, heading, more === undefined ? element('p', {}, only) : plainList(lines));
}

/** `chartOf` gives the place that a part's chart is drawn into once it is there; null where there is none. */
export function partSection(part: Omit<PartText, 'chart'>, chart: HTMLElement | null): HTMLElement {
  return element(
    'section',
    { class: chart === null ? 'part' : 'part with-chart', 'aria-labelledby': part.id },
    element(
      'div',
      { class: 'part-head' },
      element('h3', { id: part.id }, part.name),
      part.make === null ? null : element('p', { class: 'make' }, part.make),
    ),
    chart,
    element('ol', { class: 'rows ticked', id: `${part.id}-rows` }, ...part.lines.map(rowItem)),
  );
}

function watchItem({ text, href, time }: RowLine['watch'][number]): HTMLElement {
  return element(
    'p',
    { class: 'watch' },
    element('a', { href, rel: 'noreferrer' }, text),
    ' ',
    element('span', { class: 'clock' }, time),
  );
}

function rowItem({ id, label, words, meanings, count, watch }: RowLine): HTMLElement {
  const counted = count === null ? [] : [' ', element('strong', { class: 'count' }, count)];
  const tick = element('input', { type: 'checkbox' });
  return label === null
    ? element(
        'li',
        { id },
        element(
          'label',
          { class: 'tick sentence' },
          tick,
          ' ',
          element('span', {}, drawing(words), ...counted),
        ),
        ...watch.map(watchItem),
        meaningsOf(meanings, label),
      )
    : element(
        'li',
        { id },
        element('label', { class: 'tick' }, tick, ' ', element('span', { class: 'label' }, label)),
        element('p', {}, drawing(words), ...counted),
        ...watch.map(watchItem),
        meaningsOf(meanings, label),
      );
}

function meaningsOf(meanings: RowLine['meanings'], label: string | null): HTMLElement | null {
  if (meanings.length === 0) return null;
  return element(
    'details',
    { class: 'meanings' },
    element(
      'summary',
      {},
      element('span', { 'aria-hidden': 'true' }, '?'),
      element('span', { class: 'unseen' }, `What stands in ${label ?? 'this line'}`),
    ),
    element(
      'dl',
      {},
      ...meanings.map(({ word, meaning }) =>
        element('div', {}, element('dt', {}, word), element('dd', {}, meaning)),
      ),
    ),
  );
}

function plainList(lines: readonly string[]): HTMLElement {
  return element('ul', { class: 'plain' }, ...lines.map((line) => element('li', {}, line)));
}

function defined(className: string, entries: readonly (readonly [string, string])[]): HTMLElement {
  return element(
    'dl',
    { class: className },
    ...entries.map(([name, meaning]) =>
      element('div', {}, element('dt', {}, name), element('dd', {}, meaning)),
    ),
  );
}
