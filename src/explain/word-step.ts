/** One step and what it made in, its term of the row's sum out: `2 in the first sc`, `1 in each of 24`, `ch 3 is 1`. */

import { describeCounted } from '../notation/describe-counted.ts';
import { abbreviation, describeWhat } from '../notation/describe-what.ts';
import { ordinal } from '../notation/ordinal.ts';
import type { Place, What, WorkStep } from '../notation/tree.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { stitchById } from '../stitches/table.ts';
import type { StepAccount } from './row-account.ts';

/** For a step that makes a stitch at least. */
export function wordStep(account: StepAccount, terms: Terms): string {
  const { step, made, chains } = account;
  const n = made.stitches;
  switch (step.kind) {
    case 'chain':
      return `ch ${chains} is ${n}`;
    case 'work':
      return wordWork(account, step, terms);
    case 'group':
      return wordGroup(account, step.place, terms);
    case 'evenly':
      if (step.edge === 'elsewhere') return `${n} ${step.side?.said ?? ''}`;
      return `${n} evenly ${step.edge === 'row ends' ? 'along the row ends' : 'spread'}`;
    case 'yarn':
      return `${n} where ${step.yarn ?? 'yarn'} is joined`;
    default:
      return String(n);
  }
}

/** `7 in each of 11 ch sps = 77`, `5 in the same ch sp`. */
function wordGroup({ made, into }: StepAccount, place: Place, terms: Terms): string {
  const n = made.stitches;
  const what: What | null = 'what' in place ? place.what : null;
  const count = what?.kind === 'space' ? into.spaces : into.stitches;
  if (what === null || count < 2 || n % count !== 0) return `${n} ${where(place, terms)}`;
  return `${n / count} in each of ${count} ${describeCounted(what, count, terms)} = ${n}`;
}

function wordWork(account: StepAccount, step: WorkStep, terms: Terms): string {
  const { place } = step;
  const n = account.made.stitches;
  const named = step.stitch.kind === 'special' && n > 1 ? ` (${step.stitch.name})` : '';
  if (place !== null && place.kind !== 'each' && place.kind !== 'next')
    return `${n}${named} ${places(account, place, terms)}`;
  const what: What = place?.what ?? { kind: 'st' };
  // Spaces may be passed over on the way to others of their kind.
  const used = what.kind === 'space' ? account.into.spaces : usedOf(account, what);
  if (place?.kind === 'each') return wordEach(account, step, used, what, terms);
  if (used === 0 && place === null)
    return step.stitch.kind === 'stitch' ? `${n} ${abbreviation(step.stitch.id, terms)}` : `${n}${named}`;
  // Whatever the trade passes over on the way, it is one place.
  const one =
    place !== null && place.n === null && step.stitch.kind === 'stitch' && !isDecrease(step.stitch.id);
  if (used <= 1 || one) return `${n}${named} in the next ${describeWhat(what, terms)}`;
  if (n === used) return `${n}${named} in the next ${used}`;
  if (n % used === 0) return `${n / used}${named} in each of the next ${used} = ${n}`;
  return `${n}${named} over the next ${used}`;
}

/** `1 in each of 24`, `2 in each of 6 = 12`, `1 over each 2 of 12 = 6`, `24 and 6 more = 30`. */
function wordEach(account: StepAccount, step: WorkStep, used: number, what: What, terms: Terms): string {
  const n = account.made.stitches;
  const of = what.kind === 'space' ? `${used} ${describeCounted(what, used, terms)}` : String(used);
  if (step.corners !== undefined) return wordCorners(account);
  if (used === 0)
    return `${n} along the ${what.kind === 'ch' ? 'ch' : what.kind === 'row-end' ? 'row ends' : 'sts'}`;
  if (step.shaping !== undefined && n !== used)
    return n > used ? `${used} and ${n - used} more = ${n}` : `${used} less ${used - n} = ${n}`;
  if (n === 1 && used === 1) return `1 in the next ${describeWhat(what, terms)}`;
  if (n === used) return `1 in each of ${of}`;
  if (n % used === 0) return `${n / used} in each of ${of} = ${n}`;
  if (used % n === 0) return `1 over each ${used / n} of ${of} = ${n}`;
  return `${n} over ${of}`;
}

/** `24 and 3 in each of 4 corner sps = 36`. */
function wordCorners({ made, into, inSpaces }: StepAccount): string {
  const n = made.stitches;
  const rest = n - inSpaces;
  if (into.spaces === 0 || rest <= 0 || inSpaces % into.spaces !== 0) return `${n} with the corners`;
  const sps = into.spaces === 1 ? 'sp' : 'sps';
  return `${rest} and ${inSpaces / into.spaces} in each of ${into.spaces} ${sps} = ${n}`;
}

function isDecrease(id: string): boolean {
  return stitchById(id).uses > 1;
}

function places(account: StepAccount, place: Place, terms: Terms): string {
  const used = usedOf(account, 'what' in place ? place.what : { kind: 'st' });
  // The places before it are passed with it.
  if (place.kind === 'from-hook') return `in the ${ordinal(used)} ch`;
  const several = place.kind === 'last' && place.n !== null && used > 1;
  return several ? `in the last ${used}` : where(place, terms);
}

function usedOf({ used }: StepAccount, what: What): number {
  if (used === null) return 0;
  if (what.kind === 'any-of' && what.of.some(({ kind }) => kind === 'space'))
    return used.stitches + used.spaces;
  return what.kind === 'space' ? used.spaces : used.stitches;
}

function where(place: Place, terms: Terms): string {
  switch (place.kind) {
    case 'next':
      return `in the next ${describeWhat(place.what, terms)}`;
    case 'each':
      return `in each ${describeWhat(place.what, terms)}`;
    case 'same':
      return `in the same ${describeWhat(place.what, terms)}`;
    case 'just-made':
      return `in the ${describeWhat(place.what, terms)} just made`;
    case 'first':
      return `in the first ${describeWhat(place.what, terms)}`;
    case 'last':
      return `in the last ${describeWhat(place.what, terms)}`;
    case 'any':
      return `in a ${describeWhat(place.what, terms)}`;
    case 'from-hook':
      return 'in the ch';
    case 'of-chain':
      return `in the ${place.where === 'turning' ? 'tch' : 'beg ch'}`;
    case 'of-special':
      return `in the ${place.last === true ? 'last' : 'next'} ${place.special}`;
    case 'of-group':
      if (place.shape !== undefined) return `in the next ${place.shape}`;
      return `in ${place.any === true ? 'any' : 'the next'} ${place.n} ${describeWhat(place.what, terms)}`;
    case 'of-space':
      return 'in the next ch sp';
    case 'last-made':
      return `${place.stem === true ? 'half way up' : 'in'} the ${describeWhat(place.what, terms)} just made`;
    case 'ring':
      return 'in the ring';
    case 'left-over':
      return `in the ${describeWhat(place.what, terms)} left over`;
    case 'row-edge':
      return `at the side ${place.back} rows below`;
    case 'passed':
      return `in a skipped ${describeWhat(place.what, terms)}`;
    case 'gap':
      return place.each === undefined ? 'in the next gap' : 'in the gaps';
    case 'below':
      return `in a st ${place.rows} ${place.unit === 'row' ? 'rows' : 'rnds'} below`;
  }
}
