/** Yarns and what each size takes of them in, tables out: one of the yarns, and with several sizes one of the lengths. */

import { takenM, type YarnUse } from '../../measure/measures.ts';
import { yarnWeight } from '../../measure/yarn-weights.ts';
import type { Yarn } from '../../pattern/pattern.ts';
import type { Shape } from '../../scene/scene.ts';
import type { Terms } from '../../stitches/stitch-row.ts';
import { printG, printM, printYd } from '../../units.ts';
import { type BookletInput, termsOf } from '../booklet-input.ts';
import { HOUSE_WORDS } from '../house-words.ts';
import { QUIET, RULE } from '../page-grid.ts';
import { paragraphs, plain } from '../section.ts';
import { mainColumn, type Setting } from '../set-text.ts';
import { type Strip, withSpaceBefore } from '../strip.ts';
import { type Cell, type Column, table } from '../table.ts';

const UNKNOWN = '–';

/** Room for a length in metres and yards; with more yarns than have it side by side there are several tables. */
const LENGTH_MM = 24;

export function yarnTables(input: BookletInput, setting: Setting): Strip[] {
  if (input.pattern.yarns.length === 0) return [];
  const yarns = setting.grid.oneColumn ? yarnList(input, setting) : yarnTable(input, setting);
  const bySize = input.sizes.length > 1 ? yarnBySize(input, setting) : [];
  return [...yarns, ...bySize];
}

/** In one column, large: a paragraph a yarn. */
function yarnList(input: BookletInput, setting: Setting): Strip[] {
  const columns = yarnColumns(input);
  return paragraphs(
    input.pattern.yarns.map((yarn) => [
      { text: `${yarn.letter} `, face: 'text-bold' as const },
      ...plain(yarn.colour),
      ...columns.slice(1).flatMap((column) => {
        const found = column.cell(yarn);
        return found === null
          ? []
          : [...plain(column.inWords === '' ? '; ' : `; ${column.inWords} `), ...found.runs];
      }),
      ...plain('.'),
    ]),
    setting,
  );
}

/** A column is left out when nothing is known for it. */
function yarnTable(input: BookletInput, setting: Setting): Strip[] {
  const known = yarnColumns(input).filter((column) =>
    input.pattern.yarns.some((yarn) => column.cell(yarn) !== null),
  );
  const rows = input.pattern.yarns.map((yarn) => known.map((column) => column.cell(yarn) ?? cell(UNKNOWN)));
  return table(known, rows, mainColumn(setting), setting);
}

interface YarnColumn extends Column {
  readonly cell: (yarn: Yarn) => Cell | null;
  /** What stands before the cell in a sentence. */
  readonly inWords: string;
}

function yarnColumns(input: BookletInput): readonly YarnColumn[] {
  const terms = termsOf(input.words);
  const used = input.sizes.length === 1 ? (input.sizes[0]?.yarn ?? []) : [];
  const useOf = ({ letter }: Yarn): YarnUse | undefined => used.find((use) => use.letter === letter);
  return [
    { head: HOUSE_WORDS[terms].colour, align: 'start', cell: colour, inWords: '' },
    {
      head: 'Yarn',
      align: 'start',
      inWords: '',
      cell: (yarn) => cell([printWeight(yarn.weight, terms), yarn.fibre].filter(Boolean).join(', ')),
    },
    { head: 'A ball', align: 'start', cell: ball, inWords: 'a ball is' },
    { head: 'Takes', align: 'end', cell: (yarn) => takes(useOf(yarn)), inWords: 'takes' },
    { head: 'Buy', align: 'end', cell: (yarn) => buy(useOf(yarn)), inWords: 'buy' },
  ];
}

function yarnBySize(input: BookletInput, setting: Setting): Strip[] {
  if (!input.sizes.some((size) => size.yarn.length > 0)) return [];
  const letters = input.pattern.yarns.map(({ letter }) => letter);
  const atOnce = Math.max(1, Math.floor(setting.grid.mainWidthMm / (LENGTH_MM * setting.grid.drawn)) - 1);
  return Array.from({ length: Math.ceil(letters.length / atOnce) }, (_, index) =>
    withSpaceBefore(
      yarnsBySize(letters.slice(index * atOnce, (index + 1) * atOnce), input, setting),
      setting.grid.gap.part,
    ),
  ).flat();
}

function yarnsBySize(letters: readonly string[], input: BookletInput, setting: Setting): Strip[] {
  const columns: Column[] = [
    { head: 'Size', align: 'start' },
    ...letters.map((letter) => ({ head: letter, align: 'end' as const })),
  ];
  const rows = input.sizes.map((size): Cell[] => [
    { runs: [{ text: size.name, face: 'text-bold' }] },
    ...letters.map((letter) => takes(size.yarn.find((use) => use.letter === letter)) ?? cell(UNKNOWN)),
  ]);
  return table(columns, rows, mainColumn(setting), setting);
}

function cell(text: string): Cell {
  return { runs: plain(text) };
}

/** A small dot in the yarn's colour, outlined so that pale ones show, then letter and name. */
function colour(yarn: Yarn): Cell {
  const runs = [{ text: `${yarn.letter} `, face: 'text-bold' as const }, ...plain(yarn.colour)];
  if (!isColour(yarn.hex)) return { runs };
  const mark: Shape = {
    kind: 'circle',
    x: 1.6,
    y: 2.65,
    r: 1.5,
    stroke: { ink: QUIET, widthMm: RULE.hairMm },
    fill: yarn.hex,
  };
  return { runs, mark, markWidthMm: 4.8 };
}

function isColour(hex: string | null): hex is `#${string}` {
  return hex?.startsWith('#') ?? false;
}

/** `Medium (4)` for US readers, `Aran (4)` for UK ones. */
export function printWeight(number: number, terms: Terms): string {
  const weight = yarnWeight(number);
  const name = (terms === 'US' ? weight?.name : weight?.ukName) ?? 'Weight';
  return `${name.charAt(0).toUpperCase()}${name.slice(1)} (${number})`;
}

function ball(yarn: Yarn): Cell | null {
  const parts = [
    yarn.ballMassG === null ? null : printG(yarn.ballMassG),
    yarn.ballLengthM === null ? null : printM(yarn.ballLengthM),
  ].filter((part) => part !== null);
  return parts.length > 0 ? cell(parts.map(unbroken).join(', ')) : null;
}

function takes(use: YarnUse | undefined): Cell | null {
  return use ? cell(`${unbroken(printM(takenM(use)))} (${unbroken(printYd(takenM(use)))})`) : null;
}

/** A number and its unit stay on one line. */
function unbroken(measure: string): string {
  return measure.replaceAll(' ', '\u00a0');
}

function buy(use: YarnUse | undefined): Cell | null {
  return use?.balls ? cell(`${use.balls}\u00a0${use.balls === 1 ? 'ball' : 'balls'}`) : null;
}
