/** Squares of filet: each goes over what comes next, a space or as many stitches, and ends in the post behind it. */

import { abbreviation } from '../notation/describe-what.ts';
import type { Num } from '../notation/num.ts';
import type { SquareStep } from '../notation/square.ts';
import type { ChainStep, Step, StitchName, What } from '../notation/tree.ts';
import { stitchById } from '../stitches/table.ts';
import { hasFlag, kindId } from './builder.ts';
import { describeSite } from './describe-site.ts';
import { FLAG, NONE } from './fabric.ts';
import { countOwed, reach } from './find-site.ts';
import { workChain } from './work-chain.ts';
import type { LedgerEntry, Worker } from './worker.ts';
import { stuck } from './worker.ts';

/** What a special stitch of that name is a square of; null for any other. */
export function squareNamed(worker: Worker, name: string): SquareStep | null {
  const [only, more] = worker.specials.get(name)?.steps ?? [];
  return only?.kind === 'square' && more === undefined ? only : null;
}

/**
 * Works a row of `ch 2, dc in next dc` anew, in spaces over blocks too, where it does not make what it states otherwise;
 * false where it need not be, or still does not, and is left as it was.
 */
export function comesOutAsSquares(worker: Worker, makesAll: () => boolean, attempt: () => boolean): boolean {
  if (openSquareOf(worker.specials) === null || makesAll()) return false;
  worker.asSquares = true;
  const good = attempt() && makesAll();
  worker.asSquares = false;
  if (!good) attempt();
  return good;
}

/** `ch 2, dc in next dc` with a block below, where that is the space that the text tells of; null where it is not. */
export function asSquare(worker: Worker, step: Step, next: Step | undefined): SquareStep | null {
  const square = openSquareOf(worker.specials);
  if (square === null || step.kind !== 'chain' || 'of' in step.n || step.counts !== null) return null;
  const post = next?.kind === 'work' && next.place?.kind === 'next' && next.place.n === null ? next : null;
  const same = post?.stitch.kind === 'stitch' && post.stitch.id === square.of && isOne(post.times);
  const wide = worker.rowBegun && step.n.values.every((n) => n === square.chains);
  const overStitches = worker.sites?.[worker.next]?.space === NONE;
  return same && wide && overStitches ? square : null;
}

function isOne(n: Num | null): boolean {
  return n === null || n.values.every((value) => value === 1);
}

function openSquareOf(specials: Worker['specials']): SquareStep | null {
  for (const { steps } of specials.values()) {
    const [only, more] = steps;
    if (only?.kind === 'square' && !only.filled && only.begins !== true && more === undefined) return only;
  }
  return null;
}

export function workSquare(worker: Worker, step: SquareStep): boolean {
  if (worker.sites === null) return stuck(worker, { kind: 'no foundation', span: step.span });
  const begins = !worker.rowBegun && !worker.joined && worker.into === null;
  // What tells how a row begins can be worked nowhere else.
  if (step.begins === true && (!begins || isRisen(worker)))
    return stuck(worker, { kind: 'used up', wanted: 'row to begin', span: step.span });
  if (begins && !isRisen(worker) && !workChain(worker, firstPost(step, worker.ledger.at(-1)), [step]))
    return false;
  // The chain that the row rises by may go over its first square as well: `ch 5 (counts as dc and ch 2)`.
  const over = begins ? chainsOver(worker) : 0;
  if (over > 0 && (step.filled || over !== step.chains)) return notThere(worker, step);
  const { space, stitches } = waysOf(step);
  const ground = worker.sites[worker.next];
  const ways = ground !== undefined && ground.space !== NONE ? space : stitches;
  if (ways === stitches && spaceWithin(worker, step.chains)) return notThere(worker, step);
  return worker.workSteps(worker, over > 0 ? ways.slice(1) : ways);
}

/** A chain has been made in the row already. */
function isRisen({ builder, rowFirst }: Worker): boolean {
  const last = builder.kind.length - 1;
  return last >= rowFirst && kindId(builder, last) === 'ch';
}

/** A row that begins with a square begins with the chain for its first post, and those over a space with it. */
function firstPost(
  { filled, chains, of: stitch, ...square }: SquareStep,
  said: LedgerEntry | undefined,
): ChainStep {
  const span = said?.step.span ?? square.span;
  const upright = stitchById(stitch).turningChain?.chains ?? 1;
  const plusChains = filled ? 0 : chains;
  const counts = square.begins === true ? { as: stitch, plusChains, throughout: false, span } : null;
  return { kind: 'chain', n: num(upright + plusChains, span), counts, span };
}

/** Chains made behind the row's first post. */
function chainsOver({ builder, rowFirst }: Worker): number {
  let at = builder.kind.length - 1;
  while (at >= rowFirst && kindId(builder, at) === 'ch' && !hasFlag(builder, at, FLAG.turningChain)) at -= 1;
  return at < rowFirst ? 0 : builder.kind.length - 1 - at;
}

/** The stitches of a block end before the square does. */
function spaceWithin(worker: Worker, chains: number): boolean {
  const inside = worker.sites?.slice(worker.next, Math.min(worker.next + chains, reach(worker))) ?? [];
  return inside.some(({ space }) => space !== NONE);
}

function notThere(worker: Worker, { filled, chains, of: stitch, span }: SquareStep): false {
  const sites = worker.sites ?? [];
  const wanted = filled
    ? `${chains} ${abbreviation(stitch, worker.terms)} before the next one`
    : `a space ${chains} ch wide`;
  const at = worker.next + (sites.slice(worker.next).findIndex(({ space }) => space !== NONE) + 1 || 1) - 1;
  const site = sites[at];
  if (site === undefined) return stuck(worker, { kind: 'used up', wanted, span });
  const nth = countOwed(sites, 0, at) + 1;
  return stuck(worker, { kind: 'not there', wanted, found: describeSite(site, worker.terms), nth, span });
}

interface Ways {
  readonly space: readonly Step[];
  readonly stitches: readonly Step[];
}

const WAYS = new WeakMap<SquareStep, Ways>();

/** The steps of a square over a space, and of one over stitches. */
function waysOf(square: SquareStep): Ways {
  const known = WAYS.get(square);
  if (known !== undefined) return known;
  const { span } = square;
  const chains = num(square.chains, span);
  const stitch: StitchName = { kind: 'stitch', id: square.of, span };
  const space: What = { kind: 'space', chains: square.chains, corner: false };
  const over: Step = { kind: 'chain', n: chains, counts: null, span };
  const into = (times: Num | null, n: Num | null, what: What): Step => ({
    kind: 'work',
    stitch,
    times,
    place: { kind: 'next', n, what, each: false, span },
    loop: 'both',
    skipped: null,
    span,
  });
  const past = (n: Num | null, what: What): Step => ({ kind: 'skip', n, what, pick: 'next', span });
  const post = into(null, null, ANY);
  const ways: Ways = square.filled
    ? { space: [into(chains, null, space), post], stitches: [into(null, chains, ANY), post] }
    : { space: [over, past(null, space), post], stitches: [over, past(chains, ANY), post] };
  WAYS.set(square, ways);
  return ways;
}

const ANY: What = { kind: 'st' };

function num(value: number, span: SquareStep['span']): Num {
  return { values: [value], span };
}
