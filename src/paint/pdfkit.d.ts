/** The few parts of PDFKit that we call; types published for it lack some of them. */

declare module 'pdfkit' {
  import type { Font } from 'fontkit';

  export interface PdfReference {
    end(content: string): void;
  }

  export interface PdfPage {
    readonly xobjects: Record<string, PdfReference>;
  }

  export interface PdfOutline {
    addItem(title: string, options: { pageNumber: number; expanded?: boolean }): PdfOutline;
  }

  export interface PdfOptions {
    readonly autoFirstPage: boolean;
    readonly font: null;
    readonly pdfVersion: '1.7';
    readonly lang: string;
    readonly displayTitle: boolean;
    readonly info: Readonly<Record<string, string | Date>>;
  }

  export default class PdfDocument {
    constructor(options: PdfOptions);
    readonly page: PdfPage;
    readonly outline: PdfOutline;
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
    link(x: number, y: number, width: number, height: number, address: string): this;
    ref(data: Readonly<Record<string, unknown>>): PdfReference;
  }
}
