import { describe, expect, test } from 'vitest';
import { textSheet } from '../../src/desk/text-sheet.ts';
import { toldLines } from '../../src/desk/told-lines.ts';
import type { Diagnostic, Severity } from '../../src/diagnostics/diagnostic.ts';

const TEXT = 'title: Reed\nRow 1: Ch 9.\r\nRow 2: Sc <8> times.\n';

function fault(start: number, end: number, more: Partial<Diagnostic> = {}): Diagnostic {
  return {
    code: 'a/b',
    severity: 'error',
    message: 'row 2 makes 8',
    why: 'Later rows would be off.',
    try: 'write 8.',
    file: 'pattern.yaml',
    span: { start, end },
    labels: [],
    sizes: [],
    ...more,
  };
}

const at = (words: string, severity: Severity = 'error', more: Partial<Diagnostic> = {}) =>
  fault(TEXT.indexOf(words), TEXT.indexOf(words) + words.length, { severity, ...more });

describe('the lines of a file with what is told of them', () => {
  test('are as many as people count, without what ends them', () => {
    expect(toldLines(TEXT, []).map(({ number, text }) => [number, text])).toEqual([
      [1, 'title: Reed'],
      [2, 'Row 1: Ch 9.'],
      [3, 'Row 2: Sc <8> times.'],
    ]);
    expect(toldLines('', []).map(({ text }) => text)).toEqual(['']);
    expect(toldLines('a\n\n', []).map(({ text }) => text)).toEqual(['a', '']);
  });

  test('have each fault on the line it begins on, and a fault of the end on the last', () => {
    const told = toldLines(TEXT, [at('Ch 9'), at('Sc'), fault(TEXT.length, TEXT.length)]);
    expect(told.map(({ faults }) => faults.length)).toEqual([0, 1, 2]);
  });

  test('are marked where they are meant, to the end of the line at most, and nowhere twice', () => {
    const [, , third] = toldLines(TEXT, [
      at('Sc <8>'),
      at('<8> times.', 'warning'),
      fault(TEXT.indexOf('Sc'), 9999),
    ]);
    expect(
      third?.marks.map(({ span, severity }) => [third.text.slice(span.start, span.end), severity]),
    ).toEqual([['Sc <8> times.', 'error']]);
    const [, , apart] = toldLines(TEXT, [at('Row 2'), at('times', 'note')]);
    expect(apart?.marks.map(({ severity }) => severity)).toEqual(['error', 'note']);
  });

  test('point from a second place to the line where the fault is told', () => {
    const start = TEXT.indexOf('Ch 9');
    const told = toldLines(TEXT, [
      at('Sc', 'error', { labels: [{ span: { start, end: start + 4 }, text: 'makes 8' }] }),
    ]);
    expect(told[1]?.pointers).toEqual([{ text: 'makes 8', severity: 'error', toLine: 3 }]);
    expect(told[1]?.faults).toEqual([]);
  });
});

describe('the text as it is shown', () => {
  const html = textSheet(TEXT, [at('<8>', 'warning', { sizes: ['S', '<M>'], message: 'makes <8>' })]);

  test('holds nothing of the file as markup', () => {
    expect(html).toContain('Sc <mark class="warning">&lt;8&gt;</mark> times.');
    expect(html).toContain('sizes S, &lt;M&gt;');
    expect(html).toContain('Makes &lt;8&gt;.');
  });

  test('says in words of what kind a note is, why it matters and what to try', () => {
    const note = html.slice(html.indexOf('told-note')).replaceAll(/<[^>]+>/g, ' ');
    expect(note).toMatch(/Warning.*\s+Makes.*\s+Later rows would be off\.\s+Try:\s+write 8\./);
  });
});
