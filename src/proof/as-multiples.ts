/**
 * A pattern and the foundations its parts are proved to come out over in, the same pattern with those said as a multiple
 * out: `Ch 26` of rows that repeat every 6 stitches is worked over any multiple of 6 plus 2. For a size of a maker's own.
 */

import type { Line } from '../notation/line.ts';
import type { Multiple } from '../notation/num.ts';
import type { Part, Pattern } from '../pattern/pattern.ts';
import type { PartMultiple } from './part-multiple.ts';
import { foundationOf } from './trial.ts';

/**
 * Only where every part that begins on a chain is proved, and all over repeats of one width: parts that go together have to
 * grow together. What counts are stated are the designer's own sizes' and are left out.
 */
export function asMultiples(
  pattern: Pattern,
  multiples: readonly PartMultiple[],
  sizeIndex: number,
): Pattern {
  const uncounted = { ...pattern, parts: pattern.parts.map(withoutCounts) };
  const sizeName = pattern.sizes[sizeIndex]?.name ?? null;
  const based = pattern.parts.filter((part) => foundationOf(part) !== null);
  const [first] = based;
  if (first === undefined || pattern.parts.some(({ onto }) => onto !== null) || based.length > 1)
    return uncounted;
  const chain = foundationOf(first)?.chain;
  const found = multiples.find(
    ({ part, size }) => part === first.name && (size === null || size === sizeName),
  )?.found;
  if (chain === undefined || 'of' in chain.n || found?.proved !== true) return uncounted;
  // A chain that is only risen by, or that a triangle hangs from, makes nothing wider.
  if (found.stitches.of === 0) return uncounted;
  // One repeat is the narrowest that comes out.
  const narrowest = Math.ceil((found.from - found.plus) / found.of);
  const multiple: Multiple = {
    of: found.of,
    plus: found.plus + (narrowest - 1) * found.of,
    span: chain.n.span,
  };
  return {
    ...uncounted,
    parts: uncounted.parts.map((part) => (part.name === first.name ? over(part, multiple) : part)),
  };
}

function withoutCounts(part: Part): Part {
  const lines = part.instructions.lines.map((line): Line => ({ ...line, stated: null }));
  return { ...part, instructions: { lines } };
}

function over(part: Part, multiple: Multiple): Part {
  const foundation = foundationOf(part);
  if (foundation === null) return part;
  const lines = part.instructions.lines.map((line, at): Line => {
    if (at !== foundation.line) return line;
    const steps = line.steps.with(foundation.step, { ...foundation.chain, n: multiple });
    return { ...line, steps };
  });
  return { ...part, instructions: { lines } };
}
