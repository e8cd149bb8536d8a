/** The few parts of PDFKit that we call; types published for it lack some of them. */

declare module 'pdfkit' {
  import type { Font } from 'fontkit';

  export interface PdfReference {
    readonly id: number;
    readonly data: Record<string, unknown>;
    compress: boolean;
    end(content: string | Uint8Array): void;
  }

  /** A face embedded in a document, and what of it the document shows. */
  export interface PdfFont {
    readonly id: string;
    /** Thousandths of an em to the font's own units. */
    readonly scale: number;
    readonly subset: { includeGlyph(glyph: number): number };
    /** Of the glyphs of the subset, in thousandths of an em. */
    readonly widths: number[];
    /** What each stands for. */
    readonly unicode: (readonly number[])[];
    ref(): PdfReference;
  }

  export interface PageOptions {
    readonly size: readonly [number, number];
    readonly margin: number;
  }

  /** A photograph opened, to be drawn as often as is wanted. */
  export interface PdfPicture {
    readonly width: number;
    readonly height: number;
  }

  export interface PdfPage {
    readonly width: number;
    readonly height: number;
    readonly xobjects: Record<string, PdfReference>;
    readonly fonts: Record<string, PdfReference>;
    write(operators: Uint8Array): void;
  }

  export interface PdfOutline {
    addItem(title: string, options: { pageNumber: number; expanded?: boolean }): PdfOutline;
  }

  /** What marks content on a page as belonging to an element. */
  export interface PdfStructureContent {
    readonly refs: readonly unknown[];
  }

  export interface PdfStructure {
    readonly dictionary: { readonly data: Record<string, unknown> };
    add(child: PdfStructure | PdfStructureContent): this;
    end(): void;
  }

  export interface PdfOptions {
    readonly autoFirstPage: boolean;
    readonly font: null;
    readonly pdfVersion: '1.7';
    readonly lang: string;
    readonly displayTitle: boolean;
    readonly tagged?: boolean;
    readonly subset?: 'PDF/UA';
    readonly info: Readonly<Record<string, string | Date>>;
  }

  export default class PdfDocument {
    constructor(options: PdfOptions);
    readonly page: PdfPage;
    readonly outline: PdfOutline;
    /** The face named last. */
    readonly _font: PdfFont;
    readonly _root: PdfReference;
    readonly _info: PdfReference;
    readonly _id: Uint8Array;
    /** It is to end as soon as nothing is waited for. */
    _ended: boolean;
    /** Methods of the library's own, by which it puts a file together. */
    _write(piece: string | Uint8Array): void;
    _refEnd(reference: PdfReference): void;
    _finalize(): void;
    end(): void;
    addPage(options: PageOptions): this;
    addContent(operators: string): this;
    save(): this;
    restore(): this;
    transform(a: number, b: number, c: number, d: number, e: number, f: number): this;
    registerFont(name: string, font: Font): this;
    font(name: string): this;
    link(
      x: number,
      y: number,
      width: number,
      height: number,
      address: string,
      options?: { readonly structParent: PdfStructure; readonly Contents: object },
    ): this;
    openImage(bytes: ArrayBuffer): PdfPicture;
    image(
      picture: PdfPicture,
      x: number,
      y: number,
      options: { readonly width: number; readonly height: number },
    ): this;
    struct(
      type: string,
      options?: { readonly alt?: string; readonly scope?: 'Column' | 'Row' },
    ): PdfStructure;
    addStructure(element: PdfStructure): this;
    markContent(tag: 'Artifact'): this;
    markStructureContent(tag: string): PdfStructureContent;
    endMarkedContent(): this;
    /** Writes the title and its like into the file's metadata; a method of the library's own. */
    _addInfo(): void;
    info: Record<string, unknown>;
    ref(data: Readonly<Record<string, unknown>>): PdfReference;
  }
}
