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
    layout: (text: string, features?: unknown) => GlyphRun;
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): Glyph;
  }
  export function create(bytes: Uint8Array): Font;
}
