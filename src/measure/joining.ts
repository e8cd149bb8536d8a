/**
 * A pattern of one piece made many times over, and how large the piece is, in; the yarn that joining them takes out.
 *
 * Only where its finishing says that pieces are joined, and how. They are taken to lie in the grid nearest to a square
 * (`seams (a - 1) b + a (b - 1)`, rules of thumb); of other shapes half of all their edges are seams, which is a little
 * more than there are. A whipped seam takes 3 to 4 times its length, a mattress stitch 2.5 (from memory); a crocheted
 * one a row of that stitch.
 */

import type { Pattern } from '../pattern/pattern.ts';
import { findStitch } from '../stitches/table.ts';
import { mFromMm } from '../units.ts';
import type { Piece } from './piece-measures.ts';
import { YARN_PER_SC_WIDTH } from './yarn-figures.ts';

export interface Joining {
  /** The yarn that is named with it, or the first. */
  readonly letter: string;
  readonly lengthM: number;
}

const PIECES =
  /\b(?:squares?|pieces?|motifs?|blocks?|hexagons?|octagons?|pentagons?|triangles?|strips?|panels?)\b/i;
/** `Sew in the ends of each square.` */
const ENDS = /\bin\s+(?:all\s+|the\s+|loose\s+)*ends\b/i;
const SEWN: readonly (readonly [RegExp, number])[] = [
  [/\b(?:mattress|ladder|invisible)\b/i, 2.5],
  [
    /\b(?:whip\s?-?stitch(?:ed|ing)?|whipst|overcast(?:ing)?|oversew(?:n|ing)?|sewn?|sewing|seam(?:ed)?)\b/i,
    3.5,
  ],
];
const CROCHETED =
  /\b(?:with|using|in|by)\s+(?:an?\s+)?(?:row\s+of\s+)?([a-z][a-z. -]*?)(?=\s+(?:seams?|through|along|together|in|using|with)\b|[,.;]|$)/gi;

/** Null where the finishing does not say it. */
export function joiningYarn(pattern: Pattern, { widthMm, heightMm, corners }: Piece): Joining | null {
  const made = pattern.parts.filter(({ make, onto }) => make > 1 && onto === null);
  const [part, more] = made;
  const [first] = pattern.yarns;
  if (part === undefined || more !== undefined || first === undefined) return null;
  if (widthMm === null || heightMm === null) return null;
  const told = pattern.finishing.map((said) => ({ said, times: timesLength(said, pattern) }));
  const found = told.find(({ said, times }) => times !== null && PIECES.test(said));
  if (found === undefined || found.times === null) return null;
  const named = pattern.yarns.find(({ letter }) =>
    new RegExp(String.raw`\b(?:[Ww]ith|[Uu]sing|[Ii]n)\s+(?:yarn\s+)?${letter}\b`).test(found.said),
  );
  const seamsMm =
    corners === 0 || corners === 4
      ? gridSeamsMm(part.make, widthMm, heightMm)
      : (part.make * perimeterMm(corners, heightMm)) / 2;
  return { letter: (named ?? first).letter, lengthM: mFromMm(seamsMm * found.times) };
}

/** How many times the length of a seam its yarn is; null for a sentence of something else. */
function timesLength(said: string, { terms }: Pattern): number | null {
  if (ENDS.test(said)) return null;
  if (!/\b(?:join|joined|joining|sew|sewn|sewing|whip|seam|oversew|overcast|mattress)\b/i.test(said))
    return null;
  // A stitch that is named says more than "join" or "seam".
  for (const [, words = ''] of said.matchAll(CROCHETED)) {
    const stitch = findStitch(words.trim(), terms);
    if (stitch !== null && stitch.family !== 'chain') return stitch.yarnInSc * YARN_PER_SC_WIDTH;
  }
  return SEWN.find(([words]) => words.test(said))?.[1] ?? null;
}

/** In as many across and up as come nearest to a square. */
function gridSeamsMm(pieces: number, widthMm: number, heightMm: number): number {
  let best = { off: Number.POSITIVE_INFINITY, mm: 0 };
  for (let across = 1; across <= pieces; across += 1) {
    if (pieces % across !== 0) continue;
    const up = pieces / across;
    const off = Math.abs(Math.log((across * widthMm) / (up * heightMm)));
    const mm = (across - 1) * up * heightMm + across * (up - 1) * widthMm;
    if (off < best.off) best = { off, mm };
  }
  return best.mm;
}

/** Of a polygon by how high it lies on one side: twice the circle inside it, or for an odd number of corners more. */
function perimeterMm(corners: number, heightMm: number): number {
  const half = Math.PI / corners;
  const radiusMm = corners % 2 === 0 ? heightMm / 2 : heightMm / (1 + 1 / Math.cos(half));
  return 2 * corners * radiusMm * Math.tan(half);
}
