/** Words as a document shows them: glyphs, and how far each is moved and raised. */

import PdfDocument from 'pdfkit';
import { expect, test } from 'vitest';
import { openFont, putShaped, wordShaper } from '../../src/paint/fonts.ts';
import { paintPdf } from '../../src/paint/pdf.ts';
import { PdfFace } from '../../src/paint/pdf-face.ts';
import type { Scene } from '../../src/scene/scene.ts';
import { readFontFile, readFontFiles } from '../../src/site/font-files.ts';
import { pageWords, readPdf } from '../booklet/read-pdf.ts';

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
  const widths = wordShaper(bytes)(word).reduce((sum, { advanceWidth }) => sum + advanceWidth, 0);
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
  const [dot] = wordShaper(bytes)('q\u0323\u0301').flatMap(({ yOffset }) => (yOffset === 0 ? [] : yOffset));
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

/** All that have a sign of their own, of the kinds that are met among words of Latin letters. */
const SIGNS = [
  [0xa0, 0x17f],
  [0x2010, 0x2043],
  [0x2150, 0x22ff],
  [0x25a0, 0x25ff],
].flatMap(([from = 0, to = 0]) => Array.from({ length: to - from + 1 }, (_, k) => from + k));

test('a plain word is shaped as by all that its font does, in every face', () => {
  const letters = [...'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.,;:!?()[]*-/\'"+=&% '];
  const words = ['fi', 'ffl', 'afford', '(3', '3/4', '1.5', 'Fjord'];
  for (const letter of letters)
    words.push(`f${letter}`, `${letter}f`, `T${letter}o`, `${letter}1`, `${letter} `, letter);
  for (const font of Object.values(readFontFiles())) {
    const shape = wordShaper(font);
    const signs = SIGNS.filter((sign) => openFont(font).hasGlyphForCodePoint(sign)).map((sign) =>
      String.fromCodePoint(sign),
    );
    for (const word of [...words, ...signs.flatMap((sign) => [`a${sign}b `, `f${sign} `, `1${sign}2`])]) {
      const { glyphs, positions } = openFont(font).layout(word);
      const whole = glyphs.map(({ id }, at) => [id, positions[at]?.xAdvance]);
      expect(
        shape(word).map(({ id, xAdvance }) => [id, xAdvance]),
        word,
      ).toEqual(whole);
    }
  }
});

test('what a glyph stands for is told also where it was embedded before it was shaped, by itself or as a part', async () => {
  const bytes = readFontFile('text');
  const shape = wordShaper(readFontFile('text'));
  for (const word of ['28 ', 'off ']) putShaped(bytes, word, shape(word));
  const page = (text: string): Scene => ({
    ...{ widthMm: 90, heightMm: 30, title: '', alternative: '', symbols: {} },
    shapes: [{ kind: 'text', x: 5, y: 15, text, sizeMm: 8, face: 'text', align: 'start', ink: 'ink' }],
  });
  const options = {
    ...{ title: 'Parts', author: null, language: 'en', createdAt: new Date(0) },
    fonts: { ...readFontFiles(), text: bytes },
  };
  await paintPdf([page('28 off é')], options);
  const { pages } = await readPdf(await paintPdf([page('38 offer ebb')], options));
  expect(pages.map(pageWords)).toEqual(['38 offer ebb']);
});
