/** Words as a document shows them: glyphs, and how far each is moved and raised. */

import PdfDocument from 'pdfkit';
import { expect, test } from 'vitest';
import { openFont, wordShaper } from '../../src/paint/fonts.ts';
import { PdfFace } from '../../src/paint/pdf-face.ts';
import { readFontFiles } from '../../src/site/font-files.ts';

const { text: bytes } = readFontFiles();

function newFace(): PdfFace {
  const document = new PdfDocument({
    autoFirstPage: false,
    font: null,
    pdfVersion: '1.7',
    lang: 'en',
    displayTitle: true,
    info: {},
  });
  document.registerFont('text', openFont(bytes));
  return new PdfFace(document.font('text')._font, bytes);
}

/** Thousandths of an em that the pen goes on, once all is shown: widths of glyphs less what each is moved back. */
function goneOn(codes: string, word: string): number {
  const widths = wordShaper(bytes)(word).glyphs.reduce((sum, { advanceWidth }) => sum + advanceWidth, 0);
  const back = [...codes.matchAll(/(?<=> )-?[\d.]+(?= <)/g)].reduce(
    (sum, [number]) => sum + Number(number),
    0,
  );
  return widths - back;
}

test('the pen ends where a ruler says, kerned or accented', () => {
  const face = newFace();
  for (const word of ['AVATAR', 'Wave', 'x\u0301', 'q\u0323\u0301a', 'plain'])
    expect(goneOn(face.codes(word, 10), word), word).toBeCloseTo(face.widthEm(word) * 1000, 1);
  expect(face.codes('AV', 10)).toMatch(/^[\da-f]{4}> \d+ <[\da-f]{4}$/);
});

test('an accent that stands lower than its glyph is lowered by a share of the type, in each size it is set in', () => {
  const face = newFace();
  const [dot] = wordShaper(bytes)('q\u0323\u0301').positions.flatMap(({ yOffset }) =>
    yOffset === 0 ? [] : yOffset,
  );
  expect(dot).toBe(-185);
  expect(face.codes('q\u0323\u0301', 10)).toContain('>] TJ -1.85 Ts [<');
  expect(face.codes('q\u0323\u0301', 20)).toContain('>] TJ -3.7 Ts [<');
  expect(face.codes('q\u0323\u0301', 20)).toContain('>] TJ 0 Ts [<');
});

test('a glyph has one code in a document, and words are told apart', () => {
  const face = newFace();
  const [a, b] = [face.codes('a', 10), face.codes('b', 10)];
  expect(a).not.toBe(b);
  expect(face.codes('ab a', 10)).toBe(a + b + face.codes(' ', 10) + a);
});
