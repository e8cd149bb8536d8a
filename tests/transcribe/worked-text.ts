/** A pasted text in; the codes of its faults and every row's stitches, size by size, out. */

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
