/** Terms in, the booklet's own headings and phrases out: what a US and a UK maker would each expect to read. */

import type { Skill } from '../pattern/pattern.ts';
import type { Terms } from '../stitches/stitch-row.ts';

export interface HouseWords {
  readonly terms: string;
  readonly finishedSize: string;
  readonly photographs: string;
  readonly materials: string;
  readonly gauge: string;
  readonly colour: string;
  readonly abbreviations: string;
  readonly specials: string;
  readonly notes: string;
  readonly instructions: string;
  readonly chart: string;
  readonly leftHandedChart: string;
  readonly measures: string;
  readonly finishing: string;
  readonly cautions: string;
  readonly changes: string;
  readonly licence: string;
  readonly howToMeasure: string;
}

const SHARED = {
  finishedSize: 'Finished size',
  photographs: 'Photographs',
  materials: 'Materials',
  abbreviations: 'Abbreviations',
  specials: 'Special stitches',
  notes: 'Notes',
  instructions: 'Instructions',
  chart: 'Chart',
  leftHandedChart: 'Chart for left-handed makers',
  measures: 'Measures',
  finishing: 'Finishing',
  cautions: 'For safety',
  changes: 'Changes since the first version',
} as const;

/** Advice on the swatch is common practice: larger than the measure, counted away from its edges. */
export const HOUSE_WORDS: Readonly<Record<Terms, HouseWords>> = {
  US: {
    ...SHARED,
    terms: 'US terms',
    gauge: 'Gauge',
    colour: 'Color',
    licence: 'License',
    howToMeasure: measuring('gauge'),
  },
  UK: {
    ...SHARED,
    terms: 'UK terms',
    gauge: 'Tension',
    colour: 'Colour',
    licence: 'Licence',
    howToMeasure: measuring('tension'),
  },
};

function measuring(gauge: string): string {
  return (
    `To measure your ${gauge}, work a swatch at least half as large again as the measure given, treat it as you will ` +
    'treat the finished piece, lay it flat and count in the middle, away from the edges. With more stitches than ' +
    'given, try a larger hook; with fewer, a smaller one.'
  );
}

/** Project levels of the Craft Yarn Council; the descriptions are ours. */
export const SKILL_WORDS: Readonly<Record<Skill, { readonly name: string; readonly meaning: string }>> = {
  basic: { name: 'Basic', meaning: 'basic stitches, with simple increases and decreases at most' },
  easy: { name: 'Easy', meaning: 'simple stitch patterns, simple changes of yarn or simple shaping' },
  intermediate: {
    name: 'Intermediate',
    meaning: 'more involved stitch patterns, changes of yarn or shaping',
  },
  complex: { name: 'Complex', meaning: 'several techniques and stitches worked at the same time' },
};
