/** Names a paper and what is made of it; gives the size of a page in mm. */

import { mmFromIn } from '../units.ts';

export interface Paper {
  readonly name: 'A4' | 'Letter';
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A4 after ISO 216 (210 by 297 mm); US Letter is 8.5 by 11 inches of 25.4 mm. */
export const PAPERS = {
  A4: { name: 'A4', widthMm: 210, heightMm: 297 },
  Letter: { name: 'Letter', widthMm: mmFromIn(8.5), heightMm: mmFromIn(11) },
} as const satisfies Record<string, Paper>;

/** Half a sheet: A5 after ISO 216 (148 by 210 mm, so two are 1 mm short of A4), and half of US Letter. */
const HALVES = {
  A4: { widthMm: 148, heightMm: 210 },
  Letter: { widthMm: mmFromIn(5.5), heightMm: mmFromIn(8.5) },
} as const satisfies Record<PaperName, Omit<Paper, 'name'>>;

export type PaperName = keyof typeof PAPERS;
export type Orientation = 'portrait' | 'landscape';

/** Whole sheets; pages of half a sheet, to be folded and stapled; whole sheets in large print. */
export type Form = 'flat' | 'folded' | 'large print';

export interface PageFormat {
  readonly paper: PaperName;
  readonly form: Form;
}

/** Upright. */
export function pageSize({ paper, form }: PageFormat): Pick<Paper, 'widthMm' | 'heightMm'> {
  return form === 'folded' ? HALVES[paper] : PAPERS[paper];
}
