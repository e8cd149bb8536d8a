/** A pattern in, which foundations each of its flat parts comes out over and whether what it claims of them holds out. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { SizePlan } from '../fabric/work.ts';
import { workSize } from '../fabric/work.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { Multiple } from '../notation/tree.ts';
import type { Part, Pattern } from '../pattern/pattern.ts';
import type { MultipleFound, TrialAt } from './find-multiple.ts';
import { comesOut, findMultiple, WIDEST_REPEAT } from './find-multiple.ts';
import type { Alphabet } from './row-word.ts';
import type { Foundation, Trial } from './trial.ts';
import { foundationOf, workTrial } from './trial.ts';

export interface PartMultiple {
  readonly part: string;
  /** `a multiple of 6 plus 2` as the foundation says it; null for one of a fixed number of chains. */
  readonly claimed: Multiple | null;
  /** Null when it comes out over none beside its own. */
  readonly found: MultipleFound | null;
  /** The first width of the claim that does not come out, though a narrower one does; null when all do. */
  readonly broken: BrokenClaim | null;
}

export interface BrokenClaim {
  readonly repeats: number;
  readonly chains: number;
  readonly fault: Diagnostic;
}

/** Repeats of a claim that are tried one by one for a place to begin. */
const MOST_TRIED = 12;
/** Foundations longer than this are not tried: nothing is learnt from them that narrower ones do not tell. */
const MOST_CHAINS = 1_500;
/** A repeat wider than this is not looked into. */
const WIDEST_CLAIM = 300;

/** What is claimed by "a multiple of" is looked into; with `all` also the parts that claim nothing. */
export function partMultiples(
  pattern: Pattern,
  sizeIndex: number,
  plan: SizePlan,
  all: boolean,
): PartMultiple[] {
  const { settled } = workSize(pattern, sizeIndex, plan);
  return pattern.parts.flatMap((part) => {
    const foundation = foundationOf(part);
    if (foundation === null || (!all && !('of' in foundation.chain.n))) return [];
    const trialAt = rememberedTrials(pattern, part, foundation, { sizeIndex, settled });
    const { n } = foundation.chain;
    const made =
      'of' in n
        ? claimedMultiple(part, n, plan.repeats, trialAt)
        : fixedMultiple(part, numberForSize(n, sizeIndex) ?? 0, trialAt);
    return made === null ? [] : [made];
  });
}

function rememberedTrials(
  pattern: Pattern,
  part: Part,
  foundation: Foundation,
  setting: Parameters<typeof workTrial>[4],
): TrialAt {
  const alphabet: Alphabet = new Map();
  const trials = new Map<number, Trial>();
  return (chains) => {
    const trial = trials.get(chains) ?? workTrial(pattern, part, foundation, chains, setting, alphabet);
    trials.set(chains, trial);
    return trial;
  };
}

/** `own` repeats are the pattern's own size. Null where no width of the claim comes out: then the rows themselves are at fault, and say so. */
function claimedMultiple(part: Part, claimed: Multiple, own: number, trialAt: TrialAt): PartMultiple | null {
  const chainsOf = (repeats: number): number => claimed.of * repeats + claimed.plus;
  const upTo = (from: number): number[] => Array.from({ length: MOST_TRIED }, (_, i) => from + i);
  if (claimed.of > WIDEST_CLAIM) return null;
  const first = [own, ...upTo(1)].find((n) => chainsOf(n) <= MOST_CHAINS && comesOut(trialAt(chainsOf(n))));
  if (first === undefined) return null;
  const widest = Math.max(WIDEST_REPEAT, 2 * claimed.of);
  const found = findMultiple(trialAt, chainsOf(first), widest);
  const name = part.name;
  if (found !== null && claimed.of % found.of === 0)
    return { part: name, claimed, found: withinClaim(found, claimed), broken: null };
  const broken = upTo(first + 1)
    .map((n) => ({ repeats: n, chains: chainsOf(n), fault: trialAt(chainsOf(n)).fault }))
    .find((one): one is BrokenClaim => one.fault !== null);
  return { part: name, claimed, found, broken: broken ?? null };
}

/** The remainder as the claim gives it, where it is one of the same foundations: `plus 8` rather than `plus 2`. */
function withinClaim(found: MultipleFound, { of, plus }: Multiple): MultipleFound {
  // No repeat at all is no width that the words speak of.
  const from = Math.max(found.from, of + plus);
  return { ...found, plus: plus % found.of === found.plus ? plus : found.plus, from };
}

function fixedMultiple(part: Part, chains: number, trialAt: TrialAt): PartMultiple | null {
  if (chains > MOST_CHAINS || !comesOut(trialAt(chains))) return null;
  return {
    part: part.name,
    claimed: null,
    found: findMultiple(trialAt, chains, WIDEST_REPEAT),
    broken: null,
  };
}
