/** `Ch 1, ch 1, sc in …`: the same chain twice over at the start of a row is most likely written once too often. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Step } from '../notation/tree.ts';
import type { Publication } from './publication.ts';

export function doubledChains({ pattern }: Publication): Diagnostic[] {
  return pattern.parts.flatMap(({ instructions }) =>
    instructions.lines.flatMap(({ steps }) => {
      const [first, second] = steps.filter(({ kind }) => kind !== 'note' && kind !== 'yarn');
      if (first === undefined || second === undefined || !isSameChain(first, second)) return [];
      const where = { file: pattern.source.file, span: second.span };
      return [diagnose('chain/twice', where, {})];
    }),
  );
}

/** `Ch 3 (counts as dc), ch 2` is a stitch and a space; so is any chain that is said to count. */
function isSameChain(first: Step, second: Step): boolean {
  if (first.kind !== 'chain' || second.kind !== 'chain' || first.counts !== null) return false;
  if ('of' in first.n || 'of' in second.n) return false;
  return first.n.values.join() === second.n.values.join();
}
