/** PDF bytes -> what an independent reader (PDF.js) finds of its structure: the tree, what each leaf says, and what is in no leaf. */

import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface Element {
  readonly role: string;
  readonly alternative: string | null;
  /** Elements and texts in the order they are read. */
  readonly children: readonly (Element | string)[];
}

export interface ReadStructure {
  /** A tree a page. */
  readonly pages: readonly Element[];
  /** Texts of each page that stand outside the structure. */
  readonly artifacts: readonly (readonly string[])[];
  readonly marked: boolean;
  readonly displaysTitle: boolean;
  /** Part of PDF/UA that the file says it keeps to, or null. */
  readonly accessiblePart: string | null;
  readonly metadataTitle: string | null;
}

export async function readStructure(bytes: Uint8Array): Promise<ReadStructure> {
  const reader = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const pdf = await reader.promise;
  const pages: Element[] = [];
  const artifacts: string[][] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const { items } = await page.getTextContent({ includeMarkedContent: true });
    const byId = new Map<string, string>();
    const outside: string[] = [];
    const open: (string | null)[] = [];
    for (const item of items) {
      if ('str' in item) {
        const id = open.at(-1) ?? null;
        if (id !== null) byId.set(id, `${byId.get(id) ?? ''}${item.str}`);
        else if (item.str.trim()) outside.push(item.str);
      } else if (item.type === 'endMarkedContent') open.pop();
      else open.push(item.type === 'beginMarkedContentProps' && item.id ? item.id : null);
    }
    const tree = await page.getStructTree();
    pages.push(element(tree ?? { role: 'none', children: [] }, byId));
    artifacts.push(outside);
  }
  const [markInfo, { metadata }, preferences] = await Promise.all([
    pdf.getMarkInfo(),
    pdf.getMetadata(),
    pdf.getViewerPreferences(),
  ]);
  const found = {
    pages,
    artifacts,
    marked: markInfo?.Marked === true,
    displaysTitle: JSON.stringify(preferences ?? {}).includes('"DisplayDocTitle":true'),
    accessiblePart: text(metadata?.get('pdfuaid:part')),
    metadataTitle: text(metadata?.get('dc:title')),
  };
  await reader.destroy();
  return found;
}

function text(value: unknown): string | null {
  return value === null || value === undefined ? null : String(value);
}

/** The library's own nodes, of unknown shape to us but for these. */
function element(node: unknown, byId: ReadonlyMap<string, string>): Element {
  const { role, alt, children } = Object(node) as { role?: unknown; alt?: unknown; children?: unknown };
  const list: readonly unknown[] = Array.isArray(children) ? children : [];
  return {
    role: String(role),
    alternative: text(alt),
    children: list.flatMap((child): (Element | string)[] => {
      const { type, id } = Object(child) as { type?: unknown; id?: unknown };
      if (type === 'content') return byId.has(String(id)) ? [byId.get(String(id)) ?? ''] : [];
      return type === undefined ? [element(child, byId)] : [];
    }),
  };
}

/** Every element below, in the order they are read. */
export function elementsIn(top: Element): Element[] {
  return top.children.flatMap((child) => (typeof child === 'string' ? [] : [child, ...elementsIn(child)]));
}

/** All that is said, figures by their alternative. */
export function spoken(top: Element): string {
  if (top.role === 'Figure') return `[${top.alternative ?? ''}]`;
  return top.children.map((child) => (typeof child === 'string' ? child : spoken(child))).join(' ');
}
