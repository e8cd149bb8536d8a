/** A pasted text in; the codes of its faults and every row's stitches, size by size, out. */

import { expect } from 'vitest';
import { compileText } from '../../src/compile.ts';

export interface WorkedText {
  readonly codes: readonly string[];
  /** `Row 1: 21`, for each size. */
  readonly rows: readonly (readonly string[])[];
  readonly messages: readonly string[];
}

export function workedText(text: string): WorkedText {
  const { sizes, diagnostics } = compileText({ file: 'pasted.txt', text }, 'pasted');
  return {
    codes: diagnostics.map(({ code }) => code),
    rows: sizes.map(({ fabric }) => fabric.rows.map(({ label, stitches }) => `${label}: ${stitches}`)),
    messages: diagnostics.map(({ message }) => message),
  };
}

/** What is told of the stitches of a text, without what is only asked about its headings and notes, and without `but`. */
export function faultsOf(text: string, but?: string): string[] {
  const { codes, messages } = workedText(text);
  return messages.filter((_, i) => !codes[i]?.startsWith('text/') && (but === undefined || codes[i] !== but));
}

/** A text in other words; it is a mistake of the test where it does not have them. */
export function changed(text: string, from: string, to: string): string {
  expect(text).toContain(from);
  return text.replace(from, to);
}
