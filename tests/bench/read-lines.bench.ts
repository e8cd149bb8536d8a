/**
 * How many lines of instructions are read in a second, beside a bare pass over their words: what the reading costs is
 * the ratio between the two, whatever the machine.
 */

import { bench, describe } from 'vitest';
import { readInstructions } from '../../src/notation/read.ts';
import { tokenise } from '../../src/notation/tokens.ts';
import { plainText } from '../../src/source/mapped-text.ts';
import { GOOD_LINES } from '../notation/good-lines.ts';
import { contextOf } from '../notation/read-lines.ts';

const LINES = 2000;
const text = Array.from({ length: LINES }, (_, i) => GOOD_LINES[i % GOOD_LINES.length] ?? '').join('\n');
const context = contextOf('US', { sizes: 3 });

describe(`${LINES} lines of instructions`, () => {
  bench('split into words and marks only', () => {
    tokenise(text);
  });

  bench('read into trees', () => {
    const { diagnostics } = readInstructions(plainText(text), context);
    if (diagnostics.length > 0) throw new Error(diagnostics[0]?.message);
  });
});
