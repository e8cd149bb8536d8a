/** Facts about a pattern as it would be published in, the words of a fault out: one function per code. */

import type { Wording } from '../diagnostic.ts';

export const publicationFaults = {
  'allow/unknown': ({
    code,
    nearest,
  }: {
    readonly code: string;
    readonly nearest: string | null;
  }): Wording => ({
    severity: 'error',
    message: `"${code}" is not the code of anything that is checked`,
    why: 'It silences nothing, and what it was meant for is still told.',
    try:
      nearest === null
        ? 'copy the code from the fault itself: it stands behind the place, with a stroke in it.'
        : `write ${nearest}:`,
  }),
  'allow/error': ({ code, ofAllow }: { readonly code: string; readonly ofAllow: boolean }): Wording => ({
    severity: 'error',
    message: ofAllow
      ? `${code} is about this list itself, and cannot be silenced by it`
      : `${code} is an error, and an error cannot be silenced`,
    why: ofAllow
      ? 'A list that hides its own faults could not be trusted.'
      : 'The work would come out wrong for every maker, whatever the reason.',
    try: 'take this line out, and mend what is told.',
  }),
  'allow/no-reason': ({ code }: { readonly code: string }): Wording => ({
    severity: 'error',
    message: `no reason is given for silencing ${code}`,
    why: 'Whoever works on the pattern next could not tell a choice from an oversight.',
    try: `say why after the colon, like  ${code}: B is for the border, published apart.`,
  }),
  'change/later': ({ change, version }: { readonly change: string; readonly version: string }): Wording => ({
    severity: 'warning',
    message: `a change of ${change} is listed, but the version is of ${version}`,
    why: 'Readers tell by the date whether what they have printed already has the change.',
    try: `write  date: ${change}  and a new version number, or mend the day of the change.`,
  }),
  'allow/unneeded': ({ code }: { readonly code: string }): Wording => ({
    severity: 'note',
    message: `${code} is silenced, but there is none`,
    why: 'The next one would go untold.',
    try: 'take this line out.',
  }),
  'terms/mixed': ({ word, terms, other, own }: TermsMixed): Wording => ({
    severity: 'warning',
    message: `"${word}" is a ${other} word, and this pattern is in ${terms} terms`,
    why: 'A reader takes it for a sign that the stitches are in the other terms too.',
    try: own === null ? `say it in ${terms} terms.` : `write "${own}".`,
  }),
  'size/falling': ({ size, before, side, is, was }: SizeFalling): Wording => ({
    severity: 'warning',
    message: `size ${size} comes after ${before}, but is ${is} ${side === 'width' ? 'wide' : 'high'} where that is ${was}`,
    why: 'Readers take the numbers in brackets to go from the smallest size to the largest.',
    try: 'put the sizes in order, smallest first, and the numbers of every list with them; or check the figures.',
  }),
  'size/numbers-fall': ({
    numbers,
    others,
  }: {
    readonly numbers: string;
    readonly others: number;
  }): Wording => ({
    severity: 'warning',
    message: `${numbers} goes up and down, while ${others === 1 ? 'the other list of numbers rises' : `all ${others} other lists of numbers rise`} from size to size`,
    why: 'Two numbers may have changed places, and two sizes would be made wrong.',
    try: 'check the order of the numbers against the sizes.',
  }),
  'size/otherwise': ({ side, stated, made, within }: SizeOtherwise): Wording => ({
    severity: 'warning',
    message: `the ${side} is stated as ${stated}, but by the gauge it comes out at ${made}`,
    why: `That is further off than ${within}: a maker who keeps to the gauge gets another size than she chose.`,
    try: 'check the gauge, the stitches and rows, and the size stated.',
  }),
  'gauge/missing': (): Wording => ({
    severity: 'warning',
    message: 'a finished size is stated, but no gauge',
    why: 'A maker cannot tell whether hers will come out that size, and the yarn cannot be reckoned.',
    try: 'add the gauge of your swatch, like  gauge: {stitches: 16, rows: 18, over: 10 cm, of: single crochet}',
  }),
  'gauge/repeat-unknown': (): Wording => ({
    severity: 'warning',
    message: 'the gauge counts pattern repeats, and nothing says how many stitches one is',
    why: 'Without that neither sizes nor yarn can be worked out from it.',
    try: 'write the foundation as "a multiple of 6 plus 2", or add to the gauge how many stitches those repeats are, like  stitches: 12',
  }),
  'gauge/repeat': ({ repeats, each, made, stated }: GaugeRepeat): Wording => ({
    severity: 'warning',
    message: `${repeats} ${repeats === 1 ? 'repeat' : 'repeats'} of ${each} stitches are ${made}, but the gauge says ${stated}`,
    why: 'Sizes and yarn are worked out from the gauge, and would come out wrong by as much.',
    try: `leave out the stitches, which are then ${made}, or check the repeats.`,
  }),
  'gauge/unlikely': ({ stitches, of, weight, usual, beside }: GaugeUnlikely): Wording => ({
    severity: 'note',
    message: `${stitches} ${of} over 10 cm is unusual in ${weight} yarn`,
    why: `The Craft Yarn Council's yarn weights give it ${usual}, and with the weights beside it ${beside}.`,
    try: 'check the gauge, what it is measured over, and the weight of the yarn.',
  }),
  'hook/unlikely': ({ hook, weight, usual, beside }: HookUnlikely): Wording => ({
    severity: 'note',
    message: `a ${hook} hook is unusual with ${weight} yarn`,
    why: `The Craft Yarn Council's yarn weights give it ${usual}, and with the weights beside it ${beside}.`,
    try: 'check the hook and the weight of the yarn.',
  }),
  'hook/letter': ({ mm, us, is }: HookLetter): Wording => ({
    severity: 'warning',
    message: is === null ? `there is no ${us} hook` : `a hook of ${mm} is not ${us}, which is ${is}`,
    why: 'A maker who goes by the other of the two takes another hook, and gets another size.',
    try: `write the millimetres alone, ${mm} if they are right; the page adds the letter.`,
  }),
  'yarn/too-little': ({ letter, listed, listedM, neededM, size }: TooLittle): Wording => ({
    severity: 'warning',
    message: `${size === null ? '' : `size ${size} needs `}about ${neededM} m of yarn ${letter}${size === null ? ' is needed' : ''}, but ${listed} listed, ${listedM} m`,
    why: 'A maker would run out, and the same dye lot may be gone. The need is reckoned from the gauge, with tails and a tenth more.',
    try: 'list more balls, or check the gauge and the length on the ball.',
  }),
  'edging/ratio': ({ label, stitches, ends, wanted, ruffles }: EdgingRatio): Wording => ({
    severity: 'warning',
    message: `${label} works ${stitches} stitches along ${ends} row ends, which are about as long as ${wanted}`,
    why: `${ruffles ? 'So many more than lie flat make the edge ruffle.' : 'So many fewer pull the edge in.'} It is reckoned from the gauge.`,
    try: `work about ${wanted} stitches there, spread evenly, or check the gauge and how many go into each row end.`,
  }),
  'yarn/used-size': ({ letter, size, names, near }: UsedSize): Wording => ({
    severity: 'error',
    message:
      size === null
        ? `the size is not said for which so much of yarn ${letter} was used`
        : `there is no size ${size}, for which so much of yarn ${letter} was used`,
    why: 'What the other sizes take is worked out from that size, stitch by stitch.',
    try:
      near === null
        ? `write the amount behind one of the sizes: ${names.join(', ')}, such as "used: {${names[0] ?? ''}: 180 g}".`
        : `write ${near}.`,
  }),
  'yarn/used-ball': ({ of }: { readonly of: string }): Wording => ({
    severity: 'error',
    message: `${of} was weighed, but how long a ball is and what it weighs is not said`,
    why: 'Without both nobody can tell how many metres that weight is.',
    try: 'add the ball, such as "ball: {length: 180 m, mass: 100 g}", or write the length that was used.',
  }),
  'chain/two-ways': ({ chain, counts }: { readonly chain: string; readonly counts: boolean }): Wording => ({
    severity: 'warning',
    message: `${chain} ${counts ? 'counts' : 'does not count'} as a stitch here, and elsewhere the pattern says the opposite`,
    why: 'A maker who goes by the other place ends a stitch out.',
    try: 'say the same in both places, or say in the first where it does not hold.',
  }),
} as const;

interface GaugeRepeat {
  readonly repeats: number;
  readonly each: number;
  readonly made: number;
  readonly stated: number;
}

interface TermsMixed {
  readonly word: string;
  readonly terms: string;
  readonly other: string;
  /** What the pattern's own terms say for it; null where they have no word. */
  readonly own: string | null;
}

interface SizeFalling {
  readonly size: string;
  readonly before: string;
  readonly side: 'width' | 'height';
  readonly is: string;
  readonly was: string;
}

interface SizeOtherwise {
  readonly side: 'width' | 'height';
  readonly stated: string;
  readonly made: string;
  /** The tolerance and where it comes from: `5 % (0.8 cm)`. */
  readonly within: string;
}

interface GaugeUnlikely {
  readonly stitches: string;
  /** The stitch it was measured in: `sts of single crochet`. */
  readonly of: string;
  /** `light (3)`. */
  readonly weight: string;
  readonly usual: string;
  readonly beside: string;
}

interface HookUnlikely {
  readonly hook: string;
  readonly weight: string;
  readonly usual: string;
  readonly beside: string;
}

interface HookLetter {
  readonly mm: string;
  readonly us: string;
  /** Millimetres of the hook that bears the letter; null where none does. */
  readonly is: string | null;
}

interface EdgingRatio {
  readonly label: string;
  readonly stitches: number;
  readonly ends: number;
  /** How many would lie flat. */
  readonly wanted: number;
  readonly ruffles: boolean;
}

interface UsedSize {
  readonly letter: string;
  /** Null where none is named. */
  readonly size: string | null;
  readonly names: readonly string[];
  /** The one most likely meant. */
  readonly near: string | null;
}

interface TooLittle {
  readonly letter: string;
  /** `2 balls are`. */
  readonly listed: string;
  readonly listedM: number;
  readonly neededM: number;
  /** Null where the pattern has one size. */
  readonly size: string | null;
}
