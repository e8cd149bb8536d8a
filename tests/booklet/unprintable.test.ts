import { describe, expect, test } from 'vitest';
import { layOutBooklet } from '../../src/booklet/booklet-pages.ts';
import { isPrintable } from '../../src/booklet/printable-characters.ts';
import { unprintableCharacters } from '../../src/booklet/unprintable.ts';
import { walkShapes } from '../../src/booklet/walk-shapes.ts';
import { openFont } from '../../src/paint/fonts.ts';
import { readPattern } from '../../src/pattern/read-pattern.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { fixedWidth } from './fixed-width.ts';
import { grannyBooklet, longBooklet, shellBooklet } from './sample-input.ts';

function faultsOf(yaml: string) {
  const { pattern } = readPattern({ file: 'pattern.yaml', text: yaml }, 'square');
  if (!pattern) throw new Error('the sample file cannot be read');
  return unprintableCharacters(pattern);
}

function patternFile(title: string): string {
  return `# a comment with a 🧶
title: ${title}
terms: US
sizes:
  - {name: small}
parts:
  - name: Square
    work: |
      Row 1: Ch 2, sc in 2nd ch from hook.
`;
}

describe('characters a booklet cannot print', () => {
  test('the table of characters is what the fonts have, no more and no less', () => {
    const fonts = Object.values(readFontFiles()).map(openFont);
    const wrong: string[] = [];
    for (let code = 0x20; code < 0x30000; code += 1) {
      const character = String.fromCodePoint(code);
      const inAll = fonts.every((font) => font.hasGlyphForCodePoint(code));
      // Never drawn: the soft hyphen, the zero-width space, the no-break hyphen and the narrow no-break space.
      if (isPrintable(character) !== inAll && ![0xad, 0x200b, 0x2011, 0x202f].includes(code))
        wrong.push(code.toString(16));
    }
    expect(wrong).toEqual([]);
  });

  test('the signs and alphabets that patterns use can be printed', () => {
    for (const character of '¼½¾⅓⅔⅛⅜⅝⅞×–—…‘’“”°€£†‡′″ąčőżłñßÅøæœţșğΩαЖщЯї')
      expect(isPrintable(character), character).toBe(true);
  });

  test('a yarn ball in the title is named once, where it stands', () => {
    const text = patternFile('Eelgrass 🧶 Square 🧶');
    const [fault, ...more] = faultsOf(text);
    expect(more).toEqual([]);
    expect(fault).toMatchObject({ code: 'booklet/character', file: 'pattern.yaml' });
    expect(text.slice(fault?.span.start, fault?.span.end)).toBe('🧶');
    expect(text.slice(0, fault?.span.start)).toMatch(/title: Eelgrass $/);
    expect(fault?.message).toContain('"🧶" (U+1F9F6)');
  });

  test("one in a comment is nobody's business", () => {
    expect(faultsOf(patternFile('Eelgrass Square'))).toEqual([]);
  });

  test('the booklet itself sets nothing but characters of the table', () => {
    for (const input of [shellBooklet(), grannyBooklet(), longBooklet()]) {
      const texts = layOutBooklet(input, 'A4', fixedWidth).pages.flatMap((page) =>
        walkShapes(page.shapes).flatMap(({ shape }) => (shape.kind === 'text' ? [shape.text] : [])),
      );
      expect(texts.flatMap((text) => [...text].filter((character) => !isPrintable(character)))).toEqual([]);
    }
  });
});
