/** The ways of joining, a row each: what is said of it, the yarn it takes, and what it adds between two squares. */

/** How long the yarn of a seam is: so many times a single crochet's for each stitch, or so many times the seam itself. */
export type SeamYarn =
  | { readonly kind: 'stitch'; readonly id: 'sc' | 'sl-st' }
  | { readonly kind: 'sewn'; readonly timesSeam: number };

export interface Seam {
  readonly us: string;
  readonly uk: string;
  /** How the two edges are held and what goes through both, of `two rows of squares`; a sentence. */
  readonly how: (rows: string) => string;
  readonly yarn: SeamYarn;
  /** What the seam adds between two squares. */
  readonly addsMm: number;
}

/**
 * Sewn seams take 3.5 times their length in whip stitch and 2.5 times in mattress stitch; a ridge of slip stitches adds
 * 1.5 mm and one of single crochet 4.5 mm, the middle of what makers find. All from memory.
 */
export const SEAMS = {
  'single crochet': {
    us: 'single crochet',
    uk: 'double crochet',
    how: (rows) =>
      `Hold ${rows} with their wrong sides together, so that the ridge lies on the right side, and work through both edges at once.`,
    yarn: { kind: 'stitch', id: 'sc' },
    addsMm: 4.5,
  },
  'slip stitch': {
    us: 'slip stitch',
    uk: 'slip stitch',
    how: (rows) =>
      `Hold ${rows} with their right sides together and work loosely through both edges at once.`,
    yarn: { kind: 'stitch', id: 'sl-st' },
    addsMm: 1.5,
  },
  'whip stitch': {
    us: 'whip stitch',
    uk: 'whip stitch',
    how: (rows) =>
      `Hold ${rows} with their right sides together and sew over both edges, from back to front each time.`,
    yarn: { kind: 'sewn', timesSeam: 3.5 },
    addsMm: 0,
  },
  'mattress stitch': {
    us: 'mattress stitch',
    uk: 'mattress stitch',
    how: (rows) =>
      `Lay ${rows} edge to edge with their right sides up and take the needle to and fro between them.`,
    yarn: { kind: 'sewn', timesSeam: 2.5 },
    addsMm: 0,
  },
} as const satisfies Record<string, Seam>;

export type SeamName = keyof typeof SEAMS;

export const SEAM_NAMES = [
  'single crochet',
  'slip stitch',
  'whip stitch',
  'mattress stitch',
] as const satisfies readonly SeamName[];

/** What the stitches of a seam are called where they are counted: `sl sts`, of one `sl st`. */
export function seamAbbreviation(method: SeamName, terms: 'US' | 'UK', isOne = false): string {
  const { yarn } = SEAMS[method];
  if (yarn.kind === 'sewn') return isOne ? 'st' : 'sts';
  if (yarn.id === 'sc') return terms === 'US' ? 'sc' : 'dc';
  if (terms === 'UK') return 'ss';
  return isOne ? 'sl st' : 'sl sts';
}
