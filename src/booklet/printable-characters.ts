/** A character in, whether every face a booklet is set in can draw it out: so that checking needs no font files. */

/** Code points in hexadecimal, read from the fonts; a test holds the table against them. */
export const PRINTABLE_RANGES =
  '20-7e a0-17e 18f 192 1a0-1a1 1af-1b0 1cd-1dc 1e6-1e7 1ea-1eb 1fa-201 204-205 208-209 20c-20d ' +
  '218-21b 237 251 259 261 2b9 2bb-2bc 2be-2bf 2c6-2cc 2d8-2dd 300-304 306-30c 30f 311-312 31b ' +
  '323-324 326-328 32e 331 374-375 37a 37e 384-38a 38c 38e-3a1 3a3-3ce 3d7 3d9 3db 3dd 3e1 401-44f ' +
  '451-45f 462-463 490-493 496-497 49a-49b 4a2-4a3 4ae-4b1 4ba-4bb 4d8-4d9 4e8-4e9 1e0c-1e0f ' +
  '1e16-1e17 1e20-1e21 1e24-1e25 1e2a-1e2b 1e36-1e3b 1e42-1e49 1e52-1e53 1e5a-1e63 1e66-1e67 ' +
  '1e6c-1e6f 1e80-1e85 1e8e-1e8f 1e92-1e93 1e97 1e9e 1ea0-1ef9 1f00-1f15 1f18-1f1d 1f20-1f45 ' +
  '1f48-1f4d 1f50-1f57 1f59 1f5b 1f5d 1f5f-1f7d 1f80-1fb4 1fb6-1fc4 1fc6-1fd3 1fd6-1fdb 1fdd-1fef ' +
  '1ff2-1ff4 1ff6-1ffe 2007 2009-200b 2010 2012-2015 2018-201a 201c-201e 2020-2022 2026 2030 ' +
  '2032-2033 2039-203a 2044 2070 2074-2079 207d-2089 208d-208e 20a1 20a3-20a4 20a6-20a7 20a9 ' +
  '20ab-20ac 20ae 20b1-20b2 20b4-20b5 20b8-20ba 20bd 2113 2116-2117 2120 2122 2126 212e 2153-2154 ' +
  '215b-215e 2190-2193 2202 2206 220f 2211-2212 2215 2219-221a 221e 222b 2248 2260 2264-2265 ' +
  '25a0-25a1 25b2-25b3 25b6-25b7 25bc-25bd 25c0-25c1 25c6 25ca fb01-fb02';

/** Breaks and joiners that are never drawn: tab, line ends, soft hyphen, zero-width space, no-break hyphen and space. */
const NOT_DRAWN = /^[\t\n\r\u00ad\u200b\u2011\u202f]$/;

export function isPrintable(character: string): boolean {
  const code = character.codePointAt(0) ?? 0;
  return NOT_DRAWN.test(character) || RANGES.some(([from, to]) => code >= from && code <= to);
}

const RANGES = PRINTABLE_RANGES.split(' ').map((range): readonly [number, number] => {
  const [from = '', to = from] = range.split('-');
  return [Number.parseInt(from, 16), Number.parseInt(to, 16)];
});
