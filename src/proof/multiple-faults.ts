/** What was found of each part's foundation in, the claims that do not hold out, as faults. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { MultipleFound } from './find-multiple.ts';
import type { PartMultiple, PlannedSize } from './part-multiple.ts';
import { partMultiples } from './part-multiple.ts';

/** What a pattern says of its width, in the foundation or in its notes, and does not keep. */
export function checkMultiples(pattern: Pattern, sizes: readonly PlannedSize[]): Diagnostic[] {
  // With several pieces it cannot be told of which the notes speak.
  const single = pattern.parts.filter(({ onto }) => onto === null).length === 1;
  const inNotes = single && pattern.notes.some((note) => note.search(IN_NOTES) >= 0);
  const multiples = partMultiples(pattern, sizes, inNotes);
  const faults = claimFaults(pattern, multiples);
  // Where the foundation itself is wrong, the notes say the same over again.
  return faults.length > 0 || !inNotes ? faults : noteFaults(pattern, multiples);
}

function claimFaults(pattern: Pattern, multiples: readonly PartMultiple[]): Diagnostic[] {
  const { file } = pattern.source;
  return multiples.flatMap(({ size, claimed, broken, found }) => {
    if (claimed === null || broken === null) return [];
    const { repeats, chains, fault } = broken;
    const labels = [{ span: fault.span, text: `over ${chains} chains it does not come out here` }];
    const facts = { claimed, repeats, chains, trouble: fault.message, holds: found };
    return [
      diagnose(
        'multiple/claim',
        { file, span: claimed.span, labels, sizes: size === null ? [] : [size] },
        facts,
      ),
    ];
  });
}

/** `Multiple of 6 sts + 2`, `multiple of 4 + 3 (add 1 for base ch)`, `Pattern multiple: 6 sts + 1`, as notes say it. */
const IN_NOTES =
  /\bmultiples?(?: of|:) (\d+)(?:\s*(?:stitches|sts?|chains?|chs?)\b\.?)?(?:\s*(?:plus|\+|and|(?:,\s*|and\s+)?(?:then\s+)?add(?:ing)?(?=\s+\d+(?!\s+(?:more\s+|ch(?:ain)?s?\s+)?(?:for|to)\b)))\s*(\d+))?(?:\s*(?:stitches|sts?)\b\.?)?(?:[\s,;(]*(?:plus|add|and|with)\s+(\d+|one|two|three)(?: more| ch(?:ain)?s?)*\s+(?:for|to)\b)?/gi;

const WORDS: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3 };

/**
 * Notes may count the chains or the stitches of the first row, and need not say which: a claim holds when either does.
 * With several parts that have a multiple it cannot be told which is meant.
 */
function noteFaults(pattern: Pattern, multiples: readonly PartMultiple[]): Diagnostic[] {
  const known = multiples.flatMap(({ found }) => (found === null || !found.proved ? [] : [found]));
  const [found, second] = known;
  if (found === undefined || second !== undefined) return [];
  return pattern.notes.flatMap((note, i) =>
    [...note.matchAll(IN_NOTES)].flatMap(([, of, plus, base]) => {
      const claimed = { of: Number(of), plus: Number(plus ?? 0) };
      const forBase = base === undefined ? null : (WORDS[base] ?? Number(base));
      if (claimed.of < 1 || holds(claimed, forBase, found)) return [];
      const span = pattern.places.get(`notes.${i}`) ?? pattern.places.get('notes') ?? { start: 0, end: 0 };
      return [diagnose('multiple/note', { file: pattern.source.file, span }, { claimed, holds: found })];
    }),
  );
}

/** With chains added "for the base" it is the chains that have to agree; else the chains or the stitches. */
function holds(claimed: PlusMultiple, forBase: number | null, found: MultipleFound): boolean {
  if (forBase !== null) return agrees({ ...claimed, plus: claimed.plus + forBase }, found);
  return agrees(claimed, found) || agrees(claimed, found.stitches);
}

function agrees(claimed: PlusMultiple, { of, plus }: PlusMultiple): boolean {
  return of > 0 && claimed.of % of === 0 && (claimed.plus - plus) % of === 0;
}

interface PlusMultiple {
  readonly of: number;
  readonly plus: number;
}
