/** A pattern, and what a size takes of it -> materials, gauge, cautions and the designer's own sentences for a page. */

import { materialsList, type Units } from '../measure/materials.ts';
import type { Measures } from '../measure/measures.ts';
import { cautionGroups } from '../pattern/cautions.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Materials } from './page-data.ts';
import { swatch } from './swatch.ts';

/** `size` null lists what holds for all sizes, without amounts. */
export function materials(
  pattern: Pattern,
  size: { readonly measures: Measures } | null,
  terms: 'US' | 'UK',
  units: Units = 'metric',
): Materials {
  const list = materialsList(pattern, size?.measures ?? null, terms, units);
  const colours = new Map(pattern.yarns.map(({ letter, hex }) => [letter, hex]));
  return {
    yarns: list.yarns.map((yarn) => ({ ...yarn, swatch: swatch(colours.get(yarn.letter) ?? null) })),
    tools: [...(list.hook === null ? [] : [list.hook]), ...list.notions],
    yarnNote: list.yarnNote,
    gauge: list.gauge,
  };
}

export interface PageCautions {
  /** What this thing or its yarn calls for: stands out before the rows. */
  readonly cautions: readonly string[];
  /** What holds for all crochet: said quietly at the end. */
  readonly safety: readonly string[];
}

export function pageCautions(pattern: Pattern): PageCautions {
  const groups = cautionGroups(
    pattern.uses,
    pattern.yarns.map(({ fibre }) => fibre),
  );
  const said = (general: boolean): string[] =>
    groups
      .filter(({ of }) => (of === 'general') === general)
      .flatMap(({ texts, localRules }) => [...texts, localRules]);
  return { cautions: said(false), safety: said(true) };
}
