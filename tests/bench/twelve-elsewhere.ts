/** The booklet of twelve pages for other typesetters: as HTML, and as ms macros. */

import type { BookletInput } from '../../src/booklet/booklet-input.ts';
import { paintSvg } from '../../src/paint/svg.ts';

/** Headings, paragraphs, tables and figures; charts as the same vectors. */
export function asHtml({ pattern, words, charts }: BookletInput, fontFile: string): string {
  const rows = words.parts.flatMap(({ name, lines }) => [
    `<h3>${escaped(name)}</h3>`,
    '<table>',
    ...lines.map(
      ({ label, text, count }) =>
        `<tr><th scope="row">${escaped(label ?? '')}</th><td>${escaped(text)}</td><td>${escaped(count ?? '')}</td></tr>`,
    ),
    '</table>',
  ]);
  const figures = charts.map(
    ({ part, scene }, index) =>
      `<h2>${escaped(part)}</h2><figure>${paintSvg(scene, { idPrefix: `chart${index}` })}</figure>`,
  );
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${escaped(pattern.title)}</title>
<style>
@font-face { font-family: Own; src: url("file://${fontFile}"); }
@page { size: A4; margin: 25mm 20mm; }
body { font: 10.5pt/15pt Own; } h2 { break-before: page; } th { text-align: left; vertical-align: top; } svg { width: 100%; }
</style></head><body>
<h1>${escaped(pattern.title)}</h1><p>${escaped(pattern.about)}</p>
<h2>Notes</h2>${pattern.notes.map((note) => `<p>${escaped(note)}</p>`).join('')}
<h2>Abbreviations</h2><dl>${words.abbreviations.map(({ abbr, meaning }) => `<dt>${escaped(abbr)}</dt><dd>${escaped(meaning)}</dd>`).join('')}</dl>
<h2>Instructions</h2>${rows.join('')}
${figures.join('')}
<h2>Finishing</h2>${pattern.finishing.map((step) => `<p>${escaped(step)}</p>`).join('')}
</body></html>`;
}

/** The words alone: what draws charts there is another language. */
export function asMs({ pattern, words }: BookletInput): string {
  const lines = words.parts.flatMap(({ lines: rows }) =>
    rows.map(({ label, text, count }) => `.LP\n\\fB${label ?? ''}\\fR ${text} \\fB${count ?? ''}\\fR`),
  );
  return ['.TL', pattern.title, ...pattern.notes.map((note) => `.LP\n${note}`), ...lines].join('\n');
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
