/** Sizes and their measures in, the finished-size section out: a line for one size, a table for several. */

import { printCm, printIn } from '../../units.ts';
import type { BookletInput, BookletSize } from '../booklet-input.ts';
import { GAP } from '../page-grid.ts';
import { paragraphs, plain } from '../section.ts';
import { mainColumn, type Setting } from '../set-text.ts';
import { type Strip, withSpaceBefore } from '../strip.ts';
import { table } from '../table.ts';

/** `15 × 20 cm (6 × 8 in)`, one measure where only one is known, null for none. */
export function printSize({ widthMm, heightMm }: Pick<BookletSize, 'widthMm' | 'heightMm'>): string | null {
  const known = [widthMm, heightMm].filter((mm) => mm !== null);
  if (known.length === 0) return null;
  const across = (print: (mm: number) => string): string =>
    known
      .map(print)
      .join(' × ')
      .replace(/ (cm|in)(?= ×)/g, '');
  const only = known.length === 2 ? '' : widthMm === null ? ' high' : ' wide';
  return `${across(printCm)} (${across(printIn)})${only}`;
}

export function finishedSize(input: BookletInput, setting: Setting): Strip[] {
  const [first, ...more] = input.sizes;
  if (!first) return [];
  return more.length > 0 ? manySizes(input.sizes, setting) : oneSize(first, input, setting);
}

function oneSize(size: BookletSize, input: BookletInput, setting: Setting): Strip[] {
  const measures = printSize(size);
  const blocked = input.pattern.gauge?.after === 'blocking' ? ', after blocking' : '';
  const order = size.widthMm !== null && size.heightMm !== null ? ', width by height' : '';
  const others = input.pattern.sizes.map(({ name }) => name).filter((name) => name !== size.name);
  const lines = [
    ...(measures ? [[{ text: measures, face: 'text-bold' as const }, ...plain(`${order}${blocked}.`)]] : []),
    ...(others.length > 0
      ? [plain(`This booklet is for size ${size.name}. The pattern also comes in ${listed(others)}.`)]
      : []),
  ];
  return paragraphs(lines, setting);
}

function manySizes(sizes: readonly BookletSize[], setting: Setting): Strip[] {
  const print = (mm: number | null): string => (mm === null ? '–' : `${printCm(mm)} (${printIn(mm)})`);
  const rows = sizes.map((size) => [
    { runs: [{ text: size.name, face: 'text-bold' as const }] },
    { runs: plain(print(size.widthMm)) },
    { runs: plain(print(size.heightMm)) },
  ]);
  const lead = paragraphs(
    [
      plain(
        'Where sizes differ, the numbers stand in this order: the first size, then the others in brackets.',
      ),
    ],
    setting,
  );
  const columns = [
    { head: 'Size', align: 'start' as const },
    { head: 'Width', align: 'end' as const },
    { head: 'Height', align: 'end' as const },
  ];
  return [...lead, ...withSpaceBefore(table(columns, rows, mainColumn(setting), setting), GAP.paragraph)];
}

/** `small, medium and large`. */
function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}
