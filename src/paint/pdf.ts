/** Scenes in, one a page, the bytes of a PDF out: vectors, embedded fonts, symbols defined once for the whole file. */

import PdfDocument, { type PdfPicture, type PdfReference } from 'pdfkit';
import { type Bounds, boundsOf } from '../scene/bounds.ts';
import { roundMm } from '../scene/rounding.ts';
import type { Face, Scene, Shape, Tag, Transform } from '../scene/scene.ts';
import { applied, placedAt, UNMOVED } from '../scene/transforms.ts';
import { ptFromMm } from '../units.ts';
import { openFont } from './fonts.ts';
import { colourOf } from './inks.ts';
import { packObjects } from './pack-objects.ts';
import { inkOperator, matrixOperator, pathOperators } from './pdf-operators.ts';
import { PdfTags } from './pdf-tags.ts';
import type { FontBytes } from './text-width.ts';

export interface PdfOptions {
  readonly title: string;
  readonly author: string | null;
  /** BCP 47: `en-GB`. */
  readonly language: string;
  /** Fixed by the caller, so that the same pages give the same bytes. */
  readonly createdAt: Date;
  readonly fonts: FontBytes;
  readonly outline?: readonly PdfBookmark[];
  /** With the structure its shapes are tagged with, for readers who do not see the pages. */
  readonly tagged?: boolean;
}

export interface PdfBookmark {
  readonly title: string;
  /** 2 stands inside the last 1 before it. */
  readonly level: 1 | 2;
  /** Index of its page. */
  readonly page: number;
}

const FACES: readonly Face[] = ['text', 'text-bold', 'text-italic', 'title', 'title-bold'];

export async function paintPdf(pages: readonly Scene[], options: PdfOptions): Promise<Uint8Array> {
  const pdf = new PdfPainting(options);
  for (const page of pages) pdf.addPage(page);
  pdf.addOutline(options.outline ?? []);
  return pdf.finish();
}

/** A PDF being written. */
export class PdfPainting {
  private readonly document: PdfDocument;
  private readonly finished: Promise<Uint8Array>;
  /** Form of each symbol already defined, by its shapes: pages that share a symbol share its form. */
  private readonly forms = new Map<
    readonly Shape[],
    { readonly name: string; readonly reference: PdfReference }
  >();
  private readonly pictures = new Map<Uint8Array, PdfPicture>();
  private readonly tags: PdfTags | null;
  private waiting: string[] = [];

  constructor(options: PdfOptions) {
    const tagged = options.tagged ?? false;
    this.document = new EscapingDocument({
      autoFirstPage: false,
      // Every text names its face; without this a standard font that may not be embedded is opened first.
      font: null,
      pdfVersion: '1.7',
      lang: options.language,
      displayTitle: true,
      ...(tagged ? { tagged, subset: 'PDF/UA' as const } : {}),
      info: {
        Title: options.title,
        ...(options.author === null ? {} : { Author: options.author }),
        CreationDate: options.createdAt,
      },
    });
    const chunks: Uint8Array[] = [];
    this.finished = new Promise((resolve, reject) => {
      this.document.on('data', (bytes) => chunks.push(bytes));
      this.document.on('end', () => {
        try {
          resolve(packObjects(joinBytes(chunks)));
        } catch (fault) {
          reject(fault);
        }
      });
      this.document.on('error', reject);
    });
    for (const face of FACES) this.document.registerFont(face, openFont(options.fonts[face]));
    this.tags = tagged ? new PdfTags(this.document) : null;
  }

  /** A page as large as the scene, with the scene on it. */
  addPage(scene: Scene): void {
    this.document.addPage({ size: [ptFromMm(scene.widthMm), ptFromMm(scene.heightMm)], margin: 0 });
    this.place(scene, 0, 0, 1);
    this.tags?.close();
  }

  /** A scene drawn on the present page. */
  place(scene: Scene, xMm: number, yMm: number, scale: number): void {
    this.document.save();
    const toPt = ptFromMm(1);
    this.document.transform(toPt, 0, 0, toPt, 0, 0);
    this.group(placedAt(xMm, yMm, scale), scene.shapes, scene.symbols);
    this.document.restore();
  }

  addOutline(outline: readonly PdfBookmark[]): void {
    let section = this.document.outline;
    for (const { title, level, page } of outline) {
      const parent = level === 1 ? this.document.outline : section;
      const item = parent.addItem(title, { pageNumber: page, expanded: true });
      if (level === 1) section = item;
    }
  }

  finish(): Promise<Uint8Array> {
    this.tags?.finish();
    this.document.end();
    return this.finished;
  }

  private paint(shapes: readonly Shape[], symbols: Scene['symbols']): void {
    for (const shape of shapes) this.paintShape(shape, symbols);
    this.flush();
  }

  private paintShape(shape: Shape, symbols: Scene['symbols']): void {
    switch (shape.kind) {
      case 'path':
      case 'circle':
        this.waiting.push(pathOperators(shape, { inSymbol: false }));
        return;
      case 'text':
        this.flush();
        this.paintText(shape);
        return;
      case 'picture':
        this.paintPicture(shape);
        return;
      case 'use':
        this.paintUse(shape, symbols);
        return;
      case 'group':
        this.group(shape.transform ?? UNMOVED, shape.shapes, symbols, shape.tag);
        return;
      case 'link':
        this.group(UNMOVED, shape.shapes, symbols, shape.tag);
        this.link(shape, symbols);
        return;
    }
  }

  private link({ shapes, href, tag }: Extract<Shape, { kind: 'link' }>, symbols: Scene['symbols']): void {
    const box = boundsOf(shapes, symbols);
    if (box === null) return;
    const place = [box.left, box.top, box.right - box.left, box.bottom - box.top] as const;
    if (this.tags === null || tag === undefined) this.document.link(...place, href);
    else
      this.tags.link(tag, (structParent) =>
        this.document.link(...place, href, { structParent, Contents: pdfString(tag.alternative ?? href) }),
      );
  }

  private paintText({ text, x, y, sizeMm, face, align, ink }: Extract<Shape, { kind: 'text' }>): void {
    if (ink === 'none') return;
    this.tags?.paintInto();
    this.document.font(face).fontSize(sizeMm).fillColor(colourOf(ink));
    const width = align === 'start' ? 0 : this.document.widthOfString(text);
    const left = align === 'end' ? x - width : align === 'middle' ? x - width / 2 : x;
    this.document.text(text, left, y, { lineBreak: false, baseline: 'alphabetic' });
  }

  private paintPicture({ jpeg, x, y, widthMm, heightMm }: Extract<Shape, { kind: 'picture' }>): void {
    this.flush();
    this.tags?.paintInto();
    const known = this.pictures.get(jpeg);
    // The library takes a copy of its own, and no view into other bytes.
    const picture = known ?? this.document.openImage(new Uint8Array(jpeg).buffer);
    if (known === undefined) this.pictures.set(jpeg, picture);
    this.document.image(picture, x, y, { width: widthMm, height: heightMm });
  }

  private paintUse(
    { symbol, transform, ink }: Extract<Shape, { kind: 'use' }>,
    symbols: Scene['symbols'],
  ): void {
    const shapes = symbols[symbol];
    if (shapes === undefined) return;
    const { name, reference } = this.formOf(shapes, symbols);
    this.document.page.xobjects[name] = reference;
    const inks = [inkOperator(ink, 'rg', { inSymbol: false }), inkOperator(ink, 'RG', { inSymbol: false })];
    this.waiting.push(['q', ...inks, matrixOperator(transform), `/${name} Do`, 'Q'].join('\n'));
  }

  private formOf(
    shapes: readonly Shape[],
    symbols: Scene['symbols'],
  ): { readonly name: string; readonly reference: PdfReference } {
    const known = this.forms.get(shapes);
    if (known !== undefined) return known;
    const box = boundsOf(shapes, symbols) ?? { left: 0, top: 0, right: 0, bottom: 0 };
    const reference = this.document.ref({
      Type: 'XObject',
      Subtype: 'Form',
      BBox: [box.left, box.top, box.right, box.bottom].map(roundMm),
      Resources: {},
    });
    reference.end(symbolOperators(shapes));
    const form = { name: `Symbol${this.forms.size + 1}`, reference };
    this.forms.set(shapes, form);
    return form;
  }

  private group(transform: Transform, shapes: readonly Shape[], symbols: Scene['symbols'], tag?: Tag): void {
    this.flush();
    const save = (): void => {
      this.document.save();
      if (transform !== UNMOVED) this.document.transform(...transform);
    };
    const paint = (): Bounds | null => {
      this.paint(shapes, symbols);
      return tag === undefined || this.tags === null ? null : this.onPage(boundsOf(shapes, symbols));
    };
    const restore = (): void => {
      this.document.restore();
    };
    if (this.tags !== null) this.tags.within(tag, save, paint, restore);
    else {
      save();
      paint();
      restore();
    }
  }

  /** In points from the lower left of the page, so that what is called top lies below, what is drawn in the present place. */
  private onPage(box: Bounds | null): Bounds | null {
    if (box === null) return null;
    const corners = [box.left, box.right].flatMap((x) =>
      [box.top, box.bottom].map((y) => applied(this.document._ctm, x, y)),
    );
    const xs = corners.map(([x]) => x);
    const ys = corners.map(([, y]) => y);
    return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
  }

  /** Operators are written in lots: a chart has thousands. */
  private flush(): void {
    if (this.waiting.length === 0) return;
    this.tags?.paintInto();
    this.document.addContent(this.waiting.join('\n'));
    this.waiting = [];
  }
}

/** The library writes title and author into XML as they are. */
class EscapingDocument extends PdfDocument {
  override _addInfo(): void {
    const { info } = this;
    this.info = Object.fromEntries(
      Object.entries(info).map(([key, value]) => [
        key,
        typeof value === 'string' ? escapedXml(value) : value,
      ]),
    );
    super._addInfo();
    this.info = info;
  }
}

function escapedXml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** The library takes a string object for text, a plain string for a name. */
function pdfString(text: string): object {
  return Object(text);
}

/** A symbol holds lines and circles, no type: charts draw nothing else. */
function symbolOperators(shapes: readonly Shape[]): string {
  return shapes.map(symbolShapeOperators).join('\n');
}

function symbolShapeOperators(shape: Shape): string {
  switch (shape.kind) {
    case 'path':
    case 'circle':
      return pathOperators(shape, { inSymbol: true });
    case 'group':
      return ['q', matrixOperator(shape.transform ?? UNMOVED), symbolOperators(shape.shapes), 'Q'].join('\n');
    case 'text':
    case 'use':
    case 'picture':
    case 'link':
      throw new Error(`A symbol cannot hold a ${shape.kind}.`);
  }
}

function joinBytes(chunks: readonly Uint8Array[]): Uint8Array {
  const joined = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    joined.set(chunk, at);
    at += chunk.length;
  }
  return joined;
}
