/** Every code of the catalogue beside a file that earns it, one that does not, and the words a maker reads. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import { allCodes, isCode } from '../../src/diagnostics/catalogue.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import { renderDiagnostics } from '../../src/diagnostics/render.ts';
import { SOFTER_CODES } from '../../src/diagnostics/softer-codes.ts';
import type { PhotographLook } from '../../src/pattern/photograph.ts';
import { checkAlong } from '../along/check-along.ts';

const here = import.meta.dirname;

const FOUND = { kind: 'picture', widthPx: 4000, heightPx: 3000, hash: '0123456789abcdef' } as const;

/** What stands on no disk here; `tests/site/photographs.test.ts` looks at real files. */
const LOOKS = new Map<string, PhotographLook>([
  ['on-the-table.jpg', FOUND],
  ['On-the-table.jpg', { kind: 'missing', near: 'on-the-table.jpg' }],
  ['from-the-phone.heic', { kind: 'no picture', given: 'a HEIC, as some phones save their photographs' }],
  ['half-copied.jpg', { kind: 'broken' }],
  ['wall-print.jpg', { kind: 'too large', megapixels: 180, megabytes: 40 }],
  ['film.jpg', { kind: 'too large', megapixels: null, megabytes: 900 }],
  ['thumbnail.jpg', { ...FOUND, widthPx: 320, heightPx: 240 }],
]);

function check(code: string, name: 'bad' | 'good'): { text: string; diagnostics: readonly Diagnostic[] } {
  const text = readFileSync(`${here}/${code}/${name}.yaml`, 'utf8');
  const file = `${name}.yaml`;
  const diagnostics = code.startsWith('along/')
    ? checkAlong(text, file).diagnostics
    : compilePattern({ file, text }, 'square', LOOKS).diagnostics;
  return { text, diagnostics };
}

describe.each(allCodes())('%s', (code) => {
  test('is shown by a file that has the fault', async () => {
    const { text, diagnostics } = check(code, 'bad');
    expect(diagnostics.map((diagnostic) => diagnostic.code)).toContain(code);
    const rendered = renderDiagnostics(diagnostics, new Map([['bad.yaml', text]]));
    await expect(rendered).toMatchFileSnapshot(`${here}/${code}/expected.txt`);
  });

  test('is silent on the same file put right', () => {
    const { diagnostics } = check(code, 'good');
    expect(diagnostics.map((diagnostic) => diagnostic.code)).not.toContain(code);
    expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  });
});

test('the list of what may be silenced is of just the codes that are no errors', () => {
  const softer = allCodes().filter((code) =>
    check(code, 'bad').diagnostics.some((found) => found.code === code && found.severity !== 'error'),
  );
  expect(softer.toSorted()).toEqual([...SOFTER_CODES].toSorted());
});

test('every folder of examples belongs to a code of the catalogue', () => {
  const areas = readdirSync(here, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  const codes = areas.flatMap((area) =>
    readdirSync(`${here}/${area.name}`).map((what) => `${area.name}/${what}`),
  );
  expect(codes.filter((code) => !isCode(code))).toEqual([]);
  expect(codes.length).toBeGreaterThan(20);
});

test('no message speaks in the words of those who wrote the program', () => {
  const ours = /\b(?:token|node|undefined|null|parse|invalid|string|boolean|schema|exception)\b|!/i;
  for (const code of allCodes().filter((each) => existsSync(`${here}/${each}/bad.yaml`))) {
    for (const { message, why, try: attempt } of check(code, 'bad').diagnostics) {
      expect([message, why, attempt].filter((words) => ours.test(words))).toEqual([]);
    }
  }
});
