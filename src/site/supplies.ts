/** A pattern, and what a size takes of it -> materials, gauge, cautions and the designer's own sentences for a page. */

import type { CompiledSize } from '../compiled.ts';
import { materialsList } from '../measure/materials.ts';
import type { Measures } from '../measure/measures.ts';
import { cautionsFor } from '../pattern/cautions.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { ownWords } from '../wording/own-words.ts';
import { voiceOf } from '../wording/voice.ts';
import { DIALECTS, type DialectKey } from '../wording/words.ts';
import type { Materials } from './page-data.ts';
import { swatch } from './swatch.ts';

/** `size` null lists what holds for all sizes, without amounts. */
export function materials(pattern: Pattern, size: CompiledSize | null, terms: 'US' | 'UK'): Materials {
  const measures: Measures | null = size?.measures ?? null;
  const list = materialsList(pattern, measures, terms, 'metric');
  const colours = new Map(pattern.yarns.map(({ letter, hex }) => [letter, hex]));
  return {
    yarns: list.yarns.map((yarn) => ({ ...yarn, swatch: swatch(colours.get(yarn.letter) ?? null) })),
    tools: [...(list.hook === null ? [] : [list.hook]), ...list.notions],
    gauge: list.gauge,
  };
}

export function patternCautions(pattern: Pattern): readonly string[] {
  return cautionsFor(
    pattern.uses,
    pattern.yarns.map(({ fibre }) => fibre),
  );
}

/** Notes and finishing, in the terms of the page: a `dc` in a note is another stitch to half of the readers. */
export function ownSentences(pattern: Pattern, sentences: readonly string[], key: DialectKey): string[] {
  const voice = voiceOf(DIALECTS[key], 'all', pattern.specials, pattern.terms);
  return sentences.map((sentence) => ownWords(sentence, voice));
}
