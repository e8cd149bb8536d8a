/** One slip in the instructions is one fault: nothing else is said of the file that shows it. */

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { checkPattern } from '../../src/compile.ts';
import { notationFaults } from '../../src/diagnostics/catalogue/notation.ts';
import { workFaults } from '../../src/diagnostics/catalogue/work.ts';

test.each([...Object.keys(notationFaults), ...Object.keys(workFaults)])('%s comes alone', (code) => {
  const text = readFileSync(`${import.meta.dirname}/${code}/bad.yaml`, 'utf8');
  const diagnostics = checkPattern({ file: 'bad.yaml', text }, 'square');
  expect(diagnostics.map((diagnostic) => diagnostic.code)).toEqual([code]);
});
