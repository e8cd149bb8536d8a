/** How a row begins: which way it goes, which side faces, and in what order it meets the places below. */

import type { Unit } from '../notation/line.ts';
import type { ChainStep, Step, WorkStep } from '../notation/tree.ts';
import { stitchById } from '../stitches/table.ts';
import { NONE } from './fabric.ts';
import type { Site } from './site.ts';

import { plainName } from './special-name.ts';
/** The top of the piece as the last row left it. */
export interface Top {
  readonly sites: readonly Site[];
  readonly closing: 'flat' | 'joined' | 'spiral';
  readonly side: 'RS' | 'WS' | null;
  readonly turned: boolean;
  /** The yarn was moved along after the join. */
  readonly travelled: boolean;
  /** Stitches it has, for faults. */
  readonly stitches: number | null;
  /** Index of the row it is the top of; none where that could not be worked. */
  readonly row?: number;
}

export interface RowStart {
  readonly sites: Site[];
  readonly side: 'RS' | 'WS';
  readonly round: boolean;
}

/** Turns the top of the last row to the way the next one meets it. */
export function startRow(top: Top, unit: Unit | null, statedSide: 'RS' | 'WS' | null): RowStart {
  const alternate = top.turned ? opposite(top.side) : (top.side ?? 'RS');
  if (top.closing === 'flat') {
    // A round on a flat piece is an edging, worked from the right side unless it says otherwise.
    const side =
      statedSide ?? (unit === 'row' || top.side === null ? (top.side === null ? 'RS' : alternate) : 'RS');
    const reversed = top.side !== null && side !== top.side;
    return { sites: reversed ? [...top.sites].reverse() : [...top.sites], side, round: false };
  }
  const side = statedSide ?? alternate;
  const sites = top.turned ? turnedRound(top.sites) : [...top.sites];
  return { sites, side, round: true };
}

function opposite(side: 'RS' | 'WS' | null): 'RS' | 'WS' {
  return side === 'RS' ? 'WS' : 'RS';
}

/** A joined round turned: the joined stitch first, then the others from the last back. */
function turnedRound(sites: readonly Site[]): Site[] {
  const first = sites[0];
  if (first === undefined) return [];
  let end = 1;
  while (first.space !== NONE && sites[end]?.space === first.space) end += 1;
  return [...sites.slice(0, end), ...sites.slice(end).reverse()];
}

/** A chain printed at the end of a row, before or after "turn", belongs to the start of the next. */
export function splitClosingChain(steps: readonly Step[]): {
  readonly steps: readonly Step[];
  readonly closing: ChainStep | null;
} {
  let at = steps.length - 1;
  const isIdle = (step: Step | undefined): boolean =>
    step !== undefined && (step.kind === 'turn' || step.kind === 'note');
  while (at >= 0 && isIdle(steps[at])) at -= 1;
  const step = steps[at];
  const before = steps[at - 1];
  const turned =
    steps.slice(at + 1).some((idle) => idle.kind === 'turn' && idle.what === 'turn') ||
    (before !== undefined && before.kind === 'turn' && before.what === 'turn');
  const joined = before !== undefined && before.kind === 'join' && !before.ring;
  if (step === undefined || step.kind !== 'chain' || 'of' in step.n || at === 0 || !(turned || joined))
    return { steps, closing: null };
  return { steps: [...steps.slice(0, at), ...steps.slice(at + 1)], closing: step };
}

/**
 * The slip stitches at the start of a row that only move the yarn along: those right before a chain that starts the
 * row, or before something worked into the same place.
 */
export function travelSteps(steps: readonly Step[]): ReadonlySet<Step> {
  const leading: Step[] = [];
  let at = 0;
  while (at < steps.length && isIdleStart(steps[at])) at += 1;
  for (; at < steps.length; at += 1) {
    const step = steps[at];
    // `sl st in next dc (the center of the 3), ch 1`.
    if (step?.kind === 'note' && leading.length > 0) continue;
    if (
      step === undefined ||
      step.kind !== 'work' ||
      step.stitch.kind !== 'stitch' ||
      step.stitch.id !== 'sl-st'
    )
      break;
    leading.push(step);
  }
  const then = firstInside(steps[at]);
  const same = then !== undefined && 'place' in then && then.place !== null && then.place.kind === 'same';
  // A block or shell that rises from a space starts the row there.
  const rises =
    then !== undefined && then.kind === 'work' && then.stitch.kind === 'special' && intoSpace(then);
  // `beg cl` with no place goes where they have come to.
  const begins =
    then?.kind === 'work' &&
    then.place === null &&
    then.stitch.kind === 'special' &&
    plainName(then.stitch.name) !== then.stitch.name;
  // `Sl st in next loop, and in each loop around make …`: it is the first of them.
  const each =
    then !== undefined && 'place' in then && then.place?.kind === 'each' && then.place.what.kind === 'space';
  const intoFirst = each && leading.every((step) => step.kind === 'work' && intoSpace(step));
  const moves = then !== undefined && (then.kind === 'chain' || same || rises || begins || intoFirst);
  const anchor = anchorStep(steps);
  return new Set([...(moves ? leading : []), ...(anchor === null ? [] : [anchor])]);
}

/** A slip stitch into a space at the end of a row that has other stitches only holds the corner down. */
function anchorStep(steps: readonly Step[]): Step | null {
  const last = steps.findLast(
    (step) => step.kind !== 'turn' && step.kind !== 'note' && step.kind !== 'fasten off',
  );
  if (
    last === undefined ||
    last.kind !== 'work' ||
    last.stitch.kind !== 'stitch' ||
    last.stitch.id !== 'sl-st'
  )
    return null;
  return intoSpace(last) && steps.some((step) => step !== last && holdsSpecial(step)) ? last : null;
}

/** What a row goes on with: of a repeat, the first step in it. */
function firstInside(step: Step | undefined): Step | undefined {
  return step?.kind === 'repeat' || step?.kind === 'bracket' ? firstInside(step.body[0]) : step;
}

function holdsSpecial(step: Step): boolean {
  if (step.kind === 'repeat' || step.kind === 'bracket') return step.body.some(holdsSpecial);
  return step.kind === 'work' && step.stitch.kind === 'special';
}

function intoSpace({ place }: WorkStep): boolean {
  return place !== null && 'what' in place && place.what.kind === 'space' && place.kind !== 'each';
}

function isIdleStart(step: Step | undefined): boolean {
  return (
    step !== undefined &&
    (step.kind === 'yarn' || step.kind === 'note' || step.kind === 'turn') &&
    !('place' in step && step.place !== null)
  );
}

/** A slip stitch into the start of the round at its end is a join though the word is not said. */
export function withImpliedJoin(steps: readonly Step[], unit: Unit | null): readonly Step[] {
  // The join of a ring made on the way is not the round's.
  if (unit === 'row' || steps.some((step) => step.kind === 'join' && !step.ring)) return steps;
  let at = steps.length - 1;
  while (at >= 0 && isAfterJoin(steps[at])) at -= 1;
  const step = steps[at];
  if (step === undefined || step.kind !== 'work' || step.stitch.kind !== 'stitch') return steps;
  if (step.stitch.id !== 'sl-st' && !closesWithStitch(step, steps.slice(0, at))) return steps;
  const { place } = step;
  if (place === null || (place.kind !== 'first' && place.kind !== 'of-chain') || at === 0) return steps;
  const join: Step = { kind: 'join', stitch: step.stitch, place, ring: false, span: step.span };
  return [...steps.slice(0, at), join, ...steps.slice(at + 1)];
}

/**
 * `sc in first st, … ch 2, dc in first sc`: a stitch taller than the one it goes into, behind a chain, where the round
 * begins with such a one. With the chain it stands for the last space.
 */
function closesWithStitch({ stitch, times, place }: WorkStep, before: readonly Step[]): boolean {
  const ahead = before.findLast(({ kind }) => kind !== 'skip');
  const one = times === null || times.values.every((value) => value === 1);
  if (stitch.kind !== 'stitch' || !one || ahead?.kind !== 'chain') return false;
  if (place?.kind !== 'first' || place.n !== null || place.what.kind !== 'stitch') return false;
  const begun = before.find(
    (each) => each.kind === 'group' || each.kind === 'repeat' || (each.kind === 'work' && !slips(each)),
  );
  const first = firstInside(begun);
  const same = first?.kind === 'work' && first.stitch.kind === 'stitch' && first.stitch.id === place.what.id;
  return same && stitchById(stitch.id).heightChains > stitchById(place.what.id).heightChains;
}

/** Slip stitches on the way to where the round begins are none of it. */
function slips({ stitch }: WorkStep): boolean {
  return stitch.kind === 'stitch' && stitch.id === 'sl-st';
}

function isAfterJoin(step: Step | undefined): boolean {
  if (step === undefined) return false;
  if (step.kind === 'turn' || step.kind === 'note' || step.kind === 'fasten off' || step.kind === 'yarn')
    return true;
  return (
    step.kind === 'work' &&
    step.stitch.kind === 'stitch' &&
    step.stitch.id === 'sl-st' &&
    step.place?.kind === 'next'
  );
}

/** Whether the work is turned after this row: rows are unless it says not, rounds are not unless it says so. */
export function turnsAfter(steps: readonly Step[], unit: Unit | null): boolean {
  const said = steps.findLast((step) => step.kind === 'turn' && step.what !== 'do not join');
  if (said !== undefined && said.kind === 'turn') return said.what === 'turn';
  return unit === 'row';
}

/**
 * `(ch 4, sl st in next 2 sts) 6 times`: a chain in a repeat, too long to rise to the slip stitch or single crochet that
 * ties it down, is a loop in every pass.
 */
export function beginsWithLoop(steps: readonly Step[], below: Top['closing'] | undefined): boolean {
  const first = steps.find((step) => !isIdleStart(step));
  if (first?.kind !== 'repeat' && first?.kind !== 'bracket') return false;
  const [chain, ...rest] = first.body;
  if (chain?.kind !== 'chain' || chain.counts !== null || 'of' in chain.n) return false;
  const ties = rest.find(({ kind }) => kind !== 'skip' && kind !== 'note');
  if (ties?.kind !== 'work' || ties.stitch.kind !== 'stitch') return false;
  const height = stitchById(ties.stitch.id).heightChains;
  // In a spiral nothing rises: `*ch 1, sk next st, sc in next 3 sts* 12 times` has a hole where it begins.
  const least = below === 'spiral' && rest[0]?.kind === 'skip' ? 1 : height + 1;
  return height <= 1 && chain.n.values.every((n) => n !== null && n >= least);
}

/** Whether the first thing worked goes into a magic ring, chains left aside. */
export function beginsMagicRing(steps: readonly Step[]): boolean {
  for (const step of steps) {
    if (step.kind === 'repeat' || step.kind === 'bracket') return beginsMagicRing(step.body);
    if (step.kind === 'work' || step.kind === 'group') return step.place?.kind === 'ring' && step.place.magic;
  }
  return false;
}
