import { create } from 'fontkit';
import { describe, expect, test } from 'vitest';
import { readFontFile } from '../../src/site/font-files.ts';
import { PAGE_CHARACTERS, webFont } from '../../src/site/web-font.ts';

const NAMES = { family: 'Rowfold Text', copyright: 'The makers of the font', licence: 'The licence' };
const whole = Buffer.from(readFontFile('text'));
const cut = webFont(whole, PAGE_CHARACTERS, NAMES);

// fontkit reads the cut font back: a reader of fonts that had no part in cutting it.
function read(bytes: Buffer) {
  const font = create(bytes);
  if (!('glyphForCodePoint' in font)) throw new Error('not one font');
  return font;
}

describe('a font cut down for the web', () => {
  test('has every character of the page that the whole font has, at the same width and with the same outline', () => {
    const [before, after] = [read(whole), read(cut)];
    for (const code of PAGE_CHARACTERS.filter((one) => before.hasGlyphForCodePoint(one))) {
      const [a, b] = [before.glyphForCodePoint(code), after.glyphForCodePoint(code)];
      const letter = String.fromCodePoint(code);
      expect(b.advanceWidth, letter).toBe(a.advanceWidth);
      expect(b.path.toSVG(), letter).toBe(a.path.toSVG());
    }
  });

  test('has no other characters, so that a reader’s own font sets them', () => {
    expect(read(whole).hasGlyphForCodePoint(0x416)).toBe(true);
    expect(read(cut).hasGlyphForCodePoint(0x416)).toBe(false);
  });

  test('bears a name of its own, its makers’ copyright and its licence', () => {
    const font = read(cut);
    expect(font.familyName).toBe('Rowfold Text');
    expect(font.copyright).toBe('The makers of the font');
  });

  test('is small, and the same each time', () => {
    expect(cut.length).toBeLessThan(25_000);
    expect(webFont(whole, PAGE_CHARACTERS, NAMES).equals(cut)).toBe(true);
  });

  test('sets figures at one width, so that counts stand in columns', () => {
    const font = read(cut);
    const widths = [...'0123456789'].map(
      (figure) => font.glyphForCodePoint(figure.codePointAt(0) ?? 0).advanceWidth,
    );
    expect(new Set(widths).size).toBe(1);
  });
});
