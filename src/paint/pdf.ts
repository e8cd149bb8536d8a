/** Scenes in, one a page, the bytes of a PDF out: vectors, embedded fonts, symbols defined once for the whole file. */

import type { PageOptions, PdfPicture, PdfReference } from 'pdfkit';
import { type Bounds, boundsOf } from '../scene/bounds.ts';
import { roundMm } from '../scene/rounding.ts';
import type { Face, Scene, Shape, Tag, Transform } from '../scene/scene.ts';
import { applied, joined, placedAt, UNMOVED } from '../scene/transforms.ts';
import { ptFromMm } from '../units.ts';
import { openFont } from './fonts.ts';
import { PackedDocument } from './packed-document.ts';
import { PageContent } from './page-content.ts';
import { PdfFace } from './pdf-face.ts';
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

/** Bytes: a symbol of fewer is no smaller for being compressed. */
const WORTH_PACKING = 200;

const FACES: readonly Face[] = ['text', 'text-bold', 'text-italic', 'title', 'title-bold'];

export async function paintPdf(pages: readonly Scene[], options: PdfOptions): Promise<Uint8Array> {
  const pdf = new PdfPainting(options);
  for (const page of pages) pdf.addPage(page);
  pdf.addOutline(options.outline ?? []);
  return pdf.finish();
}

/** A PDF being written. */
export class PdfPainting {
  private readonly document: PaintedDocument;
  /** Form of each symbol already defined, by its shapes: pages that share a symbol share its form. */
  private readonly forms = new Map<
    readonly Shape[],
    { readonly name: string; readonly reference: PdfReference }
  >();
  private readonly pictures = new Map<Uint8Array, PdfPicture>();
  private readonly tags: PdfTags | null;
  private readonly fonts: FontBytes;
  private readonly faces = new Map<Face, PdfFace>();

  constructor(options: PdfOptions) {
    const tagged = options.tagged ?? false;
    this.document = new PaintedDocument({
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
    this.fonts = options.fonts;
    for (const face of FACES) this.document.registerFont(face, openFont(options.fonts[face]));
    this.tags = tagged ? new PdfTags(this.document) : null;
  }

  /** A page as large as the scene, with the scene on it. */
  addPage(scene: Scene): void {
    this.document.addPage({ size: [ptFromMm(scene.widthMm), ptFromMm(scene.heightMm)], margin: 0 });
    this.paint(scene.shapes, scene.symbols, placedAt(0, 0, ptFromMm(1)));
    this.tags?.close();
    this.document.finishPage();
  }

  addOutline(outline: readonly PdfBookmark[]): void {
    let section = this.document.outline;
    for (const { title, level, page } of outline) {
      const parent = level === 1 ? this.document.outline : section;
      const item = parent.addItem(title, { pageNumber: page, expanded: true });
      if (level === 1) section = item;
    }
  }

  finish(): Uint8Array {
    this.tags?.finish();
    return this.document.packed();
  }

  /** `place` goes from mm to points from the upper left of the page. */
  private paint(shapes: readonly Shape[], symbols: Scene['symbols'], place: Transform): void {
    for (const shape of shapes) this.paintShape(shape, symbols, place);
  }

  private paintShape(shape: Shape, symbols: Scene['symbols'], place: Transform): void {
    switch (shape.kind) {
      case 'path':
      case 'circle':
        this.tags?.paintInto();
        this.document.content.draw(place, pathOperators(shape, { inSymbol: false }));
        return;
      case 'text':
        this.paintText(shape, place);
        return;
      case 'picture':
        this.paintPicture(shape, place);
        return;
      case 'use':
        this.paintUse(shape, symbols, place);
        return;
      case 'group': {
        const inner = shape.transform === null ? place : joined(place, shape.transform);
        this.paintTagged(shape.tag, shape.shapes, symbols, inner);
        return;
      }
      case 'link':
        this.paintTagged(shape.tag, shape.shapes, symbols, place);
        this.link(shape, symbols, place);
        return;
    }
  }

  private paintTagged(
    tag: Tag | undefined,
    shapes: readonly Shape[],
    symbols: Scene['symbols'],
    place: Transform,
  ): void {
    if (this.tags === null || tag === undefined) this.paint(shapes, symbols, place);
    else
      this.tags.within(
        tag,
        () => this.paint(shapes, symbols, place),
        () => this.fromBelow(boundsOf(shapes, symbols), place),
      );
  }

  private link(
    { shapes, href, tag }: Extract<Shape, { kind: 'link' }>,
    symbols: Scene['symbols'],
    place: Transform,
  ): void {
    const found = boundsOf(shapes, symbols);
    if (found === null) return;
    const { left, top, right, bottom } = around(found, place);
    const box = [left, top, right - left, bottom - top] as const;
    if (this.tags === null || tag === undefined) this.document.link(...box, href);
    else
      this.tags.link(tag, (structParent) =>
        this.document.link(...box, href, { structParent, Contents: pdfString(tag.alternative ?? href) }),
      );
  }

  private paintText(
    { text, x, y, sizeMm, face, align, ink }: Extract<Shape, { kind: 'text' }>,
    place: Transform,
  ): void {
    if (ink === 'none' || text === '') return;
    this.tags?.paintInto();
    const set = this.faceOf(face);
    const share = align === 'start' ? 0 : align === 'middle' ? 0.5 : 1;
    const left = share === 0 ? x : x - share * set.widthEm(text) * sizeMm;
    this.document.page.fonts[set.name] ??= set.reference;
    this.document.content.write(place, set, text, left, y, sizeMm, ink);
  }

  private faceOf(face: Face): PdfFace {
    const known = this.faces.get(face);
    if (known !== undefined) return known;
    const made = new PdfFace(this.document.font(face)._font, this.fonts[face]);
    this.faces.set(face, made);
    return made;
  }

  private paintPicture(
    { jpeg, x, y, widthMm, heightMm }: Extract<Shape, { kind: 'picture' }>,
    place: Transform,
  ): void {
    this.tags?.paintInto();
    const known = this.pictures.get(jpeg);
    // The library takes a copy of its own, and no view into other bytes.
    const picture = known ?? this.document.openImage(new Uint8Array(jpeg).buffer);
    if (known === undefined) this.pictures.set(jpeg, picture);
    this.document.asItDraws(place, () => {
      this.document.image(picture, x, y, { width: widthMm, height: heightMm });
    });
  }

  private paintUse(
    { symbol, transform, ink }: Extract<Shape, { kind: 'use' }>,
    symbols: Scene['symbols'],
    place: Transform,
  ): void {
    const shapes = symbols[symbol];
    if (shapes === undefined) return;
    this.tags?.paintInto();
    const { name, reference } = this.formOf(shapes, symbols);
    this.document.page.xobjects[name] = reference;
    const inks = `${inkOperator(ink, 'rg', { inSymbol: false })}\n${inkOperator(ink, 'RG', { inSymbol: false })}`;
    this.document.content.draw(place, `q\n${matrixOperator(transform)}\n/${name} Do\nQ`, inks);
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
    const operators = symbolOperators(shapes);
    reference.compress = operators.length > WORTH_PACKING;
    reference.end(operators);
    const form = { name: `Symbol${this.forms.size + 1}`, reference };
    this.forms.set(shapes, form);
    return form;
  }

  /** In points from the lower left of the page, so that what is called top lies below. */
  private fromBelow(box: Bounds | null, place: Transform): Bounds | null {
    if (box === null) return null;
    const { left, top, right, bottom } = around(box, place);
    const { height } = this.document.page;
    return { left, right, top: height - bottom, bottom: height - top };
  }
}

/** The rectangle that a placed rectangle fills. */
function around({ left, top, right, bottom }: Bounds, place: Transform): Bounds {
  const corners = [left, right].flatMap((x) => [top, bottom].map((y) => applied(place, x, y)));
  const xs = corners.map(([x]) => x);
  const ys = corners.map(([, y]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

const ASCII = new TextEncoder();

/** A document whose pages are written by ourselves, in one piece each. */
class PaintedDocument extends PackedDocument {
  content = new PageContent(0);

  override addPage(options: PageOptions): this {
    super.addPage(options);
    // The library has turned the page upside down, which ours does without.
    this.content = new PageContent(this.page.height);
    return this;
  }

  finishPage(): void {
    // Numbers, names and operators: all of it is ASCII.
    this.page.write(ASCII.encode(`${this.content.joined()}\n`));
  }

  /** What the library itself draws in a place. */
  asItDraws(place: Transform, draw: () => void): void {
    this.content.add(`q\n1 0 0 -1 0 ${this.page.height} cm`);
    this.save();
    this.transform(...place);
    draw();
    this.restore();
    this.content.add('Q');
  }

  /** The library says by this what it writes on a page. */
  override addContent(operators: string): this {
    this.content.add(operators);
    return this;
  }

  /** The library writes title and author into XML as they are. */
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
