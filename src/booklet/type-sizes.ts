/** A form of booklet in, its type sizes and the spaces that go with them out. */

import type { Form } from './paper.ts';

export interface TypeSize {
  readonly fontPt: number;
  readonly linePt: number;
}

export type TypeName = 'body' | 'small' | 'caption' | 'side' | 'section' | 'part' | 'lead' | 'size';
export type TypeSizes = Readonly<Record<TypeName, TypeSize>>;

/** Type sizes and the line pitch that goes with each, in points. */
export const TYPE_SIZES: Readonly<Record<Form, TypeSizes>> = {
  flat: {
    body: { fontPt: 10.5, linePt: 15 },
    small: { fontPt: 8.5, linePt: 12 },
    caption: { fontPt: 9, linePt: 12.5 },
    side: { fontPt: 11, linePt: 15 },
    section: { fontPt: 16, linePt: 21 },
    part: { fontPt: 12.5, linePt: 17 },
    lead: { fontPt: 12.5, linePt: 18.5 },
    size: { fontPt: 16, linePt: 22 },
  },
  /** Nearly as large as on a whole sheet: half a page is held no further from the eye. */
  folded: {
    body: { fontPt: 10, linePt: 13.8 },
    small: { fontPt: 8.5, linePt: 11.5 },
    caption: { fontPt: 8.5, linePt: 11.6 },
    side: { fontPt: 10, linePt: 13.8 },
    section: { fontPt: 14, linePt: 18.5 },
    part: { fontPt: 11.5, linePt: 15.5 },
    lead: { fontPt: 11, linePt: 15.5 },
    size: { fontPt: 13, linePt: 18 },
  },
  /** 18 points to read and nothing under 16; headings after the American Council of the Blind, 22 and 20. */
  'large print': {
    body: { fontPt: 18, linePt: 25 },
    small: { fontPt: 16, linePt: 22 },
    caption: { fontPt: 16, linePt: 22 },
    side: { fontPt: 20, linePt: 27 },
    section: { fontPt: 22, linePt: 30 },
    part: { fontPt: 20, linePt: 27 },
    lead: { fontPt: 20, linePt: 28 },
    size: { fontPt: 22, linePt: 30 },
  },
};

export type GapName = 'section' | 'part' | 'afterHeading' | 'paragraph' | 'row' | 'afterSection' | 'count';
export type Gaps = Readonly<Record<GapName, number>>;

/** Space between things, in mm, for the type of whole sheets. */
const GAP: Gaps = {
  section: 7,
  part: 5.5,
  afterHeading: 2.6,
  paragraph: 1.6,
  row: 2.1,
  afterSection: 3,
  count: 4,
};

/** Space shrinks and grows less than type does. */
const GAP_SHARE: Readonly<Record<Form, number>> = { flat: 1, folded: 0.85, 'large print': 1.35 };

export function gapsOf(form: Form): Gaps {
  const share = GAP_SHARE[form];
  return {
    section: GAP.section * share,
    part: GAP.part * share,
    afterHeading: GAP.afterHeading * share,
    paragraph: GAP.paragraph * share,
    row: GAP.row * share,
    afterSection: GAP.afterSection * share,
    count: GAP.count * share,
  };
}
