/** What is unlike in rows and rounds that should be alike in, the words of a fault out: one function per code. */

import type { Wording } from '../diagnostic.ts';

export const rowFaults = {
  'row/doubled': ({ row }: RowOnly): Wording => ({
    severity: 'error',
    message: `${row} is given twice`,
    why: 'Makers would not know which of the two to work.',
    try: 'number one of them anew, or take it out of the list.',
  }),
  'row/left-out': ({ row }: RowOnly): Wording => ({
    severity: 'error',
    message: `${row} is not given, though one after it is`,
    why: 'Makers tick off rows by number; a gap makes them lose their place.',
    try: `add ${row} to a list, or write it.`,
  }),
  'row/hangs-on': ({ first, last, rows, cause }: HangsOn): Wording => ({
    severity: 'note',
    message: `${rows === 1 ? first : rows === 2 ? `${first} and ${last}` : `${first} to ${last}`} could not be checked: ${rows === 1 ? 'it hangs' : 'they hang'} on ${cause === '' ? 'what stands before' : cause}`,
    why: `What ${cause === '' ? 'stands before' : `${cause} makes`} is not known for certain, so neither is what comes after it.`,
    try: `put ${cause === '' ? 'that' : cause} right, or state its count, and check again.`,
  }),
  'row/no-turn': ({ row, example }: { readonly row: string; readonly example: string }): Wording => ({
    severity: 'warning',
    message: `${row} does not say to turn, though ${example} does`,
    why: 'Makers will ask whether the next row is worked with the same side facing; it was worked as if turned.',
    try: 'end it with "turn", or with "do not turn" where that is meant.',
  }),
  'row/never-turns': ({ part }: { readonly part: string }): Wording => ({
    severity: 'note',
    message: `no row of ${part} says to turn; it was worked as if turned after each`,
    why: 'Most makers will turn, but those who fasten off and begin again at the same side read it so too.',
    try: 'end the rows with "turn", or say it once in a note.',
  }),
  'row/faces': ({ row, face, before, had, turned }: Faces): Wording => ({
    severity: 'warning',
    message: `${row} is called ${face}, but ${before} is ${had} and ${turned ? 'is turned' : 'is not turned'}`,
    why: 'A turn shows the other face: makers would not know which of the two to follow.',
    try: `call it ${face === 'RS' ? 'WS' : 'RS'}, or look at where the work is turned.`,
  }),
  'row/no-join': ({ row }: RowOnly): Wording => ({
    severity: 'warning',
    message: `${row} does not join, though the rounds beside it do`,
    why: 'Makers would go on in a spiral; it was worked as one.',
    try: 'end it with a join ("join with sl st in first st"), or say "do not join".',
  }),
  'row/no-ring': ({ row }: RowOnly): Wording => ({
    severity: 'warning',
    message: `${row} goes round a chain that is not joined into a ring`,
    why: 'Makers would work to the end of the chain and find nothing to go on into.',
    try: 'write "join with sl st in first ch to form ring" after the chain, or say that its other side is worked.',
  }),
  'row/times-differ': ({ given, times, cycle, word }: TimesDiffer): Wording => ({
    severity: 'error',
    message: `${given === 1 ? `1 ${word.toLowerCase()} is` : `${given} ${word.toLowerCase()}s are`} numbered, but ${cycle} repeated ${often(times)} ${times * cycle === 1 ? 'is' : 'are'} ${times * cycle}`,
    why: 'Makers who count the times and makers who count the numbers would not stop at the same place.',
    try: 'make the numbers and the times agree, or leave one of them out.',
  }),
  'row/cut-repeat': ({ rows, cycle, word }: CutRepeat): Wording => ({
    severity: 'warning',
    message: `${rows} ${word.toLowerCase()}s of a repeat of ${cycle} do not come out even: the last pass ends after ${rows % cycle} of ${cycle}`,
    why: 'Makers count in whole repeats, and would take the last number for a slip.',
    try: 'give whole repeats, or say where it ends ("ending with a Row 2").',
  }),
  'corner/count': ({ row, corners, before, had }: CornerCount): Wording => ({
    severity: 'warning',
    message: `${row} has ${corners} corners, but ${before} has ${had}`,
    why: 'A piece keeps its corners from round to round, or it does not lie as it is shaped.',
    try: 'look for a corner worked once too often, or left out.',
  }),
  'corner/sides': ({ row, one, other }: CornerSides): Wording => ({
    severity: 'warning',
    message: `${row} has ${one === 1 ? '1 stitch' : `${one} stitches`} on one side and ${other} on the side across from it`,
    why: 'Sides that differ pull the piece askew, and cannot be joined to others stitch by stitch.',
    try: 'look for a stitch too many or too few between two corners.',
  }),
  'chain/none': (): Wording => ({
    severity: 'error',
    message: 'a chain of none is asked for',
    why: 'There is nothing to make.',
    try: 'give the number of chains, or leave the step out; a size that skips it is written "-".',
  }),
  'chain/height': ({ chains, usual, stitch }: ChainHeight): Wording => ({
    severity: 'warning',
    message: `ch ${chains} is said to count as a ${stitch}, which is usually ${usual} high`,
    why: 'A chain of another height draws the edge in or lets it stick out, and makers take it for a slip.',
    try:
      chains > usual
        ? `write ch ${usual}, or say what the further chains are ("counts as ${stitch} and ch ${chains - usual}").`
        : `write ch ${usual}.`,
  }),
  'chain/too-tall': ({ chains, usual, stitch }: ChainHeight): Wording => ({
    severity: 'warning',
    message: `ch ${chains} counts as no stitch and stands before ${stitch}, which takes ch ${usual}`,
    why: 'It stands above the stitches beside it and leaves a loop at the edge; makers take it for a slip.',
    try: `write ch ${usual}, or say what the chain counts as.`,
  }),
  'chain/left-out': (): Wording => ({
    severity: 'warning',
    message: 'this row begins without a chain, though the others that begin with the same stitch have one',
    why: 'Makers will wonder whether it is meant, and the edge draws in where it is not made.',
    try: 'begin it with the chain of the other rows.',
  }),
  'chain/twice': (): Wording => ({
    severity: 'warning',
    message: 'the same chain stands twice at the start of the row',
    why: 'The second is worked as a space, which gives the row a hole at its edge and makers pause over.',
    try: 'take one of them out, or write both as one chain.',
  }),
} as const;

function often(times: number): string {
  return times === 1 ? 'once' : times === 2 ? 'twice' : `${times} times`;
}

interface RowOnly {
  /** `Row 3`, as the pattern writes it. */
  readonly row: string;
}

interface HangsOn {
  readonly first: string;
  readonly last: string;
  readonly rows: number;
  /** The row they hang on; nothing for words outside of rows. */
  readonly cause: string;
}

interface Faces extends RowOnly {
  readonly face: 'RS' | 'WS';
  readonly before: string;
  readonly had: 'RS' | 'WS';
  readonly turned: boolean;
}

interface ChainHeight {
  /** Those that stand for the stitch. */
  readonly chains: number;
  readonly usual: number;
  readonly stitch: string;
}

interface TimesDiffer {
  /** Rows the label numbers. */
  readonly given: number;
  readonly times: number;
  /** Rows that are repeated. */
  readonly cycle: number;
  /** `Row`, `Rnd`. */
  readonly word: string;
}

interface CutRepeat {
  readonly rows: number;
  readonly cycle: number;
  /** `Row`, `Rnd`. */
  readonly word: string;
}

interface CornerCount extends RowOnly {
  readonly corners: number;
  readonly before: string;
  readonly had: number;
}

interface CornerSides extends RowOnly {
  readonly one: number;
  readonly other: number;
}
