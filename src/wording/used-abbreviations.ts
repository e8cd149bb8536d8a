/** The worded parts and special stitches of a pattern in, every abbreviation that stands in them out, with its meaning. */

import { ABBREVIATIONS, abbreviationTerms } from '../stitches/abbreviations.ts';
import { STITCHES, termsOf } from '../stitches/table.ts';
import { anyOf, wordFound } from './find-words.ts';
import type { Voice } from './voice.ts';
import type { WordedAbbreviation, WordedPart, WordedSpecial } from './words.ts';

/** Found by looking for each in the printed words, so that the list holds what a reader meets and nothing else. */
export function usedAbbreviations(
  parts: readonly WordedPart[],
  specials: readonly WordedSpecial[],
  voice: Voice,
): WordedAbbreviation[] {
  const meanings = meaningsIn(voice);
  // A special stitch has its own place; `beg cl` must not bring in `beg`.
  const names = [...voice.specials.values()];
  const used = new Set<string>();
  for (const found of printedText(parts, specials).matchAll(anyOf([...meanings.keys(), ...names]))) {
    const abbr = wordFound(found[0], meanings);
    if (abbr !== null && !names.includes(abbr)) used.add(abbr);
  }
  return [...used]
    .map((abbr) => ({ abbr, meaning: meanings.get(abbr) ?? '' }))
    .sort((a, b) => a.abbr.localeCompare(b.abbr, 'en'));
}

function meaningsIn(voice: Voice): ReadonlyMap<string, string> {
  const meanings = new Map<string, string>();
  for (const row of ABBREVIATIONS) {
    const { abbr, meaning } = abbreviationTerms(row, voice.terms);
    // One letter alone is a yarn of the pattern. "Miss" is UK for "sk", and no abbreviation in full words.
    const word = voice.form === 'full' && abbr === voice.phrases.skip;
    if (abbr.length > 1 && !word) meanings.set(abbr, meaning);
  }
  for (const row of STITCHES) {
    const { abbr, name } = termsOf(row, voice.terms);
    // `bullion` is a word that its name begins with, and says no more.
    if (!name.startsWith(`${abbr} `)) meanings.set(abbr, name);
  }
  return meanings;
}

function printedText(parts: readonly WordedPart[], specials: readonly WordedSpecial[]): string {
  const lines = parts.flatMap((part) =>
    part.lines.map((line) => `${line.label ?? ''}: ${line.text} (${line.count ?? ''})`),
  );
  return [...lines, ...specials.map((special) => special.how)].join('\n');
}
