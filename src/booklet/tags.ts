/** What the pieces of a booklet are to someone who does not see it: tags for headings, paragraphs, lists and tables. */

import type { Shape, Tag } from '../scene/scene.ts';

export function tagged(shapes: readonly Shape[], tag: Tag): Shape {
  return { kind: 'group', transform: null, shapes, tag };
}

/** 1 is the title's, 2 a section's, 3 of what stands inside one. */
export function headingTag(level: 1 | 2 | 3): Tag {
  return { kind: `H${level}`, within: null };
}

export function paragraphTag(): Tag {
  return { kind: 'P', within: null };
}

export function figureTag(alternative: string, within: Tag | null = null): Tag {
  return { kind: 'Figure', within, alternative };
}

export function listTag(): Tag {
  return { kind: 'L', within: null };
}

export interface ItemTags {
  readonly label: Tag;
  readonly body: Tag;
}

export function itemTags(list: Tag): ItemTags {
  const item: Tag = { kind: 'LI', within: list };
  return { label: { kind: 'Lbl', within: item }, body: { kind: 'LBody', within: item } };
}

export interface TableTags {
  /** A cell of a row that heads columns, and one of a row; the first of a row heads it. */
  readonly head: () => Tag;
  readonly row: () => (column: number) => Tag;
}

export function tableTags(): TableTags {
  const table: Tag = { kind: 'Table', within: null };
  const heads: Tag = { kind: 'TR', within: table };
  return {
    head: () => ({ kind: 'TH', within: heads, heads: 'Column' }),
    row: () => {
      const row: Tag = { kind: 'TR', within: table };
      return (column) =>
        column === 0 ? { kind: 'TH', within: row, heads: 'Row' } : { kind: 'TD', within: row };
    },
  };
}
