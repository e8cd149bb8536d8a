/** Phrases between commas left out or written twice; joins and turns forgotten. */

import type { Edit } from './edit.ts';
import { found, type Stretch } from './stretch.ts';

const JOIN = /[,;] (?:join(?:ing)?\b|(?:sl st|ss) in (?:top of|first)\b)[^,;.(]*(?:\([^)]*\))?/gi;

export function seedPhrases(stretch: Stretch): Edit[] {
  const joins = found(stretch, JOIN).map(({ at, match }) => ({ start: at, end: at + match[0].length }));
  const turns = found(stretch, /, turn(?:ed)?\b/g).map(({ at, match }) => ({
    start: at,
    end: at + match[0].length,
  }));
  const phrases = phrasesOf(stretch).filter(
    ({ start, end }) => ![...joins, ...turns].some((other) => other.start < end && other.end > start),
  );
  return [
    ...joins.map((place) => ({ kind: 'a join dropped' as const, ...place, put: '' })),
    ...turns.map((place) => ({ kind: 'a turn dropped' as const, ...place, put: '' })),
    ...phrases.flatMap(({ start, end, phrase }) => [
      // With the comma behind it.
      { kind: 'a phrase dropped' as const, start, end, put: '' },
      { kind: 'a phrase doubled' as const, start: end, end, put: phrase },
    ]),
  ];
}

/** Stretches that end in a comma and have no bracket, asterisk or semicolon in them. */
function phrasesOf(stretch: Stretch): { start: number; end: number; phrase: string }[] {
  return found(stretch, /(?<=^[:\s]*|[,;*([]\s*)[^\s,;:*()[\].][^,;:*()[\].]*, (?=\S)/g).map(
    ({ at, match }) => ({
      start: at,
      end: at + match[0].length,
      phrase: match[0],
    }),
  );
}
