/** A pattern in, which foundations each of its flat parts comes out over and whether what it claims of them holds out. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Readings, SizePlan } from '../fabric/work.ts';
import type { Multiple } from '../notation/num.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { Part, Pattern } from '../pattern/pattern.ts';
import type { MultipleFound, TrialAt } from './find-multiple.ts';
import { comesOut, findMultiple, multipleFrom, WIDEST_REPEAT } from './find-multiple.ts';
import type { Alphabet } from './row-word.ts';
import type { Foundation, Trial, TrialSetting } from './trial.ts';
import { foundationOf, workTrial } from './trial.ts';

export interface PartMultiple {
  readonly part: string;
  /** The size whose numbers were worked; null where all sizes have the same. */
  readonly size: string | null;
  /** `a multiple of 6 plus 2` as the foundation says it; null for one of a fixed number of chains. */
  readonly claimed: Multiple | null;
  /** Null when no multiple was found, or the part is too large to look for one. */
  readonly found: MultipleFound | null;
  /** The first width of the claim that does not come out, though a narrower one does; null when all do. */
  readonly broken: BrokenClaim | null;
}

interface BrokenClaim {
  readonly repeats: number;
  readonly chains: number;
  readonly fault: Diagnostic;
}

/** One size, how large it is worked, and how its turning chains were read when all of it was. */
export interface PlannedSize {
  readonly index: number;
  readonly plan: SizePlan;
  readonly readings: Readings;
}

/** Repeats of a claim that are tried one by one for a place to begin. */
const MOST_TRIED = 12;
/** Foundations longer than this are not tried: nothing is learnt from them that narrower ones do not tell. */
const MOST_CHAINS = 1_500;
/** A repeat wider than this is not looked into. */
const WIDEST_CLAIM = 300;
/** Stitches and steps spent on one part; what is not found by then is not looked for further. */
const MOST_EFFORT = 400_000;

/** What is claimed by "a multiple of" is looked into; with `all` also the parts that claim nothing. */
export function partMultiples(pattern: Pattern, sizes: readonly PlannedSize[], all: boolean): PartMultiple[] {
  const parts = pattern.parts.filter((part) => {
    const foundation = foundationOf(part);
    return foundation !== null && (all || 'of' in foundation.chain.n);
  });
  if (parts.length === 0) return [];
  return sizes.flatMap((size, i) => {
    const here = parts.filter((part) => i === 0 || variesBySize(part));
    return here.flatMap((part) => partMultiple(pattern, part, size) ?? []);
  });
}

function partMultiple(
  pattern: Pattern,
  part: Part,
  { index, plan, readings }: PlannedSize,
): PartMultiple | null {
  const foundation = foundationOf(part);
  if (foundation === null) return null;
  const size = variesBySize(part) ? (pattern.sizes[index]?.name ?? null) : null;
  const { n } = foundation.chain;
  const claimed = 'of' in n ? n : null;
  try {
    const setting = { sizeIndex: index, rows: plan.rows, readings };
    const trialAt = rememberedTrials(pattern, part, foundation, setting);
    const made =
      'of' in n
        ? claimedMultiple(n, plan.repeats, trialAt)
        : fixedMultiple(numberForSize(n, index) ?? 0, trialAt);
    return made === null ? null : { part: part.name, size, claimed, ...made };
  } catch (error) {
    if (error === TOO_MUCH) return { part: part.name, size, claimed, found: null, broken: null };
    throw error;
  }
}

/** Numbers of its own for each size, or lines for some sizes only. */
function variesBySize({ instructions }: Part): boolean {
  const varies = (value: unknown): boolean => {
    if (typeof value !== 'object' || value === null) return false;
    if ('values' in value && Array.isArray(value.values) && value.values.length > 1) return true;
    return Object.values(value).some(varies);
  };
  return instructions.lines.some(({ sizes, steps }) => sizes !== undefined || steps.some(varies));
}

/** Thrown by a trial past the limit, so that the search ends wherever it is. */
const TOO_MUCH = new Error('more than can be tried');

function rememberedTrials(
  pattern: Pattern,
  part: Part,
  foundation: Foundation,
  setting: TrialSetting,
): TrialAt {
  const alphabet: Alphabet = new Map();
  const trials = new Map<number, Trial>();
  let effort = 0;
  return (chains) => {
    const known = trials.get(chains);
    if (known !== undefined) return known;
    if (effort > MOST_EFFORT) throw TOO_MUCH;
    const trial = workTrial(pattern, part, foundation, chains, setting, alphabet);
    effort += trial.effort;
    trials.set(chains, trial);
    return trial;
  };
}

type Looked = Pick<PartMultiple, 'found' | 'broken'>;

/** `own` repeats are the pattern's own size. Null where no width of the claim comes out: then the rows themselves are at fault, and say so. */
function claimedMultiple(claimed: Multiple, own: number, trialAt: TrialAt): Looked | null {
  const chainsOf = (repeats: number): number => claimed.of * repeats + claimed.plus;
  const upTo = (from: number): number[] => Array.from({ length: MOST_TRIED }, (_, i) => from + i);
  if (claimed.of > WIDEST_CLAIM) return null;
  const first = [own, ...upTo(1)].find((n) => chainsOf(n) <= MOST_CHAINS && comesOut(trialAt(chainsOf(n))));
  if (first === undefined) return null;
  // What is claimed first, or a part of it: in most patterns that is all there is to it.
  for (const of of divisors(claimed.of)) {
    const found = multipleFrom(trialAt, chainsOf(first), of, of === claimed.of);
    if (found !== null) return { found: withinClaim(found, claimed), broken: null };
  }
  const broken = upTo(first + 1)
    .map((n) => ({ repeats: n, chains: chainsOf(n), fault: trialAt(chainsOf(n)).fault }))
    .find((one): one is BrokenClaim => one.fault !== null);
  const widest = Math.max(WIDEST_REPEAT, 2 * claimed.of);
  const found = broken === undefined ? null : nearestOf(trialAt, chainsOf(first), widest);
  return { found, broken: broken ?? null };
}

/** The claim is broken whether or not another is found in time. */
function nearestOf(trialAt: TrialAt, anchor: number, widest: number): MultipleFound | null {
  try {
    return findMultiple(trialAt, anchor, widest);
  } catch (error) {
    if (error === TOO_MUCH) return null;
    throw error;
  }
}

function divisors(n: number): number[] {
  return Array.from({ length: n }, (_, i) => i + 1).filter((of) => n % of === 0);
}

/** The remainder as the claim gives it, where it is one of the same foundations: `plus 8` rather than `plus 2`. */
function withinClaim(found: MultipleFound, { of, plus }: Multiple): MultipleFound {
  // No repeat at all is no width that the words speak of.
  const from = Math.max(found.from, of + plus);
  return { ...found, plus: plus % found.of === found.plus ? plus : found.plus, from };
}

function fixedMultiple(chains: number, trialAt: TrialAt): Looked | null {
  if (chains > MOST_CHAINS || !comesOut(trialAt(chains))) return null;
  return { found: findMultiple(trialAt, chains, WIDEST_REPEAT), broken: null };
}
