/** A worked size -> what becomes of it, as HTML: its charts, its words in the terms chosen, the pages of its booklet. */

import type { CompiledSize } from '../compiled.ts';
import { escaped } from '../escaped.ts';
import { paintSvg } from '../paint/svg.ts';
import type { Scene } from '../scene/scene.ts';
import { DIALECTS, type DialectKey } from '../wording/words.ts';

/** Above this many stitches a chart takes longer to draw than a glance at it is worth. */
const LARGE_STITCHES = 12_000;

export function isLarge({ fabric }: CompiledSize): boolean {
  return fabric.rows.reduce((sum, { first, end }) => sum + end - first, 0) > LARGE_STITCHES;
}

export function chartSheet(size: CompiledSize, dialect: DialectKey): string {
  const charts = size.charts[DIALECTS[dialect].terms];
  const drawable = charts.every(({ scene }) => Number.isFinite(scene.widthMm * scene.heightMm));
  // Of a row that was begun and not finished nothing may stand.
  if (!drawable) throw new Error('a part of the chart has no size');
  if (charts.length === 0) return '<p class="quiet">No piece of it can be drawn as a chart.</p>';
  return charts
    .map(({ part, scene }, i) => {
      const drawn = paintSvg(scene, { idPrefix: `desk-chart-${i}` });
      return `<figure class="chart"><div class="drawing" tabindex="0" role="group" aria-label="Chart of ${escaped(part)}">${drawn}</div><figcaption>${escaped(part)}</figcaption></figure>`;
    })
    .join('\n');
}

export function wordSheet(size: CompiledSize, dialect: DialectKey): string {
  const { parts, abbreviations, specials } = size.words[dialect];
  const written = parts.map(({ name, make, lines }) => {
    const rows = lines.map(({ label, text, count }) => {
      const head = label === null ? '' : `<span class="label">${escaped(label)}:</span> `;
      const tail = count === null ? '' : ` <strong class="count">${escaped(count)}</strong>`;
      return `<li><p>${head}${escaped(text)}${tail}</p></li>`;
    });
    return `<h3>${escaped(name)}${make === null ? '' : ` <span class="quiet">${escaped(make)}</span>`}</h3>
<ol class="worded">${rows.join('\n')}</ol>`;
  });
  const explained = [
    ...abbreviations.map(({ abbr, meaning }) => [abbr, meaning] as const),
    ...specials.map(({ name, how }) => [name, how] as const),
  ].map(([term, meaning]) => `<div><dt>${escaped(term)}</dt><dd>${escaped(meaning)}</dd></div>`);
  const list = explained.length === 0 ? '' : `<dl class="abbreviations">${explained.join('\n')}</dl>`;
  return `${written.join('\n')}\n${list}`;
}

/** Every page as it will be printed. */
export function bookletSheet(pages: readonly Scene[], href: string): string {
  const set = pages.map((page, i) => {
    const drawn = paintSvg(page, { idPrefix: `desk-page-${i}`, colours: 'plain' });
    return `<li>${drawn}</li>`;
  });
  return `<p><a href="${escaped(href)}">Open the booklet as a PDF</a>, ${pages.length === 1 ? '1 page' : `${pages.length} pages`}.</p>
<ol class="leaves" tabindex="0" aria-label="Pages of the booklet">${set.join('\n')}</ol>`;
}
