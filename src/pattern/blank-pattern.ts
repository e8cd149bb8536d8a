/** A pattern that says nothing yet, to be filled in by whoever writes one without a file. */

import type { Pattern } from './pattern.ts';

export const BLANK_PATTERN: Pattern = {
  slug: '',
  source: { file: '', text: '' },
  title: '',
  about: '',
  designer: null,
  terms: 'US',
  skill: null,
  gauge: null,
  hookMm: null,
  hookUs: null,
  yarns: [],
  notions: [],
  sizes: [],
  specials: [],
  notes: [],
  parts: [],
  finishing: [],
  uses: [],
  symbols: 'CYC',
  licence: null,
  version: null,
  date: null,
  changes: [],
  films: [],
  photographs: [],
  allowed: [],
  places: new Map(),
};
