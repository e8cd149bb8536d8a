/** The few parts of PDFKit that we call; types published for it lack some of them. */

declare module 'pdfkit' {
  import type { Font } from 'fontkit';

  export interface PdfReference {
    end(content: string): void;
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
    /** What all transforms so far come to, from the lower left of the page. */
    readonly _ctm: readonly [number, number, number, number, number, number];
    on(event: 'data', take: (bytes: Uint8Array) => void): this;
    on(event: 'end', done: () => void): this;
    on(event: 'error', fail: (reason: unknown) => void): this;
    end(): void;
    addPage(options: { size: readonly [number, number]; margin: number }): this;
    addContent(operators: string): this;
    save(): this;
    restore(): this;
    transform(a: number, b: number, c: number, d: number, e: number, f: number): this;
    registerFont(name: string, font: Font): this;
    font(name: string): this;
    fontSize(size: number): this;
    fillColor(colour: string): this;
    widthOfString(text: string): number;
    text(text: string, x: number, y: number, options: { lineBreak: boolean; baseline: 'alphabetic' }): this;
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
