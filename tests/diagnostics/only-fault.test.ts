/** One slip in the instructions is one fault: nothing else is said of the file that shows it, but what hangs on it. */

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { checkPattern } from '../../src/compile.ts';
import { countFaults } from '../../src/diagnostics/catalogue/counts.ts';
import { notationFaults } from '../../src/diagnostics/catalogue/notation.ts';
import { workFaults } from '../../src/diagnostics/catalogue/work.ts';

test.each([...Object.keys(notationFaults), ...Object.keys(countFaults), ...Object.keys(workFaults)])(
  '%s comes alone',
  (code) => {
    const text = readFileSync(`${import.meta.dirname}/${code}/bad.yaml`, 'utf8');
    const diagnostics = checkPattern({ file: 'bad.yaml', text }, 'square');
    const own = diagnostics.filter((diagnostic) => diagnostic.code !== 'row/hangs-on');
    expect(own.map((diagnostic) => diagnostic.code)).toEqual([code]);
  },
);
