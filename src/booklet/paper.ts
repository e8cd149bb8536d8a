/** Names a paper; gives its sheet in mm. */

export interface Paper {
  readonly name: 'A4' | 'Letter';
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A4 after ISO 216 (210 by 297 mm); US Letter is 8.5 by 11 inches of 25.4 mm. */
export const PAPERS = {
  A4: { name: 'A4', widthMm: 210, heightMm: 297 },
  Letter: { name: 'Letter', widthMm: 215.9, heightMm: 279.4 },
} as const satisfies Record<string, Paper>;

export type PaperName = keyof typeof PAPERS;
export type Orientation = 'portrait' | 'landscape';
