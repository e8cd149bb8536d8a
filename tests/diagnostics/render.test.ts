import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { diagnose } from '../../src/diagnostics/catalogue.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import { renderDiagnostic, renderDiagnostics, tally, toJson } from '../../src/diagnostics/render.ts';

/** A fault at some words of a text. */
function at(text: string, words: string, more: Partial<Diagnostic> = {}): Diagnostic {
  const start = text.indexOf(words);
  const made = diagnose(
    'yaml/same-key',
    { file: 'a.yaml', span: { start, end: start + words.length } },
    { key: words },
  );
  return { ...made, ...more };
}

function excerptOf(text: string, fault: Diagnostic): string[] {
  return renderDiagnostic(fault, new Map([['a.yaml', text]]))
    .split('\n')
    .filter((line) => /^ *\d* \|/.test(line));
}

/** The columns of the strokes below a line. */
function strokes(line = ''): [number, number] {
  const found = /[\^~]+/.exec(line);
  return [found?.index ?? -1, found?.[0].length ?? 0];
}

describe('the excerpt', () => {
  test('shows the line, its number, and strokes below the words', () => {
    expect(excerptOf('one\ntwo three four\n', at('one\ntwo three four\n', 'three'))).toEqual([
      '2 | two three four',
      '  |     ^^^^^',
    ]);
  });

  test('shows other places of the fault with what stands there, in the order of the file', () => {
    const text = `first here\n${'x\n'.repeat(8)}second here\n`;
    const labels = [{ span: { start: 0, end: 5 }, text: 'makes 24' }];
    expect(excerptOf(text, at(text, 'second', { labels }))).toEqual([
      ' 1 | first here',
      '   | ~~~~~ makes 24',
      '10 | second here',
      '   | ^^^^^^',
    ]);
  });

  test('has two rows of strokes for two places in one line', () => {
    const text = 'Rnd 4: [2 sc, inc] 6 times. (20)\n';
    const labels = [{ span: { start: text.indexOf('[2'), end: text.indexOf('.') }, text: 'makes 24' }];
    expect(excerptOf(text, at(text, '(20)', { labels }))).toEqual([
      '1 | Rnd 4: [2 sc, inc] 6 times. (20)',
      '  |                             ^^^^',
      '  |        ~~~~~~~~~~~~~~~~~~~ makes 24',
    ]);
  });

  test('keeps the strokes below the words after a tab', () => {
    expect(excerptOf('a\tb\tword\n', at('a\tb\tword\n', 'word'))).toEqual([
      '1 | a   b   word',
      '  |         ^^^^',
    ]);
  });

  test('counts wide letters and emoji as two columns, and accents and joiners as none', () => {
    const wide = '編み 🧶 👩‍👧 word';
    // Two ideographs of 2, a blank, yarn of 2, a blank, a family of 2, a blank.
    expect(strokes(excerptOf(wide, at(wide, 'word'))[1])).toEqual([4 + 4 + 1 + 2 + 1 + 2 + 1, 4]);
    const accents = 'e\u0301e\u0301 word';
    expect(strokes(excerptOf(accents, at(accents, 'word'))[1])).toEqual([4 + 3, 4]);
    expect(strokes(excerptOf(wide, at(wide, '編み'))[1])).toEqual([4, 4]);
    expect(strokes(excerptOf(accents, at(accents, 'e\u0301'))[1])).toEqual([4, 1]);
  });

  test('underlines a fault that runs on over lines to the end of its first', () => {
    const text = 'a b c\r\nd e f\r\n';
    expect(excerptOf(text, { ...at(text, 'b'), span: { start: 2, end: 12 } })).toEqual([
      '1 | a b c',
      '  |   ^^^',
    ]);
  });

  test('points just behind the last letter when something is missing at the end of the file', () => {
    expect(excerptOf('abc', { ...at('abc', 'a'), span: { start: 3, end: 3 } })).toEqual([
      '1 | abc',
      '  |    ^',
    ]);
    expect(excerptOf('abc\n', { ...at('abc', 'a'), span: { start: 4, end: 9 } })).toEqual(['2 |', '  | ^']);
  });

  test('cuts a long row round the fault, so that no terminal breaks it', () => {
    const text = `Row 1: ${'sc in next st, '.repeat(40)}zz in next st, ${'dc in next st, '.repeat(40)}turn.\n`;
    const [line = '', underline = ''] = excerptOf(text, at(text, 'zz'));
    expect(line.length).toBeLessThan(110);
    expect(line).toMatch(/^1 \| ….*zz in next st.*…$/);
    const [column, length] = strokes(underline);
    expect(line.slice(column, column + length)).toBe('zz');
    const [lastLine = ''] = excerptOf(text, at(text, 'turn.'));
    expect(lastLine).toMatch(/turn\.$/);
    // No more is cut off than must be.
    expect(lastLine.length).toBeGreaterThan(95);
  });

  test('never lets a file steer the terminal', () => {
    const text = 'a \u001b[31mred\u0007 \u202eword\n';
    expect(excerptOf(text, at(text, 'word'))[0]).toBe('1 | a \uFFFD[31mred\uFFFD \uFFFDword');
  });

  test('has its strokes exactly below the words in any text of one-column letters', () => {
    const letters = fc.string({
      unit: fc.constantFrom('a', 'b', ' ', '(', 'é', '½'),
      minLength: 1,
      maxLength: 300,
    });
    fc.assert(
      fc.property(letters, fc.nat(), fc.integer({ min: 1, max: 40 }), (text, seed, length) => {
        const start = seed % text.length;
        const end = Math.min(text.length, start + length);
        const [line = '', underline = ''] = excerptOf(text, { ...at(text, ''), span: { start, end } });
        const [column, width] = strokes(underline);
        // The line's own trailing blanks are not printed.
        expect(line.padEnd(column + width).slice(column, column + width)).toBe(
          text.slice(start, end).slice(0, width),
        );
        expect(width).toBeGreaterThan(0);
        if (text.length <= 100) expect(width).toBe(end - start);
      }),
    );
  });
});

describe('the whole message', () => {
  const text = 'terms: US\nterms: UK\n';
  const texts = new Map([['a.yaml', text]]);
  const error = { ...at(text, 'terms'), span: { start: 10, end: 15 }, sizes: ['small', 'large'] };
  const warning: Diagnostic = {
    ...at(text, 'US'),
    span: { start: 7, end: 19 },
    severity: 'warning',
    code: 'yaml/hash',
  };

  test('says place, weight, code, sizes, what is so, why it matters and what to try', () => {
    expect(renderDiagnostic(error, texts)).toBe(
      [
        'a.yaml:2:1  error  yaml/same-key  (sizes small, large)',
        '"terms" is given twice',
        '2 | terms: UK',
        '  | ^^^^^',
        'why  Only one of the two can hold, and a reader of the file cannot know which.',
        'try  keep one and take the other away.',
        '',
      ].join('\n'),
    );
  });

  test('comes in the order of the file, each fault once, with a line of totals', () => {
    const rendered = renderDiagnostics([error, warning, error], texts);
    expect(rendered.match(/^a\.yaml:.*$/gm)).toEqual([
      'a.yaml:1:8  warning  yaml/hash',
      'a.yaml:2:1  error  yaml/same-key  (sizes small, large)',
    ]);
    expect(rendered.trimEnd().split('\n').at(-1)).toBe('1 error and 1 warning in 1 file.');
  });

  test('has totals in the singular, in the plural, and for none', () => {
    expect([tally([]), tally([warning]), tally([error, error, { ...error, file: 'b.yaml' }])]).toEqual([
      'No faults.',
      '1 warning in 1 file.',
      '3 errors in 2 files.',
    ]);
    const note: Diagnostic = { ...warning, severity: 'note' };
    expect([tally([note]), tally([note, error]), tally([note, warning, note, error])]).toEqual([
      '1 note in 1 file.',
      '1 error and 1 note in 1 file.',
      '1 error, 1 warning and 2 notes in 1 file.',
    ]);
  });

  test('is in colour only when asked', () => {
    const steer = String.fromCharCode(27);
    expect(renderDiagnostic(error, texts)).not.toContain(steer);
    const coloured = renderDiagnostic(error, texts, { colour: true });
    expect(coloured).toContain(`${steer}[31merror${steer}[0m`);
    const note = renderDiagnostic({ ...error, severity: 'note' }, texts, { colour: true });
    expect(note).toContain(`${steer}[36mnote${steer}[0m`);
    expect(coloured.replaceAll(new RegExp(`${steer}\\[\\d+m`, 'g'), '')).toBe(renderDiagnostic(error, texts));
  });

  test('still says everything but the excerpt when the file is not at hand', () => {
    expect(renderDiagnostic(error, new Map())).not.toContain('|');
    expect(renderDiagnostic(error, new Map())).toContain('why  Only one');
  });
});

describe('the list for other programs', () => {
  const text = 'é: 1\r\nterms: US\r\nterms: UK';
  const texts = new Map([['a.yaml', text]]);
  const start = text.lastIndexOf('terms');

  test('has these keys and no others', () => {
    const fault = { ...at(text, ''), span: { start, end: text.length } };
    expect(toJson([fault], texts)).toEqual({
      ok: false,
      faults: [
        {
          code: 'yaml/same-key',
          severity: 'error',
          file: 'a.yaml',
          line: 3,
          column: 1,
          endLine: 3,
          endColumn: 10,
          message: '"" is given twice',
          why: 'Only one of the two can hold, and a reader of the file cannot know which.',
          try: 'keep one and take the other away.',
          size: null,
        },
      ],
    });
  });

  test('names the sizes in one text, and is well when there are only warnings and notes', () => {
    const fault: Diagnostic = { ...at(text, 'terms'), severity: 'warning', sizes: ['small', 'large'] };
    const report = toJson([fault], texts);
    expect([report.ok, report.faults[0]?.size]).toEqual([true, 'small, large']);
    const note = toJson([{ ...fault, severity: 'note' }], texts);
    expect([note.ok, note.faults[0]?.severity]).toEqual([true, 'note']);
    expect(toJson([], texts)).toEqual({ ok: true, faults: [] });
  });
});
