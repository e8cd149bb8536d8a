/** The pattern's gauge in, the section that gives it and tells how to measure it out. */

import type { Gauge } from '../../pattern/pattern.ts';
import { printCm, printIn } from '../../units.ts';
import type { HouseWords } from '../house-words.ts';
import { paragraphs, plain } from '../section.ts';
import type { Setting } from '../set-text.ts';
import type { Strip } from '../strip.ts';

export function gaugeSection(gauge: Gauge | null, words: HouseWords, setting: Setting): Strip[] {
  if (!gauge) return [];
  const over = `${printCm(gauge.overMm)} (${printIn(gauge.overMm)})`;
  const rest = [gauge.of ? ` in ${gauge.of}` : '', gauge.after ? `, after ${gauge.after}` : ''].join('');
  const lead = {
    text: `${amount(gauge.stitches, 'stitch', 'stitches')} and ${amount(gauge.rows, 'row', 'rows')}`,
    face: 'text-bold' as const,
  };
  return paragraphs([[lead, ...plain(` to ${over}${rest}.`)], plain(words.howToMeasure)], setting);
}

function amount(n: number, one: string, many: string): string {
  return `${n}\u00a0${n === 1 ? one : many}`;
}
