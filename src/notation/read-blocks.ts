/** Blocks worked from corner to corner and written out, `ch 6, dc in 4th ch from hook, dc in next 2 ch`, as the stitches they are. */

import type { Num } from './num.ts';
import type { GroupStep, Step, StitchName, Stop, WorkStep } from './tree.ts';

/** What the blocks of a text are made of. */
export interface BlockShape {
  readonly stitch: string;
  /** What the pattern calls the one that a row begins with. */
  readonly begins: string;
  /** The chain a row begins with, which of its chains is worked into first, and how many after that one. */
  readonly chains: number;
  readonly nth: number;
  readonly more: number;
  /** Chains from the space below up to the top of the block. */
  readonly rise: number;
}

/** Puts one step for the last three where they are a block. */
export function foldBlock(steps: Step[], shape: BlockShape): void {
  const last = steps.at(-1);
  const told = last?.kind === 'group' ? groupedBlock(last, shape) : null;
  if (told !== null) {
    steps.splice(-1, 1, told);
    return;
  }
  const turned = last === undefined ? null : repeatedBlocks(steps.at(-2), last, shape);
  if (turned !== null) {
    steps.splice(-2, 2, ...turned);
    return;
  }
  const [first, second, third] = steps.slice(-3);
  if (first === undefined || second === undefined || third === undefined) return;
  const before = steps.at(-4);
  // `Ch 6, turn, dc in 4th ch from hook`: turned with the chain made, which changes nothing of the block.
  if (first.kind === 'turn' && first.what === 'turn' && before?.kind === 'chain') {
    const turned = beginningBlock(before, second, third, shape);
    if (turned !== null) steps.splice(-4, 4, first, turned);
    return;
  }
  const block = beginningBlock(first, second, third, shape) ?? nextBlock(first, second, third, shape);
  if (block !== null) steps.splice(-3, 3, block);
}

function beginningBlock(chain: Step, work: Step, last: Step, shape: BlockShape): Step | null {
  if (chain.kind !== 'chain' || 'of' in chain.n || !isOnly(chain.n, shape.chains)) return null;
  if (!isStitch(work, shape) || !isStitch(last, shape)) return null;
  const from = work.place?.kind === 'from-hook' && isOnly(work.place.nth, shape.nth);
  const next =
    last.place?.kind === 'next' && isOnly(last.place.n, shape.more) && last.place.what.kind === 'ch';
  return from && next ? named(shape.begins, null, chain, last) : null;
}

function nextBlock(slip: Step, chain: Step, work: Step, shape: BlockShape): Step | null {
  if (slip.kind !== 'work' || slip.stitch.kind !== 'stitch' || slip.stitch.id !== 'sl-st') return null;
  if (chain.kind !== 'chain' || 'of' in chain.n || !isOnly(chain.n, shape.rise)) return null;
  const { place } = slip;
  const into = place !== null && 'what' in place && place.what.kind === 'space';
  const same = isStitch(work, shape) && work.place?.kind === 'same' && isOnly(work.times, shape.more + 1);
  return into && same ? named('block', place, slip, work) : null;
}

/** `(sl st, ch 3, 3 dc) in next ch-3 sp`. */
function groupedBlock(group: GroupStep, shape: BlockShape): Step | null {
  const [slip, chain, work, more] = group.body;
  if (slip?.kind !== 'work' || slip.stitch.kind !== 'stitch' || slip.stitch.id !== 'sl-st') return null;
  if (chain?.kind !== 'chain' || 'of' in chain.n || !isOnly(chain.n, shape.rise)) return null;
  if (work === undefined || more !== undefined || !isStitch(work, shape)) return null;
  const { place } = group;
  const into = 'what' in place && place.what.kind === 'space';
  const whole = slip.place === null && work.place === null && isOnly(work.times, shape.more + 1);
  return into && whole ? named('block', place, group, group) : null;
}

/**
 * `sl st in ch-3 sp, [ch 3, 3 dc in same sp, sl st in next ch-3 sp] 11 times`: as many blocks, each begun with the slip
 * stitch before it, and the last of those behind them.
 */
function repeatedBlocks(before: Step | undefined, last: Step, shape: BlockShape): readonly Step[] | null {
  if (before?.kind !== 'work' || (last.kind !== 'bracket' && last.kind !== 'repeat')) return null;
  if (last.kind === 'repeat' && (last.lastPassEnds !== null || last.endsWith !== undefined)) return null;
  const [chain, work, slip, more] = last.body;
  if (chain === undefined || work === undefined || slip?.kind !== 'work' || more !== undefined) return null;
  const first = nextBlock(before, chain, work, shape);
  const next = first === null ? null : nextBlock(slip, chain, work, shape);
  const { place } = slip;
  if (next === null || place?.kind !== 'next' || place.n !== null) return null;
  const { stop } = last;
  const leaving: Stop = {
    kind: 'leaving',
    n: { values: [1], span: stop.span },
    what: place.what,
    span: stop.span,
  };
  if (stop.kind !== 'times' && stop.kind !== 'end') return null;
  return [{ ...last, body: [next], stop: stop.kind === 'end' ? leaving : stop }, slip];
}

function isStitch(step: Step, { stitch }: BlockShape): step is WorkStep {
  return step.kind === 'work' && step.stitch.kind === 'stitch' && step.stitch.id === stitch;
}

function isOnly(n: Num | null, value: number): boolean {
  return n?.values.every((one) => one === value) === true;
}

function named(name: string, place: WorkStep['place'], from: Step, to: Step): WorkStep {
  const span = { start: from.span.start, end: to.span.end };
  const stitch: StitchName = { kind: 'special', name, span };
  return { kind: 'work', stitch, times: null, place, loop: 'both', skipped: null, span };
}
