/**
 * What notes and rows say of whether a chain counts, held against one another.
 *
 * A note speaks of a chain of some length ("Ch 3 counts as a dc throughout") or of all turning chains; a row of its
 * own, or "here and throughout". A note that names exceptions is let be, and a ch 1 that does not count is no
 * contradiction of "turning chains count": that of single crochet never does (common practice).
 */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { chainHabits, EXCEPTIONS, everyChainCounts } from '../fabric/notes-chains.ts';
import type { Step } from '../notation/tree.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Span } from '../source/span.ts';
import { notesOf } from './prose.ts';
import type { Publication } from './publication.ts';

interface Said {
  /** Length in chains; null for all turning chains. */
  readonly chains: number | null;
  readonly counts: boolean;
  /** Holds for other rows too. */
  readonly throughout: boolean;
  readonly span: Span;
}

export function chainsTwoWays({ pattern }: Publication): Diagnostic[] {
  const { file } = pattern.source;
  const inRows = pattern.parts.flatMap(({ instructions }) =>
    instructions.lines.flatMap(({ steps }) => saidIn(steps)),
  );
  const general = [...saidInNotes(pattern), ...inRows.filter(({ throughout }) => throughout)];
  return inRows.flatMap((row) => {
    const against = general.find((one) => one !== row && contradicts(one, row));
    // Of two that both say "throughout" the later is told.
    if (against === undefined || (row.throughout && against.span.start > row.span.start)) return [];
    const labels = [{ span: against.span, text: `here it ${against.counts ? 'counts' : 'does not count'}` }];
    const facts = { chain: `ch ${row.chains}`, counts: row.counts };
    return [diagnose('chain/two-ways', { file, span: row.span, labels }, facts)];
  });
}

function contradicts(general: Said, row: Said): boolean {
  if (general.counts === row.counts) return false;
  if (general.chains !== null) return general.chains === row.chains;
  return !(row.chains === 1 && !row.counts);
}

function saidInNotes(pattern: Pattern): Said[] {
  return notesOf(pattern).flatMap(({ text, span }) =>
    sentencesIn(text, span).flatMap((sentence): Said[] => {
      if (EXCEPTIONS.test(sentence.text)) return [];
      const lengths = [...chainHabits([sentence.text], pattern.terms)].map(([chains, { as }]) => ({
        chains,
        counts: as !== null,
        throughout: true,
        span: sentence.span,
      }));
      if (lengths.length > 0) return lengths;
      const counts = everyChainCounts(sentence.text);
      return counts === null ? [] : [{ chains: null, counts, throughout: true, span: sentence.span }];
    }),
  );
}

function sentencesIn(text: string, span: Span): { readonly text: string; readonly span: Span }[] {
  return [...text.matchAll(/[^.!?]+/g)].map((found) => {
    const start = span.start + found.index + (found[0].length - found[0].trimStart().length);
    const said = found[0].trim();
    return { text: said, span: { start, end: start + said.length } };
  });
}

/** Chains whose counting is said beside them; skipped foundation chains are another matter. */
function saidIn(steps: readonly Step[]): Said[] {
  return steps.flatMap((step) => {
    if ('body' in step) return saidIn(step.body);
    if (step.kind !== 'chain' || step.counts === null || !('values' in step.n)) return [];
    // `this time`: it is said to be an exception.
    if (step.counts.onlyHere === true) return [];
    const [chains] = step.n.values;
    if (chains == null || step.n.values.length > 1) return [];
    const { as, throughout } = step.counts;
    return [{ chains, counts: as !== null, throughout, span: step.span }];
  });
}
