/** A stated count and what a row makes in, the words of a fault out: one function per code. */

import type { Wording } from '../diagnostic.ts';

export const countFaults = {
  'count/mismatch': ({ row, differences, sum }: CountMismatch): Wording => ({
    severity: 'error',
    message: `${row} makes ${list(differences.map(({ made, what }) => `${made} ${what(made)}`))}, but ${list(differences.map(({ stated }) => `${stated}`))} ${differences.length === 1 ? 'is' : 'are'} stated`,
    why: `${sum === null ? '' : `It comes to that as ${sum}. `}The next row is worked into these, and readers count by them.`,
    try: eitherWrong(differences),
  }),
  'count/not-checked': ({
    thing,
    edge,
  }: {
    readonly thing: string;
    readonly edge?: true | 'open';
  }): Wording =>
    edge === 'open'
      ? {
          severity: 'note',
          message: `how many stitches go "${thing}" is left to the maker`,
          why: 'No number is told, so the row is not worked here; what a count at its end says holds for the rows on it.',
          try: 'say how many there are in all, or along each side, if it matters to a row after it.',
        }
      : edge
        ? {
            severity: 'note',
            message: `how many stitches go "${thing}" is not checked`,
            why: 'That edge is not worked here, so its places are not counted; what the row makes of the number said is checked.',
            try: 'count once along the edge itself whether so many lie flat.',
          }
        : {
            severity: 'note',
            message: `the count of "${thing}" is not checked`,
            why: 'The stitches of the row do not tell what is counted so; the rest of the count is checked.',
            try: 'count them once by hand, or say the count in stitches.',
          },
  'count/halves': ({ stated, whole }: { readonly stated: string; readonly whole: string }): Wording => ({
    severity: 'note',
    message: `${stated} are ${whole} and half of one at either end`,
    why: 'Some houses count the two halves as one and others leave them out: makers who count the other way find one too many or too few.',
    try: `say it, such as "${whole} and 2 halves".`,
  }),
} as const;

interface CountDiffers {
  /** Its name after a number. */
  readonly what: (n: number) => string;
  readonly stated: number;
  readonly made: number;
}

interface CountMismatch {
  /** `Row 3`, as the pattern writes it. */
  readonly row: string;
  readonly differences: readonly CountDiffers[];
  /** `ch 3 is 1, (1 + 5) x 5 = 30, 3 in the last sc: 34 sts`; null for a row that makes no stitches. */
  readonly sum: string | null;
}

/** Which of the two is wrong cannot be told: what to do in either case. */
function eitherWrong(differences: readonly CountDiffers[]): string {
  const made = differences.filter((each) => each.made > 0);
  const stated =
    made.length === 0
      ? 'leave that out of the count'
      : `state ${list(made.map((each) => `${each.made} ${each.what(each.made)}`))}`;
  const [only, another] = differences;
  const off =
    only === undefined || another !== undefined
      ? 'mend the row'
      : `look for ${only.made > only.stated ? `${only.made - only.stated} too many` : `${only.stated - only.made} too few`} in the row`;
  return `either may be wrong: if the row is right, ${stated}; if the count is, ${off}.`;
}

function list(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items[items.length - 1]}`;
}
