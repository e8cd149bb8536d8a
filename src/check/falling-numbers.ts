/**
 * A list of numbers that goes up and down from size to size where every other list rises.
 *
 * Shaping and short rows fall with good reason, so only a foundation chain or a stated count is doubted, only where all
 * other lists of the pattern rise, and not where what is measured has shown the order of the sizes to be wrong.
 */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { fallingSizes } from './falling-sizes.ts';
import { type NumberList, numberLists } from './numbers-in.ts';
import type { Publication } from './publication.ts';

/** With fewer sizes there is no up and down. */
const FEWEST_SIZES = 3;

export function fallingNumbers(publication: Publication): Diagnostic[] {
  const { pattern } = publication;
  const { source, sizes } = pattern;
  if (sizes.length < FEWEST_SIZES) return [];
  const lists = pattern.parts.flatMap(({ instructions }) => numberLists(instructions.lines, sizes.length));
  const falling = lists.filter(({ n }) => !rises(n.values));
  const [doubted] = falling;
  const others = lists.length - falling.length;
  if (doubted === undefined || falling.length > 1 || others === 0) return [];
  if (doubted.of === 'other' || !zigzags(doubted.n.values)) return [];
  if (fallingSizes(publication).length > 0) return [];
  const { span } = doubted.n;
  const facts = { numbers: source.text.slice(span.start, span.end), others };
  return [diagnose('size/numbers-fall', { file: source.file, span }, facts)];
}

type Values = NumberList['n']['values'];

/** Never less than the one before. */
function rises(values: Values): boolean {
  return values.every((value, i) => i === 0 || (value ?? 0) >= (values[i - 1] ?? 0));
}

/** Up somewhere and down somewhere: a list that only falls does so on purpose. */
function zigzags(values: Values): boolean {
  const steps = values.slice(1).map((value, i) => (value ?? 0) - (values[i] ?? 0));
  return steps.some((step) => step > 0) && steps.some((step) => step < 0);
}
