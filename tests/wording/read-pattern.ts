/** Instructions as a designer writes them in, a pattern with nothing else in it out. */

import { expect } from 'vitest';
import { readInstructions, readPhrase } from '../../src/notation/read.ts';
import type { Pattern, Special } from '../../src/pattern/pattern.ts';
import { plainText } from '../../src/source/mapped-text.ts';
import type { Terms } from '../../src/stitches/stitch-row.ts';

export interface Sketch {
  readonly work: string;
  readonly terms?: Terms;
  readonly sizes?: readonly string[];
  readonly specials?: readonly {
    readonly name: string;
    readonly fullName?: string;
    readonly steps: string;
    readonly how?: string;
  }[];
  readonly make?: number;
}

const SPAN = { start: 0, end: 0 };

export function readPattern({
  work,
  terms = 'US',
  sizes = ['only'],
  specials = [],
  make = 1,
}: Sketch): Pattern {
  const context = {
    file: 'test',
    terms,
    sizes: sizes.length,
    specials: specials.map(({ name }) => name),
    yarns: ['A', 'B'],
  };
  const { instructions, diagnostics } = readInstructions(plainText(work), context);
  expect(diagnostics).toEqual([]);
  return {
    slug: 'test',
    source: { file: 'test', text: work },
    title: 'Test',
    about: '',
    designer: null,
    terms,
    skill: null,
    gauge: null,
    hookMm: null,
    hookUs: null,
    films: [],
    allowed: [],
    yarns: ['A', 'B'].map((letter) => ({
      letter,
      colour: letter === 'A' ? 'reed' : 'foam',
      hex: null,
      weight: 4,
      fibre: 'wool',
      ballLengthM: null,
      ballMassG: null,
      balls: null,
      used: [],
    })),
    notions: [],
    sizes: sizes.map((name) => ({ name, widthMm: null, heightMm: null, repeats: null, rows: null })),
    specials: specials.map(
      (special): Special => ({
        name: special.name,
        fullName: special.fullName ?? special.name,
        steps: readPhrase(plainText(special.steps), context).steps,
        how: special.how ?? null,
        span: SPAN,
      }),
    ),
    notes: [],
    parts: [{ name: 'Square', onto: null, make, instructions, span: SPAN }],
    finishing: [],
    uses: [],
    symbols: 'CYC',
    licence: null,
    version: null,
    date: null,
    changes: [],
    photographs: [],
    places: new Map(),
  };
}
