/** Facts about worked rows and rounds in, the words of a fault out: one function per code. */

import type { Wording } from '../diagnostic.ts';

export const workFaults = {
  'row/unworked': ({ row, left, said, below, unit, used }: Unworked): Wording => ({
    severity: 'error',
    message: `${row} leaves ${left === 0 ? 'none' : left} of the ${below} ${unit === 'space' ? 'spaces' : 'stitches'} below unworked${said === null ? '' : `, but says that it leaves ${said}`}`,
    why: `${used === null ? `It uses ${below - left}` : sentence(used)}. A row has to account for all of the row below, or makers will wonder where to stop.`,
    try:
      said === null
        ? `work or skip the ${left === 1 ? 'one' : left} left, or change how far the row goes.`
        : `change how far the row goes, or leave ${left}.`,
  }),
  'row/used-up': ({ row, wanted, below, used }: UsedUp): Wording => ({
    severity: 'error',
    message: `${row} asks for another ${wanted}, but the row below has none left`,
    why:
      below === null
        ? 'There is nowhere to put the stitch.'
        : `The row below has ${below} to work into and they are all used${used === null ? '' : `: ${used}`}.`,
    try: 'check how many are skipped, how often the repeat goes, and what the row below makes.',
  }),
  'row/too-few': ({ row, n, left, what, goesOn, used }: TooFew): Wording => ({
    severity: 'error',
    message: `${row} ${goesOn ? 'goes on to' : 'goes into'} the last ${n} ${what}, but ${left === 0 ? 'none is' : left === 1 ? 'only 1 is' : `only ${left} are`} left`,
    why: `${used === null ? '' : `${sentence(used)}. `}What stands before has used up more of the row below than these words leave room for.`,
    try: 'check how many are worked before, and what the row below makes.',
  }),
  'row/twice': ({ row, which }: { readonly row: string; readonly which: string }): Wording => ({
    severity: 'warning',
    message: `${row} works into the ${which} stitch again, and does not say that it means to`,
    why: 'Makers take it for a slip of the count, or leave one of the two out.',
    try: `say it where it is meant, such as "2 sc in ${which} st", or stop the stitches before it one sooner.`,
  }),
  'row/passed-over': ({ row, count, wanted }: PassedOver): Wording => ({
    severity: 'error',
    message: `${row} goes to the ${wanted} with ${count === 1 ? 'one stitch' : `${count} stitches`} before it unworked`,
    why: 'Those stitches are neither worked nor skipped in words.',
    try: `write "sk next ${count === 1 ? 'st' : `${count} sts`}" before it if they are to be skipped.`,
  }),
  'row/nothing-below': ({ row }: RowOnly): Wording => ({
    severity: 'error',
    message: `${row} has nothing to be worked into`,
    why: 'No chain, ring or earlier row comes before it.',
    try: 'begin with a chain ("Ch 25.") or a ring ("6 sc in magic ring"), or say which part it goes on from with onto:.',
  }),
  'row/after-join': ({ row }: RowOnly): Wording => ({
    severity: 'error',
    message: `${row} works on after it has been joined`,
    why: 'The join closes the round; what comes after it belongs to the next.',
    try: 'move the join to the end, or begin a new round after it.',
  }),
  'row/no-such': ({ row, wanted }: { readonly row: string; readonly wanted: string }): Wording => ({
    severity: 'error',
    message: `${row} repeats ${wanted}, which is not written`,
    why: 'There is nothing to repeat.',
    try: 'repeat a row that stands above.',
  }),
  'row/out-of-order': ({ row, expected }: { readonly row: string; readonly expected: string }): Wording => ({
    severity: 'error',
    message: `${row} stands where ${expected} should be`,
    why: 'Readers tick off rows by number; a gap or a double makes them lose their place.',
    try: `number it ${expected}, or write the rows between.`,
  }),
  'row/how-many': ({ row, size }: { readonly row: string; readonly size: string }): Wording => ({
    severity: 'error',
    message: `${row} goes on to a height that ${sizeName(size)} does not give`,
    why: 'It cannot be told how many rows to work.',
    try: 'give the size a height: (with a gauge) or rows:.',
  }),
  'row/open-length': ({ rows }: { readonly rows: number }): Wording => ({
    severity: 'note',
    message: `how often these rows are repeated is left to the maker; ${rows === 1 ? 'one row of them is' : `${rows} rows of them are`} worked here`,
    why: 'The stitches are checked once through; the length and the yarn for it are not reckoned.',
    try: 'nothing need be done; a height for the size, with a gauge, or its rows would tell more.',
  }),
  'row/too-many': ({ row, limit }: { readonly row: string; readonly limit: number }): Wording => ({
    severity: 'error',
    message: `the rows from ${row} on are more than can be worked; ${limit.toLocaleString('en')} is the most`,
    why: 'No piece has that many; a number is likely wrong.',
    try: 'check how far the range goes, or how often the rows are repeated.',
  }),
  'row/ending': ({ rows, size, ending, ends }: Ending): Wording => ({
    severity: 'error',
    message: `${sizeName(size)} has ${rows} rows and would end with a Row ${ends}, not a Row ${ending}`,
    why: 'The instructions say which row comes last.',
    try: `give it ${rows - 1} or ${rows + 1} rows, whichever ends with a Row ${ending}.`,
  }),
  'size/no-repeats': ({ size }: { readonly size: string }): Wording => ({
    severity: 'error',
    message: `${sizeName(size)} does not say how many pattern repeats it has`,
    why: 'The foundation is "a multiple of" some stitches, and it cannot be told which.',
    try: 'give the size repeats:, or a width: together with a gauge:.',
  }),
  'place/not-there': ({ row, wanted, found, nth }: NotThere): Wording => ({
    severity: 'error',
    message: `${row} goes into the ${wanted}, but ${found === 'nothing' ? 'there is none' : `what comes next is a ${found}`}`,
    why:
      nth === null
        ? 'A stitch can only go into what is there.'
        : `It is number ${nth} along the row below; a maker following the words would be lost there.`,
    try:
      found === 'nothing'
        ? 'name a place that is there.'
        : `name the ${found}, or skip to the ${wanted} first.`,
  }),
  'place/no-chain': ({ row, wanted, chains }: NoChain): Wording => ({
    severity: 'error',
    message: `${row} needs ${wanted}, which is not there`,
    why: `A stitch can only go into a chain that was made${chains > 0 ? `, and ${chains} ${chains === 1 ? 'was' : 'were'}` : ''}.`,
    try: 'check the number of chains it begins with.',
  }),
  'place/which-stitch': ({ row, special }: { readonly row: string; readonly special: string }): Wording => ({
    severity: 'error',
    message: `${row} works into a ${special}, but that stitch of it is not there`,
    why: `A maker could not tell which stitch of the ${special} is meant.`,
    try: `name one that is there, such as "first dc of next ${special}".`,
  }),
  'place/no-edge': ({ row, edge }: { readonly row: string; readonly edge: string }): Wording =>
    edge === 'sides'
      ? {
          severity: 'error',
          message: `${row} goes along the sides of joined pieces, and how many stitches those are is not said`,
          why: 'What was sewn or worked together has no edge of its own here to be counted.',
          try: 'say how many there are in all and along each side: "(540 sts, 116 along each short side and 154 along each long side)".',
        }
      : {
          severity: 'error',
          message: `${row} goes along ${edge === 'foundation' ? 'the foundation chain' : edge === 'last row' ? 'the last row' : edge}, and there ${edge === 'opening' ? 'is no one hole that chains went over' : 'are none left to go along'}`,
          why: 'Only a flat piece that begins with a chain has two sides and a foundation.',
          try: 'check the order: last row, one side, foundation, other side.',
        },
  'stitch/legs': ({
    stitch,
    legs,
    given,
  }: {
    readonly stitch: string;
    readonly legs: number;
    readonly given: number;
  }): Wording => ({
    severity: 'error',
    message: `${stitch} draws ${legs} together, but is worked over ${given}`,
    why: `It takes ${legs} places, so ${given} do not divide.`,
    try: `write "over next ${legs} sts".`,
  }),
  'repeat/uneven': (facts: Uneven): Wording => ({
    severity: 'error',
    message: `the repeat in ${facts.row} does not come out even: ${arithmetic(facts)}`,
    why: `${division(facts)}A maker would end in the middle of a repeat.`,
    try: evenly(facts),
  }),
  'repeat/endless': ({ row }: RowOnly): Wording => ({
    severity: 'error',
    message: `the repeat in ${row} uses up nothing, so it would never come to an end`,
    why: 'To go "across" or "around", each pass has to work into the row below.',
    try: 'say how many times instead, or add where it is worked.',
  }),
  'repeat/two-senses': ({ row, times, fits }: TwoSenses): Wording => ({
    severity: 'error',
    message: `"rep from * ${times} times" in ${row} can mean ${times} or ${times + 1} in all, and ${fits === 'both' ? 'both come out' : 'neither comes out'}`,
    why: 'Published patterns use it in both senses, so makers will differ.',
    try: `write "${times} more times", or put the repeat in brackets with "${times} times" for ${times} in all.`,
  }),
  'join/not-there': ({
    row,
    wanted,
    found,
  }: {
    readonly row: string;
    readonly wanted: string;
    readonly found: string;
  }): Wording => ({
    severity: 'error',
    message: `${row} joins in the ${wanted}, but it begins with a ${found}`,
    why: 'A round closes where it began.',
    try: `join in the first ${found}.`,
  }),
  'chain/unstated': ({ chains, as, counts, skipped }: ChainUnstated): Wording => ({
    severity: 'warning',
    message: `it is not said whether ${skipped ? `the ${chains} chains skipped count` : `ch ${chains} counts`} as a ${as}; ${skipped ? 'they were' : 'it was'} taken ${counts ? 'to count' : 'not to count'}`,
    why: 'Habits differ, and makers who read it the other way end a stitch out.',
    try: skipped
      ? `write "(skipped ${chains} ch count as ${as})" or "(skipped ${chains} ch do not count as a st)" after it.`
      : `write "ch ${chains} (counts as ${as})" or "ch ${chains} (does not count as a st)".`,
  }),
  'yarn/unused': ({ letter }: { readonly letter: string }): Wording => ({
    severity: 'warning',
    message: `yarn ${letter} is listed but no row uses it`,
    why: 'Makers would buy it for nothing, or look for where it goes.',
    try: `say where it comes in ("with ${letter}"), or take it off the list.`,
  }),
  'special/unused': ({ name }: { readonly name: string }): Wording => ({
    severity: 'warning',
    message: `"${name}" is described but never worked`,
    why: 'Readers would look for it in the rows.',
    try: 'use it, or take it out.',
  }),
  'special/circular': ({ name }: { readonly name: string }): Wording => ({
    severity: 'error',
    message: `"${name}" is described by way of itself`,
    why: 'It never comes down to stitches that a maker could work.',
    try: 'describe it in stitches, such as "5 dc in same st".',
  }),
  'size/too-many': ({ size, limit }: { readonly size: string; readonly limit: number }): Wording => ({
    severity: 'error',
    message: `the sizes from ${size} on are not worked: all sizes together may come to ${limit.toLocaleString('en')} stitches and steps`,
    why: 'All sizes of a pattern together are far less; a number is likely wrong.',
    try: 'check the repeats and the numbers of the larger sizes.',
  }),
  'size/too-large': ({ row, limit, inPlace }: TooLarge): Wording => ({
    severity: 'error',
    message:
      inPlace === undefined
        ? `${row} is more than can be worked; ${limit.toLocaleString('en')} stitches is the most`
        : `${row} asks for ${inPlace.toLocaleString('en')} stitches in one place; ${limit.toLocaleString('en')} is the most`,
    why: 'That is more than any piece has; a number is likely wrong.',
    try: 'check the repeats and sizes.',
  }),
} as const;

interface TooLarge {
  readonly row: string;
  readonly limit: number;
  /** How many are asked for in one place, where that is what is too many. */
  readonly inPlace?: number;
}

interface RowOnly {
  /** `Row 3`, as the pattern writes it. */
  readonly row: string;
}

interface ChainUnstated {
  readonly chains: number;
  readonly as: string;
  readonly counts: boolean;
  /** Chains skipped before the first stitch of row 1, rather than a turning chain. */
  readonly skipped: boolean;
}

interface TooFew extends RowOnly {
  readonly n: number;
  readonly left: number;
  /** `sts`. */
  readonly what: string;
  readonly goesOn: boolean;
  readonly used: string | null;
}

interface Unworked extends RowOnly {
  readonly left: number;
  /** How many the row says it leaves; null where it says none. */
  readonly said: number | null;
  readonly below: number;
  readonly unit: 'stitch' | 'space';
  /** `the repeat uses 6, 8 times = 48; the ends use 2 + 5: 55`; null for a row without a repeat. */
  readonly used: string | null;
}

interface UsedUp extends RowOnly {
  readonly wanted: string;
  /** How many the row below has, null when that is not known. */
  readonly below: number | null;
  /** How they were used, as in Unworked. */
  readonly used: string | null;
}

interface NoChain extends RowOnly {
  readonly wanted: string;
  /** Chains there are to go into, 0 when there are none or it is not known. */
  readonly chains: number;
}

interface PassedOver extends RowOnly {
  readonly count: number;
  readonly wanted: string;
}

interface Ending {
  readonly rows: number;
  readonly size: string;
  readonly ending: number;
  readonly ends: number;
}

interface NotThere extends RowOnly {
  readonly wanted: string;
  readonly found: string;
  readonly nth: number | null;
}

interface Uneven extends RowOnly {
  /** By one whole pass; 0 when not one fits. */
  readonly uses: number;
  readonly passes: number;
  /** By all of them together: the last may be a short one. */
  readonly used: number;
  /** By what follows the repeat. */
  readonly after: number;
  readonly available: number;
  /** By what stands before it, and how many the row below has in all. */
  readonly before: number;
  readonly below: number;
  readonly ofChains: boolean;
  readonly upTo:
    | { readonly kind: 'last'; readonly n: number }
    | { readonly kind: 'next'; readonly what: string }
    | null;
  readonly unit: 'stitch' | 'space';
}

interface TwoSenses extends RowOnly {
  readonly times: number;
  readonly fits: 'both' | 'neither';
}

/** `it uses 6 stitches, so 6 times is 36 of 38, which leaves 2 over`. */
function arithmetic({ uses, passes, used, after, available, upTo, unit }: Uneven): string {
  if (upTo?.kind === 'last' && passes === 0 && available < upTo.n)
    return `it stops before the last ${upTo.n}, but ${available === 0 ? 'none are' : available === 1 ? 'only 1 is' : `only ${available} are`} left`;
  if (uses === 0) return `no whole repeat fits into ${things(available, unit)}`;
  const short = used - passes * uses;
  const each = `it uses ${things(uses, unit)}${short < 0 ? `, the last time ${uses + short}` : ''}`;
  const followed = after > 0 ? `, and with ${after} for what follows ${used + after}` : '';
  const room =
    upTo === null
      ? available
      : `the ${available} ${upTo.kind === 'last' ? `before the last ${upTo.n}` : `up to the next ${upTo.what}`}`;
  return `${each}, so ${passes === 1 ? 'once' : `${passes} times`} is ${used}${followed} of ${room}, which leaves ${available - used - after} over`;
}

/** `The row below has 55 and the ends use 2: 55 - 2 = 53, which is 8 x 6 and 5 over.` */
function division({
  uses,
  passes,
  used,
  after,
  available,
  before,
  below,
  upTo,
  unit,
  ofChains,
}: Uneven): string {
  if (uses === 0 || used !== passes * uses || upTo?.kind === 'next') return '';
  const ends = below - available + after;
  const room = below - ends;
  if (room <= 0 || room % uses === 0 || before > ends) return '';
  const has = `${ofChains ? 'The chain' : 'The row below'} has ${unit === 'space' ? things(below, unit) : below}`;
  const rest = ends === 0 ? `${has}` : `${has} and the ends use ${ends}: ${below} - ${ends} = ${room}`;
  return `${rest}, which is ${Math.floor(room / uses)} x ${uses} and ${room % uses} over. `;
}

function evenly(facts: Uneven): string {
  const { uses, passes, used, after, available, upTo, unit, ofChains } = facts;
  const otherwise = 'change where the repeat ends, or what the row below makes.';
  if (uses === 0) return otherwise;
  const rest = (used + after - passes * uses + uses) % uses;
  // The number is right as it is; something else in the row below is not as the repeat has it.
  if (available % uses === rest) return otherwise;
  const over = unit === 'space' ? 'spaces' : 'stitches';
  if (upTo?.kind === 'next')
    return `make the ${over} up to the ${upTo.what} ${multiple(uses, rest)}, or change where the repeat ends.`;
  const wanted = multiple(uses, (rest + facts.below - available) % uses);
  const change = ofChains ? `make the chain ${wanted}` : `give the row below ${wanted} ${over}`;
  return `${change}, such as ${nearest(facts, rest)}, or change where the repeat ends.`;
}

/** `a multiple of 6 plus 2`. */
function multiple(of: number, plus: number): string {
  return `a multiple of ${of}${plus > 0 ? ` plus ${plus}` : ''}`;
}

/** The numbers that come out on either side of the one there is: `50 or 56`. */
function nearest({ uses, below, available }: Uneven, rest: number): string {
  const ends = rest + below - available;
  const lower = below - ((((below - ends) % uses) + uses) % uses);
  return lower > ends ? `${lower} or ${lower + uses}` : `${lower + uses}`;
}

function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** A pattern that lists no sizes has one, which nobody would call by a name. */
function sizeName(size: string): string {
  return size === 'one size' ? 'the pattern' : `size ${size}`;
}

function things(n: number, unit: 'stitch' | 'space'): string {
  const plural = unit === 'stitch' ? 'stitches' : 'spaces';
  return n === 1 ? `1 ${unit}` : `${n} ${plural}`;
}
