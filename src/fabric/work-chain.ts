/** Chains: foundations, turning chains that count or don't, chains that leave a space, rings. */

import type { Counts } from '../notation/chain-counts.ts';
import type { Multiple, Num } from '../notation/num.ts';
import type { ChainStep, Step } from '../notation/tree.ts';
import type { Span } from '../source/span.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { STITCHES, stitchById } from '../stitches/table.ts';
import { addFlag, addStitch, countChainAs, hasFlag, MOST_STITCHES } from './builder.ts';
import { FLAG, INTO, NONE } from './fabric.ts';
import { afterPlace, openRing } from './find-site.ts';
import { intoOf, nodesOf } from './make-stitch.ts';
import type { Site } from './site.ts';
import { plainSite, sitesOfChain } from './site.ts';
import type { Worker } from './worker.ts';
import { stuck, valueFor } from './worker.ts';

/** The chains a step asks for in this size. */
export function chainLength(worker: Worker, n: Num | Multiple): number {
  if ('of' in n) return n.of * worker.repeats + n.plus;
  return valueFor(worker, n.values) ?? 0;
}

/** Works a chain. `following` are the steps behind it, which tell what an unstated turning chain stands for. */
export function workChain(worker: Worker, step: ChainStep, following: readonly Step[]): boolean {
  const length = chainLength(worker, step.n);
  if (worker.builder.kind.length + length > MOST_STITCHES)
    return stuck(worker, { kind: 'too many', span: step.span });
  if (worker.sites === null) return foundation(worker, length);
  const begins = !worker.rowBegun && !worker.joined && !afterTurningChain(worker);
  if (begins && worker.into === null && !worker.opensLoop)
    return turningChain(worker, length, step, following);
  if (begins && !worker.inSpecial && worker.into !== null)
    return groupChain(worker, worker.into, length, step, following);
  const starts = !worker.rowBegun && worker.inSpecial;
  const first = worker.builder.kind.length;
  pushChains(
    worker,
    length,
    starts ? FLAG.turningChain : 0,
    worker.into !== null && starts ? [worker.into] : [],
  );
  // `beg shell: (ch 3, dc, ch 2, 2 dc)`: its chain is its first dc; that of `beg cl: ch 2, dc2tog` is not.
  const as = starts ? firstOfSpecial(worker, length, step, following) : null;
  if (as !== null) {
    countChainAs(worker.builder, first + length - 1, as);
    worker.rowBegun = true;
  }
  return true;
}

/** `(ch 3, 2 dc, ch 2, 3 dc) in same sp` begins a row: its chain is the row's turning chain. */
function groupChain(
  worker: Worker,
  into: Site,
  length: number,
  step: ChainStep,
  following: readonly Step[],
): boolean {
  const what = step.counts ?? worker.throughout.get(length) ?? habit(worker, length, following, step.span);
  const first = worker.builder.kind.length;
  const upright = length - what.plusChains;
  pushChains(worker, upright, FLAG.turningChain, [into]);
  if (what.plusChains > 0) pushChains(worker, what.plusChains, 0, []);
  if (what.as === null || upright < 1) return true;
  const as = what.as === 'st' ? stitchOfHeight(upright, following) : what.as;
  countChainAs(worker.builder, first + upright - 1, as);
  worker.rowBegun = true;
  return true;
}

/** What a chain at the start of a row's first special stitch counts as; null when it only lifts the hook. */
function firstOfSpecial(
  worker: Worker,
  length: number,
  step: ChainStep,
  following: readonly Step[],
): string | null {
  if (step.counts !== null)
    return step.counts.as === 'st' ? stitchOfHeight(length, following) : step.counts.as;
  const next = firstStitch(worker, following);
  const row = next === null ? null : stitchById(next);
  if (row === null || row.uses > 1 || row.turningChain === null) return null;
  return row.turningChain.counts === 'yes' && length === row.turningChain.chains ? row.id : null;
}

/** `Ch 3 (counts as dc), ch 1`: a second chain leaves a space, it makes the turning chain no longer. */
function afterTurningChain(worker: Worker): boolean {
  const last = worker.builder.kind.length - 1;
  return last >= worker.rowFirst && hasFlag(worker.builder, last, FLAG.turningChain);
}

/** A ring from the foundation chain just made, or a magic ring. */
export function closeRing(worker: Worker): void {
  const chains = worker.sites?.length ?? 0;
  const first = worker.builder.kind.length - chains;
  addStitch(worker.builder, {
    ...plain(worker),
    id: 'sl-st',
    where: INTO.top,
    flags: FLAG.join,
    into: [first],
  });
  worker.ringChains = chains;
  worker.sites = [{ ...plainSite('ring', first, 'ch'), spaceChains: chains }];
  worker.next = 0;
  worker.last = 0;
}

export function magicRing(worker: Worker): void {
  const node = addStitch(worker.builder, { ...plain(worker), id: 'mr', where: INTO.nothing, into: [] });
  worker.sites = [{ ...plainSite('ring', node, 'mr'), spaceChains: 1 }];
  worker.next = 0;
  worker.last = 0;
}

/**
 * After `dc in 4th ch from hook`: the chains before it become the row's turning chain, which counts when the text
 * says so, or, unstated, when the trade's habit is that it does.
 */
export function skippedChains(
  worker: Worker,
  nth: number,
  stitchId: string,
  counts: Counts | null,
  span: Span,
): void {
  const { sites } = worker;
  const hook = sites?.[0];
  if (sites === null || hook === undefined || nth < 2) return;
  for (let i = 0; i < nth - 1; i += 1) {
    const site = sites[i];
    if (site !== undefined) addFlag(worker.builder, site.node, FLAG.turningChain);
  }
  const row = stitchById(stitchId);
  const tall = row.turningChain !== null && nth - 1 >= row.turningChain.chains;
  // What notes say of chains of that length, or of all, is said of these too, unless a count tells otherwise.
  const noted = worker.throughout.get(nth - 1);
  const rule = noted === undefined ? worker.everyChain : noted.as !== null;
  const habit = tall && row.turningChain?.counts !== 'no' && (rule ?? row.turningChain?.counts === 'yes');
  const stated = counts !== null;
  const does = stated ? counts.as !== null : (worker.chainReading ?? worker.settled.get(span.start) ?? habit);
  if (!stated && tall && row.turningChain?.counts !== 'no') {
    const plusChains = spaceAbove(nth - 1, row);
    worker.chainAssumed = {
      chains: nth - 1,
      counts: does,
      as: stitchId,
      plusChains,
      skipped: true,
      // So many are skipped for nothing by nobody: they are a stitch and a space, and the chains under it.
      told: rule === does || (does && plusChains > 0),
      span,
    };
  }
  // `(3 missed ch count as 1-ch sp)`.
  if (counts !== null && counts.as === null) worker.skippedSpace = Math.min(counts.plusChains, nth - 1);
  if (!does) return;
  const as = counts?.as === undefined || counts.as === null || counts.as === 'st' ? row.legOf : counts.as;
  // Chains nearest the hook beyond the stitch's height are a space: dc and ch 2 of `8th ch from hook`.
  const counted = sites[counts === null ? spaceAbove(nth - 1, row) : counts.plusChains] ?? hook;
  countChainAs(worker.builder, counted.node, as);
  worker.countedStart = counted.node;
}

/** Of `dc in 8th ch from hook` the trade takes 3 for the dc, 2 for a space and the 2 below it for skipped. */
function spaceAbove(skipped: number, { turningChain: upright }: StitchRow): number {
  const spare = skipped - (upright?.chains ?? skipped);
  return spare > 0 && spare % 2 === 0 ? spare / 2 : 0;
}

function foundation(worker: Worker, length: number): boolean {
  const first = worker.builder.kind.length;
  pushChains(worker, length, 0, []);
  worker.sites = sitesOfChain(first, first + length);
  worker.next = 0;
  worker.last = -1;
  return true;
}

function turningChain(worker: Worker, length: number, step: ChainStep, following: readonly Step[]): boolean {
  // On a tube it stands on the first of the chains, not in the ring they make.
  const goesOn = following.find((next) => next.kind === 'work');
  if (goesOn?.place != null && 'what' in goesOn.place) openRing(worker, goesOn.place.what);
  const stands = standsOn(worker);
  const said = step.counts;
  const loop = worker.namedLoop === step ? { as: null, plusChains: 0 } : null;
  const known = said ?? loop ?? worker.throughout.get(length) ?? null;
  if (said?.throughout) worker.throughout.set(length, { as: said.as, plusChains: said.plusChains });
  const what = known ?? habit(worker, length, following, step.span);
  const first = worker.builder.kind.length;
  const upright = length - what.plusChains;
  pushChains(worker, upright, FLAG.turningChain, stands === null ? [] : [stands]);
  if (what.plusChains > 0) pushChains(worker, what.plusChains, 0, []);
  if (what.as === null || upright < 1) return true;
  const as = what.as === 'st' ? stitchOfHeight(upright, following) : what.as;
  countChainAs(worker.builder, first + upright - 1, as);
  // A chain that counts takes the place it stands on.
  const { sites } = worker;
  const at = startIndex(worker);
  if (sites !== null && sites[at] !== undefined && sites[at]?.kind !== 'ring') {
    worker.last = at;
    worker.next = Math.max(worker.next, afterPlace(sites, at));
    worker.lastWasSpace = sites[at]?.space !== NONE;
  }
  return true;
}

/** The place a turning chain stands on: where the row starts. */
function standsOn(worker: Worker): Site | null {
  return worker.sites?.[startIndex(worker)] ?? null;
}

function startIndex(worker: Worker): number {
  // Where the last slip stitch stands, or where the row begins.
  if (!worker.travelled) return worker.next;
  return worker.round ? 0 : worker.last;
}

/** What the trade takes an unstated turning chain for: the stitch of the row, if the chain is as tall and usually counts. */
function habit(
  worker: Worker,
  length: number,
  following: readonly Step[],
  span: Span,
): { as: string | null; plusChains: number } {
  const stitch = firstStitch(worker, following) ?? stitchOfHeight(length, following);
  const row = stitchById(stitch);
  const tall = row.turningChain;
  // The one chain of a single crochet is none, round a post too.
  if (tall === null || stitchById(row.legOf).turningChain?.counts === 'no')
    return { as: null, plusChains: 0 };
  if (worker.everyChain !== null)
    return worker.everyChain
      ? { as: row.legOf, plusChains: Math.max(0, length - tall.chains) }
      : { as: null, plusChains: 0 };
  if (length < tall.chains) return { as: null, plusChains: 0 };
  // Whoever joins into its top takes it for a stitch.
  const joinedTo = following.some(
    ({ kind, ...step }) => kind === 'join' && 'place' in step && step.place?.kind === 'of-chain',
  );
  const counts = worker.chainReading ?? worker.settled.get(span.start) ?? (tall.counts === 'yes' || joinedTo);
  const plusChains = length - tall.chains;
  worker.chainAssumed = {
    chains: length,
    counts,
    as: row.legOf,
    plusChains,
    skipped: false,
    // Who skips the stitch it stands on takes it for that one.
    told: (joinedTo || skipsFirst(following)) && counts,
    span,
  };
  return counts ? { as: row.legOf, plusChains } : { as: null, plusChains: 0 };
}

function skipsFirst([next]: readonly Step[]): boolean {
  return (
    next?.kind === 'skip' && next.pick === 'first' && (next.n === null || next.n.values.every((n) => n === 1))
  );
}

/** The first stitch worked after the chain, looking into brackets and special stitches. */
export function firstStitch(
  worker: Worker,
  steps: readonly Step[],
  without: Set<string> = new Set(),
): string | null {
  for (const step of steps) {
    if (step.kind === 'square') return step.of;
    if (step.kind === 'work') {
      if (step.stitch.kind === 'stitch') return step.stitch.id;
      // A special stitch that was looked into and has none need not be looked into again.
      if (without.has(step.stitch.name)) continue;
      without.add(step.stitch.name);
      const special = worker.specials.get(step.stitch.name);
      const inside = special === undefined ? null : firstStitch(worker, special.steps, without);
      if (inside !== null) return inside;
    } else if (step.kind === 'group' || step.kind === 'bracket' || step.kind === 'repeat') {
      const inside = firstStitch(worker, step.body, without);
      if (inside !== null) return inside;
    }
  }
  return null;
}

/** The basic stitch whose turning chain is this long. */
function stitchOfHeight(chains: number, _following: readonly Step[]): string {
  return STITCHES.find((row) => row.family === 'basic' && row.turningChain?.chains === chains)?.id ?? 'dc';
}

function pushChains(worker: Worker, length: number, flags: number, stands: readonly Site[]): void {
  const { builder, row, yarn, group } = worker;
  const [first] = stands;
  for (let i = 0; i < length; i += 1) {
    const standing = i === 0 && first !== undefined;
    addStitch(builder, {
      id: 'ch',
      countsAs: null,
      row,
      yarn,
      where: standing ? intoOf(first) : INTO.nothing,
      loop: 0,
      flags,
      group,
      into: standing ? stands.flatMap((site) => nodesOf(worker, site)) : NOTHING,
    });
  }
}

const NOTHING: readonly number[] = [];

function plain(worker: Worker): {
  countsAs: null;
  row: number;
  yarn: number;
  loop: number;
  flags: number;
  group: number;
  where: number;
} {
  return {
    countsAs: null,
    row: worker.row,
    yarn: worker.yarn,
    loop: 0,
    flags: 0,
    group: worker.group,
    where: INTO.nothing,
  };
}
