/** One worked size -> how its rows come to their numbers, as a table in HTML: what `check --explain` says in a terminal. */

import type { CompiledSize } from '../compiled.ts';
import { escaped } from '../escaped.ts';
import type { ExplainedRow } from '../row-table/explain-rows.ts';
import { explainRows } from '../row-table/explain-rows.ts';
import { foldRows } from '../row-table/fold-rows.ts';
import { howWords, leftWords, madeWords, takenWords } from '../row-table/place-figures.ts';
import { type LineMap, lineMap, placeOf } from '../source/line-map.ts';
import type { Terms } from '../stitches/stitch-row.ts';

export function rowSheet(size: CompiledSize, terms: Terms, text: string): string {
  const map = lineMap(text);
  const folded = foldRows(explainRows(size, terms));
  const several = new Set(folded.map(({ row }) => row.part)).size > 1;
  let part: string | null = null;
  const rows = folded.flatMap(({ label, row, as, level }) => {
    const head =
      several && row.part !== part
        ? [`<tr><th class="part-name" colspan="5" scope="colgroup">${escaped(row.part)}</th></tr>`]
        : [];
    part = row.part;
    const cells = [
      `<td class="written">${as === null ? written(row, map) : ''}</td>`,
      `<td>${level ? listed([...takenWords(row.takes), ...leftWords(row)]) : ''}</td>`,
      `<td class="figure">${level ? listed(madeWords(row)) : ''}</td>`,
      `<td class="sum">${as === null ? sums(row) : `as ${escaped(as)}`}</td>`,
    ];
    const broken = row.account.broken || row.account.faults.length > 0;
    return [
      ...head,
      `<tr${broken ? ' class="broken"' : ''}><th scope="row">${rowLink(label, row, map)}</th>${cells.join('')}</tr>`,
    ];
  });
  return `<table class="figures">
<caption>Size ${escaped(size.size.name)}: what each row takes of the row below it, what it makes, and how it comes to that</caption>
<thead><tr><th scope="col">Row</th><th scope="col">As written</th><th scope="col">Worked into</th><th scope="col">Count</th><th scope="col">Sum</th></tr></thead>
<tbody>
${rows.join('\n')}
</tbody>
</table>`;
}

/** A row that nobody wrote has no line to go to. */
function rowLink(label: string, { account }: ExplainedRow, map: LineMap): string {
  const name = label === '' ? 'Row without a number' : label;
  if (account.span.end <= account.span.start) return escaped(name);
  return `<a href="#line-${placeOf(map, account.span.start).line}">${escaped(name)}</a>`;
}

function written({ account: { span } }: ExplainedRow, { text }: LineMap): string {
  return escaped(text.slice(span.start, span.end).replace(/\s+/g, ' ').trim());
}

function sums(row: ExplainedRow): string {
  const { faults } = row.account;
  const words = howWords(row).map((one) =>
    faults.includes(one) ? `<strong>${escaped(one)}</strong>` : escaped(one),
  );
  return words.join('<br>');
}

function listed(words: readonly string[]): string {
  return words.map(escaped).join('<br>');
}
