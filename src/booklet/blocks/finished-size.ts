/** Sizes and their measures in, the finished-size section out: a line for one size, a table for several. */

import { inUnits, printFinishedSize } from '../../wording/finished-size.ts';
import type { BookletInput, BookletSize } from '../booklet-input.ts';
import { keepNumbersTogether } from '../no-break.ts';
import { paragraphs, plain } from '../section.ts';
import { mainColumn, type Setting } from '../set-text.ts';
import { type Strip, withSpaceBefore } from '../strip.ts';
import { table } from '../table.ts';

export function finishedSize(input: BookletInput, setting: Setting): Strip[] {
  const [first, ...more] = input.sizes;
  if (!first) return [];
  return more.length > 0 ? manySizes(input.sizes, setting) : oneSize(first, input, setting);
}

function oneSize(size: BookletSize, input: BookletInput, setting: Setting): Strip[] {
  const measures = printFinishedSize(size);
  const blocked = input.pattern.gauge?.after === 'blocking' ? ', after blocking' : '';
  const both = size.widthMm !== null && size.heightMm !== null && size.aroundMm === null;
  const order = both ? ', width by height' : '';
  const others = input.pattern.sizes.map(({ name }) => name).filter((name) => name !== size.name);
  const lines = [
    ...(measures
      ? [
          [
            { text: keepNumbersTogether(measures), face: 'text-bold' as const },
            ...plain(`${order}${blocked}.`),
          ],
        ]
      : []),
    ...(others.length > 0
      ? [plain(`This booklet is for size ${size.name}. The pattern also comes in ${listed(others)}.`)]
      : []),
  ];
  return paragraphs(lines, setting);
}

function manySizes(sizes: readonly BookletSize[], setting: Setting): Strip[] {
  const print = (mm: number | null): string => (mm === null ? '–' : inUnits(mm));
  const round = sizes.some(({ aroundMm }) => aroundMm !== null);
  const rows = sizes.map((size) => [
    { runs: [{ text: size.name, face: 'text-bold' as const }] },
    { runs: plain(print(size.widthMm)) },
    ...(round ? [{ runs: plain(print(size.aroundMm)) }] : []),
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
    { head: round ? 'Across' : 'Width', align: 'end' as const },
    ...(round ? [{ head: 'Around', align: 'end' as const }] : []),
    { head: 'Height', align: 'end' as const },
  ];
  return [
    ...lead,
    ...withSpaceBefore(table(columns, rows, mainColumn(setting), setting), setting.grid.gap.paragraph),
  ];
}

/** `small, medium and large`. */
function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}
