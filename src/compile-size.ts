/** One size once worked -> everything known of it; measures, words, outlines and charts are made when they are first asked for. */

import { schematics } from './chart/schematic.ts';
import type { CompiledSize } from './compiled.ts';
import type { SizePlan, Worked } from './fabric/work.ts';
import { measure } from './measure/measure.ts';
import type { ScaleOf } from './measure/measures.ts';
import { once } from './once.ts';
import type { Pattern } from './pattern/pattern.ts';
import type { PartMultiple } from './proof/part-multiple.ts';
import { sizeCharts } from './size-charts.ts';
import { wordPattern } from './wording/word-pattern.ts';
import type { DialectKey, WordedPattern } from './wording/words.ts';

export function compiledSize(
  pattern: Pattern,
  index: number,
  slug: string,
  plan: SizePlan,
  worked: Worked,
  multiples: () => readonly PartMultiple[],
  scaleOf: () => ScaleOf,
): CompiledSize {
  const { fabric, accounts } = worked;
  const size = pattern.sizes[index];
  if (size === undefined) throw new Error(`no size ${index}`);
  const drawn = { pattern, sizeIndex: index, plan, worked, multiples };
  const measures = once(() => measure(pattern, fabric, scaleOf()));
  const outlined = once(() => schematics(pattern, fabric, pattern.title));
  return {
    size,
    slug,
    fabric,
    accounts,
    get measures() {
      return measures();
    },
    words: lazyWords((dialect) => wordPattern(pattern, fabric, dialect, index)),
    get schematics() {
      return outlined();
    },
    charts: sizeCharts(drawn, false),
    leftHandedCharts: sizeCharts(drawn, true),
  };
}

export function lazyWords(
  word: (dialect: DialectKey) => WordedPattern,
): Readonly<Record<DialectKey, WordedPattern>> {
  const us = once(() => word('us'));
  const uk = once(() => word('uk'));
  const usFull = once(() => word('us-full'));
  const ukFull = once(() => word('uk-full'));
  return {
    get us() {
      return us();
    },
    get uk() {
      return uk();
    },
    get 'us-full'() {
      return usFull();
    },
    get 'uk-full'() {
      return ukFull();
    },
  };
}
