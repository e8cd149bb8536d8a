/** The designer's own sentences in, the same in the terms of a dialect out. */

import type { Change, Pattern } from '../pattern/pattern.ts';
import { ownWords } from './own-words.ts';
import { voiceOf } from './voice.ts';
import { DIALECTS, type DialectKey } from './words.ts';

export function ownSentences(pattern: Pattern, sentences: readonly string[], key: DialectKey): string[] {
  const voice = voiceOf(DIALECTS[key], 'all', pattern.specials, pattern.terms);
  return sentences.map((sentence) => ownWords(sentence, voice));
}

/** What changed, in the terms of a dialect. */
export function changesIn(pattern: Pattern, key: DialectKey): Change[] {
  const words = ownSentences(
    pattern,
    pattern.changes.map(({ what }) => what),
    key,
  );
  return pattern.changes.map((change, index) => ({ ...change, what: words[index] ?? change.what }));
}

/** A pattern whose notes, finishing, changes and gauge speak in the terms of a dialect, for what prints them as they stand. */
export function sentencesIn(pattern: Pattern, key: DialectKey): Pattern {
  const { gauge } = pattern;
  const of = gauge === null || gauge.of === null ? null : (ownSentences(pattern, [gauge.of], key)[0] ?? null);
  return {
    ...pattern,
    notes: ownSentences(pattern, pattern.notes, key),
    finishing: ownSentences(pattern, pattern.finishing, key),
    changes: changesIn(pattern, key),
    gauge: gauge === null ? null : { ...gauge, of },
  };
}
