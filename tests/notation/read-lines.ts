/** Lines as a designer writes them in, their trees without places out. */

import { expect } from 'vitest';
import type { Line } from '../../src/notation/line.ts';
import type { Context } from '../../src/notation/read.ts';
import { readInstructions } from '../../src/notation/read.ts';
import type { Step } from '../../src/notation/tree.ts';
import { plainText } from '../../src/source/mapped-text.ts';
import type { Terms } from '../../src/stitches/stitch-row.ts';

export function contextOf(terms: Terms, more: Partial<Context> = {}): Context {
  return {
    file: 'test',
    terms,
    sizes: 1,
    specials: ['shell', 'cl', 'beg cl'],
    yarns: ['A', 'B'],
    ...more,
  };
}

/** The lines of a text that has no fault. */
export function linesOf(text: string, terms: Terms = 'US', more: Partial<Context> = {}): readonly Line[] {
  const { instructions, diagnostics } = readInstructions(plainText(text), contextOf(terms, more));
  expect(diagnostics.map(({ code, message }) => `${code}: ${message}`)).toEqual([]);
  return instructions.lines;
}

/** The one line of a text. */
export function lineOf(text: string, terms: Terms = 'US', more: Partial<Context> = {}): Line {
  const [line, second] = linesOf(text, terms, more);
  if (line === undefined || second !== undefined) throw new Error(`not one line: ${text}`);
  return line;
}

export function stepsOf(text: string, terms: Terms = 'US', more: Partial<Context> = {}): readonly Step[] {
  return lineOf(text, terms, more).steps;
}

/** Codes of the faults of a text. */
export function faultsOf(text: string, terms: Terms = 'US', more: Partial<Context> = {}): readonly string[] {
  return readInstructions(plainText(text), contextOf(terms, more)).diagnostics.map(({ code }) => code);
}

/** A tree without its places, so that what was said can be compared whatever the words. */
export function said(value: unknown): unknown {
  return JSON.parse(
    JSON.stringify(value, (key, inner: unknown) => (key === 'span' || key === 'text' ? undefined : inner)),
  );
}

/**
 * A tree as briefly as it can be told apart: numbers by their value, what stands as it is by default left out.
 * `{stitch: 'dc', times: 2, place: {same: 'st'}}`.
 */
export function brief(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(brief);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).filter(([key]) => key !== 'span' && key !== 'text');
  const values = entries.find(([key]) => key === 'values')?.[1];
  if (Array.isArray(values)) return values.length === 1 ? values[0] : values;
  const kept = entries.filter(([, inner]) => inner !== null && inner !== false && inner !== 'both');
  return Object.fromEntries(kept.map(([key, inner]) => [key, brief(inner)]));
}
