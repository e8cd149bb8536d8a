/** What is painted and what it is in, the structure tree of a tagged PDF out (ISO 32000-1, 14.7 and 14.8). */

import type PdfDocument from 'pdfkit';
import type { PdfPage, PdfStructure } from 'pdfkit';
import { around, type Bounds } from '../scene/bounds.ts';
import type { Tag } from '../scene/scene.ts';

/** What is drawn outside any tag is an artifact: running heads, rules, boxes to tick. */
type Content = Tag | 'artifact';

export class PdfTags {
  private readonly document: PdfDocument;
  private readonly root: PdfStructure;
  private readonly elements = new Map<Tag, PdfStructure>();
  private open: Content | null = null;
  /** Of figures and tables: where each stands, as long as it is on one page. */
  private readonly boxes = new Map<Tag, { readonly page: PdfPage; box: Bounds } | 'several pages'>();
  private inside: Content = 'artifact';

  constructor(document: PdfDocument) {
    this.document = document;
    this.root = document.struct('Document');
    document.addStructure(this.root);
  }

  /** Before anything is painted: opens what it belongs to, unless that is open. */
  paintInto(): void {
    if (this.open === this.inside) return;
    this.close();
    if (this.inside === 'artifact') this.document.markContent('Artifact');
    else {
      const element = this.elementOf(this.inside);
      element.add(this.document.markStructureContent(this.inside.kind));
    }
    this.open = this.inside;
  }

  /** What is painted inside belongs to the tag. `bounds` are asked for only where they are told. */
  within(tag: Tag, paint: () => void, bounds: () => Bounds | null): void {
    const before = this.inside;
    // Content of its own: what is read out of one is read without a break, and a count is no end of the row's last word.
    this.close();
    this.inside = tag;
    // It is there, and in its place among others, even with nothing in it.
    this.elementOf(tag);
    const holder = boxed(tag);
    const box = holder === null ? null : bounds();
    if (holder !== null && box !== null) this.enlargeBox(holder, box);
    paint();
    this.close();
    this.inside = before;
  }

  /** The element of a link is closed at once: what it points at is on the page that is open now. */
  link(tag: Tag, annotate: (element: PdfStructure) => void): void {
    const element = this.elementOf(tag);
    annotate(element);
    element.end();
  }

  /** A figure or table that stands on one page says where (ISO 32000-1, 14.8.5.4.3): at the end, when all of it is painted. */
  finish(): void {
    for (const [tag, found] of this.boxes) {
      if (found === 'several pages') continue;
      const { left, top, right, bottom } = found.box;
      this.elementOf(tag).dictionary.data.A = {
        O: 'Layout',
        Placement: 'Block',
        BBox: [left, top, right, bottom].map((pt) => Math.round(pt * 100) / 100),
      };
    }
  }

  private enlargeBox(tag: Tag, drawn: Bounds): void {
    const known = this.boxes.get(tag);
    const { page } = this.document;
    // What of a chart passes the edge of its sheet is covered there.
    const box = {
      left: Math.max(0, drawn.left),
      top: Math.max(0, drawn.top),
      right: Math.min(page.width, drawn.right),
      bottom: Math.min(page.height, drawn.bottom),
    };
    if (known === undefined) this.boxes.set(tag, { page, box });
    else if (known === 'several pages') return;
    else if (known.page !== page) this.boxes.set(tag, 'several pages');
    else known.box = around(known.box, box) ?? box;
  }

  /** At the end of a page. */
  close(): void {
    if (this.open === null) return;
    this.document.endMarkedContent();
    this.open = null;
  }

  private elementOf(tag: Tag): PdfStructure {
    const known = this.elements.get(tag);
    if (known !== undefined) return known;
    const parent = tag.within === null ? this.root : this.elementOf(tag.within);
    const element = this.document.struct(tag.kind, {
      ...(tag.alternative === undefined ? {} : { alt: tag.alternative }),
      ...(tag.heads === undefined ? {} : { scope: tag.heads }),
    });
    parent.add(element);
    this.elements.set(tag, element);
    return element;
  }
}

/** The figure or table that a tag is, or is a part of. */
function boxed(tag: Tag): Tag | null {
  if (tag.kind === 'Figure' || tag.kind === 'Table') return tag;
  return tag.within === null ? null : boxed(tag.within);
}
