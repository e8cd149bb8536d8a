import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import type { CompiledPattern } from '../../src/compiled.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import type { FabricRow } from '../../src/fabric/fabric.ts';
import type { Built, Refused, TradeLine, Worked } from './trade-lines.ts';
import { patternFor, readThemes } from './trade-lines.ts';

// Counts in trade-lines/ were worked by hand from what the trade means by the words, and hold whatever the reader
// makes of them. `source` says where that meaning stands: a section of the conventions gathered from published
// patterns, common practice, or memory.

const themes = readThemes();
const all = themes.flatMap(({ lines }) => lines);

describe('the lines', () => {
  test('are many, a third of them in UK terms, and none stands twice', () => {
    expect(all.length).toBeGreaterThanOrEqual(270);
    expect(all.filter(({ terms }) => terms === 'UK').length).toBeGreaterThanOrEqual(all.length / 3);
    const seen = all.map(({ line, terms, on }) => `${terms} ${line} on ${JSON.stringify(on)}`);
    expect(seen.filter((line, i) => seen.indexOf(line) !== i)).toEqual([]);
  });

  test('each say what to look for', () => {
    expect(all.filter((of) => Object.keys(of.expect).length === 0)).toEqual([]);
    const absent = all.filter((of) => 'fault' in of.expect && !of.line.includes(of.expect.at));
    expect(absent.map(({ line }) => line)).toEqual([]);
  });
});

for (const { name, lines } of themes) {
  describe(name, () => {
    for (const of of lines) test(nameOf(of), () => checkLine(of));
  });
}

function checkLine(of: TradeLine): void {
  const built = patternFor(of);
  const compiled = compilePattern({ file: 'line.yaml', text: built.text }, 'line');
  // Nothing but the line itself may be at fault.
  const elsewhere = compiled.diagnostics.filter(
    ({ severity, span }) => severity === 'error' && span.start >= built.below && span.end <= built.start,
  );
  none(elsewhere, 'in what lies below the line');
  if ('fault' in of.expect) refuses(of.expect, built, compiled.diagnostics);
  else works(of.expect, built, compiled);
}

function nameOf({ terms, line, on }: TradeLine): string {
  return `${terms}: ${line.replaceAll('\n', ' / ')} (on ${JSON.stringify(on)})`;
}

function toldAll(faults: readonly Diagnostic[]): string {
  return faults.map(({ code, message }) => `${code}: ${message}`).join('; ');
}

function none(faults: readonly Diagnostic[], where: string): void {
  if (faults.length > 0) expect.fail(`${where}, but: ${toldAll(faults)}`);
}

/** Every size is worked without an error, and its last row makes what is expected. */
function works(expected: Worked, built: Built, compiled: CompiledPattern): void {
  none(
    compiled.diagnostics.filter(({ severity }) => severity === 'error'),
    'it should be read',
  );
  expect(compiled.sizes.length).toBeGreaterThan(0);
  const made = compiled.sizes.map(({ fabric }) => fabric.rows);
  const last = made.map((rows) => rows.at(-1));
  if (expected.adds === undefined && expected.rows === undefined) {
    const own = last.filter((row) => row !== undefined && row.span.end > built.start);
    expect(own, 'the last row is the line’s own').toHaveLength(made.length);
  }
  const perSize = (value: number | readonly number[]): readonly number[] =>
    typeof value === 'number' ? made.map(() => value) : value;
  const each = <T>(of: (row: FabricRow) => T): readonly (T | undefined)[] =>
    last.map((row) => (row === undefined ? undefined : of(row)));
  if (expected.stitches !== undefined)
    expect(
      each((row) => row.stitches),
      'stitches',
    ).toEqual(perSize(expected.stitches));
  if (expected.spaces !== undefined)
    expect(
      each((row) => row.spaces),
      'spaces',
    ).toEqual(perSize(expected.spaces));
  for (const key of ['byStitch', 'groups'] as const) {
    for (const [name, n] of Object.entries(expected[key] ?? {}))
      expect(
        each((row) => row[key][name] ?? 0),
        name,
      ).toEqual(perSize(n));
  }
  if (expected.rows !== undefined)
    expect(
      made.map((rows) => rows.filter(({ unit }) => unit !== null).length),
      'rows',
    ).toEqual(perSize(expected.rows));
}

/** The one fault is about the words it should be about, and offers the word it should. */
function refuses(expected: Refused, built: Built, diagnostics: readonly Diagnostic[]): void {
  const codes = [expected.fault].flat();
  const [fault] = diagnostics.filter(({ code }) => codes.includes(code));
  if (fault === undefined) expect.fail(`no ${codes.join(' or ')}, but: ${toldAll(diagnostics) || 'nothing'}`);
  const others = diagnostics.filter(({ severity, code }) => severity === 'error' && !codes.includes(code));
  none(others, 'one fault, one message');
  const { start, end } = fault.span;
  const words = built.text.slice(start, end);
  if (fault.code.startsWith('word/')) {
    // The word and no more; of several words not understood the first is enough.
    if (codes.length === 1) expect(words).toBe(expected.at);
    else expect(expected.at).toContain(words);
  } else {
    const from = built.text.indexOf(expected.at, built.start);
    expect(start <= from && from + expected.at.length <= end, `it is on "${words}"`).toBe(true);
  }
  // Words understood on either side are not marked with those that were not.
  if (fault.code.startsWith('phrase/'))
    expect(words.replace(expected.at, ''), 'more than its clause').not.toMatch(/[,;.]/);
  if (expected.near !== undefined) expect(fault.try).toContain(`"${expected.near}"`);
}
