/** A pattern as it was read in, everything known of each of its sizes out: worked, measured, checked; words and charts on demand. */

import { unprintableCharacters } from './booklet/unprintable.ts';
import { checkPublication } from './check/check-publication.ts';
import { mergeRepeated } from './check/merge-repeated.ts';
import { mergeSizes } from './check/merge-sizes.ts';
import { planSize } from './check/plan-size.ts';
import type { WorkedSize } from './check/publication.ts';
import { silence } from './check/silence.ts';
import { compiledSize, lazyWords } from './compile-size.ts';
import type { CompiledPattern, CompiledSize } from './compiled.ts';
import { diagnose } from './diagnostics/catalogue.ts';
import type { Diagnostic } from './diagnostics/diagnostic.ts';
import { inFileOrder } from './diagnostics/order.ts';
import { workSize } from './fabric/work.ts';
import type { ScaleOf } from './measure/measures.ts';
import { byFigures, yarnScales } from './measure/yarn-scale.ts';
import { once } from './once.ts';
import { NOBODY_LOOKED, type PhotographLooks, seenPhotographs } from './pattern/photograph.ts';
import type { ReadPattern } from './pattern/read-pattern.ts';
import { sizeSlugs } from './pattern/size-slugs.ts';
import { checkMultiples } from './proof/multiple-faults.ts';
import { type PlannedSize, partMultiples } from './proof/part-multiple.ts';
import { roundGrowths } from './proof/round-growth.ts';
import { wordPattern } from './wording/word-pattern.ts';

/** Stitches and steps that all sizes together may come to; each size has a limit of its own. */
const MOST_EFFORT = 2_000_000;

export interface Wish {
  readonly toTell?: (found: readonly Diagnostic[]) => readonly Diagnostic[];
  /** The only size to work. */
  readonly only?: number;
  /** What was found on the disk of the photographs it names. */
  readonly looks?: PhotographLooks;
  /** What is known of the yarn from elsewhere. */
  readonly scaleOf?: ScaleOf;
}

/** Words and charts are made when they are first asked for, so that checking stays quick. */
export function compileRead(
  { pattern, diagnostics: ofFile }: ReadPattern,
  slug: string,
  { toTell = (found) => found, only, scaleOf, looks = NOBODY_LOOKED }: Wish = {},
): CompiledPattern {
  if (pattern === null)
    return {
      slug,
      pattern,
      sizes: [],
      allSizes: null,
      multiples: [],
      growths: [],
      scaleOf: byFigures,
      photographs: [],
      diagnostics: toTell(mergeRepeated(inFileOrder(ofFile))),
    };
  const slugs = sizeSlugs(pattern.sizes);
  const ofWork: Diagnostic[] = [];
  const sizes: CompiledSize[] = [];
  const planned: PlannedSize[] = [];
  const worked: WorkedSize[] = [];
  let effort = 0;
  const multiples = once(() => partMultiples(pattern, planned, true));
  const scales = once(
    () =>
      scaleOf ??
      yarnScales(
        pattern,
        sizes.map(({ fabric }) => fabric),
      ),
  );
  for (const [index, size] of pattern.sizes.entries()) {
    if (only !== undefined && index !== only) continue;
    const { plan, faults } = planSize(pattern, index);
    ofWork.push(...faults);
    if (plan === null) continue;
    if (effort > MOST_EFFORT) {
      const span = pattern.parts[0]?.span ?? { start: 0, end: 1 };
      ofWork.push(
        diagnose(
          'size/too-many',
          { file: pattern.source.file, span },
          { size: size.name, limit: MOST_EFFORT },
        ),
      );
      break;
    }
    const made = workSize(pattern, index, plan);
    for (const diagnostic of made.diagnostics) ofWork.push(diagnostic);
    effort += made.effort;
    planned.push({ index, plan, readings: made.readings });
    const compiled = compiledSize(
      pattern,
      index,
      slugs[index] ?? size.name,
      plan,
      made,
      () => multiples(),
      () => scales(),
    );
    sizes.push(compiled);
    worked.push({
      index,
      fabric: made.fabric,
      get measures() {
        return compiled.measures;
      },
    });
  }
  const fabrics = sizes.map(({ fabric }) => fabric);
  const ofProof = checkMultiples(pattern, planned);
  const sound = [...ofFile, ...ofWork, ...ofProof].every(({ severity }) => severity !== 'error');
  const found = mergeRepeated(
    inFileOrder([
      ...ofFile,
      ...mergeSizes(ofWork, pattern.sizes.length),
      ...checkPublication({ pattern, sizes: worked, looks, sound }),
      ...ofProof,
      ...unprintableCharacters(pattern),
    ]),
  );
  const diagnostics = inFileOrder(silence(pattern, found));
  const allSizes = lazyWords((dialect) => wordPattern(pattern, fabrics, dialect, 'all'));
  const [firstPlanned] = planned;
  const growths = once(() => (firstPlanned === undefined ? [] : roundGrowths(pattern, firstPlanned)));
  return {
    slug,
    pattern,
    sizes,
    allSizes,
    get multiples() {
      return multiples();
    },
    get growths() {
      return growths();
    },
    scaleOf: (letter, size) => scales()(letter, size),
    photographs: seenPhotographs(pattern.photographs, looks),
    diagnostics: toTell(diagnostics),
  };
}
