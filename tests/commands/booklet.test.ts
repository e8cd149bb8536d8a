import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { readPdf } from '../booklet/read-pdf.ts';
import { GOOD, removeFolder, rowfold, scratchFolder, WRONG, writePattern } from './run-rowfold.ts';

const folder = scratchFolder();
writePattern(folder, 'grey-square', GOOD);
writePattern(folder, 'wrong', WRONG);
afterAll(() => removeFolder(folder));

/** The sizes of a PDF's pages, in points. */
async function sizesOf(file: string): Promise<{ width: number; height: number }[]> {
  const { pages } = await readPdf(readFileSync(path.join(folder, file)));
  return pages.map(({ widthPt, heightPt }) => ({ width: widthPt, height: heightPt }));
}

describe('booklet', () => {
  test('is named after pattern, size and paper, and set on A4 (ISO 216: 210 by 297 mm)', async () => {
    const { code, out } = await rowfold(['booklet', 'patterns/grey-square', '--size', 'small'], folder);
    expect([code, out]).toEqual([0, 'grey-square-small-a4.pdf\n']);
    const sizes = await sizesOf('grey-square-small-a4.pdf');
    for (const { width, height } of sizes) {
      expect(width).toBeCloseTo((210 / 25.4) * 72, 0);
      expect(height).toBeCloseTo((297 / 25.4) * 72, 0);
    }
    expect(sizes.length).toBeGreaterThan(0);
  });

  test('goes to the file asked for, on US Letter paper, in UK terms', async () => {
    const words = [
      'booklet',
      'patterns/grey-square',
      '--size',
      'large',
      '--paper',
      'letter',
      '--terms',
      'uk',
    ];
    const { code, out } = await rowfold([...words, '--out', 'print/square.pdf'], folder);
    expect([code, out]).toEqual([0, 'print/square.pdf\n']);
    expect((await sizesOf('print/square.pdf'))[0]).toEqual({ width: 612, height: 792 });
  });

  test('has its charts for the other hand when asked, and says so in its name', async () => {
    const words = ['booklet', 'patterns/grey-square', '--size', 'small'];
    const { code, out } = await rowfold([...words, '--left-handed'], folder);
    expect([code, out]).toEqual([0, 'grey-square-small-a4-left-handed.pdf\n']);
    await rowfold(words, folder);
    const [left, right] = ['-left-handed', ''].map((hand) =>
      readFileSync(path.join(folder, `grey-square-small-a4${hand}.pdf`)),
    );
    expect(left?.equals(right ?? Buffer.alloc(0))).toBe(false);
  });

  test('needs a size where there are several', async () => {
    const { code, err } = await rowfold(['booklet', 'patterns/grey-square'], folder);
    expect(err).toMatch(/has small, medium, large/);
    expect(code).toBe(2);
  });

  test('is not made of a pattern with an error', async () => {
    const { code, out, err } = await rowfold(['booklet', 'patterns/wrong', '--size', 'small'], folder);
    expect(err).toContain('count/mismatch');
    expect([code, out]).toEqual([1, '']);
  });
});

describe('a booklet to fold', () => {
  test('is printed on whole sheets of its paper, on their sides, and says so in its name', async () => {
    const words = ['booklet', 'patterns/grey-square', '--size', 'small', '--folded', '--paper', 'Letter'];
    const { code, out } = await rowfold(words, folder);
    expect([code, out]).toEqual([0, 'grey-square-small-letter-folded.pdf\n']);
    expect((await sizesOf('grey-square-small-letter-folded.pdf'))[0]).toEqual({ width: 792, height: 612 });
  });

  test('has a first sheet that tells how to fold it when asked, with a blank back', async () => {
    const words = ['booklet', 'patterns/grey-square', '--size', 'small', '--folded'];
    await rowfold([...words, '--out', 'plain.pdf'], folder);
    await rowfold([...words, '--folding-notes', '--out', 'noted.pdf'], folder);
    expect((await sizesOf('noted.pdf')).length).toBe((await sizesOf('plain.pdf')).length + 2);
  });
});

describe('an edition', () => {
  test('says what it is in its name', async () => {
    const words = [
      'booklet',
      'patterns/grey-square',
      '--all-sizes',
      '--large-print',
      '--low-ink',
      '--words-only',
    ];
    const { code, out } = await rowfold(words, folder);
    expect([code, out]).toEqual([0, 'grey-square-all-sizes-a4-large-print-low-ink-words-only.pdf\n']);
  });

  test.each([
    [['--folded', '--large-print'], /too small for large print/],
    [['--words-only', '--charts-only'], /nothing would be left/],
    [['--all-sizes', '--size', 'small'], /is for a booklet of one size/],
    [['--all-sizes', '--width', '30 cm'], /is for a booklet of one size/],
    [['--folding-notes'], /add --folded/],
    [['--for-testers', '--folded'], /a page of blanks to fill in/],
  ])('cannot be %j', async (flags, told) => {
    const { code, err } = await rowfold(['booklet', 'patterns/grey-square', ...flags], folder);
    expect(err).toMatch(told);
    expect(code).toBe(2);
  });

  test('for testers is a page a size', async () => {
    const { code, out } = await rowfold(['booklet', 'patterns/grey-square', '--for-testers'], folder);
    expect([code, out]).toEqual([0, 'grey-square-all-sizes-testers-a4.pdf\n']);
    expect(await sizesOf('grey-square-all-sizes-testers-a4.pdf')).toHaveLength(3);
  });
});
