/** A pattern in, every mistake that is made in it out, in the order of the file. */

import type { Original } from '../collections.ts';
import type { Edit } from './edit.ts';
import { seedLabels } from './seed-labels.ts';
import { seedNumbers } from './seed-numbers.ts';
import { seedPhrases } from './seed-phrases.ts';
import { seedWords } from './seed-words.ts';
import { stretchOf } from './stretch.ts';

export interface SeededEdit extends Edit {
  /** Whether the line it stands in states a count. */
  readonly counted: boolean;
}

export function seedPattern({ text, lines, pattern }: Original): SeededEdit[] {
  return lines.flatMap((line) => {
    const stretch = stretchOf(line, text);
    const counted = line.stated !== null;
    return [
      ...seedLabels(stretch, text),
      ...seedNumbers(stretch),
      ...seedWords(stretch, pattern),
      ...seedPhrases(stretch),
    ]
      .sort((a, b) => a.start - b.start || a.end - b.end)
      .map((edit) => ({ ...edit, counted }));
  });
}
