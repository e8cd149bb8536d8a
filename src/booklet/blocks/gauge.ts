/** The pattern's gauge in, the section that gives it and tells how to measure it out. */

import type { Gauge } from '../../pattern/pattern.ts';
import { printCm, printIn } from '../../units.ts';
import type { HouseWords } from '../house-words.ts';
import { paragraphs, plain } from '../section.ts';
import type { Setting } from '../set-text.ts';
import type { Strip } from '../strip.ts';

export function gaugeSection(gauge: Gauge | null, words: HouseWords, setting: Setting): Strip[] {
  if (!gauge) return [];
  const over = measured(gauge.overMm);
  const rest = [gauge.of ? ` in ${gauge.of}` : '', gauge.after ? `, after ${gauge.after}` : ''].join('');
  const counted = amount(gauge.stitches, 'stitch', 'stitches');
  const { repeats } = gauge;
  const stitches =
    repeats === undefined ? counted : `${amount(repeats, 'pattern repeat', 'pattern repeats')} (${counted})`;
  const rows = gauge.rows === null ? null : amount(gauge.rows, 'row', 'rows');
  const apart = rows !== null && gauge.upMm !== gauge.overMm;
  const lead = {
    text: rows === null || apart ? stitches : `${stitches} and ${rows}`,
    face: 'text-bold' as const,
  };
  const up = apart
    ? [...plain(' and '), { text: rows, face: 'text-bold' as const }, ...plain(` to ${measured(gauge.upMm)}`)]
    : [];
  const { before } = gauge;
  const first =
    before === null
      ? ''
      : ` Before that it is ${amount(before.stitches, 'stitch', 'stitches')} and ${amount(before.rows, 'row', 'rows')}.`;
  return paragraphs(
    [[lead, ...plain(` to ${over}`), ...up, ...plain(`${rest}.${first}`)], plain(words.howToMeasure)],
    setting,
  );
}

function measured(mm: number): string {
  return `${printCm(mm)} (${printIn(mm)})`;
}

function amount(n: number, one: string, many: string): string {
  return `${n}\u00a0${n === 1 ? one : many}`;
}
