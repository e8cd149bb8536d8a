/**
 * One pattern file's text in, everything known of it out: read it top to bottom to see how the house works.
 *
 *     text -> Pattern -> Fabric per size -> words, charts, measures
 */

import { unprintableCharacters } from './booklet/unprintable.ts';
import { chartParts } from './chart/chart-parts.ts';
import type { PartChart } from './chart/part-chart.ts';
import { schematics } from './chart/schematic.ts';
import { checkPublication } from './check/check-publication.ts';
import { mergeRepeated } from './check/merge-repeated.ts';
import { mergeSizes } from './check/merge-sizes.ts';
import { firstMultiple } from './check/pattern-repeat.ts';
import { planSize } from './check/plan-size.ts';
import type { WorkedSize } from './check/publication.ts';
import { silence } from './check/silence.ts';
import type { ChartsByTerms, CompiledPattern, CompiledSize } from './compiled.ts';
import { diagnose } from './diagnostics/catalogue.ts';
import type { Diagnostic } from './diagnostics/diagnostic.ts';
import { inFileOrder } from './diagnostics/order.ts';
import type { Fabric } from './fabric/fabric.ts';
import type { SizePlan, Worked } from './fabric/work.ts';
import { workSize } from './fabric/work.ts';
import { foldings, withFoldings } from './fold-part.ts';
import { measure } from './measure/measure.ts';
import type { ScaleOf } from './measure/measures.ts';
import { byFigures, yarnScales } from './measure/yarn-scale.ts';
import { partRepeats } from './part-repeats.ts';
import { asksSize, type OwnSize, withOwnSize } from './pattern/own-size.ts';
import type { Pattern } from './pattern/pattern.ts';
import { type ReadPattern, readPattern } from './pattern/read-pattern.ts';
import { sizeSlugs } from './pattern/size-slugs.ts';
import { asMultiples } from './proof/as-multiples.ts';
import { asOpen } from './proof/as-open.ts';
import { checkMultiples } from './proof/multiple-faults.ts';
import { type PartMultiple, type PlannedSize, partMultiples } from './proof/part-multiple.ts';
import { roundGrowths } from './proof/round-growth.ts';
import type { Source } from './source/span.ts';
import { readTranscript } from './transcribe/read-transcript.ts';
import { toldOfText } from './transcribe/told-of-text.ts';
import { transcribe } from './transcribe/transcribe.ts';
import { wordPattern } from './wording/word-pattern.ts';
import type { DialectKey, WordedPattern } from './wording/words.ts';

/** Stitches and steps that all sizes together may come to; each size has a limit of its own. */
const MOST_EFFORT = 2_000_000;

/** Compiles a pattern. Words and charts are made when they are first asked for, so that checking stays quick. */
export function compilePattern(source: Source, slug: string): CompiledPattern {
  return compileRead(readPattern(source, slug), slug);
}

/** The same pattern in one size of a maker's own. Yarn goes by what is known of the designer's, at the maker's gauge. */
export function compileOwnSize(compiled: CompiledPattern, own: OwnSize): CompiledPattern {
  const { pattern, slug, scaleOf } = compiled;
  if (pattern === null) return compiled;
  return compileRead({ pattern: ownPattern(compiled, pattern, own), diagnostics: [] }, slug, {
    only: own.from,
    scaleOf,
  });
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
  const chains = fabric.rows[0] === undefined ? 0 : fabric.rows[0].end - fabric.rows[0].first;
  return { ...own, repeats: Math.max(1, Math.round((chains - multiple.plus) / multiple.of)) };
}

/** The same for instructions pasted as plain text, with no file of keys around them. */
export function compileText(source: Source, slug: string): CompiledPattern {
  return compileRead(readTranscript(transcribe(source), slug), slug, { toTell: tellOfText });
}

function tellOfText(found: readonly Diagnostic[]): readonly Diagnostic[] {
  // Where the terms are doubted as a whole, no one word is told as well.
  const doubted = found.some(({ code }) => code.startsWith('text/terms-'));
  // Bullets and ornaments of the page it came from go into no booklet.
  return found
    .filter(({ code }) => code !== 'booklet/character' && (code !== 'terms/mixed' || !doubted))
    .map(toldOfText);
}

interface Wish {
  readonly toTell?: (found: readonly Diagnostic[]) => readonly Diagnostic[];
  /** The only size to work. */
  readonly only?: number;
  /** What is known of the yarn from elsewhere. */
  readonly scaleOf?: ScaleOf;
}

function compileRead(
  { pattern, diagnostics: ofFile }: ReadPattern,
  slug: string,
  { toTell = (found) => found, only, scaleOf }: Wish = {},
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
      ...checkPublication({ pattern, sizes: worked, sound }),
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
    diagnostics: toTell(diagnostics),
  };
}

/** Every fault of a pattern, in the order of the file. */
export function checkPattern(source: Source, slug: string): readonly Diagnostic[] {
  return compilePattern(source, slug).diagnostics;
}

function compiledSize(
  pattern: Pattern,
  index: number,
  slug: string,
  plan: SizePlan,
  worked: Worked,
  multiples: () => readonly PartMultiple[],
  scaleOf: () => ScaleOf,
): CompiledSize {
  const { fabric, accounts } = worked;
  const size = pattern.sizes[index];
  if (size === undefined) throw new Error(`no size ${index}`);
  const yarnInk = Object.fromEntries(
    pattern.yarns.flatMap(({ letter, hex }) => (hex === null ? [] : [[letter, hex]])),
  );
  const repeats = once(() => partRepeats(fabric, accounts, multiples(), size.name));
  const folded = (part: string) =>
    foldings({ pattern, sizeIndex: index, plan, worked, multiples: multiples() }, part);
  const chartsFor = (leftHanded: boolean): ChartsByTerms => {
    const draw = (terms: 'US' | 'UK'): readonly PartChart[] => {
      const options = {
        terms,
        title: pattern.title,
        key: true,
        yarnInk,
        leftHanded,
        symbols: pattern.symbols,
        repeats: repeats(),
      };
      return withFoldings(chartParts(fabric, options), options, folded);
    };
    const us = once(() => draw('US'));
    const uk = once(() => draw('UK'));
    return {
      get US() {
        return us();
      },
      get UK() {
        return uk();
      },
    };
  };
  const measures = once(() => measure(pattern, fabric, scaleOf()));
  const outlined = once(() => schematics(pattern, fabric, pattern.title));
  return {
    size,
    slug,
    fabric,
    accounts,
    get measures() {
      return measures();
    },
    words: lazyWords((dialect) => wordPattern(pattern, fabric, dialect, index)),
    get schematics() {
      return outlined();
    },
    charts: chartsFor(false),
    leftHandedCharts: chartsFor(true),
  };
}

function lazyWords(
  word: (dialect: DialectKey) => WordedPattern,
): Readonly<Record<DialectKey, WordedPattern>> {
  const us = once(() => word('us'));
  const uk = once(() => word('uk'));
  const usFull = once(() => word('us-full'));
  const ukFull = once(() => word('uk-full'));
  return {
    get us() {
      return us();
    },
    get uk() {
      return uk();
    },
    get 'us-full'() {
      return usFull();
    },
    get 'uk-full'() {
      return ukFull();
    },
  };
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
