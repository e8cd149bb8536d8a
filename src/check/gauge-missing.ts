/** Finished sizes without a gauge cannot be held to. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { type Publication, placeOf } from './publication.ts';

export function gaugeMissing({ pattern }: Publication): Diagnostic[] {
  // A pasted text may tell its gauge in words that were not read into figures, and are kept among the notes.
  // One in repeats of unknown width is told by itself.
  if (pattern.places.has('gauge.repeats')) return [];
  if (pattern.gauge !== null || pattern.notes.some((note) => GAUGE.test(note))) return [];
  const stated = pattern.sizes.findIndex(({ widthMm, heightMm }) => widthMm !== null || heightMm !== null);
  if (stated === -1) return sizeInWords(pattern);
  const side = pattern.sizes[stated]?.widthMm === null ? 'height' : 'width';
  const span = placeOf(pattern, `sizes.${stated}.${side}`, `sizes.${stated}`);
  return [diagnose('gauge/missing', { file: pattern.source.file, span }, {})];
}

/** Said by its name, or as so many rows to a measure. */
const GAUGE = /\b(?:gauge|tension)\b|\b(?:rows?|rnds?|rounds?)\b.*(?:=|\bto\b|\bover\b|\bmeasures?\b).*\d/i;

/** `The coaster is around 4 and a half inches across`. */
const FINISHED =
  /\b(?:is|are|measures?|comes out|finished size)\b[^.]*\d[^.]*?(?:["”]|\b(?:inch(?:es)?|in|cm)\b) (?:across|wide|square|in diameter)\b/i;

/** Of a motif made many times over the measure is a gauge. */
const OF_MOTIF = /\b(?:one|each|every|per|motif|square measures|rows?|rnds?|rounds?)\b/i;

/** A finished size that is told among the notes and not listed. */
function sizeInWords(pattern: Pattern): Diagnostic[] {
  const told = (['notes', 'notions'] as const).flatMap((key) =>
    pattern[key].map((words, i) => ({ key, words, i })),
  );
  const found = told.find(
    ({ words }) => FINISHED.test(words) && !OF_MOTIF.test(FINISHED.exec(words)?.[0] ?? ''),
  );
  if (found === undefined || GAUGE.test(pattern.source.text)) return [];
  const span = placeOf(pattern, `${found.key}.${found.i}`, found.key);
  return [diagnose('gauge/missing', { file: pattern.source.file, span }, {})];
}
