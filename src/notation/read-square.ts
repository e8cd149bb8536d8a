/** A square of filet told whole, `ch 2, sk next 2 sts or next ch-2 sp, dc in next dc`: over a space and over a block it is the same square. */

import { stitchById } from '../stitches/table.ts';
import type { Cursor } from './cursor.ts';
import { forgetSince, peek, takeAny } from './cursor.ts';
import { lastOf } from './last-of.ts';
import type { Num } from './num.ts';
import { isNumber } from './read-number.ts';
import { readWhat } from './read-what.ts';
import { readWorkStep } from './read-work.ts';
import type { Step, WorkStep } from './tree.ts';

/** Whether `or next ch-2 sp` stands here behind stitches that are skipped, or `or 2 dc in next ch-2 sp` behind some that are worked. */
export function isOtherGround(cursor: Cursor): boolean {
  const from = cursor.at;
  const ground = takeOtherGround(cursor);
  cursor.at = from;
  return ground !== null;
}

/** At `or`: puts the square in the place of what was read of it. False, with nothing moved, where it is none. */
export function foldSquare(cursor: Cursor, steps: Step[]): boolean {
  const from = cursor.at;
  const faults = cursor.faults.length;
  const ground = takeOtherGround(cursor);
  const inside = ground === null ? null : insideOf(steps, ground);
  if (inside !== null) {
    if (peek(cursor).kind === 'comma') cursor.at += 1;
    takeAny(cursor, 'then', 'and');
    const [post, more] = readWorkStep(cursor) ?? [];
    const stitch = post === undefined || more !== undefined ? null : postOf(post);
    if (post !== undefined && stitch !== null && (inside.stitch === null || inside.stitch === stitch)) {
      const { filled, chains, first, taken, rises } = inside;
      const span = { start: first.span.start, end: post.span.end };
      const begins = rises === null ? {} : ({ begins: true } as const);
      if (rises === null || rises === upright(stitch)) {
        steps.splice(-taken, taken, { kind: 'square', filled, chains, ...begins, of: stitch, span });
        return true;
      }
    }
  }
  cursor.at = from;
  forgetSince(cursor, faults);
  return false;
}

interface Inside {
  readonly filled: boolean;
  readonly chains: number;
  /** What a block is made of; null for a space. */
  readonly stitch: string | null;
  readonly first: Step;
  /** How many of the steps it stands for. */
  readonly taken: number;
  /** Chains for the post that the row begins with; null where it is no first square. */
  readonly rises: number | null;
}

interface Ground {
  readonly chains: number;
  /** `2 dc` that go into it; null where it is skipped. */
  readonly worked: { readonly n: number; readonly stitch: string } | null;
}

/** `or [sk] next ch-2 sp`, `or 2 dc in next ch-2 sp`. */
function takeOtherGround(cursor: Cursor): Ground | null {
  if (takeAny(cursor, 'or') === null) return null;
  if (isNumber(cursor) && peek(cursor, 1).kind === 'word') {
    const [step, more] = readWorkStep(cursor) ?? [];
    if (step?.kind !== 'work' || more !== undefined || step.stitch.kind !== 'stitch') return null;
    const n = only(step.times);
    const what = step.place?.kind === 'next' && step.place.n === null ? step.place.what : null;
    if (n === null || what?.kind !== 'space' || what.chains === null) return null;
    return { chains: what.chains, worked: { n, stitch: step.stitch.id } };
  }
  takeAny(cursor, 'sk', 'skip', 'miss');
  takeAny(cursor, 'the');
  takeAny(cursor, 'next');
  const what = readWhat(cursor);
  return what?.kind === 'space' && what.chains !== null ? { chains: what.chains, worked: null } : null;
}

/** What the steps before say of it over stitches, where that is as wide as it is over a space. */
function insideOf(steps: readonly Step[], { chains, worked }: Ground): Inside | null {
  const last = lastOf(steps);
  const before = steps[steps.length - 2];
  if (last?.kind === 'skip' && worked === null) {
    const skipped = last.pick === 'next' && last.what.kind !== 'space' ? (only(last.n) ?? 1) : 0;
    if (before?.kind !== 'chain' || 'of' in before.n || skipped !== chains) return null;
    const { counts } = before;
    const over = counts === null ? only(before.n) : counts.plusChains;
    if (over !== chains || counts?.as === null) return null;
    const rises = counts === null ? null : (only(before.n) ?? 0) - over;
    return { filled: false, chains, stitch: counts?.as ?? null, first: before, taken: 2, rises };
  }
  if (last?.kind !== 'work' || worked === null || last.stitch.kind !== 'stitch') return null;
  const along = last.place?.kind === 'next' && (last.times === null || only(last.times) === 1);
  const n = along && last.place.what.kind !== 'space' ? (only(last.place.n) ?? 1) : 0;
  const { id } = last.stitch;
  if (n !== chains || worked.n !== chains || id !== worked.stitch) return null;
  const chain = before?.kind === 'chain' && !('of' in before.n) && before.counts?.as === id ? before : null;
  if (chain === null || chain.counts?.plusChains !== 0 || 'of' in chain.n)
    return { filled: true, chains, stitch: id, first: last, taken: 1, rises: null };
  return { filled: true, chains, stitch: id, first: chain, taken: 2, rises: only(chain.n) };
}

/** How many chains stand for a stitch where a row begins. */
function upright(stitch: string): number {
  return stitchById(stitch).turningChain?.chains ?? 1;
}

/** The stitch of a post: one into the next of its kind. */
function postOf(step: Step): string | null {
  if (step.kind !== 'work' || step.stitch.kind !== 'stitch' || !isPlainPlace(step)) return null;
  return only(step.times) === 1 || step.times === null ? step.stitch.id : null;
}

function isPlainPlace({ place, stitch }: WorkStep): boolean {
  if (place?.kind !== 'next' || (place.n !== null && only(place.n) !== 1)) return false;
  const { what } = place;
  return what.kind === 'st' || (what.kind === 'stitch' && stitch.kind === 'stitch' && what.id === stitch.id);
}

function only(n: Num | null): number | null {
  const [first = null] = n?.values ?? [];
  return n?.values.every((one) => one === first) === true ? first : null;
}
