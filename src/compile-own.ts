/** A pattern and what one maker asks of it in, the pattern in a size of her own out. It runs in a browser as well. */

import { withOwnEdging } from './check/own-edging.ts';
import { compileRead } from './compile-read.ts';
import type { CompiledPattern } from './compiled.ts';
import type { Fabric } from './fabric/fabric.ts';
import { edgeSides } from './measure/edge-sides.ts';
import { asksSize, type OwnSize, withOwnSize } from './pattern/own-size.ts';
import type { Pattern } from './pattern/pattern.ts';
import { firstMultiple } from './pattern/pattern-repeat.ts';
import { asMultiples } from './proof/as-multiples.ts';
import { asOpen } from './proof/as-open.ts';
import { foundationOf } from './proof/trial.ts';

/** The same pattern in one size of a maker's own. Yarn goes by what is known of the designer's, at the maker's gauge. */
export function compileOwnSize(compiled: CompiledPattern, own: OwnSize): CompiledPattern {
  const { pattern, slug, scaleOf } = compiled;
  if (pattern === null) return compiled;
  const compile = (asked: Pattern): CompiledPattern =>
    compileRead({ pattern: asked, diagnostics: [] }, slug, { only: own.from, scaleOf });
  const asked = ownPattern(compiled, pattern, own);
  const made = compile(asked);
  const [before, after] = [compiled.sizes[own.from]?.fabric, made.sizes[0]?.fabric];
  if (before === undefined || after === undefined || !asksSize(own)) return made;
  const edgings = withOwnEdging(asked, own.from, edgeSides(pattern, before), edgeSides(asked, after));
  let fitted: CompiledPattern | null = null;
  for (const edged of edgings) {
    const tried = compile(edged);
    fitted ??= tried;
    if (!tried.diagnostics.some(({ severity }) => severity === 'error')) return tried;
  }
  return fitted ?? made;
}

/** The pattern as it is written for a maker's own size: over a multiple wherever that is proved. */
export function ownPattern({ multiples, sizes }: CompiledPattern, pattern: Pattern, own: OwnSize): Pattern {
  const fabric = sizes[own.from]?.fabric;
  if (!asksSize(own) || fabric === undefined) return withOwnSize(pattern, own);
  const wide = asMultiples(pattern, multiples, own.from);
  // What is asked across only is as high as it was, and the other way about.
  const high = own.heightMm !== null || own.rows !== null ? asOpen(wide, own.from, fabric) : wide;
  return withOwnSize(high, keeping(own, pattern, wide, fabric));
}

/** A foundation made a multiple, which the maker does not ask about, keeps the chains it had. */
function keeping(own: OwnSize, pattern: Pattern, wide: Pattern, fabric: Fabric): OwnSize {
  const multiple = firstMultiple(wide);
  if (own.widthMm !== null || own.repeats !== null || multiple === null || firstMultiple(pattern) !== null)
    return own;
  const part = pattern.parts.findIndex((one) => foundationOf(one) !== null);
  const { first = 0, end = 0 } = fabric.rows[fabric.parts[part]?.firstRow ?? 0] ?? {};
  const chains = end - first;
  return { ...own, repeats: Math.max(1, Math.round((chains - multiple.plus) / multiple.of)) };
}
