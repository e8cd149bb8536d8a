/** The few parts of fontkit that we call; the package brings no types. */

declare module 'fontkit' {
  export interface Glyph {
    readonly id: number;
    readonly codePoints: readonly number[];
    readonly advanceWidth: number;
    readonly path: {
      toSVG(): string;
      readonly commands: readonly { readonly command: string; readonly args: readonly number[] }[];
    };
  }
  export interface GlyphRun {
    readonly advanceWidth: number;
    readonly glyphs: readonly Glyph[];
    readonly positions: readonly {
      readonly xAdvance: number;
      readonly xOffset: number;
      readonly yOffset: number;
    }[];
  }
  export interface Font {
    readonly unitsPerEm: number;
    readonly familyName: string;
    readonly copyright: string;
    /** Features by their names in OpenType; those not named are as the font and the library would have them. */
    layout: (text: string, features?: Readonly<Record<string, boolean>>) => GlyphRun;
    getGlyph(id: number, codePoints: readonly number[]): Glyph;
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): Glyph;
  }
  export function create(bytes: Uint8Array): Font;
}
