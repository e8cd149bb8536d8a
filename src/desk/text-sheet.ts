/** A file's lines and what is told of them -> the text with its numbers, notes in the margin beside their lines, as HTML. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { escaped } from '../escaped.ts';
import { countWords, faultNote, sign, worstOf } from './fault-words.ts';
import { type LineMark, type ToldLine, toldLines } from './told-lines.ts';

/** Notes beyond this many stand in nobody's margin: a broken file has one cause. */
const MOST_NOTES = 300;
const MOST_LINKS = 12;

/** `mendable` where the text can be written in the page as well. */
export function textSheet(text: string, faults: readonly Diagnostic[], mendable = false): string {
  const lines = toldLines(text, faults.slice(0, MOST_NOTES));
  const kind = faults.length === 0 ? 'lines' : 'lines annotated';
  return `<ol class="${kind}">\n${lines.map((line) => lineMarkup(line, mendable)).join('\n')}\n</ol>`;
}

/** `2 errors and 1 note`, with ways to their lines. */
export function faultSummary(text: string, faults: readonly Diagnostic[]): string {
  const words = countWords(faults);
  const worst = worstOf(faults);
  if (words === null || worst === null)
    return `<p class="count-told sound"><span><strong>No faults.</strong> Every stitch of every size is accounted for.</span></p>`;
  const numbers = toldLines(text, faults.slice(0, MOST_NOTES)).flatMap((line) =>
    line.faults.length === 0 ? [] : [line.number],
  );
  const links = numbers
    .slice(0, MOST_LINKS)
    .map((number) => `<a href="#line-${number}">${number}</a>`)
    .join(', ');
  const more = numbers.length > MOST_LINKS ? ` and ${numbers.length - MOST_LINKS} more` : '';
  const unshown = faults.length > MOST_NOTES ? ` The first ${MOST_NOTES} are shown.` : '';
  return `<p class="count-told">${sign(worst)}<span><strong>${words}</strong>, ${numbers.length === 1 ? 'line' : 'lines'} ${links}${more}.${unshown}</span></p>`;
}

function lineMarkup({ number, text, marks, faults, pointers }: ToldLine, mendable: boolean): string {
  const worst = worstOf(faults);
  const told = [
    ...faults.map((fault) => faultNote(fault, mendable ? mendHere(number, marks) : '')),
    ...pointers.map(
      ({ text: words, severity, toLine }) =>
        `<p class="pointer">${sign(severity)}${escaped(words)} (<a href="#line-${toLine}">line ${toLine}</a>)</p>`,
    ),
  ];
  const margin = told.length === 0 ? '' : `<div class="margin">${told.join('\n')}</div>`;
  return `<li id="line-${number}"${worst === null ? '' : ` class="${worst}"`}><span class="number">${number}</span><code>${marked(text, marks)}</code>${margin}</li>`;
}

/** Pressed, it shows the words in the field where they are written. Without its script it is not there. */
function mendHere(line: number, marks: readonly LineMark[]): string {
  const { start, end } = marks[0]?.span ?? { start: 0, end: 0 };
  return `<p class="mend"><button type="button" class="plainer" data-line="${line}" data-from="${start}" data-to="${end}">Mend it here</button></p>`;
}

function marked(text: string, marks: readonly LineMark[]): string {
  let at = 0;
  const pieces: string[] = [];
  for (const { span, severity } of marks) {
    pieces.push(escaped(text.slice(at, span.start)));
    pieces.push(`<mark class="${severity}">${escaped(text.slice(span.start, span.end))}</mark>`);
    at = span.end;
  }
  return [...pieces, escaped(text.slice(at))].join('');
}
