/** What was found of each part's foundation in, the claims that do not hold out, as faults. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { SizePlan } from '../fabric/work.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { MultipleFound } from './find-multiple.ts';
import type { PartMultiple } from './part-multiple.ts';
import { partMultiples } from './part-multiple.ts';

/** What a pattern says of its width, in the foundation or in its notes, and does not keep. */
export function checkMultiples(pattern: Pattern, sizeIndex: number, plan: SizePlan): Diagnostic[] {
  const inNotes = pattern.notes.some((note) => note.search(IN_NOTES) >= 0);
  const multiples = partMultiples(pattern, sizeIndex, plan, inNotes);
  return [...claimFaults(pattern, multiples), ...(inNotes ? noteFaults(pattern, multiples) : [])];
}

function claimFaults(pattern: Pattern, multiples: readonly PartMultiple[]): Diagnostic[] {
  const { file } = pattern.source;
  return multiples.flatMap(({ claimed, broken, found }) => {
    if (claimed === null || broken === null) return [];
    const { repeats, chains, fault } = broken;
    const labels = [{ span: fault.span, text: `over ${chains} chains it does not come out here` }];
    const facts = { claimed, repeats, chains, trouble: fault.message, holds: found };
    return [diagnose('multiple/claim', { file, span: claimed.span, labels }, facts)];
  });
}

/** `Multiple of 6 sts + 2`, as notes say it. */
const IN_NOTES =
  /\bmultiples? of (\d+)(?:\s*(?:stitches|sts?|chains?|chs?)\b\.?)?(?:\s*(?:plus|\+|and)\s*(\d+))?/gi;

/**
 * Notes may count the chains or the stitches of the first row, and need not say which: a claim holds when either does.
 * With several parts that have a multiple it cannot be told which is meant.
 */
function noteFaults(pattern: Pattern, multiples: readonly PartMultiple[]): Diagnostic[] {
  const known = multiples.flatMap(({ found }) => (found === null || !found.proved ? [] : [found]));
  const [found, second] = known;
  if (found === undefined || second !== undefined) return [];
  return pattern.notes.flatMap((note, i) =>
    [...note.matchAll(IN_NOTES)].flatMap(([, of, plus]) => {
      const claimed = { of: Number(of), plus: Number(plus ?? 0) };
      if (claimed.of < 1 || holds(claimed, found)) return [];
      const span = pattern.places.get(`notes.${i}`) ?? pattern.places.get('notes') ?? { start: 0, end: 0 };
      return [diagnose('multiple/note', { file: pattern.source.file, span }, { claimed, holds: found })];
    }),
  );
}

function holds(claimed: { readonly of: number; readonly plus: number }, found: MultipleFound): boolean {
  return [found, found.stitches].some(
    ({ of, plus }) => of > 0 && claimed.of % of === 0 && (claimed.plus - plus) % of === 0,
  );
}
