/** What was found out about every width of a pattern in, the words of a fault out: one function per code. */

import type { Wording } from '../diagnostic.ts';

export const proofFaults = {
  'multiple/claim': ({ claimed, repeats, chains, trouble, holds }: Claim): Wording => ({
    severity: 'error',
    message: `"a multiple of ${said(claimed)}" does not always come out: over ${chains} chains (${repeats} x ${claimed.of}${claimed.plus === 0 ? '' : ` + ${claimed.plus}`}) ${trouble}`,
    why: 'Readers make the piece wider or narrower by the multiple they are given, and would be out by some stitches.',
    try:
      holds === null
        ? 'mend the row, or give the number of chains itself: no multiple was found that always comes out.'
        : `say "a multiple of ${said(holds)}", which ${holds.proved ? 'is proved for every width' : 'came out at every width tried'} from ${holds.from} chains up, or mend the row.`,
  }),
  'multiple/note': ({ claimed, holds }: NoteClaim): Wording => ({
    severity: 'warning',
    message: `the notes say a multiple of ${said(claimed)}, but the rows come out over any multiple of ${said(holds)} chains, which is ${said(holds.stitches)} stitches`,
    why: 'Readers make the piece wider or narrower by the multiple they are given.',
    try: `say "a multiple of ${said(holds.stitches)} sts", or "ch a multiple of ${said(holds)}".`,
  }),
  'row/adds': ({ row, before, made, said: claimed, of }: Growth): Wording => ({
    severity: 'error',
    message: `${row} is said to ${claimed < 0 ? 'lose' : 'add'} ${counted(Math.abs(claimed), of)}, but it has ${made} on ${before}, which is ${made < before ? `${before - made} fewer` : `${made - before} more`}`,
    why: 'Makers go on by that number, for as many rounds as they like.',
    try:
      made < before
        ? `say that it loses ${before - made}, or mend the round.`
        : `say that it adds ${made - before}, or mend the round.`,
  }),
} as const;

interface PlusMultiple {
  readonly of: number;
  readonly plus: number;
}

interface Claim {
  readonly claimed: PlusMultiple;
  /** The width it fails at. */
  readonly repeats: number;
  readonly chains: number;
  /** What goes wrong there, as a fault says it. */
  readonly trouble: string;
  /** The nearest that holds; null when no other width comes out. */
  readonly holds: (PlusMultiple & { readonly from: number; readonly proved: boolean }) | null;
}

interface Growth {
  readonly row: string;
  /** Stitches or blocks of the row before, and of this one. */
  readonly before: number;
  readonly made: number;
  readonly said: number;
  /** The special stitch counted; null for all stitches. */
  readonly of: string | null;
}

interface NoteClaim {
  readonly claimed: PlusMultiple;
  readonly holds: PlusMultiple & { readonly stitches: PlusMultiple };
}

function counted(n: number, of: Growth['of']): string {
  if (of === null) return `${n} ${n === 1 ? 'stitch' : 'stitches'}`;
  return `${n} ${of}${n === 1 ? '' : 's'}`;
}

/** `6 plus 2`. */
function said({ of, plus }: PlusMultiple): string {
  return plus === 0 ? String(of) : `${of} plus ${plus}`;
}
