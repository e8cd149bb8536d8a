import { HtmlValidate } from 'html-validate';
import { describe, expect, test } from 'vitest';
import { explainTable } from '../../src/commands/explain-table.ts';
import { compilePattern } from '../../src/compile.ts';
import type { DeskView } from '../../src/desk/desk-view.ts';
import { layDesk } from '../../src/desk/lay-desk.ts';
import { layPaste } from '../../src/desk/lay-paste.ts';
import { rowSheet } from '../../src/desk/row-sheet.ts';
import { bookletPages } from '../../src/print-booklet.ts';
import { readPaste } from '../../src/serve/read-paste.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { GOOD, WRONG } from '../commands/run-rowfold.ts';
import { projectFile } from '../site/demo-site.ts';

const validator = new HtmlValidate({
  root: true,
  extends: ['html-validate:standard', 'html-validate:a11y'],
  rules: { 'long-title': 'off', 'no-trailing-whitespace': 'off', 'attr-quotes': 'off' },
});

async function faultsOf(html: string): Promise<string[]> {
  const report = await validator.validateString(html);
  return report.results.flatMap(({ messages }) =>
    messages.map(({ line, message, ruleId }) => `${line} ${ruleId}: ${message}`),
  );
}

function view(text: string, more: Partial<NonNullable<DeskView['open']>> = {}): DeskView {
  const file = 'patterns/one/pattern.yaml';
  const compiled = compilePattern({ file, text }, 'one');
  const [size] = compiled.sizes;
  return {
    files: [
      { file, title: 'One', errors: 0 },
      { file: 'patterns/<b>/pattern.yaml', title: 'One', errors: 2 },
    ],
    others: [{ file: 'alongs/<a>/along.yaml', errors: 1 }],
    siteFault: 'site.yaml says <so>',
    asked: file,
    token: 'secret',
    news: 'sitting 0 0',
    open: {
      file,
      text,
      stamp: 'stamp',
      writable: true,
      compiled,
      size: 0,
      dialect: 'us',
      booklet: () =>
        size === undefined
          ? []
          : bookletPages(compiled, size, { dialect: 'us', paper: 'A4' }, readFontFiles()),
      drawLarge: false,
      soon: false,
      ...more,
    },
  };
}

describe('a page of the desk is valid HTML', () => {
  test.each([
    ['sound', GOOD],
    ['with an error', WRONG],
    [
      'with another title than any page should have',
      GOOD.replace('"Grey Square"', "'</title><script>alert(1)</script>'"),
    ],
    ['that is no YAML', 'title: [one'],
    ['that is empty', ''],
    ['with two parts and chart of each', projectFile('patterns/sandbar-square/pattern.yaml')],
  ])('with a pattern %s', async (_, text) => {
    const html = layDesk(view(text));
    expect(await faultsOf(html)).toEqual([]);
    expect(html).not.toContain('<script>');
    expect(await faultsOf(layDesk(view(text, { soon: true })))).toEqual([]);
  });

  test('with nothing on it, where a file is gone and where there is none', async () => {
    for (const files of [[], view(GOOD).files])
      for (const asked of [null, 'patterns/<i>/pattern.yaml'])
        expect(await faultsOf(layDesk({ ...view(GOOD), files, asked, open: null }))).toEqual([]);
  });

  test('for pasted instructions', async () => {
    const pasted =
      'Harbour <b>Cloth</b>\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across. (13 sts)\nHello there.\n';
    const { read, name } = readPaste(pasted, '');
    const shown = { pasted, read, name, refused: 'No.', folder: 'patterns', token: 'secret' };
    expect(await faultsOf(layPaste(shown))).toEqual([]);
    expect(await faultsOf(layPaste({ ...shown, pasted: '', read: null, refused: null }))).toEqual([]);
    expect(layPaste(shown)).not.toContain('<b>Cloth');
  });
});

test('a textarea gives the text back as it is, with an empty first line too', () => {
  const html = layDesk(view(`\n${GOOD}`));
  // A browser leaves out the first line end inside a textarea (HTML Living Standard, 13.1.2.5).
  expect(html).toMatch(/<textarea[^>]*>\n\n# A starter/);
});

test('the table of rows says what check --explain says in the terminal', () => {
  for (const text of [GOOD, WRONG, projectFile('patterns/sandbar-square/pattern.yaml')]) {
    const { sizes } = compilePattern({ file: 'pattern.yaml', text }, 'one');
    const [size] = sizes;
    if (size === undefined) throw new Error('no size');
    const words = (table: string): string[] =>
      table
        .replaceAll(/&[a-z]+;|<br>/g, ' ')
        .replaceAll(/<[^>]+>/g, ' ')
        .split(/[\s,]+/);
    const shown = new Set(words(rowSheet(size, 'US', text)));
    const inTerminal = words(explainTable(size, 'US', 400, false)).filter(
      (word) => !['Takes', 'Leaves', 'Makes', 'How', ''].includes(word),
    );
    expect(inTerminal.length).toBeGreaterThan(20);
    expect(inTerminal.filter((word) => !shown.has(word))).toEqual([]);
  }
});

test('what takes long is left out of what is wanted soon, and a booklet is not set over errors', () => {
  const soon = layDesk(view(GOOD, { soon: true }));
  for (const id of ['rows', 'sizes']) expect(soon).toContain(`<section class="made-sheet" id="${id}"`);
  for (const id of ['chart', 'words', 'booklet'])
    expect(soon).not.toContain(`<section class="made-sheet" id="${id}"`);
  expect(layDesk(view(WRONG))).toContain('It is set once there are no errors.');
});
